package pegbook.calc.pourday;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/** The formulas of the subject. */
final class PourDayFormulas {
  private PourDayFormulas() {}

  /** The longest time from batch to batch that still ends inside the window. */
  static Formula each() {
    return new Formula(
        "pour-day.each",
        "e = W / n",
        List.of(
            new Symbol("W", "placing-window", Unit.MINUTE),
            new Symbol("n", "batches-whole", Unit.NONE)),
        new Symbol("e", "time-of-batch", Unit.MINUTE),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] / x[1]);
  }
}
