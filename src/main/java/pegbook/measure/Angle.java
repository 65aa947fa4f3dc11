package pegbook.measure;

/**
 * A plane angle or an azimuth.
 *
 * @param radians value in radians
 */
public record Angle(double radians) implements Comparable<Angle>, Quantity {
  public static final Angle ZERO = new Angle(0);

  public Angle {
    if (!Double.isFinite(radians)) {
      throw new IllegalArgumentException("Angle of " + radians);
    }
  }

  /** From degrees. */
  public static Angle ofDegrees(double degrees) {
    return new Angle(degrees * (Math.PI / 180));
  }

  /** In degrees. */
  public double degrees() {
    return radians / ((Math.PI / 180));
  }

  public Angle plus(Angle other) {
    return new Angle(radians + other.radians);
  }

  public Angle minus(Angle other) {
    return new Angle(radians - other.radians);
  }

  public Angle times(double factor) {
    return new Angle(radians * factor);
  }

  public Angle negated() {
    return new Angle(-radians);
  }

  public Angle abs() {
    return new Angle(Math.abs(radians));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Angle other) {
    return radians / other.radians;
  }

  public Angle max(Angle other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Angle min(Angle other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Angle other) {
    return radians > other.radians;
  }

  public boolean isLessThan(Angle other) {
    return radians < other.radians;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Angle setTo(Angle step, Rounding direction) {
    return new Angle(direction.steps(radians, step.radians) * step.radians);
  }

  @Override
  public double si() {
    return radians;
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }

  /** The same direction between 0 (included) and 360 degrees (excluded). */
  public Angle normalized() {
    double turned = radians % (2 * Math.PI);
    double positive = turned < 0 ? turned + 2 * Math.PI : turned;
    return new Angle(positive >= 2 * Math.PI ? 0 : positive);
  }
}
