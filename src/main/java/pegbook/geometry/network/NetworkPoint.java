package pegbook.geometry.network;

import java.util.Optional;
import pegbook.geometry.Point;

/**
 * A point of a network.
 *
 * @param name its name, once only in a network
 * @param start where it is, or about where: the adjustment starts here
 * @param freedom in which directions it is sought
 * @param expected how far it may be off from {@code start} before anything is measured; where this
 *     is given, {@code start} is itself an observation and not only a beginning
 */
public record NetworkPoint(String name, Point start, Freedom freedom, Optional<Spread> expected) {

  /** In which directions a point is sought. */
  public enum Freedom {
    /** It stands where it is said to stand. */
    FIXED(false, false),
    /** Sought in both directions. */
    FREE(true, true),
    /** Its north is given, its east sought. */
    ALONG_EAST(true, false),
    /** Its east is given, its north sought. */
    ALONG_NORTH(false, true);

    private final boolean east;
    private final boolean north;

    Freedom(boolean east, boolean north) {
      this.east = east;
      this.north = north;
    }

    boolean east() {
      return east;
    }

    boolean north() {
      return north;
    }
  }

  public NetworkPoint {
    if (expected.isPresent()) {
      Spread spread = expected.get();
      if (freedom != Freedom.FREE) {
        throw new IllegalArgumentException(name + " is expected somewhere and held as well");
      }
      if (!(spread.eastEast() > 0 && spread.northNorth() > 0 && spread.determinant() > 0)) {
        throw new IllegalArgumentException("spread of " + name + ": " + spread);
      }
    }
  }

  /** A point that is known. */
  public static NetworkPoint fixed(String name, Point at) {
    return new NetworkPoint(name, at, Freedom.FIXED, Optional.empty());
  }

  /** A point that only the distances tell, sought from a place near it. */
  public static NetworkPoint free(String name, Point start) {
    return new NetworkPoint(name, start, Freedom.FREE, Optional.empty());
  }

  /**
   * A point that was meant to be at a place and is there but for an error.
   *
   * @throws IllegalArgumentException when the spread is no area
   */
  public static NetworkPoint expected(String name, Point at, Spread spread) {
    return new NetworkPoint(name, at, Freedom.FREE, Optional.of(spread));
  }

  /** The same, sought from another place; what was expected of it is forgotten. */
  public NetworkPoint freedAt(Point place) {
    return free(name, place);
  }
}
