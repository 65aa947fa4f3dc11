package pegbook.geometry;

import java.util.List;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * How strongly two tapes cross, from one pair of marks to all others.
 *
 * @param onLine a mark no further off the pair's line than this is set on a string line with one
 *     tape
 */
public record Crossings(Length onLine) {
  /** A crossing between these limits is strong enough; common practice. */
  public static final Angle LEAST = Angle.ofDegrees(30);

  public static final Angle MOST = Angle.ofDegrees(150);

  /** A crossing outside a limit by less than this counts as on it. */
  public static final Angle TOLERANCE = Angle.ofDegrees(1e-5);

  /** For a tape: a mark no further off a line than half a division is set on it. */
  public static Crossings onTape(Length division) {
    return new Crossings(division.times(0.5));
  }

  /**
   * Weakness of a crossing: the cotangent of the angle between the tapes' lines, nothing for a
   * right angle and without bound for tapes in one line. A mark on the baseline's own line is as
   * good as a right angle, unless the string line would have to be drawn out by more than the
   * baseline's length.
   */
  public double weakness(Point first, Point second, Point mark) {
    double firstEast = first.east() - mark.east();
    double firstNorth = first.north() - mark.north();
    double secondEast = second.east() - mark.east();
    double secondNorth = second.north() - mark.north();
    double cross = Math.abs(firstEast * secondNorth - firstNorth * secondEast);
    double dot = firstEast * secondEast + firstNorth * secondNorth;
    double baseEast = second.east() - first.east();
    double baseNorth = second.north() - first.north();
    double base = Math.sqrt(baseEast * baseEast + baseNorth * baseNorth);
    // cross is the baseline times the mark's distance from its line.
    if (cross <= onLine.metres() * base) {
      // Beyond an end by the baseline's own length, the distances are one and two of it.
      return dot <= 2 * base * base ? 0 : Double.POSITIVE_INFINITY;
    }
    return Math.abs(dot) / cross;
  }

  public boolean isOnLine(Segment baseline, Point mark) {
    return Math.abs(baseline.offsetMetres(mark)) <= onLine.metres();
  }

  /** The angle between the tapes' lines, from 0 to 90 degrees. */
  public static Angle strength(double weakness) {
    return new Angle(StrictMath.atan2(1, weakness));
  }

  public static boolean isWeak(double weakness) {
    return strength(weakness).isLessThan(LEAST.minus(TOLERANCE));
  }

  /** Weakness of the weakest crossing of a pair; stops looking once a limit is passed. */
  double worst(List<Point> marks, int first, int second, double limit) {
    double worst = 0;
    for (int i = 0; i < marks.size() && worst <= limit; i++) {
      if (i != first && i != second) {
        worst = Math.max(worst, weakness(marks.get(first), marks.get(second), marks.get(i)));
      }
    }
    return worst;
  }
}
