package pegbook.calc.pierstiffness;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Masses and the first natural frequency.
 *
 * <p>The column, held fast, has the exact root of the beam with a mass at its tip. The stiff pier
 * on the ground's springs adds by Dunkerley's rule, which never gives too high a frequency. The
 * instrument counts as a point at the top of the concrete; its own size is left out.
 */
final class FrequencyFormulas {
  private final PierUnits units;

  FrequencyFormulas(UnitSystem units) {
    this.units = PierUnits.of(units);
  }

  static Symbol hertz(String letter, String id) {
    return new Symbol(letter, id, Unit.HERTZ);
  }

  private Symbol instrument() {
    return units.mass("M", "instrument-mass");
  }

  private Symbol above() {
    return units.mass("Ma", "mass-above");
  }

  private Symbol below() {
    return units.mass("Mb", "mass-below");
  }

  private Symbol columnMass() {
    return units.mass("Mc", "column-mass");
  }

  /** Mass of round concrete, named by its result: diameter, length. */
  private Formula cylinder(String id, Symbol diameter, Symbol length, Symbol result) {
    boolean imperial = units.imperial();
    return new Formula(
        "pier-stiffness." + id,
        result.letter()
            + " = "
            + (imperial ? "150" : "2400")
            + " · π · "
            + diameter.letter()
            + "² / 4 · "
            + length.letter()
            + (imperial ? " / 1728" : " / 10⁹"),
        List.of(diameter, length),
        result,
        Citation.COMMON_PRACTICE,
        "",
        x -> (imperial ? 150 / 1728.0 : 2400 / 1e9) * Math.PI * x[0] * x[0] / 4 * x[1]);
  }

  /** Concrete above the ground: column, top. */
  Formula massAbove() {
    return cylinder("mass-above", units.column(), units.top(), above());
  }

  /** Concrete below the ground: base, depth. */
  Formula massBelow() {
    return cylinder("mass-below", units.base(), units.depth(), below());
  }

  /** The column whose bending counts: column, lever. */
  Formula massOfColumn() {
    return cylinder("column-mass", units.column(), units.lever(), columnMass());
  }

  /** Root of the frequency equation: instrument, column. */
  Formula columnRoot() {
    return new Formula(
        "pier-stiffness.column-root",
        "1 + cos λ · cosh λ + M / Mc · λ · (cos λ · sinh λ − sin λ · cosh λ) = 0",
        List.of(instrument(), columnMass()),
        PierUnits.number("λ", "column-root"),
        new Citation("mechanics", "Bernoulli-Euler beam with a tip mass"),
        "",
        x -> TipMassRoot.of(x[0] / x[1]));
  }

  /** Frequency of the column held fast: root, stiffness, mass. */
  Formula columnFrequency() {
    boolean imperial = units.imperial();
    double scale = imperial ? 386090 : 1e6;
    return new Formula(
        "pier-stiffness.column-frequency",
        "f1 = λ² / (2 · π) · √(" + (imperial ? "386090" : "10⁶") + " · kb / (3 · Mc))",
        List.of(
            PierUnits.number("λ", "column-root"),
            new Symbol("kb", "column-stiffness", units.spring()),
            columnMass()),
        hertz("f1", "column-frequency"),
        new Citation("mechanics", "Bernoulli-Euler beam with a tip mass"),
        "",
        x -> x[0] * x[0] / (2 * Math.PI) * Math.sqrt(scale * x[1] / (3 * x[2])));
  }

  /** Inertia about the base: instrument, above, below, lever, depth. */
  Formula inertia() {
    boolean imperial = units.imperial();
    return new Formula(
        "pier-stiffness.inertia",
        "J = (M · L² + Ma · (L² + L · h + h²) / 3 + Mb · h² / 3) / " + (imperial ? "144" : "10⁶"),
        List.of(instrument(), above(), below(), units.lever(), units.depth()),
        inertiaSymbol(),
        Citation.GEOMETRY,
        "",
        x ->
            (x[0] * x[3] * x[3]
                    + x[1] * (x[3] * x[3] + x[3] * x[4] + x[4] * x[4]) / 3
                    + x[2] * x[4] * x[4] / 3)
                / (imperial ? 144 : 1e6));
  }

  private Symbol inertiaSymbol() {
    return new Symbol("J", "base-inertia", units.inertia());
  }

  /** All of it: instrument, above, below. */
  Formula mass() {
    return new Formula(
        "pier-stiffness.mass",
        "m = M + Ma + Mb",
        List.of(instrument(), above(), below()),
        units.mass("m", "pier-mass"),
        Citation.GEOMETRY,
        "",
        x -> x[0] + x[1] + x[2]);
  }

  /** Frequency of the stiff pier on its base's springs: mass, inertia, springs. */
  Formula groundFrequency() {
    boolean imperial = units.imperial();
    double sliding = imperial ? 386090 : 1e6;
    double rocking = imperial ? 32174 : 1000;
    return new Formula(
        "pier-stiffness.ground-frequency",
        "f2 = 1 / (2 · π · √(m / ("
            + (imperial ? "386090" : "10⁶")
            + " · Kh) + J / ("
            + (imperial ? "32174" : "1000")
            + " · Kr)))",
        List.of(
            units.mass("m", "pier-mass"),
            inertiaSymbol(),
            new Symbol("Kh", "sliding-spring", units.spring()),
            new Symbol("Kr", "rocking-spring", units.turningSpring())),
        hertz("f2", "ground-frequency"),
        Citation.GEOMETRY,
        "",
        x -> 1 / (2 * Math.PI * Math.sqrt(x[0] / (sliding * x[2]) + x[1] / (rocking * x[3]))));
  }

  /** Both together: column, ground. */
  Formula frequency() {
    return new Formula(
        "pier-stiffness.frequency",
        "f = 1 / √(1 / f1² + 1 / f2²)",
        List.of(hertz("f1", "column-frequency"), hertz("f2", "ground-frequency")),
        hertz("f", "frequency"),
        new Citation("mechanics", "Dunkerley's rule: never too high"),
        "",
        x -> 1 / Math.sqrt(1 / (x[0] * x[0]) + 1 / (x[1] * x[1])));
  }
}
