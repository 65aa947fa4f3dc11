package pegbook.calc.cutplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** The formulas of the subject, in the units that the packet prints. */
final class CutPlanFormulas {
  private final Unit small;

  CutPlanFormulas(UnitSystem units) {
    small = units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  /** What is left of a bar: bar, all its pieces, their number, kerf. The last cut may be none. */
  Formula left() {
    return new Formula(
        "cut-plan.left",
        "r = max(0, L − s − n · k)",
        List.of(
            length("L", "stock-length"),
            length("s", "pieces-together"),
            new Symbol("n", "pieces-on-bar", Unit.NONE),
            length("k", "kerf")),
        length("r", "left-over"),
        Citation.GEOMETRY,
        "",
        x -> Math.max(0, x[0] - x[1] - x[2] * x[3]));
  }

  /** Parts of a piece longer than a bar, each lapped with the next: piece, bar, lap. */
  Formula parts() {
    return new Formula(
        "cut-plan.parts",
        "n = (c − s) / (L − s)",
        List.of(length("c", "piece-too-long"), length("L", "stock-length"), length("s", "lap")),
        new Symbol("n", "piece-parts", Unit.NONE),
        Citation.GEOMETRY,
        "s < L",
        x -> (x[0] - x[2]) / (x[1] - x[2]));
  }
}
