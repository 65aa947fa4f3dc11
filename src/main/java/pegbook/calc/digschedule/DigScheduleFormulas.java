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
 * @param rate room an hour
 */
record DigScheduleFormulas(
    Unit small, Unit room, double perRoom, String roomText, Unit mass, Unit density, Unit rate) {
  private static final double HALF_HOUR = 0.5;

  static DigScheduleFormulas in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? new DigScheduleFormulas(
            Unit.INCH,
            Unit.CUBIC_FOOT,
            1728,
            "1728",
            Unit.POUND,
            Unit.POUND_PER_CUBIC_FOOT,
            Unit.CUBIC_FOOT_PER_HOUR)
        : new DigScheduleFormulas(
            Unit.MILLIMETRE,
            Unit.CUBIC_METRE,
            1e9,
            "10⁹",
            Unit.KILOGRAM,
            Unit.KILOGRAM_PER_CUBIC_METRE,
            Unit.CUBIC_METRE_PER_HOUR);
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

  /** Person-hours of digging at the factor for good luck. */
  Formula leastTime(Citation rates) {
    return time(
        "dig-schedule.least-time",
        "set down to ½ h, at least ½ h",
        rates,
        n -> Math.max(HALF_HOUR, Rounding.DOWN.steps(hours(n), HALF_HOUR) * HALF_HOUR));
  }

  /** Person-hours of digging at the factor for bad luck. */
  Formula mostTime(Citation rates) {
    return time(
        "dig-schedule.most-time",
        "set up to ½ h",
        rates,
        n -> Rounding.UP.steps(hours(n), HALF_HOUR) * HALF_HOUR);
  }

  private Formula time(
      String id,
      String setting,
      Citation rates,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula(
        id,
        "t = k · V / H · (min(H, z) / r + max(H − z, 0) / q), " + setting,
        List.of(
            new Symbol("V", "bank-volume", room),
            new Symbol("H", "dug-depth", small),
            new Symbol("z", "rate-band", small),
            new Symbol("r", "upper-rate", rate),
            new Symbol("q", "lower-rate", rate),
            new Symbol("k", "time-factor", Unit.NONE)),
        new Symbol("t", "person-hours", Unit.HOUR),
        rates,
        small == Unit.INCH ? "H ≤ 118 in, d ≤ 62 in" : "H ≤ 3000 mm, d ≤ 1595 mm",
        function);
  }

  private static double hours(double[] n) {
    double above = Math.min(n[1], n[2]) / n[3];
    double below = Math.max(n[1] - n[2], 0) / n[4];
    return n[5] * n[0] / n[1] * (above + below);
  }

  /** Person-hours of moving a hole's spoil. */
  Formula carryTime(Citation rates) {
    return new Formula(
        "dig-schedule.carry-time",
        "t = k · W / r",
        List.of(
            new Symbol("W", "loose-volume", room),
            new Symbol("r", "haul-rate", rate),
            new Symbol("k", "time-factor", Unit.NONE)),
        new Symbol("t", "person-hours", Unit.HOUR),
        rates,
        small == Unit.INCH ? "up to 164 ft one way" : "up to 50 m one way",
        n -> n[2] * n[0] / n[1]);
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
