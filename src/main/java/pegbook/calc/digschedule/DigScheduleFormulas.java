package pegbook.calc.digschedule;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of the dig schedule.
 *
 * @param small unit of sizes: inches or millimetres
 * @param room unit of volumes: cubic feet or cubic metres
 * @param perRoom how many cubes of the small unit make one of room
 * @param roomText the same number as printed
 * @param mass pounds or kilograms
 * @param density mass over room
 */
record DigScheduleFormulas(
    Unit small, Unit room, double perRoom, String roomText, Unit mass, Unit density) {
  static DigScheduleFormulas in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? new DigScheduleFormulas(
            Unit.INCH, Unit.CUBIC_FOOT, 1728, "1728", Unit.POUND, Unit.POUND_PER_CUBIC_FOOT)
        : new DigScheduleFormulas(
            Unit.MILLIMETRE,
            Unit.CUBIC_METRE,
            1e9,
            "10⁹",
            Unit.KILOGRAM,
            Unit.KILOGRAM_PER_CUBIC_METRE);
  }

  /** Soil in the ground that the drawn hole takes: a cylinder. */
  Formula bankVolume() {
    return new Formula(
        "dig-schedule.bank-volume",
        "V = π · d² / 4 · H / " + roomText,
        List.of(new Symbol("d", "hole-diameter", small), new Symbol("H", "dug-depth", small)),
        new Symbol("V", "bank-volume", room),
        Citation.GEOMETRY,
        "",
        n -> Math.PI * n[0] * n[0] / 4 * n[1] / perRoom);
  }

  /** The same of a hole with a bell: hole, dug depth, bell, flare, upright edge under it. */
  Formula belledVolume() {
    return new Formula(
        "dig-schedule.belled-volume",
        "V = π / 4 · (d² · (H − f − e) + (d² + d · B + B²) / 3 · f + B² · e) / " + roomText,
        List.of(
            new Symbol("d", "hole-diameter", small),
            new Symbol("H", "dug-depth", small),
            new Symbol("B", "bell-diameter", small),
            new Symbol("f", "bell-flare", small),
            new Symbol("e", "bell-edge-dug", small)),
        new Symbol("V", "bank-volume", room),
        Citation.GEOMETRY,
        "",
        n ->
            Math.PI
                / 4
                * (n[0] * n[0] * (n[1] - n[3] - n[4])
                    + (n[0] * n[0] + n[0] * n[2] + n[2] * n[2]) / 3 * n[3]
                    + n[2] * n[2] * n[4])
                / perRoom);
  }

  /** The same soil once dug. */
  Formula looseVolume(Citation swell) {
    return new Formula(
        "dig-schedule.loose-volume",
        "W = V · (1 + w / 100)",
        List.of(new Symbol("V", "bank-volume", room), new Symbol("w", "swell", Unit.PERCENT)),
        new Symbol("W", "loose-volume", room),
        swell,
        "",
        n -> n[0] * (1 + n[1] / 100));
  }

  /** Soil that is kept, loose, to tamp in round a tube: as much as it had room in the ground. */
  Formula keptVolume(Citation swell) {
    return new Formula(
        "dig-schedule.kept-volume",
        "K = π · (D² − d²) / 4 · h / " + roomText + " · (1 + w / 100)",
        List.of(
            new Symbol("D", "hole-diameter", small),
            new Symbol("d", "tube-in-hole", small),
            new Symbol("h", "depth-of-tube", small),
            new Symbol("w", "swell", Unit.PERCENT)),
        new Symbol("K", "kept-volume", room),
        swell,
        "",
        n -> Math.PI * (n[0] * n[0] - n[1] * n[1]) / 4 * n[2] / perRoom * (1 + n[3] / 100));
  }

  /** Whole cart loads. */
  Formula cartLoads() {
    return loads("dig-schedule.cart-loads", "loose-volume");
  }

  /** Whole cart loads of all holes, carts filled up from hole to hole. */
  Formula totalLoads() {
    return loads("dig-schedule.total-loads", "loose-volume-of-all");
  }

  private Formula loads(String id, String volume) {
    return new Formula(
        id,
        "n = W / c, set up to a whole number",
        List.of(new Symbol("W", volume, room), new Symbol("c", "cart-volume", room)),
        new Symbol("n", "cart-loads", Unit.NONE),
        Citation.GEOMETRY,
        "",
        n -> Rounding.UP.steps(n[0], n[1]));
  }

  /** Mass of the soil, dry. */
  Formula spoilMass(Citation weight) {
    return new Formula(
        "dig-schedule.spoil-mass",
        "m = V · y",
        List.of(new Symbol("V", "bank-volume", room), new Symbol("y", "soil-weight", density)),
        new Symbol("m", "spoil-mass", mass),
        weight,
        "",
        n -> n[0] * n[1]);
  }

  /** Foot of the cone that loose soil makes, set up to a whole step. */
  Formula heapRadius(Citation repose) {
    return new Formula(
        "dig-schedule.heap-radius",
        "R = ∛(3 · W · " + roomText + " / (π · tan φ)), set up to the next u",
        List.of(
            new Symbol("W", "heap-volume", room),
            new Symbol("φ", "angle-of-repose", Unit.DEGREE),
            new Symbol("u", "heap-step", small)),
        new Symbol("R", "heap-radius", small),
        repose,
        "",
        n ->
            Rounding.UP.steps(StrictMath.cbrt(3 * n[0] * perRoom / (Math.PI * tangent(n[1]))), n[2])
                * n[2]);
  }

  /** Height of the cone. */
  Formula heapHeight() {
    return new Formula(
        "dig-schedule.heap-height",
        "h = R · tan φ",
        List.of(
            new Symbol("R", "heap-radius", small), new Symbol("φ", "angle-of-repose", Unit.DEGREE)),
        new Symbol("h", "heap-height", small),
        Citation.GEOMETRY,
        "",
        n -> n[0] * tangent(n[1]));
  }

  private static double tangent(double degrees) {
    return StrictMath.tan(Unit.DEGREE.toSi(degrees));
  }
}
