package pegbook.calc.powerline;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the route and the trench.
 *
 * @param far unit of the route: feet or metres
 * @param small unit of sizes: inches or millimetres
 * @param room unit of volumes: cubic feet or cubic metres
 * @param rate room an hour
 * @param pace hours to the far unit
 * @param inFar small units in a far one
 * @param step to which a trench's depth is set up, in the small unit
 * @param perRoom what far · small · small is divided by
 * @param perRoomText the same as printed
 */
record PowerLineFormulas(
    Unit far,
    Unit small,
    Unit room,
    Unit rate,
    Unit pace,
    int inFar,
    double step,
    double perRoom,
    String perRoomText) {
  private static final double HALF_HOUR = 0.5;

  static PowerLineFormulas in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? new PowerLineFormulas(
            Unit.FOOT,
            Unit.INCH,
            Unit.CUBIC_FOOT,
            Unit.CUBIC_FOOT_PER_HOUR,
            Unit.HOUR_PER_FOOT,
            12,
            1,
            144,
            "144")
        : new PowerLineFormulas(
            Unit.METRE,
            Unit.MILLIMETRE,
            Unit.CUBIC_METRE,
            Unit.CUBIC_METRE_PER_HOUR,
            Unit.HOUR_PER_METRE,
            1000,
            10,
            1e6,
            "10⁶");
  }

  private Symbol far(String letter, String id) {
    return new Symbol(letter, id, far);
  }

  private Symbol small(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol room(String letter, String id) {
    return new Symbol(letter, id, room);
  }

  private static Symbol hours(String letter, String id) {
    return new Symbol(letter, id, Unit.HOUR);
  }

  /** Trench up to the end of a leg: what came before, then east and north of both ends. */
  Formula route() {
    return new Formula(
        "power-line.route",
        "L = K + √((e − a)² + (n − b)²)",
        List.of(
            far("K", "route-so-far"),
            far("a", "route-from-east"),
            far("b", "route-from-north"),
            far("e", "route-to-east"),
            far("n", "route-to-north")),
        far("L", "route-length"),
        Citation.GEOMETRY,
        "",
        x -> x[0] + StrictMath.hypot(x[3] - x[1], x[4] - x[2]));
  }

  /** A conductor one way: route, cover at either end, slack. */
  Formula oneWay() {
    return new Formula(
        "power-line.one-way",
        "W = L + 2 · (c / " + inFar + " + s)",
        List.of(far("L", "route-length"), small("c", "power-cover"), far("s", "power-slack")),
        far("W", "one-way-length"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] + 2 * (x[1] / inFar + x[2]));
  }

  private String stepText() {
    return small == Unit.INCH ? "1 in" : "10 mm";
  }

  /** To the bare bottom: cover, outside of the pipe, bedding. */
  Formula depth() {
    return new Formula(
        "power-line.trench-depth",
        "h = c + D + b, set up to " + stepText(),
        List.of(small("c", "power-cover"), small("D", "pipe-outside"), small("b", "power-bedding")),
        small("h", "trench-depth"),
        Citation.GEOMETRY,
        "",
        x -> Rounding.UP.steps(x[0] + x[1] + x[2], step) * step);
  }

  /** Least width for power and data side by side: pipe, data pipe, ground between them, margin. */
  Formula width() {
    return new Formula(
        "power-line.trench-width",
        "w = D + E + a + 2 · m, set up to " + stepText(),
        List.of(
            small("D", "pipe-outside"),
            small("E", "data-outside"),
            small("a", "power-data-apart"),
            small("m", "pipe-to-wall")),
        small("w", "trench-width"),
        Citation.COMMON_PRACTICE,
        "",
        x -> Rounding.UP.steps(x[0] + x[1] + x[2] + 2 * x[3], step) * step);
  }

  /** Soil in the ground: length, width, depth. */
  Formula bank() {
    return new Formula(
        "power-line.trench-volume",
        "V = L · w · h / " + perRoomText,
        List.of(far("L", "stretch-length"), small("w", "trench-width"), small("h", "trench-depth")),
        room("V", "trench-bank"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] * x[2] / perRoom);
  }

  /** Soil once dug. */
  Formula loose(Citation swell) {
    return new Formula(
        "power-line.trench-loose",
        "W = V · (1 + q / 100)",
        List.of(room("V", "trench-bank-of-all"), new Symbol("q", "swell", Unit.PERCENT)),
        room("W", "trench-loose"),
        swell,
        "",
        x -> x[0] * (1 + x[1] / 100));
  }

  /** Sand round the pipes: length, width, pipe, data pipe, bedding. */
  Formula sand() {
    return new Formula(
        "power-line.sand",
        "S = L · (w · (D + 2 · b) − π / 4 · (D² + E²)) / " + perRoomText,
        List.of(
            far("L", "route-length"),
            small("w", "trench-width"),
            small("D", "pipe-outside"),
            small("E", "data-outside"),
            small("b", "power-bedding")),
        room("S", "trench-sand"),
        Citation.GEOMETRY,
        "",
        x ->
            x[0]
                * (x[1] * (x[2] + 2 * x[4]) - Math.PI / 4 * (x[2] * x[2] + x[3] * x[3]))
                / perRoom);
  }

  /** Loose soil whose place sand and pipe have taken. */
  Formula over() {
    return new Formula(
        "power-line.left-over",
        "X = L · w · (D + 2 · b) / " + perRoomText + " · (1 + q / 100)",
        List.of(
            far("L", "route-length"),
            small("w", "trench-width"),
            small("D", "pipe-outside"),
            small("b", "power-bedding"),
            new Symbol("q", "swell", Unit.PERCENT)),
        room("X", "trench-left-over"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[1] * (x[2] + 2 * x[3]) / perRoom * (1 + x[4] / 100));
  }

  /** How far a trench stays above a footing's bearing line; negative: below it. */
  Formula bearingLine() {
    return new Formula(
        "power-line.bearing-line",
        "m = d · " + inFar + " − (D + w) / 2 + u − h",
        List.of(
            far("d", "centre-to-line"),
            small("D", "hole-diameter"),
            small("w", "trench-width"),
            small("u", "footing-underside"),
            small("h", "trench-depth")),
        small("m", "above-bearing-line"),
        Citation.COMMON_PRACTICE,
        "a line falling one in one",
        x -> x[0] * inFar - (x[1] + x[2]) / 2 + x[3] - x[4]);
  }

  /** Person-hours by volume: volume, rate, factor. */
  Formula byVolume(String id, Citation rates, boolean up) {
    return new Formula(
        "power-line." + id + (up ? "-most" : "-least"),
        "T = k · V / r, set " + (up ? "up" : "down") + " to ½ h" + (up ? "" : ", at least ½ h"),
        List.of(
            room("V", "trench-volume-worked"),
            new Symbol("r", "trench-rate", rate),
            new Symbol("k", "time-factor", Unit.NONE)),
        hours("T", "person-hours"),
        rates,
        "",
        x -> set(x[2] * x[0] / x[1], up));
  }

  /** Person-hours by length: length, hours to a unit of it, hours before. */
  Formula byLength(String id, boolean up) {
    return new Formula(
        "power-line." + id + (up ? "-most" : "-least"),
        "T = s + k · L, set " + (up ? "up" : "down") + " to ½ h" + (up ? "" : ", at least ½ h"),
        List.of(
            far("L", "route-length"),
            new Symbol("k", "hours-by-length", pace),
            hours("s", "hours-before")),
        hours("T", "person-hours"),
        Citation.COMMON_PRACTICE,
        "",
        x -> set(x[2] + x[1] * x[0], up));
  }

  private static double set(double hours, boolean up) {
    Rounding way = up ? Rounding.UP : Rounding.DOWN;
    return Math.max(HALF_HOUR, way.steps(hours, HALF_HOUR) * HALF_HOUR);
  }

  /** Straight pipe up at an end: cover, way over the ground. */
  Formula riser() {
    return new Formula(
        "power-line.riser",
        "u = c + o",
        List.of(small("c", "power-cover"), small("o", "riser-over-ground")),
        small("u", "riser-length"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] + x[1]);
  }

  /** Pieces of a straight stretch: length, length as sold. */
  Formula pieces() {
    return new Formula(
        "power-line.conduit",
        "n = L / l, set up to a whole number",
        List.of(far("L", "stretch-of-pipe"), far("l", "sold-length")),
        new Symbol("n", "pieces-of-pipe", Unit.NONE),
        Citation.GEOMETRY,
        "",
        x -> Rounding.UP.steps(x[0], x[1]));
  }

  /** The last piece of a stretch: length, pieces, length as sold. */
  Formula rest() {
    return new Formula(
        "power-line.conduit-rest",
        "r = " + inFar + " · (L − (n − 1) · l), set up to " + stepText(),
        List.of(
            far("L", "stretch-of-pipe"),
            new Symbol("n", "pieces-of-pipe", Unit.NONE),
            far("l", "sold-length")),
        small("r", "last-piece-of-pipe"),
        Citation.GEOMETRY,
        "",
        x -> Rounding.UP.steps(inFar * (x[0] - (x[1] - 1) * x[2]), step) * step);
  }

  /** A length off a roll: count, each, waste, step. */
  Formula roll(String id) {
    double whole = small == Unit.INCH ? 5 : 1;
    return new Formula(
        "power-line." + id,
        "M = n · L · (1 + q / 100), set up to " + (small == Unit.INCH ? "5 ft" : "1 m"),
        List.of(
            new Symbol("n", "rolls-side-by-side", Unit.NONE),
            far("L", "length-wanted"),
            new Symbol("q", "cutting-waste", Unit.PERCENT)),
        far("M", "length-to-buy"),
        Citation.COMMON_PRACTICE,
        "",
        x -> Rounding.UP.steps(x[0] * x[1] * (1 + x[2] / 100), whole) * whole);
  }
}
