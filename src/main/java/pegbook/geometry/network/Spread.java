package pegbook.geometry.network;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * How far a place may be off: the covariance of its east and north.
 *
 * @param eastEast variance of east, square metres
 * @param eastNorth covariance of east and north, square metres
 * @param northNorth variance of north, square metres
 */
public record Spread(double eastEast, double eastNorth, double northNorth) {
  public static final Spread NONE = new Spread(0, 0, 0);

  /** The same in every direction, with this standard deviation in each. */
  public static Spread round(Length deviation) {
    double variance = deviation.metres() * deviation.metres();
    return new Spread(variance, 0, variance);
  }

  /** Of the sum of two independent errors. */
  public Spread plus(Spread other) {
    return new Spread(
        eastEast + other.eastEast, eastNorth + other.eastNorth, northNorth + other.northNorth);
  }

  /** With all variances times a factor. */
  public Spread times(double factor) {
    return new Spread(eastEast * factor, eastNorth * factor, northNorth * factor);
  }

  /** Standard deviation of east. */
  public Length eastDeviation() {
    return new Length(Math.sqrt(Math.max(0, eastEast)));
  }

  /** Standard deviation of north. */
  public Length northDeviation() {
    return new Length(Math.sqrt(Math.max(0, northNorth)));
  }

  /** Root of the sum of both variances. */
  public Length totalDeviation() {
    return new Length(Math.sqrt(Math.max(0, eastEast + northNorth)));
  }

  /** Standard deviation in one direction. */
  public Length deviationAlong(Angle azimuth) {
    double east = StrictMath.sin(azimuth.radians());
    double north = StrictMath.cos(azimuth.radians());
    double variance = east * east * eastEast + 2 * east * north * eastNorth;
    return new Length(Math.sqrt(Math.max(0, variance + north * north * northNorth)));
  }

  /** Longer half axis of the standard error ellipse. */
  public Length longHalfAxis() {
    return new Length(Math.sqrt(Math.max(0, mean() + half())));
  }

  /** Shorter half axis of the standard error ellipse. */
  public Length shortHalfAxis() {
    return new Length(Math.sqrt(Math.max(0, mean() - half())));
  }

  /** Azimuth of the ellipse's longer axis, from 0 to under 180 degrees; 0 for a circle. */
  public Angle longAxisAzimuth() {
    double radians = StrictMath.atan2(2 * eastNorth, northNorth - eastEast) / 2;
    return new Angle(radians < 0 ? radians + Math.PI : radians);
  }

  private double mean() {
    return (eastEast + northNorth) / 2;
  }

  private double half() {
    return StrictMath.hypot((eastEast - northNorth) / 2, eastNorth);
  }

  /** Product of the squares of both half axes. */
  double determinant() {
    return eastEast * northNorth - eastNorth * eastNorth;
  }
}
