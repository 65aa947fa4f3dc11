package pegbook.calc.steelplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** The formulas of hooks at the foot and of bars in two lifts, in the units of the packet. */
final class UprightFormulas {
  /** Standard hooks of main bars: bend of six bars from #3 to #8, extension of twelve at 90°. */
  static final Citation STANDARD_HOOK = new Citation("aci-318-19", "Table 25.3.1");

  private final Unit small;

  UprightFormulas(UnitSystem units) {
    small = units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol bar() {
    return length("d", "bar-diameter");
  }

  private Symbol bend() {
    return length("i", "inside-bend");
  }

  /** Vertical bar above a joint: depth, height above ground, joint, top cover. */
  Formula above() {
    return new Formula(
        "steel-plan.above-joint",
        "L = h + t − j − c",
        List.of(
            length("h", "depth-to-underside"),
            length("t", "top-above-ground"),
            length("j", "first-lift"),
            length("c", "top-cover")),
        length("L", "vertical-cut"),
        Citation.GEOMETRY,
        "",
        x -> x[0] + x[1] - x[2] - x[3]);
  }

  /** Leg of a hook of 90°, from the back of the bar: inside bend, bar. */
  Formula leg() {
    return new Formula(
        "steel-plan.hook-leg",
        "g = i / 2 + d + 12 · d",
        List.of(bend(), bar()),
        length("g", "hook-leg"),
        STANDARD_HOOK,
        "#3 ≤ d ≤ #8",
        x -> x[0] / 2 + 13 * x[1]);
  }

  /** Straight bar that makes an upright one with a hook of 90°: rise, inside bend, bar. */
  Formula hooked() {
    return new Formula(
        "steel-plan.hooked-cut",
        "Lh = U − i / 2 − d + π · (i + d) / 4 + 12 · d",
        List.of(length("U", "hooked-rise"), bend(), bar()),
        length("Lh", "hooked-cut"),
        STANDARD_HOOK,
        "#3 ≤ d ≤ #8",
        x -> x[0] - x[1] / 2 + 11 * x[2] + Math.PI * (x[1] + x[2]) / 4);
  }
}
