package pegbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as the packet prints them: a point before decimals, a real minus sign, thousands parted
 * by a no-break space from five digits on, and a no-break space before the unit. The digits are
 * nearest, halfway away from zero, with the tie of {@link Rounding}.
 */
public final class NumberNotation {
  static final char NO_BREAK_SPACE = '\u00a0';
  static final char MINUS = '\u2212';
  private static final int FIRST_PARTED = 5;

  private NumberNotation() {}

  /** A number with so many decimals, for example {@code 12 345.70}. */
  public static String write(double number, int decimals) {
    return write(number, decimals, FIRST_PARTED);
  }

  /** A quantity in a unit with so many decimals, for example {@code 1500 psf}. */
  public static String write(Quantity quantity, Unit unit, int decimals) {
    return join(write(unit.in(quantity), decimals), unit.symbol());
  }

  /**
   * A quantity in a unit with three figures, more where the whole number has more, and no zeros at
   * the end of the decimals: {@code 0.75 yd³}, {@code 3.5 kPa}, {@code 1512 psf}.
   */
  public static String write(Quantity quantity, Unit unit) {
    double number = unit.in(quantity);
    String digits = write(number, decimalsForThreeFigures(number));
    String trimmed = digits.contains(".") ? digits.replaceAll("\\.?0+$", "") : digits;
    return join(trimmed, unit.symbol());
  }

  /** A temperature to the whole degree of its system's scale. */
  public static String write(Temperature temperature, UnitSystem system) {
    return switch (system) {
      case IMPERIAL -> join(write(temperature.fahrenheit(), 0), "°F");
      case METRIC -> join(write(temperature.celsius(), 0), "°C");
    };
  }

  /** Thousands parted from the given number of digits on. */
  static String write(double number, int decimals, int firstParted) {
    long scale = powerOfTen(decimals);
    long steps = Rounding.NEAREST.steps(number, 1.0 / scale);
    long whole = Math.abs(steps) / scale;
    String digits = part(Long.toString(whole), firstParted);
    String sign = steps < 0 ? String.valueOf(MINUS) : "";
    if (decimals == 0) {
      return sign + digits;
    }
    String behind = Long.toString(Math.abs(steps) % scale + scale).substring(1);
    return sign + digits + "." + behind;
  }

  /** A number as one types it into a job file: at most four decimals, no thousands parted. */
  static String typed(double number) {
    BigDecimal digits = BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_UP);
    return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
  }

  private static String join(String digits, String symbol) {
    boolean close = symbol.isEmpty() || symbol.equals("°") || symbol.equals("%");
    return close ? digits + symbol : digits + NO_BREAK_SPACE + symbol;
  }

  private static String part(String digits, int firstParted) {
    if (digits.length() < firstParted) {
      return digits;
    }
    StringBuilder parted = new StringBuilder(digits);
    for (int at = digits.length() - 3; at > 0; at -= 3) {
      parted.insert(at, NO_BREAK_SPACE);
    }
    return parted.toString();
  }

  private static int decimalsForThreeFigures(double number) {
    int decimals = 0;
    double figures = Math.abs(number);
    while (decimals < 4 && figures > 0 && figures < 99.95) {
      figures *= 10;
      decimals++;
    }
    return decimals;
  }

  private static long powerOfTen(int decimals) {
    long power = 1;
    for (int i = 0; i < decimals; i++) {
      power *= 10;
    }
    return power;
  }
}
