package pegbook.geometry;

/**
 * How far a place may be off its true one, and how its errors east and north hang together.
 *
 * @param east variance east, square metres
 * @param eastNorth covariance of east and north, square metres
 * @param north variance north, square metres
 */
public record Covariance(double east, double eastNorth, double north) {
  public static final Covariance NONE = new Covariance(0, 0, 0);

  public Covariance {
    if (!Double.isFinite(east) || !Double.isFinite(eastNorth) || !Double.isFinite(north)) {
      throw new IllegalArgumentException("covariance " + east + ", " + eastNorth + ", " + north);
    }
  }

  /** The covariance of an error along a direction that is given by its east and north parts. */
  public static Covariance along(double east, double north, double variance) {
    return new Covariance(
        east * east * variance, east * north * variance, north * north * variance);
  }

  /** Both errors together, when neither knows of the other. */
  public Covariance plus(Covariance other) {
    return new Covariance(east + other.east, eastNorth + other.eastNorth, north + other.north);
  }
}
