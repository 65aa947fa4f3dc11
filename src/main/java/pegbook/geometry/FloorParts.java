package pegbook.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import pegbook.measure.Area;

/** A floor less its openings, out of which upright rectangles are cut. */
public final class FloorParts {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Geometry floor;

  private FloorParts(Geometry floor) {
    this.floor = floor;
  }

  /**
   * A part of the floor.
   *
   * @param area how large
   * @param centre centre of that area; of nothing, the middle of the rectangle
   */
  public record Part(Area area, Point centre) {}

  /** A floor; openings may reach over its edge or over one another. */
  public static FloorParts of(Polygon outline, List<NearestCells.Opening> openings) {
    return new FloorParts(NearestCells.floor(outline, openings));
  }

  public Area area() {
    return new Area(floor.getArea());
  }

  /** What of the floor lies between two lines each way, metres. */
  public Part between(double west, double south, double east, double north) {
    Geometry part = floor.getFactory().createPolygon();
    if (east > west && north > south) {
      Geometry rectangle = FACTORY.toGeometry(new Envelope(west, east, south, north));
      part = OverlayNGRobust.overlay(floor, rectangle, OverlayNG.INTERSECTION);
    }
    Coordinate centre =
        part.getArea() > 0
            ? part.getCentroid().getCoordinate()
            : new Coordinate((west + east) / 2, (south + north) / 2);
    return new Part(new Area(part.getArea()), new Point(centre.x, centre.y));
  }
}
