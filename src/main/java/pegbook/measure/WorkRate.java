package pegbook.measure;

/**
 * How much volume one person moves in an hour.
 *
 * @param cubicMetresPerHour value in cubic metres per person-hour
 */
public record WorkRate(double cubicMetresPerHour) implements Comparable<WorkRate>, Quantity {
  public WorkRate {
    if (!(cubicMetresPerHour > 0) || !Double.isFinite(cubicMetresPerHour)) {
      throw new IllegalArgumentException("work rate of " + cubicMetresPerHour);
    }
  }

  /** The value in cubic metres per second. */
  @Override
  public double si() {
    return cubicMetresPerHour / 3600;
  }

  @Override
  public int compareTo(WorkRate other) {
    return Double.compare(cubicMetresPerHour, other.cubicMetresPerHour);
  }
}
