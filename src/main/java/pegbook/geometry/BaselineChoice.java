package pegbook.geometry;

import java.util.List;
import pegbook.measure.Length;

/**
 * The pair of marks to tape from.
 *
 * <p>All pairs are looked at. Fewest tapes longer than the tape comes first; then the strongest of
 * the worst crossings; pairs alike in that to within rounding, the longer baseline, as an error in
 * its direction then weighs least; then the pair that is named first.
 *
 * @param first index of its first mark
 * @param second index of its second mark
 * @param beyondReach how many tapes are longer than the tape
 * @param weakness of its worst crossing; see {@link Crossings#weakness}
 * @param metres its length
 */
public record BaselineChoice(
    int first, int second, int beyondReach, double weakness, double metres) {
  /** Weaknesses and lengths that differ by less than this, in parts of one, are alike. */
  private static final double ALIKE = 1e-9;

  /**
   * Chooses.
   *
   * @param marks at least two
   * @param reach length of the tape
   */
  public static BaselineChoice among(List<Point> marks, Crossings crossings, Length reach) {
    BaselineChoice best = of(marks, 0, 1, crossings, reach);
    for (int first = 0; first < marks.size(); first++) {
      for (int second = first + 1; second < marks.size(); second++) {
        int beyond = beyondReach(marks, first, second, reach);
        if (beyond > best.beyondReach) {
          continue;
        }
        double limit =
            beyond < best.beyondReach ? Double.POSITIVE_INFINITY : loosened(best.weakness);
        double weakness = crossings.worst(marks, first, second, limit);
        double metres = metres(marks, first, second);
        BaselineChoice next = new BaselineChoice(first, second, beyond, weakness, metres);
        if (next.isBetterThan(best)) {
          best = next;
        }
      }
    }
    return best;
  }

  /** A pair that was named. */
  public static BaselineChoice of(
      List<Point> marks, int first, int second, Crossings crossings, Length reach) {
    return new BaselineChoice(
        first,
        second,
        beyondReach(marks, first, second, reach),
        crossings.worst(marks, first, second, Double.POSITIVE_INFINITY),
        metres(marks, first, second));
  }

  private boolean isBetterThan(BaselineChoice other) {
    if (beyondReach != other.beyondReach) {
      return beyondReach < other.beyondReach;
    }
    if (weakness > loosened(other.weakness)) {
      return false;
    }
    if (loosened(weakness) < other.weakness) {
      return true;
    }
    return metres > other.metres * (1 + ALIKE);
  }

  private static double loosened(double weakness) {
    return weakness + ALIKE * (1 + weakness);
  }

  private static int beyondReach(List<Point> marks, int first, int second, Length reach) {
    int beyond = 0;
    for (Point mark : marks) {
      beyond += isBeyond(marks.get(first), mark, reach) ? 1 : 0;
      beyond += isBeyond(marks.get(second), mark, reach) ? 1 : 0;
    }
    return beyond;
  }

  private static boolean isBeyond(Point from, Point to, Length reach) {
    double east = to.east() - from.east();
    double north = to.north() - from.north();
    return Math.sqrt(east * east + north * north) > reach.metres() * (1 + ALIKE);
  }

  private static double metres(List<Point> marks, int first, int second) {
    return marks.get(first).distanceTo(marks.get(second)).metres();
  }
}
