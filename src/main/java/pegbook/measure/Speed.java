package pegbook.measure;

/**
 * A speed, such as that of waves through the ground.
 *
 * @param metresPerSecond value in metres per second
 */
public record Speed(double metresPerSecond) implements Comparable<Speed>, Quantity {
  public Speed {
    if (!Double.isFinite(metresPerSecond)) {
      throw new IllegalArgumentException("Speed of " + metresPerSecond);
    }
  }

  /** From feet per second. */
  public static Speed ofFeetPerSecond(double feetPerSecond) {
    return new Speed(feetPerSecond * 0.3048);
  }

  /** From miles per hour. */
  public static Speed ofMilesPerHour(double milesPerHour) {
    return new Speed(milesPerHour * 1609.344 / 3600);
  }

  @Override
  public double si() {
    return metresPerSecond;
  }

  @Override
  public int compareTo(Speed other) {
    return Double.compare(metresPerSecond, other.metresPerSecond);
  }
}
