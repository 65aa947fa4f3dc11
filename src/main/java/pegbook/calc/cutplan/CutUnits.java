package pegbook.calc.cutplan;

import pegbook.measure.Length;

/** Lengths in whole steps of 25 nm: millimetres and sixty-fourths of an inch are whole ones. */
final class CutUnits {
  private static final double STEP_METRES = 25e-9;

  private CutUnits() {}

  static long of(Length length) {
    return Math.round(length.metres() / STEP_METRES);
  }
}
