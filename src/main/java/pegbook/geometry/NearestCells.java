package pegbook.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import pegbook.measure.Area;
import pegbook.measure.Length;

/**
 * Shares a floor out to places: to each the part that is nearer to it than to any other place
 * (Voronoi cells), clipped by the floor's edge, less round openings.
 *
 * <p>Each cell is cut by hand out of a rectangle round everything, one halfway line after the
 * other, nearest neighbours first, until those left are too far away to cut; only the last cut,
 * with the floor's edge, is JTS's. So places in one line, or a single place, are no special cases.
 *
 * <p>Where many places lie on one circle, all their halfway lines meet in its centre, and rounding
 * decides in which order a cell's edge passes there: it may cross itself, and JTS's overlay answers
 * a figure that crosses itself with nonsense. So a cut passes corners that lie on it within {@link
 * #SAME}, corners that close together are one, and what is left is taken as a convex figure, which
 * every cell is.
 *
 * @param floor the floor less its openings
 * @param cells one for each place, in their order
 */
public record NearestCells(Area floor, List<Cell> cells) {
  /** Sides of the polygon that stands for a round opening; its area is the circle's. */
  private static final int ROUND_SIDES = 72;

  /** Closer than this, in metres, is rounding: far below any tape, far above the last digit. */
  private static final double SAME = 1e-9;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  public NearestCells {
    cells = List.copyOf(cells);
  }

  /** A round opening in a floor. */
  public record Opening(Point centre, Length radius) {}

  /**
   * Shares a floor out.
   *
   * @param outline the floor's edge; it may have corners that point inwards
   * @param openings they may reach over the edge or over one another
   * @param places at least one, no two at the same spot; they may lie outside the floor
   * @throws IllegalArgumentException when two places are one
   */
  public static NearestCells of(Polygon outline, List<Opening> openings, List<Point> places) {
    Geometry floor = floor(outline, openings);
    List<Point> frame = frame(outline, places);
    List<Cell> cells = new ArrayList<>();
    for (Point place : places) {
      Geometry nearest = convex(nearest(place, places, frame));
      cells.add(new Cell(place, pieces(overlay(nearest, floor, OverlayNG.INTERSECTION))));
    }
    return new NearestCells(new Area(floor.getArea()), cells);
  }

  /** A floor less its openings. */
  static Geometry floor(Polygon outline, List<Opening> openings) {
    Geometry floor = outline.shape();
    for (Opening opening : openings) {
      if (opening.radius().isMoreThan(Length.ZERO)) {
        floor = overlay(floor, round(opening).shape(), OverlayNG.DIFFERENCE);
      }
    }
    return floor;
  }

  private static Geometry overlay(Geometry one, Geometry other, int operation) {
    return OverlayNGRobust.overlay(one, other, operation);
  }

  /** A polygon with the area of a round opening, so that areas less openings are exact. */
  private static Polygon round(Opening opening) {
    double part = 2 * Math.PI / ROUND_SIDES;
    double radius = opening.radius().metres() * Math.sqrt(part / StrictMath.sin(part));
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < ROUND_SIDES; i++) {
      corners.add(
          opening
              .centre()
              .plus(radius * StrictMath.sin(i * part), radius * StrictMath.cos(i * part)));
    }
    return new Polygon(corners);
  }

  /** A rectangle that holds the floor and all places with room to spare. */
  private static List<Point> frame(Polygon outline, List<Point> places) {
    List<Point> all = new ArrayList<>(outline.corners());
    all.addAll(places);
    double west = all.stream().mapToDouble(Point::east).min().orElseThrow() - 1;
    double east = all.stream().mapToDouble(Point::east).max().orElseThrow() + 1;
    double south = all.stream().mapToDouble(Point::north).min().orElseThrow() - 1;
    double north = all.stream().mapToDouble(Point::north).max().orElseThrow() + 1;
    return List.of(
        new Point(west, south),
        new Point(west, north),
        new Point(east, north),
        new Point(east, south));
  }

  /** The part of the frame that is nearest to a place. */
  private static List<Point> nearest(Point place, List<Point> places, List<Point> frame) {
    List<Point> others = new ArrayList<>(places);
    others.remove(place);
    others.sort(Comparator.comparing(place::distanceTo));
    List<Point> cell = frame;
    for (Point other : others) {
      double distance = place.distanceTo(other).metres();
      if (distance == 0) {
        throw new IllegalArgumentException("two places at " + place);
      }
      if (distance > 2 * reach(place, cell)) {
        return cell;
      }
      cell = cut(cell, halfway(place, other));
    }
    return cell;
  }

  private static double reach(Point place, List<Point> cell) {
    return cell.stream().mapToDouble(corner -> place.distanceTo(corner).metres()).max().orElse(0);
  }

  /** The line halfway between two places; the first lies on its left. */
  private static Segment halfway(Point place, Point other) {
    Point middle = new Segment(place, other).middle();
    double east = other.east() - place.east();
    double north = other.north() - place.north();
    return new Segment(middle, middle.plus(-north, east));
  }

  /** A cell's corners as the figure that they span; an empty one when they span none. */
  private static Geometry convex(List<Point> corners) {
    List<Coordinate> apart = new ArrayList<>();
    for (Point corner : corners) {
      Coordinate next = new Coordinate(corner.east(), corner.north());
      if (apart.stream().noneMatch(other -> other.distance(next) < SAME)) {
        apart.add(next);
      }
    }
    Geometry hull = new ConvexHull(apart.toArray(new Coordinate[0]), FACTORY).getConvexHull();
    return hull.getDimension() == 2 ? hull : FACTORY.createPolygon();
  }

  /** What of a convex figure lies on the left of a line. */
  private static List<Point> cut(List<Point> figure, Segment line) {
    List<Point> left = new ArrayList<>();
    for (int i = 0; i < figure.size(); i++) {
      Point from = figure.get(i);
      Point to = figure.get((i + 1) % figure.size());
      double before = offset(line, from);
      double after = offset(line, to);
      if (before >= 0) {
        left.add(from);
      }
      if (before * after < 0) {
        double part = before / (before - after);
        left.add(from.plus(part * (to.east() - from.east()), part * (to.north() - from.north())));
      }
    }
    return left;
  }

  private static double offset(Segment line, Point corner) {
    double offset = line.offsetMetres(corner);
    return Math.abs(offset) < SAME ? 0 : offset;
  }

  private static List<Cell.Piece> pieces(Geometry part) {
    List<Cell.Piece> pieces = new ArrayList<>();
    for (int i = 0; i < part.getNumGeometries(); i++) {
      if (part.getGeometryN(i) instanceof org.locationtech.jts.geom.Polygon polygon
          && polygon.getArea() > 0) {
        List<Polygon> holes = new ArrayList<>();
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          holes.add(ring(polygon.getInteriorRingN(hole)));
        }
        Coordinate inside = InteriorPointArea.getInteriorPoint(polygon);
        pieces.add(
            new Cell.Piece(
                ring(polygon.getExteriorRing()), holes, new Point(inside.getX(), inside.getY())));
      }
    }
    return pieces;
  }

  private static Polygon ring(LinearRing ring) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Coordinate corner = ring.getCoordinateN(i);
      corners.add(new Point(corner.getX(), corner.getY()));
    }
    return new Polygon(corners).clockwise();
  }
}
