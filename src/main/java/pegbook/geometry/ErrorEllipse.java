package pegbook.geometry;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * The standard error ellipse of a place: its half axes are the standard deviations along its
 * longest and its shortest direction, of an error with the normal distribution.
 *
 * @param semiMajor standard deviation along the longest direction
 * @param semiMinor standard deviation square to it
 * @param azimuth of the longest direction, from 0 to under 180 degrees; 0 for a circle
 */
public record ErrorEllipse(Length semiMajor, Length semiMinor, Angle azimuth) {
  /**
   * Radii that hold 95 %, in half axes: of a line, and of a circle, cut off to lie outside both.
   */
  public static final double LEAST_FACTOR = 1.9599;

  public static final double MOST_FACTOR = 2.4478;

  /** Steps over a quarter turn; the integrand is smooth and periodic, so a few are exact. */
  private static final int STEPS = 64;

  private static final int MOST_ROUNDS = 60;
  private static final double CLOSE = 1e-13;

  /** Directions that differ by less than this, radians, are alike. */
  private static final double FINE = 1e-9;

  /** The ellipse of a covariance: its principal axes. */
  public static ErrorEllipse of(Covariance covariance) {
    double half = (covariance.east() + covariance.north()) / 2;
    double apart = (covariance.east() - covariance.north()) / 2;
    double root = StrictMath.hypot(apart, covariance.eastNorth());
    double azimuth =
        root <= 1e-12 * half ? 0 : StrictMath.atan2(covariance.eastNorth(), -apart) / 2;
    return new ErrorEllipse(
        new Length(Math.sqrt(half + root)),
        new Length(Math.sqrt(Math.max(0, half - root))),
        new Angle(folded(azimuth)));
  }

  /** From 0 to under half a turn; a hair under half a turn is none. */
  private static double folded(double azimuth) {
    if (azimuth > -FINE && azimuth < FINE) {
      return 0;
    }
    double positive = azimuth < 0 ? azimuth + Math.PI : azimuth;
    return positive > Math.PI - FINE ? 0 : positive;
  }

  /**
   * The share of all errors that is no larger than a radius.
   *
   * <p>In the frame that turns the ellipse into a circle the error's direction ψ is even and its
   * size has Rayleigh's distribution; a circle of radius R becomes one whose radius depends on ψ.
   * So 1 − P is the mean over ψ of exp(−R² / (2 (m² cos²ψ + n² sin²ψ))).
   */
  public double shareWithin(Length radius) {
    return share(radius.metres(), semiMajor.metres(), semiMinor.metres());
  }

  /** Radius of the circle round the place that holds a share of all errors, such as 0.95. */
  public Length radiusHolding(double share) {
    return new Length(radius(share, semiMajor.metres(), semiMinor.metres()));
  }

  /**
   * The radius for two half axes, all in one unit of length.
   *
   * @param share from 0 to under 1
   * @throws IllegalArgumentException for another share
   */
  public static double radius(double share, double semiMajor, double semiMinor) {
    if (!(share >= 0 && share < 1)) {
      throw new IllegalArgumentException("share " + share);
    }
    if (semiMajor == 0 || share == 0) {
      return 0;
    }
    double ratio = semiMinor / semiMajor;
    double low = 0;
    // The circle's radius is the largest of all ellipses with this half axis.
    double high = Math.sqrt(-2 * StrictMath.log(1 - share)) * (1 + 1e-9);
    double at = high * (0.9 + 0.1 * ratio);
    for (int i = 0; i < MOST_ROUNDS && high - low > CLOSE; i++) {
      double over = share(at, 1, ratio) - share;
      if (over > 0) {
        high = at;
      } else {
        low = at;
      }
      double next = at - over / density(at, ratio);
      boolean inside = next > low && next < high;
      double step = inside ? next : (low + high) / 2;
      if (Math.abs(step - at) <= CLOSE) {
        return step * semiMajor;
      }
      at = step;
    }
    return at * semiMajor;
  }

  private static double share(double radius, double semiMajor, double semiMinor) {
    double beyond = 0;
    for (int i = 0; i < STEPS; i++) {
      beyond += StrictMath.exp(-radius * radius / (2 * spread(i, semiMajor, semiMinor)));
    }
    return 1 - beyond / STEPS;
  }

  /** How fast the share grows with the radius, for a semi-major axis of one. */
  private static double density(double radius, double ratio) {
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      double spread = spread(i, 1, ratio);
      sum += radius / spread * StrictMath.exp(-radius * radius / (2 * spread));
    }
    return sum / STEPS;
  }

  private static double spread(int step, double semiMajor, double semiMinor) {
    double major = semiMajor * COSINES[step];
    double minor = semiMinor * COSINES[STEPS - 1 - step];
    return major * major + minor * minor;
  }

  /** Cosines of the middles of the steps; read from behind they are the sines. */
  private static final double[] COSINES = cosines();

  private static double[] cosines() {
    double[] cosines = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      cosines[i] = StrictMath.cos((i + 0.5) * (Math.PI / 2) / STEPS);
    }
    return cosines;
  }
}
