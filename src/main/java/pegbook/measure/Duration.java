package pegbook.measure;

/**
 * A span of work.
 *
 * @param hours value in hours; person-hours where the name says so
 */
public record Duration(double hours) implements Comparable<Duration>, Quantity {
  public static final Duration ZERO = new Duration(0);

  public Duration {
    if (!Double.isFinite(hours)) {
      throw new IllegalArgumentException("duration of " + hours);
    }
  }

  /** From minutes. */
  public static Duration ofMinutes(double minutes) {
    return new Duration(minutes / 60);
  }

  /** In minutes. */
  public double minutes() {
    return hours * 60;
  }

  public Duration plus(Duration other) {
    return new Duration(hours + other.hours);
  }

  public Duration times(double factor) {
    return new Duration(hours * factor);
  }

  @Override
  public double si() {
    return hours * 3600;
  }

  @Override
  public int compareTo(Duration other) {
    return Double.compare(hours, other.hours);
  }
}
