package pegbook.calc.siteplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the site plan, in inches or millimetres. All are exact plane geometry.
 *
 * @param unit the unit of every length
 */
record SitePlanFormulas(Unit unit) {
  static SitePlanFormulas in(UnitSystem units) {
    return new SitePlanFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** From a round hole's or heap's edge to the nearest place of a thing. */
  Formula clearance() {
    return new Formula(
        "site-plan.clearance",
        "u = √((E₂ − E₁)² + (N₂ − N₁)²) − D / 2",
        List.of(
            length("E₁", "clear-from-east"),
            length("N₁", "clear-from-north"),
            length("E₂", "clear-to-east"),
            length("N₂", "clear-to-north"),
            length("D", "clear-diameter")),
        length("u", "clearance"),
        Citation.GEOMETRY,
        "",
        x -> StrictMath.hypot(x[2] - x[0], x[3] - x[1]) - x[4] / 2);
  }

  /** From a fixed thing to a mark. */
  Formula tie() {
    return new Formula(
        "site-plan.tie",
        "t = √((E₂ − E₁)² + (N₂ − N₁)²)",
        List.of(
            length("E₁", "tie-from-east"),
            length("N₁", "tie-from-north"),
            length("E₂", "tie-to-east"),
            length("N₂", "tie-to-north")),
        length("t", "tie"),
        Citation.GEOMETRY,
        "",
        x -> StrictMath.hypot(x[2] - x[0], x[3] - x[1]));
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }
}
