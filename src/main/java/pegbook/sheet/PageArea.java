package pegbook.sheet;

import pegbook.job.Paper;

/**
 * The part of the paper that a sheet prints on: inside the margins, above the title strip.
 *
 * @param widthMm between the filing margin and the right margin
 * @param heightMm from the top margin to the title strip
 */
public record PageArea(double widthMm, double heightMm) {
  /** Filing margin on the binding side, ISO 5457. */
  public static final double FILING_MARGIN_MM = 20;

  public static final double RIGHT_MARGIN_MM = 11;
  public static final double TOP_MARGIN_MM = 11;

  /** Bottom margin, which holds the title strip. */
  public static final double BOTTOM_MARGIN_MM = 26;

  /** The printed part of a paper. */
  public static PageArea of(Paper paper) {
    return new PageArea(
        paper.width().millimetres() - FILING_MARGIN_MM - RIGHT_MARGIN_MM,
        paper.height().millimetres() - TOP_MARGIN_MM - BOTTOM_MARGIN_MM);
  }
}
