package pegbook.calc.workestimate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.calc.workestimate.WorkEstimate.Part;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of the work estimate.
 *
 * @param small unit of sizes: inches or millimetres
 * @param room unit of volumes: cubic feet or cubic metres
 * @param perRoom how many cubes of the small unit make one of room
 * @param roomText the same number as printed
 * @param rate room an hour
 */
record WorkEstimateFormulas(Unit small, Unit room, double perRoom, String roomText, Unit rate) {
  private static final double HALF_HOUR = 0.5;

  static WorkEstimateFormulas in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? new WorkEstimateFormulas(
            Unit.INCH, Unit.CUBIC_FOOT, 1728, "1728", Unit.CUBIC_FOOT_PER_HOUR)
        : new WorkEstimateFormulas(
            Unit.MILLIMETRE, Unit.CUBIC_METRE, 1e9, "10⁹", Unit.CUBIC_METRE_PER_HOUR);
  }

  private static String id(Part part) {
    return switch (part) {
      case START -> "work-estimate.start-time";
      case AUGER -> "work-estimate.auger-time";
      case WIDEN -> "work-estimate.widen-time";
      case BY_HAND -> "work-estimate.by-hand-time";
      case CLEAR -> throw new IllegalArgumentException(part.name());
    };
  }

  /** Person-hours of a part of digging at the published rate: a ring of soil, in two bands. */
  Formula partTime(Part part, Citation rates) {
    return new Formula(
        id(part),
        "t = π · (D² − d²) / 4 / " + roomText + " · (a / r + b / q)",
        List.of(
            new Symbol("D", "ring-outside", small),
            new Symbol("d", "ring-inside", small),
            new Symbol("a", "stretch-in-upper-band", small),
            new Symbol("b", "stretch-below-band", small),
            new Symbol("r", "upper-rate", rate),
            new Symbol("q", "lower-rate", rate)),
        new Symbol("t", "hours-at-rate", Unit.HOUR),
        rates,
        small == Unit.INCH ? "down to 118 in, D ≤ 62 in" : "down to 3000 mm, D ≤ 1595 mm",
        n -> Math.PI * (n[0] * n[0] - n[1] * n[1]) / 4 / perRoom * (n[2] / n[4] + n[3] / n[5]));
  }

  /** Person-hours of a hole when all goes well. */
  static Formula least(boolean machine) {
    return whole(
        machine ? "work-estimate.with-auger-least" : "work-estimate.least",
        ", set down to ½ h, at least ½ h",
        machine,
        WorkEstimateFormulas::setDown);
  }

  /** Person-hours of a hole when all goes badly. */
  static Formula most(boolean machine) {
    return whole(
        machine ? "work-estimate.with-auger-most" : "work-estimate.most",
        ", set up to ½ h",
        machine,
        WorkEstimateFormulas::setUp);
  }

  private static Formula whole(
      String id, String setting, boolean machine, ToDoubleFunction<Double> set) {
    List<Symbol> hand =
        List.of(
            new Symbol("h", "hand-hours-at-rate", Unit.HOUR),
            new Symbol("k", "hand-factor", Unit.NONE),
            new Symbol("c", "clearing-minutes", Unit.MINUTE));
    List<Symbol> both =
        List.of(
            hand.get(0),
            hand.get(1),
            hand.get(2),
            new Symbol("m", "auger-hours-at-rate", Unit.HOUR),
            new Symbol("g", "auger-factor", Unit.NONE));
    return new Formula(
        id,
        (machine ? "T = k · h + g · m + c / 60" : "T = k · h + c / 60") + setting,
        machine ? both : hand,
        new Symbol("T", "person-hours", Unit.HOUR),
        Citation.COMMON_PRACTICE,
        "",
        n -> set.applyAsDouble(n[1] * n[0] + n[2] / 60 + (machine ? n[4] * n[3] : 0)));
  }

  private static double setDown(double hours) {
    return Math.max(HALF_HOUR, Rounding.DOWN.steps(hours, HALF_HOUR) * HALF_HOUR);
  }

  private static double setUp(double hours) {
    return Math.max(HALF_HOUR, Rounding.UP.steps(hours, HALF_HOUR) * HALF_HOUR);
  }

  /** How much longer the holes that were dug took than the published rate. */
  static Formula realFactor() {
    return new Formula(
        "work-estimate.real-factor",
        "f = R / B",
        List.of(
            new Symbol("R", "hours-really-taken", Unit.HOUR),
            new Symbol("B", "hours-at-rate-of-these", Unit.HOUR)),
        new Symbol("f", "real-factor", Unit.NONE),
        Citation.COMMON_PRACTICE,
        "",
        n -> n[0] / n[1]);
  }

  /** Person-hours of another hole, all going well, once one was dug. */
  static Formula rescaledLeast() {
    return rescaled("work-estimate.rescaled-least", ", set down to ½ h, at least ½ h", false);
  }

  /** Person-hours of another hole, all going badly, once one was dug. */
  static Formula rescaledMost() {
    return rescaled("work-estimate.rescaled-most", ", set up to ½ h", true);
  }

  private static Formula rescaled(String id, String setting, boolean up) {
    return new Formula(
        id,
        "T = l · f · t" + setting,
        List.of(
            new Symbol("t", "hours-at-rate", Unit.HOUR),
            new Symbol("f", "real-factor", Unit.NONE),
            new Symbol("l", "likeness-of-holes", Unit.NONE)),
        new Symbol("T", "person-hours", Unit.HOUR),
        Citation.COMMON_PRACTICE,
        "",
        n -> up ? setUp(n[2] * n[1] * n[0]) : setDown(n[2] * n[1] * n[0]));
  }

  /** Loose soil of a hole's rest: its whole, its depth, how far it was dug. */
  Formula restVolume() {
    return new Formula(
        "work-estimate.rest-volume",
        "W = V · (H − f) / H",
        List.of(
            new Symbol("V", "loose-volume", room),
            new Symbol("H", "planned-depth", small),
            new Symbol("f", "found-depth", small)),
        new Symbol("W", "loose-volume-left", room),
        Citation.GEOMETRY,
        "",
        n -> n[0] * (n[1] - n[2]) / n[1]);
  }

  /** Person-hours of a hole's rest where the job sets those of the whole. */
  Formula restHours() {
    return new Formula(
        "work-estimate.rest-hours",
        "t = T · (H − f) / H",
        List.of(
            new Symbol("T", "person-hours", Unit.HOUR),
            new Symbol("H", "planned-depth", small),
            new Symbol("f", "found-depth", small)),
        new Symbol("t", "person-hours-left", Unit.HOUR),
        Citation.COMMON_PRACTICE,
        "",
        n -> n[0] * (n[1] - n[2]) / n[1]);
  }

  /** Person-hours of moving a hole's spoil. */
  Formula carryTime(Citation rates) {
    return new Formula(
        "work-estimate.carry-time",
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
}
