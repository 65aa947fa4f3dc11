package pegbook.sheet.drawing;

/** How a line is drawn: its width (ISO 128 series, millimetres), its pattern, black or grey. */
public record Pen(double widthMm, Pattern pattern, Ink ink) {
  public static final Pen HAIR = new Pen(0.18, Pattern.SOLID, Ink.BLACK);
  public static final Pen THIN = new Pen(0.25, Pattern.SOLID, Ink.BLACK);
  public static final Pen MEDIUM = new Pen(0.35, Pattern.SOLID, Ink.BLACK);
  public static final Pen THICK = new Pen(0.5, Pattern.SOLID, Ink.BLACK);
  public static final Pen HEAVY = new Pen(0.7, Pattern.SOLID, Ink.BLACK);

  /**
   * Line patterns of ISO 128: hidden edges dash, centre lines dash and dot, limits dash-dot-dot.
   */
  public enum Pattern {
    SOLID,
    DASHED,
    DOTTED,
    CENTRE,
    BOUNDARY
  }

  public Pen dashed() {
    return new Pen(widthMm, Pattern.DASHED, ink);
  }

  public Pen dotted() {
    return new Pen(widthMm, Pattern.DOTTED, ink);
  }

  public Pen centre() {
    return new Pen(widthMm, Pattern.CENTRE, ink);
  }

  public Pen boundary() {
    return new Pen(widthMm, Pattern.BOUNDARY, ink);
  }

  public Pen grey() {
    return new Pen(widthMm, pattern, Ink.GREY);
  }
}
