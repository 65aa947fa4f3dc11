package pegbook.measure;

/**
 * A volume.
 *
 * @param cubicMetres value in cubic metres
 */
public record Volume(double cubicMetres) implements Comparable<Volume>, Quantity {
  public static final Volume ZERO = new Volume(0);

  public Volume {
    if (!Double.isFinite(cubicMetres)) {
      throw new IllegalArgumentException("Volume of " + cubicMetres);
    }
  }

  /** From litres. */
  public static Volume ofLitres(double litres) {
    return new Volume(litres * 0.001);
  }

  /** In litres. */
  public double litres() {
    return cubicMetres / 0.001;
  }

  /** From cubic feet. */
  public static Volume ofCubicFeet(double cubicFeet) {
    return new Volume(cubicFeet * 0.028316846592);
  }

  /** In cubic feet. */
  public double cubicFeet() {
    return cubicMetres / 0.028316846592;
  }

  /** From cubic yards. */
  public static Volume ofCubicYards(double cubicYards) {
    return new Volume(cubicYards * 0.764554857984);
  }

  /** In cubic yards. */
  public double cubicYards() {
    return cubicMetres / 0.764554857984;
  }

  public Volume plus(Volume other) {
    return new Volume(cubicMetres + other.cubicMetres);
  }

  public Volume minus(Volume other) {
    return new Volume(cubicMetres - other.cubicMetres);
  }

  public Volume times(double factor) {
    return new Volume(cubicMetres * factor);
  }

  public Volume negated() {
    return new Volume(-cubicMetres);
  }

  public Volume abs() {
    return new Volume(Math.abs(cubicMetres));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Volume other) {
    return cubicMetres / other.cubicMetres;
  }

  public Volume max(Volume other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Volume min(Volume other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Volume other) {
    return cubicMetres > other.cubicMetres;
  }

  public boolean isLessThan(Volume other) {
    return cubicMetres < other.cubicMetres;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Volume setTo(Volume step, Rounding direction) {
    return new Volume(direction.steps(cubicMetres, step.cubicMetres) * step.cubicMetres);
  }

  @Override
  public double si() {
    return cubicMetres;
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(cubicMetres, other.cubicMetres);
  }
}
