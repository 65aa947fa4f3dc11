package pegbook.calc.depthtargets;

import java.util.List;
import pegbook.figures.BearingPair;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of depth targets, all in the packet's small unit of length.
 *
 * @param unit inches or millimetres
 */
record DepthTargetsFormulas(Unit unit) {

  static DepthTargetsFormulas in(UnitSystem units) {
    return new DepthTargetsFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** The deepest of the rules, set up to the tape's division. */
  Formula target(Citation source) {
    return new Formula(
        "depth-targets.target",
        "h = max(a, f, j), set up to the next s",
        List.of(
            length("a", "least-depth"),
            length("f", "frost-depth"),
            length("j", "asked-depth"),
            length("s", "tape-division")),
        length("h", "depth-target"),
        source,
        "",
        n -> setUp(Math.max(n[0], Math.max(n[1], n[2])), n[3]));
  }

  /** What is dug: gravel goes below the concrete. */
  Formula dug() {
    return new Formula(
        "depth-targets.dug",
        "H = h + g",
        List.of(length("h", "depth-target"), length("g", "gravel-under")),
        length("H", "dug-depth"),
        Citation.GEOMETRY,
        "",
        n -> n[0] + n[1]);
  }

  /** A line that clears the highest ground, set up to a whole small step. */
  Formula datum() {
    return new Formula(
        "depth-targets.datum",
        "D = L + c, set up to the next u",
        List.of(
            length("L", "highest-ground"),
            length("c", "datum-clearance"),
            length("u", "datum-step")),
        length("D", "datum-height"),
        Citation.COMMON_PRACTICE,
        "",
        n -> setUp(n[0] + n[1], n[2]));
  }

  /** From the line down to the underside of the concrete. */
  Formula datumDepth() {
    return new Formula(
        "depth-targets.datum-depth",
        "U = D − L + h, set up to the next s",
        List.of(
            length("D", "datum-height"),
            length("L", "ground-level"),
            length("h", "depth-target"),
            length("s", "tape-division")),
        length("U", "datum-to-underside"),
        Citation.GEOMETRY,
        "",
        n -> setUp(n[0] - n[1] + n[2], n[3]));
  }

  /** How far a hole's bottom stays above the line that spreads from a footing beside it. */
  Formula bearingLine() {
    return BearingPair.formula("depth-targets.bearing-line", unit);
  }

  private static double setUp(double value, double step) {
    return Rounding.UP.steps(value, step) * step;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }
}
