package pegbook.geometry;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/** Where two tapes cross that are swung from the ends of a baseline. */
public sealed interface Swing {
  /** Tapes that overlap or miss by less than this, metres, touch. */
  double TOUCH_METRES = 1e-9;

  /** The tapes cross on both sides; the sides are those of the directed baseline. */
  record Crossing(Point left, Point right) implements Swing {
    /** The crossing on one side. */
    public Point on(Segment.Side side) {
      return switch (side) {
        case LEFT -> left;
        case RIGHT -> right;
        case ON -> throw new IllegalArgumentException("tapes that cross do so beside the baseline");
      };
    }
  }

  /** The tapes just touch, on the baseline's line. */
  record Touching(Point at) implements Swing {}

  /** The tapes together are too short to meet, or one is so long that it passes round the other. */
  record Apart(boolean tooShort) implements Swing {}

  /**
   * Swings two tapes.
   *
   * @param baseline from the mark of the first tape to that of the second
   * @param first tape from its beginning
   * @param second tape from its end
   * @throws IllegalArgumentException when a tape or the baseline has no length
   */
  static Swing of(Segment baseline, Length first, Length second) {
    double a = first.metres();
    double b = second.metres();
    double c = baseline.length().metres();
    if (!(a > 0 && b > 0 && c > 0)) {
      throw new IllegalArgumentException("tapes " + a + " and " + b + " m, baseline " + c + " m");
    }
    if (a + b < c - TOUCH_METRES) {
      return new Apart(true);
    }
    if (Math.abs(a - b) > c + TOUCH_METRES) {
      return new Apart(false);
    }
    double along = (a * a - b * b + c * c) / (2 * c);
    boolean touching =
        Math.abs(a + b - c) <= TOUCH_METRES || Math.abs(Math.abs(a - b) - c) <= TOUCH_METRES;
    if (touching) {
      return new Touching(baseline.at(along, 0));
    }
    double offset = Math.sqrt(Math.max(0, a * a - along * along));
    return new Crossing(baseline.at(along, offset), baseline.at(along, -offset));
  }

  /**
   * The angle at a mark between the directions to two others, from 0 to 180 degrees.
   *
   * @throws IllegalArgumentException when the mark is one of them
   */
  static Angle angleAt(Point mark, Point first, Point second) {
    double firstEast = first.east() - mark.east();
    double firstNorth = first.north() - mark.north();
    double secondEast = second.east() - mark.east();
    double secondNorth = second.north() - mark.north();
    double cross = firstEast * secondNorth - firstNorth * secondEast;
    double dot = firstEast * secondEast + firstNorth * secondNorth;
    if (cross == 0 && dot == 0) {
      throw new IllegalArgumentException("no angle at " + mark + " to itself");
    }
    return new Angle(StrictMath.atan2(Math.abs(cross), dot));
  }
}
