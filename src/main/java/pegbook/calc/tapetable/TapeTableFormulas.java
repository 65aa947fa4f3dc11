package pegbook.calc.tapetable;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the tapes, in inches or millimetres. All are exact plane geometry.
 *
 * @param unit the unit of every length
 */
record TapeTableFormulas(Unit unit) {
  static TapeTableFormulas in(UnitSystem units) {
    return new TapeTableFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** Level distance between two marks from their coordinates. */
  Formula distance() {
    return formula(
        "tape-table.distance",
        "d = √((E₂ − E₁)² + (N₂ − N₁)²)",
        List.of(
            length("E₁", "east-of-first"),
            length("N₁", "north-of-first"),
            length("E₂", "east-of-second"),
            length("N₂", "north-of-second")),
        length("d", "tape-distance"),
        "",
        x -> StrictMath.hypot(x[2] - x[0], x[3] - x[1]));
  }

  /** Angle at which two tapes cross, by the cosine rule. */
  Formula crossing() {
    return formula(
        "tape-table.crossing",
        "γ = arccos((a² + b² − c²) / (2 · a · b))",
        List.of(tapeA(), tapeB(), length("c", "baseline-length")),
        new Symbol("γ", "crossing-angle", Unit.DEGREE),
        "",
        x ->
            StrictMath.acos(
                    Math.max(
                        -1,
                        Math.min(1, (x[0] * x[0] + x[1] * x[1] - x[2] * x[2]) / (2 * x[0] * x[1]))))
                * (180 / Math.PI));
  }

  /** How far along the baseline a mark lies, from its tapes as drawn. */
  Formula alongDrawn() {
    return along("tape-table.along-drawn", "x = (a² − b² + c²) / (2 · c)", "x", "along-drawn");
  }

  /** How far along the baseline the readings put a mark. */
  Formula alongSet() {
    return along("tape-table.along-set", "x′ = (a² − b² + c²) / (2 · c)", "x′", "along-set");
  }

  private Formula along(String id, String expression, String letter, String symbol) {
    return formula(
        id,
        expression,
        List.of(tapeA(), tapeB(), length("c", "baseline-length")),
        length(letter, symbol),
        "",
        x -> (x[0] * x[0] - x[1] * x[1] + x[2] * x[2]) / (2 * x[2]));
  }

  /** How far off the baseline a mark lies, from its tapes as drawn. */
  Formula offDrawn() {
    return off("tape-table.off-drawn", "y = √(a² − x²)", length("x", "along-drawn"), "y");
  }

  /** How far off the baseline the readings put a mark. */
  Formula offSet() {
    return off("tape-table.off-set", "y′ = √(a² − x′²)", length("x′", "along-set"), "y′");
  }

  private Formula off(String id, String expression, Symbol along, String letter) {
    return formula(
        id,
        expression,
        List.of(tapeA(), along),
        length(letter, letter.equals("y") ? "off-drawn" : "off-set"),
        "",
        x -> Math.sqrt(Math.max(0, x[0] * x[0] - x[1] * x[1])));
  }

  /** How far readings set to the tape's division put a mark off. */
  Formula shift() {
    return formula(
        "tape-table.shift",
        "e = √((x′ − x)² + (y′ − y)²)",
        List.of(
            length("x", "along-drawn"),
            length("y", "off-drawn"),
            length("x′", "along-set"),
            length("y′", "off-set")),
        length("e", "reading-shift"),
        "",
        x -> StrictMath.hypot(x[2] - x[0], x[3] - x[1]));
  }

  private Symbol tapeA() {
    return length("a", "first-tape");
  }

  private Symbol tapeB() {
    return length("b", "second-tape");
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  private static Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      String valid,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, Citation.GEOMETRY, valid, function);
  }
}
