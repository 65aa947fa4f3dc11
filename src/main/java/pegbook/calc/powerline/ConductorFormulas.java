package pegbook.calc.powerline;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.MetricCable;
import pegbook.published.Raceway;
import pegbook.published.Wire;

/** Formulas of voltage drop and of what a raceway holds. */
final class ConductorFormulas {
  private final boolean imperial;

  ConductorFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
  }

  private static Symbol amperes(String letter, String id) {
    return new Symbol(letter, id, Unit.AMPERE);
  }

  private static Symbol volts(String letter, String id) {
    return new Symbol(letter, id, Unit.VOLT);
  }

  private static Symbol percent(String letter, String id) {
    return new Symbol(letter, id, Unit.PERCENT);
  }

  private static Symbol far(String letter, String id, boolean feet) {
    return new Symbol(letter, id, feet ? Unit.FOOT : Unit.METRE);
  }

  private static double sine(double percent) {
    return Math.sqrt(Math.max(0, 100 * 100 - percent * percent)) / 100;
  }

  /** Voltage lost on two conductors of the American gauge: one way, current, R, X, power factor. */
  static Formula gaugeDrop() {
    return new Formula(
        "power-line.drop",
        "u = 2 · L · I · (R · p / 100 + X · √(1 − (p / 100)²)) / 1000",
        List.of(
            far("L", "one-way-length", true),
            amperes("I", "power-current"),
            new Symbol("R", "wire-resistance", Unit.OHM_PER_THOUSAND_FEET),
            new Symbol("X", "wire-reactance", Unit.OHM_PER_THOUSAND_FEET),
            percent("p", "power-factor")),
        volts("u", "voltage-lost"),
        Wire.RESISTANCES,
        "conductors at 75 °C",
        n -> 2 * n[0] * n[1] * (n[2] * n[4] / 100 + n[3] * sine(n[4])) / 1000);
  }

  /** Voltage lost on a metric cable: b, resistivity, one way, area, power factor, current. */
  static Formula metricDrop() {
    return new Formula(
        "power-line.drop",
        "u = b · (ρ · L / S · p / 100 + 0.00008 · L · √(1 − (p / 100)²)) · I",
        List.of(
            new Symbol("b", "ways-of-current", Unit.NONE),
            new Symbol("ρ", "wire-resistivity", Unit.OHM_SQUARE_MILLIMETRE_PER_METRE),
            far("L", "one-way-length", false),
            new Symbol("S", "wire-area", Unit.SQUARE_MILLIMETRE),
            percent("p", "power-factor"),
            amperes("I", "power-current")),
        volts("u", "voltage-lost"),
        MetricCable.DROP,
        "reactance 0.08 mΩ/m, recalled",
        n ->
            n[0]
                * (n[1] * n[2] / n[3] * n[4] / 100 + MetricCable.REACTANCE * n[2] * sine(n[4]))
                * n[5]);
  }

  /** Share of the voltage that is lost: lost, voltage that it is lost of. */
  static Formula share() {
    return new Formula(
        "power-line.drop-share",
        "d = 100 · u / U",
        List.of(volts("u", "voltage-lost"), volts("U", "voltage-between")),
        percent("d", "drop-share"),
        Citation.GEOMETRY,
        "",
        n -> 100 * n[0] / n[1]);
  }

  /** Current of the same load at another voltage: current, voltage, the other. */
  static Formula otherCurrent(boolean threePhase) {
    return new Formula(
        threePhase ? "power-line.three-phase-current" : "power-line.other-current",
        threePhase ? "J = I · U / (√3 · W)" : "J = I · U / W",
        List.of(
            amperes("I", "power-current"), volts("U", "voltage-now"), volts("W", "voltage-other")),
        amperes("J", "current-other"),
        Citation.GEOMETRY,
        "",
        n -> n[0] * n[1] / n[2] / (threePhase ? Math.sqrt(3) : 1));
  }

  /** How far a size would reach within the limit: one way, its drop, the limit. */
  Formula reach() {
    return new Formula(
        "power-line.reach",
        "M = L · a / d",
        List.of(
            far("L", "one-way-length", imperial),
            percent("d", "drop-share"),
            percent("a", "drop-allowed")),
        far("M", "longest-one-way", imperial),
        Citation.GEOMETRY,
        "",
        n -> n[0] * n[2] / n[1]);
  }

  /** Least conductor that grounds, where the others were made larger: listed, chosen, bearing. */
  static Formula ground() {
    return new Formula(
        "power-line.ground",
        "g = t · k / m",
        List.of(
            new Symbol("t", "ground-listed", Unit.CIRCULAR_MIL),
            new Symbol("k", "wire-chosen", Unit.CIRCULAR_MIL),
            new Symbol("m", "wire-bearing", Unit.CIRCULAR_MIL)),
        new Symbol("g", "ground-least", Unit.CIRCULAR_MIL),
        Wire.GROUNDING,
        "",
        n -> n[0] * n[1] / n[2]);
  }

  /** Share of a raceway that is filled: count, area of each, area of the ground, area inside. */
  static Formula fill() {
    return new Formula(
        "power-line.fill",
        "f = 100 · (n · a + g) / A",
        List.of(
            new Symbol("n", "wires-loaded", Unit.NONE),
            new Symbol("a", "insulated-area", Unit.SQUARE_INCH),
            new Symbol("g", "insulated-ground-area", Unit.SQUARE_INCH),
            new Symbol("A", "raceway-area", Unit.SQUARE_INCH)),
        percent("f", "raceway-filled"),
        Raceway.FILL,
        "more than two conductors: 40 %",
        n -> 100 * (n[0] * n[1] + n[2]) / n[3]);
  }

  /** Least inside diameter of a duct: the cable's diameter. */
  static Formula duct() {
    return new Formula(
        "power-line.duct",
        "D = 1.5 · d",
        List.of(new Symbol("d", "cable-diameter", Unit.MILLIMETRE)),
        new Symbol("D", "duct-inside", Unit.MILLIMETRE),
        Citation.COMMON_PRACTICE,
        "",
        n -> 1.5 * n[0]);
  }
}
