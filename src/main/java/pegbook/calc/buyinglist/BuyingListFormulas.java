package pegbook.calc.buyinglist;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** What the order weighs and how often one drives, in the units that the packet prints. */
final class BuyingListFormulas {
  /** Loose, dry gravel: 100 lb to the cubic foot, 1600 kg to the cubic metre; common practice. */
  private static final double GRAVEL_POUNDS = 100;

  private static final double GRAVEL_KILOGRAMS = 1600;

  /**
   * Softwood, bought wet or treated, by its nominal size, which is more than it measures: 35 lb to
   * the cubic foot, 560 kg to the cubic metre; plywood 3 lb to the square foot for each inch, 580
   * kg to the cubic metre. Common practice, as are stakes 1 1/2 in square and light posts.
   */
  private static final double TIMBER_POUNDS = 35;

  private static final double TIMBER_KILOGRAMS = 560;
  private static final double PLYWOOD_POUNDS = 36;
  private static final double PLYWOOD_KILOGRAMS = 580;
  private static final double STAKE_POUNDS = 1;
  private static final double STAKE_KILOGRAMS = 0.5;
  private static final double POST_POUNDS = 5;
  private static final double POST_KILOGRAMS = 2.3;

  /** Nominal weights of ASTM A615: 3.4 lb/ft for each square inch; 7850 kg/m³. */
  private static final double STEEL_POUNDS = 3.4;

  private static final double STEEL_KILOGRAMS = 7850;

  /** PVC: 0.61 lb/ft for each square inch; 1400 kg/m³; common practice. */
  private static final double PVC_POUNDS = 0.61;

  private static final double PVC_KILOGRAMS = 1400;

  /**
   * Conductors: copper 8890 kg/m³, the density that standard resistances rest on, aluminium 2700
   * kg/m³, insulation and what fills a cable 1400 kg/m³; pounds to the foot for each square inch.
   */
  private static final double COPPER_POUNDS = 3.854;

  private static final double ALUMINIUM_POUNDS = 1.17;
  private static final double INSULATION_POUNDS = 0.607;
  private static final double COPPER_KILOGRAMS = 8890;
  private static final double ALUMINIUM_KILOGRAMS = 2700;
  private static final double INSULATION_KILOGRAMS = 1400;

  /** Treated timber as yards bring it, wet: common practice. */
  private static final double FRAME_POUNDS = 45;

  private static final double FRAME_KILOGRAMS = 700;

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

  /** Mass of sand, which lies as heavy as gravel: volume. */
  Formula sand() {
    return new Formula(
        "buying-list.sand-mass",
        imperial ? "m = V · 27 · 100" : "m = V · 1600",
        List.of(new Symbol("V", "sand-ordered", imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> imperial ? x[0] * 27 * GRAVEL_POUNDS : x[0] * GRAVEL_KILOGRAMS);
  }

  /** Mass of pipes: how many, length of one, outside and inside diameter. */
  Formula pipes(boolean steel) {
    double kilograms = steel ? STEEL_KILOGRAMS : PVC_KILOGRAMS;
    double pounds = steel ? STEEL_POUNDS : PVC_POUNDS;
    return new Formula(
        steel ? "buying-list.steel-pipe-mass" : "buying-list.pipe-mass",
        imperial
            ? "m = n · L · " + (steel ? "3.4" : "0.61") + " · π · (D² − d²) / 4"
            : "m = n · L · π · (D² − d²) / 4 / 10⁶ · " + (steel ? "7850" : "1400"),
        List.of(
            count(),
            new Symbol("L", "pipe-as-sold", imperial ? Unit.FOOT : Unit.METRE),
            new Symbol("D", "pipe-outside", imperial ? Unit.INCH : Unit.MILLIMETRE),
            new Symbol("d", "pipe-inside", imperial ? Unit.INCH : Unit.MILLIMETRE)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x ->
            x[0]
                * x[1]
                * Math.PI
                * (x[2] * x[2] - x[3] * x[3])
                / 4
                * (imperial ? pounds : kilograms / 1e6));
  }

  /** Mass of wire or cable: length, area of its metal, area of all of it. */
  Formula wire(boolean aluminium) {
    double metal =
        imperial
            ? aluminium ? ALUMINIUM_POUNDS : COPPER_POUNDS
            : aluminium ? ALUMINIUM_KILOGRAMS : COPPER_KILOGRAMS;
    double rest = imperial ? INSULATION_POUNDS : INSULATION_KILOGRAMS;
    String rates = imperial ? aluminium ? "1.17" : "3.854" : aluminium ? "2700" : "8890";
    Unit area = imperial ? Unit.SQUARE_INCH : Unit.SQUARE_MILLIMETRE;
    return new Formula(
        aluminium ? "buying-list.aluminium-wire-mass" : "buying-list.wire-mass",
        imperial
            ? "m = L · (A · " + rates + " + (W − A) · 0.607)"
            : "m = L · (A · " + rates + " + (W − A) · 1400) / 10⁶",
        List.of(
            new Symbol("L", "wire-ordered", imperial ? Unit.FOOT : Unit.METRE),
            new Symbol("A", "wire-metal", area),
            new Symbol("W", "wire-whole", area)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * (x[1] * metal + (x[2] - x[1]) * rest) / (imperial ? 1 : 1e6));
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

  /** Mass of what is ordered by weight. */
  Formula byWeight() {
    return new Formula(
        "buying-list.by-weight",
        "m = w",
        List.of(mass("w", "ordered-by-weight")),
        mass,
        Citation.GEOMETRY,
        "",
        x -> x[0]);
  }

  /** Mass of boards and battens: how many, length, width, thickness, both nominal. */
  Formula timber() {
    return wood(
        "buying-list.timber-mass", imperial ? TIMBER_POUNDS : TIMBER_KILOGRAMS, "nominal-width");
  }

  /** Mass of sheets of plywood: how many, length, width, thickness. */
  Formula plywood() {
    return wood(
        "buying-list.plywood-mass", imperial ? PLYWOOD_POUNDS : PLYWOOD_KILOGRAMS, "sheet-width");
  }

  private Formula wood(String id, double density, String width) {
    double smalls = imperial ? 1728 : 1e9;
    String rate = Long.toString(Math.round(density));
    Unit small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    return new Formula(
        id,
        "m = n · L · b · t / " + (imperial ? "1728" : "10⁹") + " · " + rate,
        List.of(
            count(),
            new Symbol("L", "wood-as-sold", small),
            new Symbol("b", width, small),
            new Symbol("t", "wood-thickness", small)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1] * x[2] * x[3] / smalls * density);
  }

  /** Mass of stakes: how many. */
  Formula stakes() {
    return each("buying-list.stakes-mass", imperial ? STAKE_POUNDS : STAKE_KILOGRAMS);
  }

  /** Mass of light posts of a fence: how many. */
  Formula posts() {
    return each("buying-list.posts-mass", imperial ? POST_POUNDS : POST_KILOGRAMS);
  }

  private Formula each(String id, double each) {
    String rate = each == Math.rint(each) ? Long.toString((long) each) : Double.toString(each);
    return new Formula(
        id,
        "m = n · " + rate,
        List.of(count()),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * each);
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

  /** Mass of timber, treated and not yet dry: how many, length, width, depth. */
  Formula frame() {
    return new Formula(
        "buying-list.frame-mass",
        imperial ? "m = n · L · b · d / 144 · 45" : "m = n · L · b · d / 10⁶ · 700",
        List.of(
            count(),
            new Symbol("L", "timber-as-sold", imperial ? Unit.FOOT : Unit.METRE),
            new Symbol("b", "timber-width", imperial ? Unit.INCH : Unit.MILLIMETRE),
            new Symbol("d", "timber-depth", imperial ? Unit.INCH : Unit.MILLIMETRE)),
        mass,
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] * x[1] * x[2] * x[3] * (imperial ? FRAME_POUNDS / 144 : FRAME_KILOGRAMS / 1e6));
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
