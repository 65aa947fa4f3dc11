package pegbook.calc.steelplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of the subject, in the units that the packet prints.
 *
 * <p>Frame of a cage: D is the narrowest concrete, c the cover to the outermost steel, s the
 * diameter of the ring's bar (zero without rings), d that of the vertical bars. Section numbers are
 * those of ACI 318-19; earlier editions number some of them otherwise.
 */
final class SteelPlanFormulas {
  static final Citation HOOKS = new Citation("aci-318-19", "25.3.2, 25.7.2.4.1");
  static final Citation TIE_SPACING = new Citation("aci-318-19", "25.7.2.1");
  static final Citation CLEAR_SPACING = new Citation("aci-318-19", "25.2.3");

  /**
   * What a foot of steel of one square inch weighs: the rule of inch-pound mills, and the only
   * round figure that gives every weight of ASTM A615 to its last digit.
   */
  private static final double POUNDS_PER_FOOT_AND_SQUARE_INCH = 3.4;

  private final boolean imperial;
  private final Unit small;

  SteelPlanFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol bar() {
    return length("d", "bar-diameter");
  }

  private Symbol ring() {
    return length("s", "ring-bar-diameter");
  }

  private Symbol concrete() {
    return length("D", "narrowest-concrete");
  }

  private Symbol cover() {
    return length("c", "side-cover");
  }

  private static Symbol bars() {
    return new Symbol("n", "vertical-bars", Unit.NONE);
  }

  /** Length of a vertical bar: depth, height above ground, bottom cover, top cover. */
  Formula vertical() {
    return new Formula(
        "steel-plan.vertical",
        "L = h + t − b − c",
        List.of(
            length("h", "depth-to-underside"),
            length("t", "top-above-ground"),
            length("b", "bottom-cover"),
            length("c", "top-cover")),
        length("L", "vertical-cut"),
        Citation.GEOMETRY,
        "",
        x -> x[0] + x[1] - x[2] - x[3]);
  }

  /** Circle through the centres of the vertical bars: concrete, cover, ring, bar. */
  Formula barCircle() {
    return new Formula(
        "steel-plan.bar-circle",
        "B = D − 2 · c − 2 · s − d",
        List.of(concrete(), cover(), ring(), bar()),
        length("B", "bar-circle"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - 2 * x[1] - 2 * x[2] - x[3]);
  }

  /** Clear distance between neighbouring bars: bar circle, number, bar. */
  Formula clear() {
    return new Formula(
        "steel-plan.clear",
        "e = B · sin(180° / n) − d",
        List.of(length("B", "bar-circle"), bars(), bar()),
        length("e", "clear-spacing"),
        Citation.GEOMETRY,
        "n ≥ 2",
        x -> x[0] * StrictMath.sin(Math.PI / x[1]) - x[2]);
  }

  /** Least clear distance between vertical bars: bar, greatest stone. */
  Formula leastClear() {
    double floor = imperial ? 1.5 : 40;
    return new Formula(
        "steel-plan.least-clear",
        "e₀ = max(" + (imperial ? "1.5" : "40") + ", 1.5 · d, 4/3 · a)",
        List.of(bar(), length("a", "greatest-stone")),
        length("e₀", "least-clear-spacing"),
        CLEAR_SPACING,
        "",
        x -> Math.max(floor, Math.max(1.5 * x[0], 4.0 / 3 * x[1])));
  }

  /** Greatest distance between rings: bar, ring, concrete. */
  Formula greatestSpacing() {
    return new Formula(
        "steel-plan.greatest-spacing",
        "r₀ = min(16 · d, 48 · s, D)",
        List.of(bar(), ring(), concrete()),
        length("r₀", "greatest-ring-spacing"),
        TIE_SPACING,
        "",
        x -> Math.min(16 * x[0], Math.min(48 * x[1], x[2])));
  }

  /**
   * Rings, before they are set up to a whole number: vertical bar, distance from its end, spacing.
   */
  Formula rings() {
    return new Formula(
        "steel-plan.rings",
        "m = (L − 2 · f) / r + 1",
        List.of(
            length("L", "vertical-cut"),
            length("f", "first-ring"),
            length("r", "ring-spacing-asked")),
        new Symbol("m", "rings", Unit.NONE),
        Citation.COMMON_PRACTICE,
        "",
        x -> (x[0] - 2 * x[1]) / x[2] + 1);
  }

  /** Circle through the middle of a ring's bar: concrete, cover, ring. */
  Formula ringCentreline() {
    return new Formula(
        "steel-plan.ring-centreline",
        "R = D − 2 · c − s",
        List.of(concrete(), cover(), ring()),
        length("R", "ring-centreline"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - 2 * x[1] - x[2]);
  }

  /** Straight end behind a hook's bend: ring. */
  Formula hookExtension() {
    double floor = imperial ? 3 : 75;
    return new Formula(
        "steel-plan.hook-extension",
        "x = max(6 · s, " + (imperial ? "3" : "75") + ")",
        List.of(ring()),
        length("x", "hook-extension"),
        HOOKS,
        "",
        x -> Math.max(6 * x[0], floor));
  }

  /** Bar in a hook of 135°, along its middle: inside bend diameter, ring, extension. */
  Formula hook() {
    return new Formula(
        "steel-plan.hook",
        "k = 0.75 · π · (i + s) / 2 + x",
        List.of(length("i", "inside-bend"), ring(), length("x", "hook-extension")),
        length("k", "hook-length"),
        HOOKS,
        "",
        x -> 0.75 * Math.PI * (x[0] + x[1]) / 2 + x[2]);
  }

  /** Bar that makes a ring: centreline, overlap, hook at each end. */
  Formula ringCut() {
    return new Formula(
        "steel-plan.ring-cut",
        "Lr = π · R + o + 2 · k",
        List.of(
            length("R", "ring-centreline"),
            length("o", "ring-overlap"),
            length("k", "hook-length")),
        length("Lr", "ring-cut"),
        HOOKS,
        "",
        x -> Math.PI * x[0] + x[1] + 2 * x[2]);
  }

  /** Mass of a bar for each unit of its length, from the exact diameter: diameter. */
  Formula massPerLength() {
    return new Formula(
        "steel-plan.mass-per-length",
        imperial ? "w = 3.4 · π · d² / 4" : "w = π · d² / 4 / 10⁶ · 7850",
        List.of(bar()),
        new Symbol(
            "w", "mass-per-length", imperial ? Unit.POUND_PER_FOOT : Unit.KILOGRAM_PER_METRE),
        imperial
            ? new Citation("astm-a615", "nominal weights, 3.4 lb/ft for each in²")
            : new Citation("metric-bars", "7850 kg/m³"),
        "",
        x -> Math.PI * x[0] * x[0] / 4 * (imperial ? POUNDS_PER_FOOT_AND_SQUARE_INCH : 7850 / 1e6));
  }

  /** Mass of a piece: mass for each unit of length, length. */
  Formula pieceMass() {
    return new Formula(
        "steel-plan.piece-mass",
        imperial ? "m = w · L / 12" : "m = w · L / 1000",
        List.of(
            new Symbol(
                "w", "mass-per-length", imperial ? Unit.POUND_PER_FOOT : Unit.KILOGRAM_PER_METRE),
            length("L", "piece-cut")),
        new Symbol("m", "piece-mass", imperial ? Unit.POUND : Unit.KILOGRAM),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] / (imperial ? 12 : 1000));
  }

  /** Vertical steel to concrete, percent: number, bar, concrete. */
  Formula ratio() {
    return new Formula(
        "steel-plan.ratio",
        "ρ = 100 · n · d² / D²",
        List.of(bars(), bar(), concrete()),
        new Symbol("ρ", "steel-ratio", Unit.PERCENT),
        Citation.GEOMETRY,
        "",
        x -> 100 * x[0] * x[1] * x[1] / (x[2] * x[2]));
  }

  /** Whole height of the concrete to its least width: depth, height above ground, width. */
  Formula slenderness() {
    return new Formula(
        "steel-plan.slenderness",
        "λ = (h + t) / D",
        List.of(length("h", "depth-to-underside"), length("t", "top-above-ground"), concrete()),
        new Symbol("λ", "slenderness", Unit.NONE),
        Element.PEDESTAL,
        "",
        x -> (x[0] + x[1]) / x[2]);
  }

  /** Height above the ground to the least width: height above ground, width. */
  Formula freeSlenderness() {
    return new Formula(
        "steel-plan.free-slenderness",
        "λₜ = t / D",
        List.of(length("t", "top-above-ground"), concrete()),
        new Symbol("λₜ", "free-slenderness", Unit.NONE),
        Element.PEDESTAL,
        "",
        x -> x[0] / x[1]);
  }

  /** Bars that make a ratio, before setting up: ratio, concrete, bar. */
  Formula barsForRatio() {
    return new Formula(
        "steel-plan.bars-for-ratio",
        "n = ρ / 100 · D² / d²",
        List.of(new Symbol("ρ", "steel-ratio", Unit.PERCENT), concrete(), bar()),
        new Symbol("n", "vertical-bars", Unit.NONE),
        Citation.GEOMETRY,
        "",
        x -> x[0] / 100 * x[1] * x[1] / (x[2] * x[2]));
  }
}
