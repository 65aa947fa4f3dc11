package pegbook.calc.buyinglist;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * What the order weighs and how often one drives, in the units that the packet prints. Small things
 * weigh nothing here.
 */
final class BuyingListFormulas {
  /** Loose, dry gravel: 100 lb to the cubic foot, 1600 kg to the cubic metre; common practice. */
  private static final double GRAVEL_POUNDS = 100;

  private static final double GRAVEL_KILOGRAMS = 1600;

  /** Nominal weights of ASTM A615: 3.4 lb/ft for each square inch; 7850 kg/m³. */
  private static final double STEEL_POUNDS = 3.4;

  private static final double STEEL_KILOGRAMS = 7850;

  private final boolean imperial;
  private final Symbol mass;

  BuyingListFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    mass = mass("m", "order-mass");
  }

  private Symbol mass(String letter, String id) {
    return new Symbol(letter, id, imperial ? Unit.POUND : Unit.KILOGRAM);
  }

  private static Symbol count() {
    return new Symbol("n", "pieces-ordered", Unit.NONE);
  }

  /** Mass of things alike: how many, mass of one. */
  Formula pieces() {
    return new Formula(
        "buying-list.pieces-mass",
        "m = n · e",
        List.of(count(), mass("e", "piece-mass-each")),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1]);
  }

  /** Mass of loose gravel: volume. */
  Formula gravel() {
    return new Formula(
        "buying-list.gravel-mass",
        imperial ? "m = V · 27 · 100" : "m = V · 1600",
        List.of(new Symbol("V", "gravel-ordered", imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> imperial ? x[0] * 27 * GRAVEL_POUNDS : x[0] * GRAVEL_KILOGRAMS);
  }

  /** Mass of gravel in bags: how many, volume of one. */
  Formula gravelBags() {
    return new Formula(
        "buying-list.gravel-bags-mass",
        imperial ? "m = n · b · 100" : "m = n · b / 1000 · 1600",
        List.of(count(), new Symbol("b", "gravel-bag", imperial ? Unit.CUBIC_FOOT : Unit.LITRE)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1] * (imperial ? GRAVEL_POUNDS : GRAVEL_KILOGRAMS / 1000));
  }

  /** Mass of bars: how many, length of one, diameter. */
  Formula bars() {
    return new Formula(
        "buying-list.bars-mass",
        imperial ? "m = n · L · 3.4 · π · d² / 4" : "m = n · L · π · d² / 4 / 10⁶ · 7850",
        List.of(
            count(),
            new Symbol("L", "bar-as-sold", imperial ? Unit.FOOT : Unit.METRE),
            new Symbol("d", "bar-diameter", imperial ? Unit.INCH : Unit.MILLIMETRE)),
        mass,
        imperial
            ? new Citation("astm-a615", "nominal weights, 3.4 lb/ft for each in²")
            : new Citation("metric-bars", "7850 kg/m³"),
        "",
        x ->
            x[0]
                * x[1]
                * Math.PI
                * x[2]
                * x[2]
                / 4
                * (imperial ? STEEL_POUNDS : STEEL_KILOGRAMS / 1e6));
  }

  /** What goes on a trip in whole pieces: load, heaviest piece. */
  Formula wholePieces() {
    return new Formula(
        "buying-list.whole-pieces",
        "w = ⌊F / e⌋ · e",
        List.of(mass("F", "load-limit"), mass("e", "heaviest-piece")),
        mass("w", "load-in-whole-pieces"),
        Citation.COMMON_PRACTICE,
        "e ≤ F",
        x -> Rounding.DOWN.steps(x[0], x[1]) * x[1]);
  }

  /** Trips, before they are set up to a whole number: mass, what goes on a trip. */
  Formula trips() {
    return new Formula(
        "buying-list.trips",
        "t = M / w",
        List.of(mass("M", "mass-to-fetch"), mass("w", "load-in-whole-pieces")),
        new Symbol("t", "trips", Unit.NONE),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] / x[1]);
  }
}
