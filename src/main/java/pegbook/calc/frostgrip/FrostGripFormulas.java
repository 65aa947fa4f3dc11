package pegbook.calc.frostgrip;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of grip and uplift: inches, square feet, psf and pounds-force, or millimetres,
 * square metres, kilopascals and kilonewtons. Concrete weighs 150 lb/ft³, or 23.54 kN/m³ (2,400
 * kg/m³).
 */
final class FrostGripFormulas {
  /** A footing's side against uplift: a sixth of the bearing pressure, to a limit. */
  static final Citation FRICTION = new Citation("ibc-1810-memory", "1810.3.3.1.4");

  static final Citation GRIP = new Citation("cfem-2006", "frost action, after Penner 1974");
  static final Citation UPLIFT = new Citation("asce-7-16", "2.4.1");

  private final boolean imperial;
  private final Unit small;
  private final Unit force;
  private final Unit pressure;
  private final Unit area;
  private final double weight;
  private final String weightText;
  private final double squares;
  private final String squaresText;
  private final double cubes;
  private final String cubesText;

  FrostGripFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    force = imperial ? Unit.POUND_FORCE : Unit.KILONEWTON;
    pressure = imperial ? Unit.PSF : Unit.KILOPASCAL;
    area = imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    weight = imperial ? 150 : 23.54;
    weightText = imperial ? "150" : "23.54";
    squares = imperial ? 144 : 1e6;
    squaresText = imperial ? "144" : "10⁶";
    cubes = imperial ? 1728 : 1e9;
    cubesText = imperial ? "1728" : "10⁹";
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol force(String letter, String id) {
    return new Symbol(letter, id, force);
  }

  private Symbol depth() {
    return length("h", "depth-target");
  }

  private Symbol frozenSide() {
    return length("z", "frozen-side");
  }

  private Symbol across() {
    return length("d", "standing-diameter");
  }

  private Symbol held() {
    return force("H", "held-down");
  }

  /** How much of the side freezes: depth, the authority's frost depth, the estimate. */
  Formula frozen() {
    return new Formula(
        "frost-grip.frozen",
        "z = min(h, max(f, e))",
        List.of(depth(), length("f", "frost-rule"), length("e", "frost-estimate")),
        frozenSide(),
        Citation.GEOMETRY,
        "",
        x -> Math.min(x[0], Math.max(x[1], x[2])));
  }

  /** Grip on the side: stress, diameter, frozen side. */
  Formula grip() {
    return new Formula(
        "frost-grip.grip",
        "G = τ · π · d · z / " + squaresText,
        List.of(new Symbol("τ", "grip-stress", pressure), across(), frozenSide()),
        force("G", "grip"),
        GRIP,
        "",
        x -> x[0] * Math.PI * x[1] * x[2] / squares);
  }

  /** What is always there: dead load, diameter, depth, diameter and height above the ground. */
  Formula hold() {
    return new Formula(
        "frost-grip.hold",
        "H = D + " + weightText + " · π / 4 · (d² · h + c² · t) / " + cubesText,
        List.of(
            force("D", "always-there"),
            across(),
            depth(),
            length("c", "diameter-above-ground"),
            length("t", "top-above-ground")),
        held(),
        Citation.GEOMETRY,
        "",
        x -> x[0] + weight * Math.PI / 4 * (x[1] * x[1] * x[2] + x[3] * x[3] * x[4]) / cubes);
  }

  /** The same with bell or pad and cap: what holds without them, their concrete. */
  Formula holdWidened() {
    Unit volume = imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
    return new Formula(
        "frost-grip.hold-widened",
        "H = Hs + " + weightText + " · (Vu + Vc)",
        List.of(
            force("Hs", "held-by-shaft"),
            new Symbol("Vu", "concrete-in-bottom", volume),
            new Symbol("Vc", "concrete-in-cap", volume)),
        held(),
        Citation.GEOMETRY,
        "",
        x -> x[0] + weight * (x[1] + x[2]));
  }

  /** Friction below the frost: bearing pressure, its limit, diameter, depth, frozen side. */
  Formula anchorage() {
    return new Formula(
        "frost-grip.anchorage",
        "R = min(q / 6, m) · π · d · (h − z) / " + squaresText,
        List.of(allowed(), most(), across(), depth(), frozenSide()),
        force("R", "anchorage"),
        FRICTION,
        "",
        x -> Math.min(x[0] / 6, x[1]) * Math.PI * x[2] * (x[3] - x[4]) / squares);
  }

  private Symbol allowed() {
    return new Symbol("q", "allowed-pressure", pressure);
  }

  private Symbol most() {
    return new Symbol("m", "most-friction", pressure);
  }

  /** How much deeper to hold: grip, held, anchorage, bearing pressure, its limit, diameter. */
  Formula deeper() {
    return new Formula(
        "frost-grip.deeper",
        imperial
            ? "e = 12 · (G − H − R) / (min(q / 6, m) · π · d / 12 + 150 · π / 4 · d² / 144)"
            : "e = 1000 · (G − H − R) / (min(q / 6, m) · π · d / 1000 + 23.54 · π / 4 · d² / 10⁶)",
        List.of(force("G", "grip"), held(), force("R", "anchorage"), allowed(), most(), across()),
        length("e", "deeper"),
        FRICTION,
        "",
        x -> {
          double large = imperial ? 12 : 1000;
          double friction = Math.min(x[3] / 6, x[4]) * Math.PI * x[5] / large;
          return large
              * (x[0] - x[1] - x[2])
              / (friction + weight * Math.PI / 4 * x[5] * x[5] / squares);
        });
  }

  /** Wind under a roof: pressure, roof, the support's part of the floor, the whole floor. */
  Formula windUp() {
    return new Formula(
        "frost-grip.wind-up",
        "U = u · S · A / F",
        List.of(
            new Symbol("u", "wind-pressure", pressure),
            new Symbol("S", "roof-area", area),
            new Symbol("A", "support-area", area),
            new Symbol("F", "area-of-floor", area)),
        force("U", "wind-up"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] * x[2] / x[3]);
  }

  /** What post base or bolts must hold: wind, dead load above them. */
  Formula anchor() {
    return new Formula(
        "frost-grip.wind-anchor",
        "T = U − 0.6 · D",
        List.of(force("U", "wind-up"), force("D", "always-there")),
        force("T", "anchor-force"),
        UPLIFT,
        "",
        x -> x[0] - 0.6 * x[1]);
  }

  /** What lifts the footing: wind, what is always there. */
  Formula net() {
    return new Formula(
        "frost-grip.wind-net",
        "N = U − 0.6 · H",
        List.of(force("U", "wind-up"), held()),
        force("N", "net-lift"),
        UPLIFT,
        "",
        x -> x[0] - 0.6 * x[1]);
  }
}
