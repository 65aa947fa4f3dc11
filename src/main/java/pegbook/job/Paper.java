package pegbook.job;

import pegbook.measure.Length;

/** Paper that offices and shops have; all upright. */
public enum Paper {
  LETTER(215.9, 279.4),
  LEGAL(215.9, 355.6),
  TABLOID(279.4, 431.8),
  A4(210, 297),
  A3(297, 420);

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  public Length width() {
    return Length.ofMillimetres(widthMm);
  }

  public Length height() {
    return Length.ofMillimetres(heightMm);
  }
}
