package pegbook.calc.safepegs;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of pegs and strings, in inches or millimetres.
 *
 * @param unit the unit of every length
 */
record SafePegsFormulas(Unit unit) {
  static SafePegsFormulas in(UnitSystem units) {
    return new SafePegsFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** Level distance between a peg and a mark, or two pegs. */
  Formula distance() {
    return formula(
        "safe-pegs.distance",
        "d = √((E₂ − E₁)² + (N₂ − N₁)²)",
        List.of(
            length("E₁", "east-of-peg"),
            length("N₁", "north-of-peg"),
            length("E₂", "east-of-other"),
            length("N₂", "north-of-other")),
        length("d", "tape-distance"),
        x -> StrictMath.hypot(x[2] - x[0], x[3] - x[1]));
  }

  /** Angle at which tapes from two pegs cross, by the cosine rule. */
  Formula crossing() {
    return formula(
        "safe-pegs.crossing",
        "γ = arccos((a² + b² − c²) / (2 · a · b))",
        List.of(
            length("a", "first-peg-tape"),
            length("b", "second-peg-tape"),
            length("c", "peg-to-peg")),
        new Symbol("γ", "crossing-angle", Unit.DEGREE),
        SafePegsFormulas::cosineRule);
  }

  private static double cosineRule(double[] x) {
    double cosine = (x[0] * x[0] + x[1] * x[1] - x[2] * x[2]) / (2 * x[0] * x[1]);
    return StrictMath.acos(Math.max(-1, Math.min(1, cosine))) * (180 / Math.PI);
  }

  /** How well two tapes find a mark again. */
  Formula spread() {
    return formula(
        "safe-pegs.spread",
        "s = √(σ₁² + σ₂²) / sin γ",
        List.of(
            length("σ₁", "first-tape-sigma"),
            length("σ₂", "second-tape-sigma"),
            new Symbol("γ", "crossing-angle", Unit.DEGREE)),
        length("s", "spread"),
        x -> Math.sqrt(x[0] * x[0] + x[1] * x[1]) / StrictMath.sin(x[2] * (Math.PI / 180)));
  }

  /** Angle at which two strings cross, from their azimuths, each below 180 degrees. */
  Formula stringAngle() {
    return formula(
        "safe-pegs.string-angle",
        "φ = min(|α₁ − α₂|, 180 − |α₁ − α₂|)",
        List.of(
            new Symbol("α₁", "first-string-azimuth", Unit.DEGREE),
            new Symbol("α₂", "second-string-azimuth", Unit.DEGREE)),
        new Symbol("φ", "string-angle", Unit.DEGREE),
        SafePegsFormulas::acuteAngle);
  }

  private static double acuteAngle(double[] x) {
    double between = Math.abs(x[0] - x[1]);
    return Math.min(between, 180 - between);
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  private static Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, Citation.GEOMETRY, "", function);
  }
}
