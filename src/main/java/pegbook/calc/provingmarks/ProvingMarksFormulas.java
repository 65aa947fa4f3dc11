package pegbook.calc.provingmarks;

import java.util.List;
import pegbook.figures.DistanceLimit;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.geometry.network.Chances;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the distances that prove the marks, lengths in inches or millimetres.
 *
 * @param unit the unit of every length
 */
record ProvingMarksFormulas(Unit unit) {
  static ProvingMarksFormulas in(UnitSystem units) {
    return new ProvingMarksFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** How far a good distance between two marks may be off. */
  Formula limit() {
    return DistanceLimit.formula("proving-marks.limit", unit);
  }

  /** The limit that the tolerance holds down, as far as good marks bear it. */
  Formula held() {
    return new Formula(
        "proving-marks.held",
        "H = max(T, k · √(s² + p²))",
        List.of(
            length("T", "proving-marks-tolerance"),
            number("k", "proving-marks-often-factor"),
            length("s", "reading-deviation"),
            length("p", "places-deviation")),
        length("H", "proving-marks-held-limit"),
        Citation.COMMON_PRACTICE,
        "",
        x -> Math.max(x[0], x[1] * Math.sqrt(x[2] * x[2] + x[3] * x[3])));
  }

  /** How often a good distance is beyond a limit that is held down. */
  Formula alarm() {
    return new Formula(
        "proving-marks.alarm",
        "a = 2 · Φ(−L / √(s² + p²))",
        List.of(
            length("L", "proving-marks-set-limit"),
            length("s", "reading-deviation"),
            length("p", "places-deviation")),
        number("a", "proving-marks-alarm"),
        DistanceLimit.TESTING,
        "",
        x -> Chances.normalBeyond(x[0] / Math.sqrt(x[1] * x[1] + x[2] * x[2])));
  }

  /** How far a good tie may be off: read now, and placed by two such ties. */
  Formula tieLimit() {
    return new Formula(
        "proving-marks.tie-limit",
        "L = k · √(3 · s² + p²)",
        List.of(
            number("k", "limit-factor"),
            length("s", "reading-deviation"),
            length("p", "proving-marks-mark-deviation")),
        length("L", "difference-limit"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * Math.sqrt(3 * x[1] * x[1] + x[2] * x[2]));
  }

  /** The mistake that passes furthest off. */
  Formula hidden() {
    return new Formula(
        "proving-marks.hidden",
        "r = √(e² + n²)",
        List.of(
            length("e", "proving-marks-hidden-east"), length("n", "proving-marks-hidden-north")),
        length("r", "proving-marks-hidden-radius"),
        Citation.GEOMETRY,
        "",
        x -> StrictMath.hypot(x[0], x[1]));
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }
}
