package pegbook.measure;

/**
 * How much frost a winter brings: degrees below freezing, summed over its days. It is kept on one
 * base; degree-days Fahrenheit and Celsius differ by 1.8.
 *
 * @param celsiusDays value in degree-days Celsius
 */
public record FreezingIndex(double celsiusDays) implements Comparable<FreezingIndex>, Quantity {
  private static final double SECONDS_PER_DAY = 86_400;

  public FreezingIndex {
    if (!Double.isFinite(celsiusDays)) {
      throw new IllegalArgumentException("FreezingIndex of " + celsiusDays);
    }
  }

  /** From degree-days Fahrenheit. */
  public static FreezingIndex ofFahrenheitDays(double fahrenheitDays) {
    return new FreezingIndex(fahrenheitDays / 1.8);
  }

  /** In degree-days Fahrenheit. */
  public double fahrenheitDays() {
    return celsiusDays * 1.8;
  }

  /** In kelvin seconds. */
  @Override
  public double si() {
    return celsiusDays * SECONDS_PER_DAY;
  }

  @Override
  public int compareTo(FreezingIndex other) {
    return Double.compare(celsiusDays, other.celsiusDays);
  }
}
