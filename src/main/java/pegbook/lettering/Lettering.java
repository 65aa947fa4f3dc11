package pegbook.lettering;

/** Measures text as it will be printed. */
public interface Lettering {
  /** Points to a millimetre: 72 / 25.4. */
  double POINTS_PER_MM = 72 / 25.4;

  /** Height of capitals and figures above the base line, as a share of the type's height. */
  double CAPITAL_HEIGHT = 0.66;

  /**
   * Height of the tallest signs (raised figures) above the base line, as a share of the type's
   * height.
   */
  double ASCENT = 0.8;

  /** Depth of the lowest letters (g, p, y) below the base line, as a share of the type's height. */
  double DESCENT = 0.23;

  /**
   * Width of a line of text.
   *
   * @param text the line
   * @param size height of type in points
   * @param bold true for the bold face
   * @return width in millimetres
   * @throws IllegalArgumentException when a character is in none of the packet's fonts
   */
  double widthMm(String text, double size, boolean bold);
}
