package pegbook.measure;

/**
 * A number of things, or a pure number.
 *
 * @param number the number
 */
public record Count(double number) implements Quantity {
  public Count {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("count of " + number);
    }
  }

  @Override
  public double si() {
    return number;
  }
}
