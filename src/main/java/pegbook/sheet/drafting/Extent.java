package pegbook.sheet.drafting;

import java.util.Collection;
import pegbook.geometry.Point;

/**
 * An upright rectangle on the ground, metres.
 *
 * @param west its lowest east value
 * @param south its lowest north value
 * @param east its highest east value
 * @param north its highest north value
 */
public record Extent(double west, double south, double east, double north) {
  /**
   * The smallest that holds some places.
   *
   * @throws IllegalArgumentException when there are none
   */
  public static Extent of(Collection<Point> places) {
    if (places.isEmpty()) {
      throw new IllegalArgumentException("no place");
    }
    return new Extent(
        places.stream().mapToDouble(Point::east).min().orElseThrow(),
        places.stream().mapToDouble(Point::north).min().orElseThrow(),
        places.stream().mapToDouble(Point::east).max().orElseThrow(),
        places.stream().mapToDouble(Point::north).max().orElseThrow());
  }

  public double widthMetres() {
    return east - west;
  }

  public double heightMetres() {
    return north - south;
  }

  public Point centre() {
    return new Point((west + east) / 2, (south + north) / 2);
  }

  /** The same with a margin all round. */
  public Extent grown(double metres) {
    return new Extent(west - metres, south - metres, east + metres, north + metres);
  }

  /** The smallest that holds both. */
  public Extent with(Extent other) {
    return new Extent(
        Math.min(west, other.west),
        Math.min(south, other.south),
        Math.max(east, other.east),
        Math.max(north, other.north));
  }

  public boolean contains(Point place) {
    return place.east() >= west
        && place.east() <= east
        && place.north() >= south
        && place.north() <= north;
  }
}
