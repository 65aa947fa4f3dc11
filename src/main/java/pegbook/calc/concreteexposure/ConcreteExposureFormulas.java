package pegbook.calc.concreteexposure;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * How concrete gains strength with age, of ordinary cement, moist, near 70 °F (20 °C).
 *
 * @param units which units the packet prints in
 */
record ConcreteExposureFormulas(UnitSystem units) {
  /** The two numbers of ordinary cement, kept moist. */
  static final Citation AGE = new Citation("concrete-age", "ordinary cement, moist");

  private static final double EARLY = 4;
  private static final double LATE = 0.85;

  private Symbol strength(String letter, String id) {
    return new Symbol(letter, id, units == UnitSystem.IMPERIAL ? Unit.PSI : Unit.MEGAPASCAL);
  }

  private String valid(String condition) {
    return condition + (units == UnitSystem.IMPERIAL ? "near 70 °F" : "near 20 °C");
  }

  private Symbol atTwentyEight() {
    return strength("f₂₈", "strength-at-28");
  }

  /** Strength at an age: strength at 28 days, age. */
  Formula strengthAtAge() {
    return new Formula(
        "concrete-exposure.strength-at-age",
        "f = f₂₈ · t / (4 + 0.85 · t)",
        List.of(atTwentyEight(), new Symbol("t", "age-days", Unit.NONE)),
        strength("f", "strength-then"),
        AGE,
        valid("t ≤ 28, "),
        x -> x[0] * x[1] / (EARLY + LATE * x[1]));
  }

  /** The age of a strength: strength at 28 days, strength. The same, turned round. */
  Formula ageAtStrength() {
    return new Formula(
        "concrete-exposure.age-at-strength",
        "t = 4 · f / (f₂₈ − 0.85 · f)",
        List.of(atTwentyEight(), strength("f", "strength-then")),
        new Symbol("t", "age-days", Unit.NONE),
        AGE,
        valid("f ≤ f₂₈, "),
        x -> EARLY * x[1] / (x[0] - LATE * x[1]));
  }
}
