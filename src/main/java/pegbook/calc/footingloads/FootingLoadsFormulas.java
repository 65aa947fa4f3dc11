package pegbook.calc.footingloads;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of the subject: feet, pounds-force and psf, or metres, kilonewtons and kilopascals.
 *
 * @param area square feet or square metres
 * @param pressure psf or kPa
 * @param force lbf or kN
 */
record FootingLoadsFormulas(Unit area, Unit pressure, Unit force) {
  /** Loads on the ground by allowable stress; IBC 1605.3.1 has the same. */
  static final Citation COMBINATIONS = new Citation("asce-7-16", "2.4.1");

  static FootingLoadsFormulas in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? new FootingLoadsFormulas(Unit.SQUARE_FOOT, Unit.PSF, Unit.POUND_FORCE)
        : new FootingLoadsFormulas(Unit.SQUARE_METRE, Unit.KILOPASCAL, Unit.KILONEWTON);
  }

  /** The floor that carries load: inside its edge, openings. */
  Formula floor() {
    return new Formula(
        "footing-loads.floor",
        "A = Ae − Ao",
        List.of(
            new Symbol("Ae", "area-inside-edge", area), new Symbol("Ao", "area-of-openings", area)),
        new Symbol("A", "area-of-floor", area),
        Citation.GEOMETRY,
        "",
        x -> x[0] - x[1]);
  }

  /** Own weight of a support's part of the floor: its area, the load. */
  Formula dead() {
    return load("footing-loads.dead", "D = A · d", "d", "floor-dead", "D", "support-dead");
  }

  /** Load of use on a support's part of the floor: its area, the load. */
  Formula live() {
    return load("footing-loads.live", "L = A · l", "l", "floor-live", "L", "support-live");
  }

  /** Snow on a support's part of the floor: its area, the snow. */
  Formula snow() {
    return load("footing-loads.snow", "S = A · s", "s", "floor-snow", "S", "support-snow");
  }

  private Formula load(
      String id, String expression, String letter, String symbol, String result, String resultId) {
    return new Formula(
        id,
        expression,
        List.of(new Symbol("A", "support-area", area), new Symbol(letter, symbol, pressure)),
        force(result, resultId),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1]);
  }

  /** The worst combination: dead, live, snow. */
  Formula combined() {
    return new Formula(
        "footing-loads.combined",
        "P = max(D, D + L, D + S, D + 0.75 · L + 0.75 · S)",
        List.of(force("D", "support-dead"), force("L", "support-live"), force("S", "support-snow")),
        force("P", "support-load"),
        COMBINATIONS,
        "",
        x -> {
          double worst = 0;
          for (CombinationRule rule : CombinationRule.ALL) {
            worst = Math.max(worst, rule.total(x[0], x[1], x[2]));
          }
          return worst;
        });
  }

  /** The worst combination where the snow is not known: dead, live. */
  Formula withoutSnow() {
    return new Formula(
        "footing-loads.without-snow",
        "P = D + L",
        List.of(force("D", "support-dead"), force("L", "support-live")),
        force("P", "support-load"),
        COMBINATIONS,
        "",
        x -> x[0] + x[1]);
  }

  private Symbol force(String letter, String id) {
    return new Symbol(letter, id, force);
  }
}
