package pegbook.calc.pierstiffness;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * A shaft with soil tight against its side, moved and turned at the ground line by a force and a
 * moment there; elastic soil of even stiffness.
 *
 * <p>The greater of what a stiff shaft and a slender shaft yield is taken, and 1.25 times it: what
 * the authors give for shafts in between, and on the safe side for the others. The side counts from
 * the ground down; the base and any loose soil at the top do not count.
 */
final class ShaftFormulas {
  private static final String VALID = "1 ≤ h / D ≤ 10";
  private static final Citation SHAFT = new Citation("carter-kulhawy", "shaft in elastic ground");

  private final PierUnits units;

  ShaftFormulas(UnitSystem units) {
    this.units = PierUnits.of(units);
  }

  private Symbol modulus() {
    return units.stress("G*", "shaft-modulus");
  }

  private Symbol yielding() {
    return new Symbol("cH", "ground-yield", units.yielding());
  }

  private Symbol turning() {
    return new Symbol("cT", "ground-turn", units.turning());
  }

  private Symbol turningByMoment() {
    return new Symbol("cM", "ground-turn-by-moment", units.turningByMoment());
  }

  private List<Symbol> shaft() {
    return List.of(modulus(), units.depth(), units.base(), units.concrete());
  }

  /** Modulus with the share of Poisson's ratio: modulus, Poisson's ratio. */
  Formula shaftModulus() {
    return new Formula(
        "pier-stiffness.shaft-modulus",
        "G* = G · (1 + 0.75 · ν)",
        List.of(units.soil(), PierUnits.poisson()),
        modulus(),
        SHAFT,
        "",
        x -> x[0] * (1 + 0.75 * x[1]));
  }

  /** Ground line's way under a force there: modulus, depth, diameter, concrete. */
  Formula groundYield() {
    return new Formula(
        "pier-stiffness.ground-yield",
        "cH = 1.25 · 10⁶ · max(0.4 · (2 · h / D)^(−1/3), 0.5 · (E / G*)^(−1/7)) / (G* · D)",
        shaft(),
        yielding(),
        SHAFT,
        VALID,
        x ->
            1.25e6
                * Math.max(
                    0.4 * StrictMath.pow(2 * x[1] / x[2], -1.0 / 3),
                    0.5 * StrictMath.pow(x[3] / x[0], -1.0 / 7))
                / (x[0] * x[2]));
  }

  /** Ground line's turn under a force there, and its way under a moment: the same inputs. */
  Formula groundTurn() {
    return new Formula(
        "pier-stiffness.ground-turn",
        "cT = 1.25 · 10⁹ · max(0.3 · (2 · h / D)^(−7/8), 1.08 · (E / G*)^(−3/7)) / (G* · D²)",
        shaft(),
        turning(),
        SHAFT,
        VALID,
        x ->
            1.25e9
                * Math.max(
                    0.3 * StrictMath.pow(2 * x[1] / x[2], -7.0 / 8),
                    1.08 * StrictMath.pow(x[3] / x[0], -3.0 / 7))
                / (x[0] * x[2] * x[2]));
  }

  /** Ground line's turn under a moment: the same inputs. */
  Formula groundTurnByMoment() {
    double scale = units.imperial() ? 1.2e10 : 1e12;
    return new Formula(
        "pier-stiffness.ground-turn-by-moment",
        "cM = 1.25 · "
            + (units.imperial() ? "1.2 · 10¹⁰" : "10¹²")
            + " · max(0.8 · (2 · h / D)^(−5/3), 6.4 · (E / G*)^(−5/7)) / (G* · D³)",
        shaft(),
        turningByMoment(),
        SHAFT,
        VALID,
        x ->
            1.25
                * scale
                * Math.max(
                    0.8 * StrictMath.pow(2 * x[1] / x[2], -5.0 / 3),
                    6.4 * StrictMath.pow(x[3] / x[0], -5.0 / 7))
                / (x[0] * x[2] * x[2] * x[2]));
  }

  /** Way of the ground line under the push: push, top, yield, turn. */
  Formula slidingSway() {
    return new Formula(
        "pier-stiffness.held-sliding-sway",
        "y2 = P · (cH / 1000 + cT · t / 10⁶)",
        List.of(units.push(), units.top(), yielding(), turning()),
        units.sway("y2", "sliding-sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * (x[2] / 1000 + x[3] * x[1] / 1e6));
  }

  /** Way of the top by the ground line's turn: push, top, turn, turn by moment. */
  Formula rockingSway() {
    double scale = units.imperial() ? 12 : 1000;
    return new Formula(
        "pier-stiffness.held-rocking-sway",
        "y3 = P · t · (cT + cM · t / " + (units.imperial() ? "12" : "1000") + ") / 10⁶",
        List.of(units.push(), units.top(), turning(), turningByMoment()),
        units.sway("y3", "rocking-sway"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] * (x[2] + x[3] * x[1] / scale) / 1e6);
  }

  /**
   * Frequency of the stiff pier on the held ground: instrument, concrete above and below the
   * ground, top, yield, turn, turn by moment.
   */
  Formula groundFrequency() {
    boolean imperial = units.imperial();
    double moment = imperial ? 12000 : 1e6;
    double scale = imperial ? 386.09 * 1e6 : 1e9;
    return new Formula(
        "pier-stiffness.held-ground-frequency",
        "f2 = √("
            + (imperial ? "386.09 · 10⁶" : "10⁹")
            + " / (M · (cH + 2 · cT · t / 1000 + cM · t² / k)"
            + " + Ma · (cH + cT · t / 1000 + cM · t² / (3 · k)) + Mb · cH)) / (2 · π), k = "
            + (imperial ? "12000" : "10⁶"),
        List.of(
            units.mass("M", "instrument-mass"),
            units.mass("Ma", "mass-above"),
            units.mass("Mb", "mass-below"),
            units.top(),
            yielding(),
            turning(),
            turningByMoment()),
        FrequencyFormulas.hertz("f2", "ground-frequency"),
        Citation.GEOMETRY,
        "",
        x -> {
          double byTurn = x[5] * x[3] / 1000;
          double byMoment = x[6] * x[3] * x[3] / moment;
          double sum =
              x[0] * (x[4] + 2 * byTurn + byMoment)
                  + x[1] * (x[4] + byTurn + byMoment / 3)
                  + x[2] * x[4];
          return Math.sqrt(scale / sum) / (2 * Math.PI);
        });
  }
}
