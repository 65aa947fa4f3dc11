package pegbook.calc.steelplan;

import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Lengths that the rules or the habit of the trade set, in round figures of the packet's units.
 *
 * @param units the packet's units
 */
record SteelRules(UnitSystem units) {
  private Length either(double inches, double millimetres) {
    return units == UnitSystem.IMPERIAL
        ? Length.ofInches(inches)
        : Length.ofMillimetres(millimetres);
  }

  /** Overlap of a ring's ends: ACI 318-19, 25.7.2.4.1. */
  Length overlap() {
    return either(6, 150);
  }

  /** Inside diameter of a tie's bend: four bars, six from #6 (19 mm) up: ACI 318-19, 25.3.2. */
  Length insideBend(Length bar) {
    return bar.times(bar.millimetres() < 16.5 ? 4 : 6);
  }

  /** Inside diameter of the bend of a main bar, #3 to #8 (25 mm): ACI 318-19, 25.3.1. */
  Length mainBend(Length bar) {
    return bar.times(6);
  }

  /** To what laps are told and made. */
  Length lapStep() {
    return either(1, 10);
  }

  /** From the end of the vertical bars to the first ring; common practice. */
  Length firstRing() {
    return either(2, 50);
  }

  /** Greatest stone in the mix, when nobody says; common practice for bagged and ordered mixes. */
  Length greatestStone() {
    return either(0.75, 20);
  }

  /** To what a bar cutter works; vertical bars are set down to it, rings up. */
  Length cuttingStep() {
    return either(0.25, 5);
  }
}
