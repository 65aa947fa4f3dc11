package pegbook.geometry.network;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Points and the distances measured between them.
 *
 * @param points each name once
 * @param distances several between the same two points are several measurements
 */
public record Network(List<NetworkPoint> points, List<TapedDistance> distances) {
  /**
   * Checks the names.
   *
   * @throws IllegalArgumentException when a point is named twice or a distance ends at no point
   */
  public Network {
    points = List.copyOf(points);
    distances = List.copyOf(distances);
    Map<String, NetworkPoint> named = byName(points);
    for (TapedDistance distance : distances) {
      if (!named.containsKey(distance.from()) || !named.containsKey(distance.to())) {
        throw new IllegalArgumentException("a distance to no point: " + distance);
      }
    }
  }

  private static Map<String, NetworkPoint> byName(List<NetworkPoint> points) {
    Map<String, NetworkPoint> named = new LinkedHashMap<>();
    for (NetworkPoint point : points) {
      if (named.put(point.name(), point) != null) {
        throw new IllegalArgumentException("two points " + point.name());
      }
    }
    return named;
  }

  /** The same distances with one point put in the place of its namesake. */
  public Network with(NetworkPoint changed) {
    return new Network(
        points.stream()
            .map(point -> point.name().equals(changed.name()) ? changed : point)
            .toList(),
        distances);
  }
}
