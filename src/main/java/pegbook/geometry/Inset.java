package pegbook.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Places inside a polygon at the same square distance from both sides of each corner. */
final class Inset {
  /** A place may miss its distance from the edge by this much, metres: rounding of doubles only. */
  private static final double SLACK_METRES = 1e-9;

  private Inset() {}

  /**
   * One place for each corner, on the corner's bisector.
   *
   * @param polygon corners clockwise, no side crossing another
   * @return the places in the order of the corners; empty when one of them lies outside the polygon
   *     or nearer to some side than the distance asked for
   */
  static Optional<List<Point>> of(Polygon polygon, double distanceMetres) {
    if (distanceMetres < 0) {
      throw new IllegalArgumentException("inset of " + distanceMetres + " m");
    }
    if (distanceMetres == 0) {
      return Optional.of(polygon.corners());
    }
    List<Point> places = new ArrayList<>();
    int count = polygon.corners().size();
    for (int i = 0; i < count; i++) {
      Point before = polygon.corners().get((i + count - 1) % count);
      Point after = polygon.corners().get((i + 1) % count);
      places.add(onBisector(before, polygon.corners().get(i), after, distanceMetres));
    }
    boolean fits =
        places.stream()
            .allMatch(
                place ->
                    polygon.contains(place)
                        && polygon.distanceToEdge(place).metres() >= distanceMetres - SLACK_METRES);
    return fits ? Optional.of(places) : Optional.empty();
  }

  /**
   * Where the lines parallel to both sides of a corner cross: the corner moved inwards by the sum
   * of the sides' unit normals, divided by one plus their product. Inwards is to the right of a
   * clockwise side.
   */
  private static Point onBisector(Point before, Point corner, Point after, double distanceMetres) {
    double inLength = before.distanceTo(corner).metres();
    double outLength = corner.distanceTo(after).metres();
    double inEast = (corner.north() - before.north()) / inLength;
    double inNorth = (before.east() - corner.east()) / inLength;
    double outEast = (after.north() - corner.north()) / outLength;
    double outNorth = (corner.east() - after.east()) / outLength;
    double scale = distanceMetres / (1 + inEast * outEast + inNorth * outNorth);
    return corner.plus(scale * (inEast + outEast), scale * (inNorth + outNorth));
  }
}
