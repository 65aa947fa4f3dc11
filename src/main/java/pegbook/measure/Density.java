package pegbook.measure;

/**
 * Mass per volume.
 *
 * @param kilogramsPerCubicMetre value in kilograms per cubic metre
 */
public record Density(double kilogramsPerCubicMetre) implements Comparable<Density>, Quantity {
  public static final Density ZERO = new Density(0);

  public Density {
    if (!Double.isFinite(kilogramsPerCubicMetre)) {
      throw new IllegalArgumentException("Density of " + kilogramsPerCubicMetre);
    }
  }

  /** From pounds per cubic foot. */
  public static Density ofPoundsPerCubicFoot(double poundsPerCubicFoot) {
    return new Density(poundsPerCubicFoot * 16.018463373960142);
  }

  /** In pounds per cubic foot. */
  public double poundsPerCubicFoot() {
    return kilogramsPerCubicMetre / 16.018463373960142;
  }

  public Density plus(Density other) {
    return new Density(kilogramsPerCubicMetre + other.kilogramsPerCubicMetre);
  }

  public Density minus(Density other) {
    return new Density(kilogramsPerCubicMetre - other.kilogramsPerCubicMetre);
  }

  public Density times(double factor) {
    return new Density(kilogramsPerCubicMetre * factor);
  }

  public Density negated() {
    return new Density(-kilogramsPerCubicMetre);
  }

  public Density abs() {
    return new Density(Math.abs(kilogramsPerCubicMetre));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Density other) {
    return kilogramsPerCubicMetre / other.kilogramsPerCubicMetre;
  }

  public Density max(Density other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Density min(Density other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Density other) {
    return kilogramsPerCubicMetre > other.kilogramsPerCubicMetre;
  }

  public boolean isLessThan(Density other) {
    return kilogramsPerCubicMetre < other.kilogramsPerCubicMetre;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Density setTo(Density step, Rounding direction) {
    return new Density(
        direction.steps(kilogramsPerCubicMetre, step.kilogramsPerCubicMetre)
            * step.kilogramsPerCubicMetre);
  }

  @Override
  public double si() {
    return kilogramsPerCubicMetre;
  }

  @Override
  public int compareTo(Density other) {
    return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
  }
}
