package pegbook.sheet.drafting;

import java.util.Collection;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;

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

  /** The part of a line that lies inside; none where it passes by. */
  public Optional<Segment> part(Segment line) {
    Point from = line.from();
    double eastward = line.to().east() - from.east();
    double northward = line.to().north() - from.north();
    double[] share = {0, 1};
    boolean inside =
        cut(share, -eastward, from.east() - west)
            && cut(share, eastward, east - from.east())
            && cut(share, -northward, from.north() - south)
            && cut(share, northward, north - from.north());
    return inside && share[0] < share[1]
        ? Optional.of(
            new Segment(
                from.plus(eastward * share[0], northward * share[0]),
                from.plus(eastward * share[1], northward * share[1])))
        : Optional.empty();
  }

  /** Cuts the stretch of a line that lies beyond one side, after Liang and Barsky. */
  private static boolean cut(double[] share, double outward, double room) {
    if (outward == 0) {
      return room >= 0;
    }
    if (outward < 0) {
      share[0] = Math.max(share[0], room / outward);
    } else {
      share[1] = Math.min(share[1], room / outward);
    }
    return true;
  }
}
