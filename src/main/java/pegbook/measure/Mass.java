package pegbook.measure;

/**
 * A mass; what a scale shows in pounds or kilograms.
 *
 * @param kilograms value in kilograms
 */
public record Mass(double kilograms) implements Comparable<Mass>, Quantity {
  public static final Mass ZERO = new Mass(0);

  public Mass {
    if (!Double.isFinite(kilograms)) {
      throw new IllegalArgumentException("Mass of " + kilograms);
    }
  }

  /** From avoirdupois pounds. */
  public static Mass ofPounds(double pounds) {
    return new Mass(pounds * 0.45359237);
  }

  /** In avoirdupois pounds. */
  public double pounds() {
    return kilograms / 0.45359237;
  }

  public Mass plus(Mass other) {
    return new Mass(kilograms + other.kilograms);
  }

  public Mass minus(Mass other) {
    return new Mass(kilograms - other.kilograms);
  }

  public Mass times(double factor) {
    return new Mass(kilograms * factor);
  }

  public Mass negated() {
    return new Mass(-kilograms);
  }

  public Mass abs() {
    return new Mass(Math.abs(kilograms));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Mass other) {
    return kilograms / other.kilograms;
  }

  public Mass max(Mass other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Mass min(Mass other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Mass other) {
    return kilograms > other.kilograms;
  }

  public boolean isLessThan(Mass other) {
    return kilograms < other.kilograms;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Mass setTo(Mass step, Rounding direction) {
    return new Mass(direction.steps(kilograms, step.kilograms) * step.kilograms);
  }

  @Override
  public double si() {
    return kilograms;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }

  /** Weight under standard gravity, 9.80665 m/s². */
  public Force weight() {
    return new Force(kilograms * 9.80665);
  }
}
