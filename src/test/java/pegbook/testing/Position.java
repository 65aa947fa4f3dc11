package pegbook.testing;

/** A place on a page, millimetres from its lower left corner. */
public record Position(double x, double y) {
  public double distanceTo(Position other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The place a part of the way along to another, 0 here and 1 there. */
  public Position towards(Position other, double part) {
    return new Position(x + (other.x - x) * part, y + (other.y - y) * part);
  }
}
