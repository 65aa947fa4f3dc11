package pegbook.render;

/**
 * The paper a packet is printed on, upright.
 *
 * @param widthMm width in millimetres
 * @param heightMm height in millimetres
 */
public record PageSize(double widthMm, double heightMm) {
  /** ISO 216 A4. */
  public static final PageSize A4 = new PageSize(210, 297);

  /** US letter, 8 1/2 by 11 inches. */
  public static final PageSize LETTER = new PageSize(215.9, 279.4);

  public PageSize {
    if (!(widthMm >= 100 && heightMm >= 100 && widthMm <= 2000 && heightMm <= 2000)) {
      throw new IllegalArgumentException("paper " + widthMm + " x " + heightMm + " mm");
    }
  }
}
