package pegbook.calc.asmarked;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.DistanceLimit;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the as-marked distances, lengths in inches or millimetres.
 *
 * @param unit the unit of every length
 */
record AsMarkedFormulas(Unit unit) {
  private static final Citation COST = new Citation("akaike-1974", "");

  static AsMarkedFormulas in(UnitSystem units) {
    return new AsMarkedFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** How much a good reading may differ from the plan. */
  Formula limit() {
    return DistanceLimit.formula("as-marked.limit", unit);
  }

  /** What a supposition leaves unexplained. */
  Formula left() {
    return plain(
        "as-marked.left",
        "R = T − F",
        List.of(number("T", "squares-sum"), number("F", "squares-fall")),
        number("R", "squares-left"),
        DistanceLimit.TESTING,
        x -> x[0] - x[1]);
  }

  /** By how much the best supposition is ahead of the next. */
  Formula lead() {
    return plain(
        "as-marked.lead",
        "D = (F₁ − 2 · q₁) − (F₂ − 2 · q₂)",
        List.of(
            number("F₁", "fall-first"),
            number("q₁", "quantities-first"),
            number("F₂", "fall-second"),
            number("q₂", "quantities-second")),
        number("D", "suspect-lead"),
        COST,
        x -> x[0] - TestLevels.COST * x[1] - (x[2] - TestLevels.COST * x[3]));
  }

  /** How far a mark is off. */
  Formula shift() {
    return plain(
        "as-marked.shift",
        "m = √(e² + n²)",
        List.of(length("e", "shift-east"), length("n", "shift-north")),
        length("m", "mark-shift"),
        Citation.GEOMETRY,
        x -> StrictMath.hypot(x[0], x[1]));
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private static Formula plain(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      Citation source,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, source, "", function);
  }
}
