package pegbook.measure;

/**
 * An area.
 *
 * @param squareMetres value in square metres
 */
public record Area(double squareMetres) implements Comparable<Area>, Quantity {
  public static final Area ZERO = new Area(0);

  public Area {
    if (!Double.isFinite(squareMetres)) {
      throw new IllegalArgumentException("Area of " + squareMetres);
    }
  }

  /** From square feet. */
  public static Area ofSquareFeet(double squareFeet) {
    return new Area(squareFeet * 0.09290304);
  }

  /** In square feet. */
  public double squareFeet() {
    return squareMetres / 0.09290304;
  }

  /** From square inches. */
  public static Area ofSquareInches(double squareInches) {
    return new Area(squareInches * 0.00064516);
  }

  /** In square inches. */
  public double squareInches() {
    return squareMetres / 0.00064516;
  }

  /** From square millimetres. */
  public static Area ofSquareMillimetres(double squareMillimetres) {
    return new Area(squareMillimetres * 1e-6);
  }

  /** In square millimetres. */
  public double squareMillimetres() {
    return squareMetres / 1e-6;
  }

  public Area plus(Area other) {
    return new Area(squareMetres + other.squareMetres);
  }

  public Area minus(Area other) {
    return new Area(squareMetres - other.squareMetres);
  }

  public Area times(double factor) {
    return new Area(squareMetres * factor);
  }

  public Area negated() {
    return new Area(-squareMetres);
  }

  public Area abs() {
    return new Area(Math.abs(squareMetres));
  }

  /** How many times the other goes into this one. */
  public double dividedBy(Area other) {
    return squareMetres / other.squareMetres;
  }

  public Area max(Area other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public Area min(Area other) {
    return compareTo(other) <= 0 ? this : other;
  }

  public boolean isMoreThan(Area other) {
    return squareMetres > other.squareMetres;
  }

  public boolean isLessThan(Area other) {
    return squareMetres < other.squareMetres;
  }

  /** Set to whole steps in the direction named; see {@link Rounding}. */
  public Area setTo(Area step, Rounding direction) {
    return new Area(direction.steps(squareMetres, step.squareMetres) * step.squareMetres);
  }

  @Override
  public double si() {
    return squareMetres;
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(squareMetres, other.squareMetres);
  }

  /** Volume of a prism of this area. */
  public Volume times(Length height) {
    return new Volume(squareMetres * height.metres());
  }
}
