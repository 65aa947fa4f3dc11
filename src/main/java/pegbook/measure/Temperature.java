package pegbook.measure;

/**
 * A temperature.
 *
 * @param kelvins value in kelvins, not below zero
 */
public record Temperature(double kelvins) implements Comparable<Temperature>, Quantity {
  public Temperature {
    if (!(kelvins >= 0) || !Double.isFinite(kelvins)) {
      throw new IllegalArgumentException("Temperature of " + kelvins);
    }
  }

  /** From degrees Celsius. */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius + 273.15);
  }

  /** From degrees Fahrenheit. */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return ofCelsius((fahrenheit - 32) / 1.8);
  }

  /** In degrees Celsius. */
  public double celsius() {
    return kelvins - 273.15;
  }

  /** In degrees Fahrenheit. */
  public double fahrenheit() {
    return celsius() * 1.8 + 32;
  }

  @Override
  public double si() {
    return kelvins;
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(kelvins, other.kelvins);
  }
}
