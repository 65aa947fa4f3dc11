package pegbook.measure;

/**
 * A distance.
 *
 * @param metres value in metres
 */
public record Length(double metres) implements Comparable<Length>, Quantity {
  public static final Length ZERO = new Length(0);

  public Length {
    if (!Double.isFinite(metres)) {
      throw new IllegalArgumentException("Length of " + metres);
    }
  }

  /** From millimetres. */
  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres * 0.001);
  }

  /** In millimetres. */
  public double millimetres() {
    return metres / 0.001;
  }

  /** From inches. */
  public static Length ofInches(double inches) {
    return new Length(inches * 0.0254);
  }

  /** In inches. */
  public double inches() {
    return metres / 0.0254;
  }

  /** From feet. */
  public static Length ofFeet(double feet) {
    return new Length(feet * 0.3048);
  }

  /** In feet. */
  public double feet() {
    return metres / 0.3048;
  }

  public Length plus(Length other) {
    return new Length(metres + other.metres);
  }

  public Length minus(Length other) {
    return new Length(metres - other.metres);
  }

  public Length times(double factor) {
    return new Length(metres * factor);
  }

  public Length negated() {
    return new Length(-metres);
  }

  public Length abs() {
    return new Length(Math.abs(metres));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Length other) {
    return metres / other.metres;
  }

  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Length other) {
    return metres > other.metres;
  }

  public boolean isLessThan(Length other) {
    return metres < other.metres;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Length setTo(Length step, Rounding direction) {
    return new Length(direction.steps(metres, step.metres) * step.metres);
  }

  @Override
  public double si() {
    return metres;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }

  /** Area of a rectangle with these sides. */
  public Area times(Length other) {
    return new Area(metres * other.metres);
  }
}
