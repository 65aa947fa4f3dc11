package pegbook.job;

import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * A fixed thing on the site.
 *
 * @param name what the plan calls it
 * @param kind what it is to the work
 * @param shape where it is
 * @param keepClear how far every hole's edge and heap keeps from it
 */
public record Feature(String name, Kind kind, Shape shape, Optional<Length> keepClear) {

  /** What a feature is to the work. */
  public enum Kind {
    /** A tree, a well, a boulder, a building: something to keep clear of and to tape from. */
    OBJECT,
    /** A pipe or cable under ground. */
    BURIED_LINE,
    /** A wire over the ground. */
    OVERHEAD_WIRE
  }

  /** Where a feature is. */
  public sealed interface Shape {
    /** A single place. */
    record Spot(Point at) implements Shape {}

    /** A straight line. */
    record Line(Segment along) implements Shape {}

    /** An area with straight edges. */
    record Block(Polygon corners) implements Shape {}
  }
}
