package pegbook.sheet.drawing;

/** A place on a drawing: x to the right, y up, millimetres from the lower left corner. */
public record Spot(double x, double y) {
  public Spot {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("spot " + x + ", " + y);
    }
  }
}
