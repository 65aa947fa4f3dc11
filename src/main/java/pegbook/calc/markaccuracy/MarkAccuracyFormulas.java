package pegbook.calc.markaccuracy;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.BaselineErrors;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.geometry.ErrorEllipse;
import pegbook.job.Layout.TapeClass;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.TapeLimit;

/**
 * Formulas of the marks' errors, in inches or millimetres.
 *
 * @param unit the unit of every length but those of the tape classes
 */
record MarkAccuracyFormulas(Unit unit) {
  static MarkAccuracyFormulas in(UnitSystem units) {
    return new MarkAccuracyFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** What the tape itself adds, where it grows evenly with the distance. */
  Formula growing() {
    return formula(
        "mark-accuracy.tape-part",
        "t = u · d / v",
        List.of(
            length("u", "error-of-length"),
            length("v", "length-of-error"),
            length("d", "taped-distance")),
        length("t", "tape-part"),
        Citation.COMMON_PRACTICE,
        x -> x[0] * x[2] / x[1]);
  }

  /** What the tape itself adds by the limit of its class, in the units of the publication. */
  Formula ofClass(TapeClass tapeClass) {
    TapeLimit limit = TapeLimit.find(tapeClass.name());
    return formula(
        "mark-accuracy.tape-part",
        "t = (a + b · ⌈L⌉ + c) / √3",
        List.of(
            new Symbol("a", "class-constant", Unit.MILLIMETRE),
            new Symbol("b", "class-per-metre", Unit.NONE),
            new Symbol("L", "taped-distance", Unit.METRE),
            new Symbol("c", "class-end", Unit.MILLIMETRE)),
        new Symbol("t", "tape-part", Unit.MILLIMETRE),
        limit.citation(),
        x -> (x[0] + x[1] * Math.ceil(x[2] - 1e-9) + x[3]) / Math.sqrt(3));
  }

  /** Standard deviation of one distance. */
  Formula distance() {
    return formula(
        "mark-accuracy.distance",
        "s = √(r² + t² + q² / 12)",
        List.of(
            length("r", "reading-part"), length("t", "tape-part"), length("q", "tape-division")),
        length("s", "distance-sigma"),
        Citation.GEOMETRY,
        x -> Math.sqrt(x[0] * x[0] + x[1] * x[1] + x[2] * x[2] / 12));
  }

  /** Standard deviation of the second tape with that of the mark it begins at. */
  Formula second() {
    return formula(
        "mark-accuracy.second",
        "s₂ = √(s_b² + (s_c · (b² + c² − a²) / (2 · b · c))²)",
        List.of(
            length("s_b", "second-sigma"),
            length("s_c", "baseline-sigma"),
            length("a", "first-tape"),
            length("b", "second-tape"),
            length("c", "baseline-length")),
        length("s₂", "second-whole-sigma"),
        Citation.GEOMETRY,
        x -> {
          double cosine = (x[3] * x[3] + x[4] * x[4] - x[2] * x[2]) / (2 * x[3] * x[4]);
          return Math.sqrt(x[0] * x[0] + x[1] * x[1] * cosine * cosine);
        });
  }

  /** Longest half axis of the error ellipse of two tapes. */
  Formula major() {
    return formula(
        "mark-accuracy.major",
        "m = √((s₁² + s₂² + √((s₁² + s₂²)² − (2 · s₁ · s₂ · sin γ)²)) / 2) / sin γ",
        List.of(
            length("s₁", "first-sigma"),
            length("s₂", "second-whole-sigma"),
            new Symbol("γ", "crossing-angle", Unit.DEGREE)),
        length("m", "semi-major"),
        Citation.GEOMETRY,
        x -> {
          double sine = StrictMath.sin(x[2] * (Math.PI / 180));
          double sum = x[0] * x[0] + x[1] * x[1];
          double product = 2 * x[0] * x[1] * sine;
          double root = Math.sqrt(Math.max(0, sum * sum - product * product));
          return Math.sqrt((sum + root) / 2) / sine;
        });
  }

  /** Shortest half axis. */
  Formula minor() {
    return formula(
        "mark-accuracy.minor",
        "n = s₁ · s₂ / (m · sin γ)",
        List.of(
            length("s₁", "first-sigma"),
            length("s₂", "second-whole-sigma"),
            new Symbol("γ", "crossing-angle", Unit.DEGREE),
            length("m", "semi-major")),
        length("n", "semi-minor"),
        Citation.GEOMETRY,
        x -> x[0] * x[1] / (x[3] * StrictMath.sin(x[2] * (Math.PI / 180))));
  }

  /** Radius that holds 95 % of all errors. */
  Formula radius() {
    return formula(
        "mark-accuracy.radius",
        "R from 1 / π · ∫₀^π exp(−R² / (2 · (m² · cos²ψ + n² · sin²ψ))) dψ = 0.05",
        List.of(length("m", "semi-major"), length("n", "semi-minor")),
        length("R", "radius-95"),
        Citation.GEOMETRY,
        x -> ErrorEllipse.radius(BaselineErrors.SHARE, x[0], x[1]));
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  /** A quantity's number in the formulas' unit, as a length again. */
  Length asLength(double number) {
    return new Length(unit.toSi(number));
  }

  private static Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      Citation source,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, source, "", function);
  }
}
