package pegbook.measure;

import static pegbook.measure.NumberNotation.MINUS;
import static pegbook.measure.NumberNotation.NO_BREAK_SPACE;

/**
 * Lengths as a builder writes them, set to the nearest mark of a tape: {@code 12′ 9 ³⁄₈″}, {@code
 * 12.78 ft}, {@code 3 894 mm}, {@code 3.89 m}. The carry is worked in whole marks, so that there is
 * never a twelfth inch beside the feet, and fractions stand in their lowest terms, their digits
 * raised and lowered: at arm's length 1⁄2 in full digits reads as 12. What is printed can be read
 * back by {@link Notation#LENGTHS}.
 */
public final class LengthNotation {
  private static final char PRIME = '\u2032';
  private static final char DOUBLE_PRIME = '\u2033';
  private static final char FRACTION_SLASH = '\u2044';

  /** Below this an inch tape is read in inches alone. */
  private static final Length ONE_FOOT = Length.ofFeet(1);

  private LengthNotation() {}

  /** The same in the letters of a keyboard, as one types it into a job file: {@code 9 3/8 in}. */
  public static String typed(Length length, TapeDivision division) {
    return TradeText.plain(write(length, division)).replace("'", " ft").replace("\"", " in");
  }

  /**
   * A length on a tape: inches alone below one foot, feet and inches from there; millimetres on a
   * millimetre tape, metres on a centimetre tape.
   */
  public static String write(Length length, TapeDivision division) {
    return switch (division) {
      case MILLIMETRE, FIVE_MILLIMETRES -> millimetres(division.nearest(length));
      case CENTIMETRE -> metres(length, 2);
      default -> write(length, division, ONE_FOOT);
    };
  }

  /**
   * A length on a tape, in the small unit alone (inches, millimetres, centimetres) when it is
   * shorter than a limit, and in the large one (feet and inches, metres) from there. The engineers'
   * tape has only feet.
   */
  public static String write(Length length, TapeDivision division, Length smallUnitBelow) {
    Length set = division.nearest(length);
    // Within a tie of the limit counts as on it, as everywhere.
    boolean small =
        Rounding.DOWN.steps(set.abs().metres(), division.step().metres())
            < Rounding.UP.steps(smallUnitBelow.metres(), division.step().metres());
    return switch (division) {
      case HUNDREDTH_FOOT -> NumberNotation.write(set, Unit.FOOT, 2);
      case MILLIMETRE, FIVE_MILLIMETRES -> small ? millimetres(set) : metres(set, 3);
      case CENTIMETRE -> small ? centimetres(set) : metres(set, 2);
      default -> inches(length, division, small);
    };
  }

  /** A length in metres with so many decimals. */
  public static String metres(Length length, int decimals) {
    return NumberNotation.write(length, Unit.METRE, decimals);
  }

  private static String millimetres(Length length) {
    return NumberNotation.write(length.millimetres(), 0, 4) + NO_BREAK_SPACE + "mm";
  }

  private static String centimetres(Length length) {
    return NumberNotation.write(length.millimetres() / 10, 0) + NO_BREAK_SPACE + "cm";
  }

  private static String inches(Length length, TapeDivision division, boolean inchesAlone) {
    long marks = Rounding.NEAREST.steps(length.metres(), division.step().metres());
    long ofFeet = inchesAlone ? 0 : Math.abs(marks) / (12L * division.parts());
    long rest = Math.abs(marks) - ofFeet * 12 * division.parts();
    String feet = inchesAlone ? "" : "" + ofFeet + PRIME + NO_BREAK_SPACE;
    String sign = marks < 0 ? String.valueOf(MINUS) : "";
    return sign + feet + mixed(rest, division.parts(), inchesAlone) + DOUBLE_PRIME;
  }

  /** A mixed number in lowest terms; its zero is left out before a fraction that stands alone. */
  private static String mixed(long marks, int parts, boolean alone) {
    long whole = marks / parts;
    long over = marks % parts;
    if (over == 0) {
      return Long.toString(whole);
    }
    long divisor = greatestCommonDivisor(over, parts);
    String fraction =
        TradeText.raised(over / divisor) + FRACTION_SLASH + TradeText.lowered(parts / divisor);
    return whole == 0 && alone ? fraction : "" + whole + NO_BREAK_SPACE + fraction;
  }

  private static long greatestCommonDivisor(long one, long other) {
    return other == 0 ? one : greatestCommonDivisor(other, one % other);
  }
}
