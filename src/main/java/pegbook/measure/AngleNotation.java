package pegbook.measure;

import static pegbook.measure.NumberNotation.MINUS;
import static pegbook.measure.NumberNotation.NO_BREAK_SPACE;

/** Angles as the packet prints them; {@link Notation#ANGLES} reads them back. */
public final class AngleNotation {
  private AngleNotation() {}

  /** Degrees and minutes to the nearest minute, {@code 8° 30′}; whole degrees alone, {@code 8°}. */
  public static String write(Angle angle) {
    long minutes = Rounding.NEAREST.steps(angle.degrees(), 1.0 / 60);
    String sign = minutes < 0 ? String.valueOf(MINUS) : "";
    long rest = Math.abs(minutes) % 60;
    String degrees = sign + Math.abs(minutes) / 60 + "°";
    return rest == 0 ? degrees : degrees + NO_BREAK_SPACE + (rest < 10 ? "0" : "") + rest + "′";
  }

  /** Degrees with so many decimals, {@code 29.9°}. */
  public static String write(Angle angle, int decimals) {
    return NumberNotation.write(angle, Unit.DEGREE, decimals);
  }
}
