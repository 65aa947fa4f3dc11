package pegbook.geometry;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * A place on the ground seen from above.
 *
 * @param east metres east of the origin
 * @param north metres north of the origin
 */
public record Point(double east, double north) {
  public static final Point ORIGIN = new Point(0, 0);

  public Point {
    if (!Double.isFinite(east) || !Double.isFinite(north)) {
      throw new IllegalArgumentException("point " + east + ", " + north);
    }
  }

  /** From distances east and north. */
  public static Point of(Length east, Length north) {
    return new Point(east.metres(), north.metres());
  }

  /** The place at a distance along an azimuth. */
  public Point moved(Angle azimuth, Length distance) {
    return new Point(
        east + distance.metres() * StrictMath.sin(azimuth.radians()),
        north + distance.metres() * StrictMath.cos(azimuth.radians()));
  }

  public Point plus(double eastMetres, double northMetres) {
    return new Point(east + eastMetres, north + northMetres);
  }

  /** Level distance to another place. */
  public Length distanceTo(Point other) {
    return new Length(StrictMath.hypot(other.east - east, other.north - north));
  }

  /** Azimuth to another place, clockwise from north, from 0 to under 360 degrees. */
  public Angle azimuthTo(Point other) {
    return new Angle(StrictMath.atan2(other.east - east, other.north - north)).normalized();
  }

  /** Turned clockwise about the origin. */
  public Point turned(Angle clockwise) {
    double sine = StrictMath.sin(clockwise.radians());
    double cosine = StrictMath.cos(clockwise.radians());
    return new Point(east * cosine + north * sine, north * cosine - east * sine);
  }
}
