package pegbook.geometry.network;

import pegbook.measure.Length;

/**
 * A measured level distance between two points.
 *
 * @param from name of one point
 * @param to name of the other; which is which does not matter
 * @param length the distance measured
 * @param deviation its standard deviation before the adjustment (a priori)
 */
public record TapedDistance(String from, String to, Length length, Length deviation) {
  public TapedDistance {
    if (from.equals(to)) {
      throw new IllegalArgumentException("distance from " + from + " to itself");
    }
    if (!(length.metres() > 0) || !(deviation.metres() > 0)) {
      throw new IllegalArgumentException(
          "distance " + from + " to " + to + ": " + length + ", deviation " + deviation);
    }
  }

  /** True when it ends at a point. */
  public boolean ends(String name) {
    return from.equals(name) || to.equals(name);
  }

  /** The end that is not this one. */
  public String otherEnd(String name) {
    return from.equals(name) ? to : from;
  }
}
