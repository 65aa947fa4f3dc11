package pegbook.sheet;

import pegbook.measure.NumberNotation;

/** Numbers that may be very small, with three figures. */
final class SmallNumbers {
  private static final int MOST_DECIMALS = 7;

  private SmallNumbers() {}

  /** With three figures, more where the whole number has more. */
  static String threeFigures(double number) {
    return NumberNotation.write(number, decimals(number));
  }

  /** A round number without zeros at its end. */
  static String plain(double number) {
    String digits = NumberNotation.write(number, decimals(number));
    return digits.contains(".") ? digits.replaceAll("\\.?0+$", "") : digits;
  }

  private static int decimals(double number) {
    int decimals = 0;
    double figures = Math.abs(number);
    while (decimals < MOST_DECIMALS && figures > 0 && figures < 99.95) {
      figures *= 10;
      decimals++;
    }
    return decimals;
  }
}
