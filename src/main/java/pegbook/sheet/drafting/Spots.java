package pegbook.sheet.drafting;

import pegbook.sheet.drawing.Spot;

/** Steps from one place on paper to another. */
public final class Spots {
  private Spots() {}

  /** A place so far to the right and up. */
  public static Spot shifted(Spot spot, double rightMm, double upMm) {
    return new Spot(spot.x() + rightMm, spot.y() + upMm);
  }

  /** A place at a distance in a direction, degrees anticlockwise from x. */
  public static Spot towards(Spot spot, double degrees, double mm) {
    double radians = StrictMath.toRadians(degrees);
    return shifted(spot, mm * StrictMath.cos(radians), mm * StrictMath.sin(radians));
  }

  /** Distance in millimetres. */
  public static double distanceMm(Spot one, Spot other) {
    double right = other.x() - one.x();
    double up = other.y() - one.y();
    return Math.sqrt(right * right + up * up);
  }

  /** Direction from one place to another, degrees anticlockwise from x, from -180 to 180. */
  public static double directionDegrees(Spot from, Spot to) {
    return StrictMath.toDegrees(StrictMath.atan2(to.y() - from.y(), to.x() - from.x()));
  }

  /** The place between two others. */
  public static Spot middle(Spot one, Spot other) {
    return new Spot((one.x() + other.x()) / 2, (one.y() + other.y()) / 2);
  }

  /** A turn by which text along a line reads from below or from the right: over -90 up to 90. */
  public static double readable(double degrees) {
    double turn = degrees % 180;
    if (turn > 90 + 1e-9) {
      return turn - 180;
    }
    return turn <= -90 + 1e-9 ? turn + 180 : turn;
  }
}
