package pegbook.measure;

/**
 * A part of a whole: waste, swell, over-break.
 *
 * @param fraction value in parts of one
 */
public record Ratio(double fraction) implements Comparable<Ratio>, Quantity {
  public static final Ratio ZERO = new Ratio(0);

  public Ratio {
    if (!Double.isFinite(fraction)) {
      throw new IllegalArgumentException("Ratio of " + fraction);
    }
  }

  /** From percent. */
  public static Ratio ofPercent(double percent) {
    return new Ratio(percent * 0.01);
  }

  /** In percent. */
  public double percent() {
    return fraction / 0.01;
  }

  public Ratio plus(Ratio other) {
    return new Ratio(fraction + other.fraction);
  }

  public Ratio minus(Ratio other) {
    return new Ratio(fraction - other.fraction);
  }

  public Ratio times(double factor) {
    return new Ratio(fraction * factor);
  }

  public Ratio negated() {
    return new Ratio(-fraction);
  }

  public Ratio abs() {
    return new Ratio(Math.abs(fraction));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Ratio other) {
    return fraction / other.fraction;
  }

  public Ratio max(Ratio other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Ratio min(Ratio other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Ratio other) {
    return fraction > other.fraction;
  }

  public boolean isLessThan(Ratio other) {
    return fraction < other.fraction;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Ratio setTo(Ratio step, Rounding direction) {
    return new Ratio(direction.steps(fraction, step.fraction) * step.fraction);
  }

  @Override
  public double si() {
    return fraction;
  }

  @Override
  public int compareTo(Ratio other) {
    return Double.compare(fraction, other.fraction);
  }
}
