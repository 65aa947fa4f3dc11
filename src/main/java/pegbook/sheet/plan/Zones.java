package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Spot;

/** The line that keeps a distance all round a figure, rounded at its corners. */
final class Zones {
  private static final double STEP_DEGREES = 10;

  private Zones() {}

  /**
   * Round a figure of straight sides; two spots are a stretch of line.
   *
   * @param ring its corners anticlockwise, at least two
   */
  static List<Spot> around(List<Spot> ring, double distanceMm) {
    List<Spot> zone = new ArrayList<>();
    int count = ring.size();
    for (int i = 0; i < count; i++) {
      Spot before = ring.get((i + count - 1) % count);
      Spot corner = ring.get(i);
      Spot after = ring.get((i + 1) % count);
      double in = Spots.directionDegrees(before, corner) - 90;
      double turn = turn(Spots.directionDegrees(corner, after) - 90 - in);
      corner(zone, corner, in, turn, distanceMm);
    }
    return zone;
  }

  /** An arc round a corner that stands out; where the figure bends in, the two lines just cross. */
  private static void corner(
      List<Spot> zone, Spot corner, double fromDegrees, double turn, double distanceMm) {
    if (turn < 0) {
      double half = StrictMath.cos(StrictMath.toRadians(turn / 2));
      zone.add(Spots.towards(corner, fromDegrees + turn / 2, distanceMm / Math.max(0.2, half)));
      return;
    }
    int steps = (int) Math.ceil(turn / STEP_DEGREES);
    for (int i = 0; i <= steps; i++) {
      double part = steps == 0 ? 0 : turn * i / steps;
      zone.add(Spots.towards(corner, fromDegrees + part, distanceMm));
    }
  }

  /** A turn from -180 (excluded) to 180 degrees. */
  private static double turn(double degrees) {
    double turn = degrees % 360;
    if (turn <= -180 + 1e-9) {
      return turn + 360;
    }
    return turn > 180 + 1e-9 ? turn - 360 : turn;
  }
}
