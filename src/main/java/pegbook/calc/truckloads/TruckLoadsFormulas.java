package pegbook.calc.truckloads;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** How much to order, in the units that the packet prints. */
final class TruckLoadsFormulas {
  /** Plants weigh and write tickets in quarters of a cubic yard or metre: common practice. */
  static final double STEP = 0.25;

  private TruckLoadsFormulas() {}

  /** The load to order: what the holes of a day take, the plant's least load. */
  static Formula load(UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    Unit small = imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
    Unit large = imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
    double inLarge = imperial ? 27 : 1;
    return new Formula(
        "truck-loads.load",
        (imperial ? "L = V / 27" : "L = V") + ", set up to 0.25, not less than m",
        List.of(new Symbol("V", "poured-of-day", small), new Symbol("m", "least-load", large)),
        new Symbol("L", "load-to-order", large),
        Citation.COMMON_PRACTICE,
        "",
        x -> Math.max(Rounding.UP.steps(x[0] / inLarge, STEP) * STEP, x[1]));
  }
}
