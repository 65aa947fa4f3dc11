package pegbook.calc.ownmix;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.MixTables;

/**
 * Proportions by absolute volumes: what water, cement, stone and air leave of a unit of concrete is
 * filled with sand. In pounds to the cubic yard, or kilograms to the cubic metre.
 */
final class OwnMixFormulas {
  /** Weight of a cubic foot of water, as the method takes it. */
  private static final double WATER_POUNDS = 62.4;

  private static final double CEMENT_GRAVITY = 3.15;

  private final boolean imperial;
  private final Unit strength;
  private final Unit mass;

  /** Cubic feet in a cubic yard; a cubic metre is one. */
  private final double whole;

  /** Weight of a unit of volume of water. */
  private final double water;

  OwnMixFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    strength = imperial ? Unit.PSI : Unit.MEGAPASCAL;
    mass = imperial ? Unit.POUND : Unit.KILOGRAM;
    whole = imperial ? 27 : 1;
    water = imperial ? WATER_POUNDS : 1000;
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private Symbol mass(String letter, String id) {
    return new Symbol(letter, id, mass);
  }

  private Symbol strength(String letter, String id) {
    return new Symbol(letter, id, strength);
  }

  /** Mean strength to aim at where no record of tests is kept: specified strength. */
  Formula aim() {
    return new Formula(
        "own-mix.aim",
        imperial
            ? "r = f + 1000 below 3000; f + 1200 up to 5000; 1.1 · f + 700 above"
            : "r = f + 7 below 21; f + 8.3 up to 35; 1.1 · f + 5 above",
        List.of(strength("f", "specified-strength")),
        strength("r", "aimed-strength"),
        new Citation("aci-318-11-memory", "Table 5.3.2.2"),
        "",
        x ->
            imperial
                ? x[0] < 3000 ? x[0] + 1000 : x[0] <= 5000 ? x[0] + 1200 : 1.1 * x[0] + 700
                : x[0] < 21 ? x[0] + 7 : x[0] <= 35 ? x[0] + 8.3 : 1.1 * x[0] + 5);
  }

  /** Water to cement between two rows: strength, row below, its ratio, row above, its ratio. */
  Formula waterCement() {
    return new Formula(
        "own-mix.water-cement",
        "w = w1 + (w2 − w1) · (r − r1) / (r2 − r1)",
        List.of(
            strength("r", "aimed-strength"),
            strength("r1", "row-below"),
            number("w1", "ratio-below"),
            strength("r2", "row-above"),
            number("w2", "ratio-above")),
        number("w", "water-cement"),
        MixTables.WATER_CEMENT,
        "r1 ≤ r ≤ r2",
        x -> x[2] + (x[4] - x[2]) * (x[0] - x[1]) / (x[3] - x[1]));
  }

  /** Cement: water, ratio. */
  Formula cement() {
    return new Formula(
        "own-mix.cement",
        "C = W / w",
        List.of(mass("W", "mix-water"), number("w", "water-cement")),
        mass("C", "mix-cement"),
        MixTables.SOURCE,
        "",
        x -> x[0] / x[1]);
  }

  /** Share of stone between two columns: fineness, column below, its share, the next share. */
  Formula share() {
    return new Formula(
        "own-mix.stone-share",
        "b = b1 + (b2 − b1) · (F − F1) / 0.2",
        List.of(
            number("F", "sand-fineness"),
            number("F1", "column-below"),
            number("b1", "share-below"),
            number("b2", "share-above")),
        number("b", "stone-share"),
        MixTables.STONE,
        "F1 ≤ F ≤ F1 + 0.2",
        x -> x[2] + (x[3] - x[2]) * (x[0] - x[1]) / MixTables.FINENESS_STEP);
  }

  /** Stone: share, its density dry and rodded. */
  Formula stone() {
    return new Formula(
        "own-mix.stone",
        imperial ? "G = 27 · b · d" : "G = b · d",
        List.of(
            number("b", "stone-share"),
            new Symbol(
                "d",
                "rodded-density",
                imperial ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE)),
        mass("G", "mix-stone"),
        MixTables.SOURCE,
        "",
        x -> whole * x[0] * x[1]);
  }

  /** Sand: water, cement, stone, air, gravity of stone, gravity of sand. */
  Formula sand() {
    String w = imperial ? "62.4" : "1000";
    return new Formula(
        "own-mix.sand",
        "S = s · "
            + w
            + " · ("
            + (imperial ? "27" : "1")
            + " · (1 − a / 100) − W / "
            + w
            + " − C / (3.15 · "
            + w
            + ") − G / (g · "
            + w
            + "))",
        List.of(
            mass("W", "mix-water"),
            mass("C", "mix-cement"),
            mass("G", "mix-stone"),
            new Symbol("a", "mix-air", Unit.PERCENT),
            number("g", "stone-gravity"),
            number("s", "sand-gravity")),
        mass("S", "mix-sand"),
        MixTables.SOURCE,
        "",
        x ->
            x[5]
                * water
                * (whole * (1 - x[3] / 100)
                    - x[0] / water
                    - x[1] / (CEMENT_GRAVITY * water)
                    - x[2] / (x[4] * water)));
  }

  /** Sand or stone as it lies: weight neither dry nor wet, its water. */
  Formula asItLies(boolean sand) {
    return new Formula(
        sand ? "own-mix.damp-sand" : "own-mix.damp-stone",
        "m = M · (1 + q / 100)",
        List.of(
            mass("M", sand ? "mix-sand" : "mix-stone"), new Symbol("q", "its-water", Unit.PERCENT)),
        mass("m", "weighed-as-it-lies"),
        MixTables.SOURCE,
        "",
        x -> x[0] * (1 + x[1] / 100));
  }

  /** Water to add: water, sand and its water, stone and its water. */
  Formula water() {
    return new Formula(
        "own-mix.water",
        "m = W − S · p / 100 − G · q / 100",
        List.of(
            mass("W", "mix-water"),
            mass("S", "mix-sand"),
            new Symbol("p", "sand-water", Unit.PERCENT),
            mass("G", "mix-stone"),
            new Symbol("q", "stone-water", Unit.PERCENT)),
        mass("m", "water-to-add"),
        MixTables.SOURCE,
        "",
        x -> x[0] - x[1] * x[2] / 100 - x[3] * x[4] / 100);
  }

  /** What the whole job takes of a material: weight in a unit, concrete to mix. */
  Formula inAll(String id) {
    return new Formula(
        "own-mix." + id + "-total",
        imperial ? "M = m · V / 27" : "M = m · V",
        List.of(
            mass("m", "weight-in-unit"),
            new Symbol(
                "V", "concrete-poured-in-all", imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE)),
        mass("M", "weight-in-all"),
        MixTables.SOURCE,
        "",
        x -> x[0] * x[1] / whole);
  }
}
