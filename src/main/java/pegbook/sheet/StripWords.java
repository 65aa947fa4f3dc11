package pegbook.sheet;

import pegbook.sheet.Booklet.Strip;

/**
 * The job's own words in the title strip, which has one line for each: what is too long ends in an
 * ellipsis. The cover has them whole.
 *
 * @param writing with what
 * @param size of the strip's type, points
 */
record StripWords(Writing writing, double size) {
  /** Binder and review packet; see the style sheet. */
  static final double SMALL = 8.1;

  /** Day sheets. */
  static final double LARGE = 11.1;

  private static final double PADDINGS_MM = 3;
  private static final String ELLIPSIS = "…";

  /** A strip whose texts each fit on one line of its cell; shares as in parts/page.html. */
  Strip fitted(Strip strip) {
    boolean large = size == LARGE;
    return new Strip(
        fitted(strip.job(), large ? 0.53 : 0.34),
        large ? fitted(strip.revision(), 0.18, labelMm("revision")) : strip.revision(),
        strip.issued(),
        fitted(strip.owner(), 0.25),
        strip.maker(),
        strip.hash(),
        strip.caution());
  }

  /** Room of a label before a text. */
  private double labelMm(String label) {
    return widthMm(writing.texts().say("strip.day." + label) + " ");
  }

  /** A text that fits on one line of a cell with a share of the strip's width. */
  String fitted(String text, double share) {
    return fitted(text, share, 0);
  }

  private String fitted(String text, double share, double takenMm) {
    double roomMm = writing.page().widthMm() * share - PADDINGS_MM - takenMm;
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
    return writing.lettering().widthMm(text, size, true);
  }
}
