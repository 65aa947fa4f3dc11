package pegbook.measure;

/**
 * A force.
 *
 * @param newtons value in newtons
 */
public record Force(double newtons) implements Comparable<Force>, Quantity {
  public static final Force ZERO = new Force(0);

  public Force {
    if (!Double.isFinite(newtons)) {
      throw new IllegalArgumentException("Force of " + newtons);
    }
  }

  /** From kilonewtons. */
  public static Force ofKilonewtons(double kilonewtons) {
    return new Force(kilonewtons * 1000);
  }

  /** In kilonewtons. */
  public double kilonewtons() {
    return newtons / 1000;
  }

  /** From pounds-force. */
  public static Force ofPoundsForce(double poundsForce) {
    return new Force(poundsForce * 4.4482216152605);
  }

  /** In pounds-force. */
  public double poundsForce() {
    return newtons / 4.4482216152605;
  }

  public Force plus(Force other) {
    return new Force(newtons + other.newtons);
  }

  public Force minus(Force other) {
    return new Force(newtons - other.newtons);
  }

  public Force times(double factor) {
    return new Force(newtons * factor);
  }

  public Force negated() {
    return new Force(-newtons);
  }

  public Force abs() {
    return new Force(Math.abs(newtons));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Force other) {
    return newtons / other.newtons;
  }

  public Force max(Force other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Force min(Force other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Force other) {
    return newtons > other.newtons;
  }

  public boolean isLessThan(Force other) {
    return newtons < other.newtons;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Force setTo(Force step, Rounding direction) {
    return new Force(direction.steps(newtons, step.newtons) * step.newtons);
  }

  @Override
  public double si() {
    return newtons;
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }

  /** Pressure of this force spread over an area. */
  public Pressure dividedBy(Area area) {
    return new Pressure(newtons / area.squareMetres());
  }
}
