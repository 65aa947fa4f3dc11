package pegbook.geometry;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import pegbook.measure.Length;

/** The string that would be pulled tight round some places. */
public final class Hull {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Hull() {}

  /** How long it is, there and back where the places lie on one line; nothing for one place. */
  public static Length round(List<Point> places) {
    Coordinate[] corners =
        places.stream()
            .map(place -> new Coordinate(place.east(), place.north()))
            .toArray(Coordinate[]::new);
    Geometry hull = FACTORY.createMultiPointFromCoords(corners).convexHull();
    return new Length(hull.getDimension() == 1 ? 2 * hull.getLength() : hull.getLength());
  }
}
