package pegbook.measure;

/**
 * A pressure: on ground, of snow or use, or the strength of a material.
 *
 * @param pascals value in pascals
 */
public record Pressure(double pascals) implements Comparable<Pressure>, Quantity {
  public static final Pressure ZERO = new Pressure(0);

  public Pressure {
    if (!Double.isFinite(pascals)) {
      throw new IllegalArgumentException("Pressure of " + pascals);
    }
  }

  /** From kilopascals. */
  public static Pressure ofKilopascals(double kilopascals) {
    return new Pressure(kilopascals * 1000);
  }

  /** In kilopascals. */
  public double kilopascals() {
    return pascals / 1000;
  }

  /** From megapascals. */
  public static Pressure ofMegapascals(double megapascals) {
    return new Pressure(megapascals * 1e6);
  }

  /** In megapascals. */
  public double megapascals() {
    return pascals / 1e6;
  }

  /** From pounds-force per square foot. */
  public static Pressure ofPsf(double psf) {
    return new Pressure(psf * (4.4482216152605 / 0.09290304));
  }

  /** In pounds-force per square foot. */
  public double psf() {
    return pascals / ((4.4482216152605 / 0.09290304));
  }

  /** From pounds-force per square inch. */
  public static Pressure ofPsi(double psi) {
    return new Pressure(psi * (4.4482216152605 / 0.00064516));
  }

  /** In pounds-force per square inch. */
  public double psi() {
    return pascals / ((4.4482216152605 / 0.00064516));
  }

  public Pressure plus(Pressure other) {
    return new Pressure(pascals + other.pascals);
  }

  public Pressure minus(Pressure other) {
    return new Pressure(pascals - other.pascals);
  }

  public Pressure times(double factor) {
    return new Pressure(pascals * factor);
  }

  public Pressure negated() {
    return new Pressure(-pascals);
  }

  public Pressure abs() {
    return new Pressure(Math.abs(pascals));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Pressure other) {
    return pascals / other.pascals;
  }

  public Pressure max(Pressure other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Pressure min(Pressure other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Pressure other) {
    return pascals > other.pascals;
  }

  public boolean isLessThan(Pressure other) {
    return pascals < other.pascals;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Pressure setTo(Pressure step, Rounding direction) {
    return new Pressure(direction.steps(pascals, step.pascals) * step.pascals);
  }

  @Override
  public double si() {
    return pascals;
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pascals, other.pascals);
  }

  /** Force of this pressure on an area. */
  public Force times(Area area) {
    return new Force(pascals * area.squareMetres());
  }
}
