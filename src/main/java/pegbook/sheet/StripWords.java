package pegbook.sheet;

/**
 * The job's own words in the title strip, which has one line for each: what is too long ends in an
 * ellipsis. The cover has them whole.
 */
record StripWords(Writing writing) {
  /** Shares of the strip's width; see parts/page.html. */
  static final double JOB = 0.34;

  static final double OWNER = 0.25;

  /** The larger of the strip's two sizes of type, that of day sheets. */
  private static final double SIZE = 9;

  private static final double PADDINGS_MM = 3;
  private static final String ELLIPSIS = "…";

  /** A text that fits on one line of a cell. */
  String fitted(String text, double share) {
    double roomMm = writing.page().widthMm() * share - PADDINGS_MM;
    if (widthMm(text) <= roomMm) {
      return text;
    }
    int end = text.length();
    while (end > 0 && widthMm(text.substring(0, end).strip() + ELLIPSIS) > roomMm) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).strip() + ELLIPSIS;
  }

  private double widthMm(String text) {
    return writing.lettering().widthMm(text, SIZE, true);
  }
}
