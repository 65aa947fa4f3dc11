package pegbook.measure;

/**
 * An electric current.
 *
 * @param amperes value in amperes
 */
public record Current(double amperes) implements Comparable<Current>, Quantity {
  public Current {
    if (!Double.isFinite(amperes)) {
      throw new IllegalArgumentException("Current of " + amperes);
    }
  }

  @Override
  public double si() {
    return amperes;
  }

  @Override
  public int compareTo(Current other) {
    return Double.compare(amperes, other.amperes);
  }
}
