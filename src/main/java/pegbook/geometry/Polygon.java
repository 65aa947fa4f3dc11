package pegbook.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import pegbook.measure.Area;
import pegbook.measure.Length;

/**
 * A closed figure; corners in order, the first not repeated.
 *
 * @param corners at least three places
 */
public record Polygon(List<Point> corners) {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  public Polygon {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a polygon needs three corners");
    }
  }

  /** True when no side crosses or touches another and the area is not nothing. */
  public boolean isSimple() {
    return new IsValidOp(shape()).isValid() && signedSquareMetres() != 0;
  }

  public Area area() {
    return new Area(Math.abs(signedSquareMetres()));
  }

  public boolean isClockwise() {
    return signedSquareMetres() < 0;
  }

  /** The same figure with its corners clockwise, the first corner kept. */
  public Polygon clockwise() {
    if (isClockwise()) {
      return this;
    }
    List<Point> turned = new ArrayList<>();
    turned.add(corners.get(0));
    for (int i = corners.size() - 1; i > 0; i--) {
      turned.add(corners.get(i));
    }
    return new Polygon(turned);
  }

  /** Centre of the area. */
  public Point centroid() {
    double twice = 0;
    double east = 0;
    double north = 0;
    for (Segment side : sides()) {
      double cross =
          side.from().east() * side.to().north() - side.to().east() * side.from().north();
      twice += cross;
      east += (side.from().east() + side.to().east()) * cross;
      north += (side.from().north() + side.to().north()) * cross;
    }
    return new Point(east / (3 * twice), north / (3 * twice));
  }

  public List<Segment> sides() {
    List<Segment> sides = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      sides.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return List.copyOf(sides);
  }

  public boolean contains(Point point) {
    return shape().covers(FACTORY.createPoint(coordinate(point)));
  }

  /**
   * The figure whose sides lie so far inside this one's; none where that leaves no room.
   *
   * @param distance not negative
   */
  public Optional<Polygon> inset(Length distance) {
    return Inset.of(clockwise(), distance.metres()).map(Polygon::new);
  }

  /** Shortest distance from a place to the edge, inside or outside. */
  public Length distanceToEdge(Point point) {
    return sides().stream()
        .map(side -> side.distanceTo(point))
        .min(Length::compareTo)
        .orElseThrow();
  }

  /** Moved and turned as a whole: first turned clockwise about the origin, then shifted. */
  public Polygon map(java.util.function.UnaryOperator<Point> change) {
    return new Polygon(corners.stream().map(change).toList());
  }

  org.locationtech.jts.geom.Polygon shape() {
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(corner -> ring.add(coordinate(corner)));
    ring.add(coordinate(corners.get(0)));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.east(), point.north());
  }

  private double signedSquareMetres() {
    double twice = 0;
    for (Segment side : sides()) {
      twice += side.from().east() * side.to().north() - side.to().east() * side.from().north();
    }
    return twice / 2;
  }
}
