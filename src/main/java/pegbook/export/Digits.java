package pegbook.export;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers for other programs: ten significant digits, so that the last bits of a sum do not show.
 */
final class Digits {
  private static final MathContext TEN = new MathContext(10, RoundingMode.HALF_EVEN);

  private Digits() {}

  /** A number to ten significant digits, without zeros at its end. */
  static BigDecimal of(double number) {
    if (number == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal rounded = new BigDecimal(number).round(TEN).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
  }
}
