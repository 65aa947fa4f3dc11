package pegbook.calc.tapecorrections;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of taping on a slope and in the heat.
 *
 * @param units in which the packet prints
 */
record TapeCorrectionsFormulas(UnitSystem units) {
  static TapeCorrectionsFormulas in(UnitSystem units) {
    return new TapeCorrectionsFormulas(units);
  }

  private boolean imperial() {
    return units == UnitSystem.IMPERIAL;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, imperial() ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** Distance along an even slope. */
  Formula alongGround() {
    return new Formula(
        "tape-corrections.along-ground",
        "g = √(d² + h²)",
        List.of(length("d", "tape-distance"), length("h", "height-difference")),
        length("g", "distance-along-ground"),
        Citation.GEOMETRY,
        "",
        n -> Math.sqrt(n[0] * n[0] + n[1] * n[1]));
  }

  /** By how much the way along the ground is longer. */
  Formula excess() {
    return new Formula(
        "tape-corrections.excess",
        "c = √(d² + h²) − d",
        List.of(length("d", "tape-distance"), length("h", "height-difference")),
        length("c", "slope-excess"),
        Citation.GEOMETRY,
        "",
        n -> n[1] * n[1] / (Math.sqrt(n[0] * n[0] + n[1] * n[1]) + n[0]));
  }

  /** By how much a steel tape is longer than its marks say. */
  Formula heat() {
    return new Formula(
        "tape-corrections.heat",
        "c = α · t · d / 1 000 000",
        List.of(growth(), degrees(), length("d", "tape-distance")),
        length("c", "heat-correction"),
        SteelTape.SOURCE,
        "",
        n -> n[0] * n[1] * n[2] / 1e6);
  }

  /** How much warmer it must be for half a division. */
  Formula halfDivision() {
    return new Formula(
        "tape-corrections.half-division",
        "t = 1 000 000 · (s / 2) / (α · d)",
        List.of(length("s", "tape-division"), growth(), length("d", "tape-distance")),
        degrees(),
        SteelTape.SOURCE,
        "",
        n -> 1e6 * (n[0] / 2) / (n[1] * n[2]));
  }

  /** Millionths per degree. */
  double steelGrowth() {
    return imperial() ? SteelTape.MILLIONTHS_PER_FAHRENHEIT : SteelTape.MILLIONTHS_PER_CELSIUS;
  }

  private Symbol growth() {
    return new Symbol(
        "α",
        "steel-growth",
        imperial() ? Unit.MILLIONTH_PER_FAHRENHEIT : Unit.MILLIONTH_PER_KELVIN);
  }

  private Symbol degrees() {
    return new Symbol("t", "degrees-warmer", imperial() ? Unit.FAHRENHEIT_STEP : Unit.CELSIUS_STEP);
  }
}
