package pegbook.calc.cutplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** The formulas of the subject, in the units that the packet prints. */
final class CutPlanFormulas {
  static final Citation LAP = new Citation("aci-318-19", "25.4.2.3, 25.5.1.1, 25.5.2.1");

  /** The largest bar for which the formula of the smaller ones holds: #6, 19 mm, and no larger. */
  private static final double SMALL_BAR_MM = 19.5;

  private final boolean imperial;
  private final Unit small;

  CutPlanFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
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

  /**
   * Lap of two bars in tension, class B, of steel with a yield strength of 60 000 psi (420 MPa),
   * uncoated, in concrete of normal weight, not cast as top bars: strength of the concrete, bar.
   *
   * @param barMillimetres which of two formulas holds
   */
  Formula lap(double barMillimetres) {
    boolean isSmall = barMillimetres < SMALL_BAR_MM;
    double divisor = imperial ? (isSmall ? 25 : 20) : (isSmall ? 2.1 : 1.7);
    double yield = imperial ? 60_000 : 420;
    double least = imperial ? 12 : 300;
    return new Formula(
        isSmall ? "cut-plan.lap" : "cut-plan.lap-thick",
        "l = max(" + whole(least) + ", 1.3 · " + whole(yield) + " / (" + divisor + " · √f) · d)",
        List.of(
            new Symbol("f", "concrete-strength", imperial ? Unit.PSI : Unit.MEGAPASCAL),
            length("d", "bar-diameter")),
        length("l", "lap"),
        LAP,
        "",
        x -> Math.max(least, 1.3 * yield / (divisor * StrictMath.sqrt(x[0])) * x[1]));
  }

  private static String whole(double number) {
    return Long.toString(Math.round(number));
  }
}
