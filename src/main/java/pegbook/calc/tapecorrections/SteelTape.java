package pegbook.calc.tapecorrections;

import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * A steel tape, true at its reference temperature.
 *
 * <p>A warm tape is longer than its marks say. Measuring, the true distance is the reading plus the
 * correction; laying out, the reading is the wanted distance less the correction: the two signs are
 * opposite.
 */
final class SteelTape {
  /** Millionths of its length by which steel grows for each degree, and where that is printed. */
  static final double MILLIONTHS_PER_FAHRENHEIT = 6.45;

  static final double MILLIONTHS_PER_CELSIUS = 11.6;
  static final Citation SOURCE = new Citation("navy-engineering-aid", "p. 12-14, and usual texts");

  /** Reference temperature of a tape's marks: 20 °C, which is 68 °F. */
  static final double REFERENCE_CELSIUS = 20;

  /** How much warmer or colder than that a working day may well be: 20 °C or 36 °F; practice. */
  static final double SEASON_KELVINS = 20;

  private SteelTape() {}

  /** The true distance, from what is read on the tape. */
  static Length measured(Length reading, Length correction) {
    return reading.plus(correction);
  }

  /** What to read on the tape, for a distance that is wanted. */
  static Length laidOut(Length wanted, Length correction) {
    return wanted.minus(correction);
  }
}
