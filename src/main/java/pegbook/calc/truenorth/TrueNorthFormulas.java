package pegbook.calc.truenorth;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of shadows and of the turn to the first mark.
 *
 * @param unit the packet's small unit of length
 */
record TrueNorthFormulas(Unit unit) {
  /** A quarter of the sun's width of 0.53°: how well the middle of a soft shadow is marked. */
  private static final double SOFT_DEGREES = 0.13;

  private static final Citation SUN = new Citation("astronomical-algorithms", "chapter 13");

  static TrueNorthFormulas in(UnitSystem units) {
    return new TrueNorthFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** Clock time at which the sun stands highest. */
  static Formula noon() {
    return new Formula(
        "true-north.noon",
        "N = 12 + z − λₑ / 15 − E / 60, brought to 0–24",
        List.of(
            new Symbol("z", "clock-offset", Unit.HOUR),
            new Symbol("λₑ", "east-longitude", Unit.DEGREE),
            SunFormulas.EQUATION_OF_TIME),
        new Symbol("N", "solar-noon", Unit.HOUR),
        SUN,
        "",
        n -> {
          double hours = (12 + n[0] - n[1] / 15 - n[2] / 60) % 24;
          return hours < 0 ? hours + 24 : hours;
        });
  }

  /** How far from straight overhead the sun is at its highest. */
  static Formula zenith() {
    return new Formula(
        "true-north.zenith",
        "ζ = |φ − δ|",
        List.of(new Symbol("φ", "latitude", Unit.DEGREE), SunFormulas.DECLINATION),
        new Symbol("ζ", "noon-zenith", Unit.DEGREE),
        SUN,
        "",
        n -> Math.abs(n[0] - n[1]));
  }

  /** How long the pole's shadow is. */
  Formula shadow() {
    return new Formula(
        "true-north.shadow",
        "l = h · tan ζ",
        List.of(length("h", "pole-height"), new Symbol("ζ", "noon-zenith", Unit.DEGREE)),
        length("l", "shadow-length"),
        Citation.GEOMETRY,
        "10° ≤ ζ ≤ 80°",
        n -> n[0] * SunFormulas.sin(n[1]) / SunFormulas.cos(n[1]));
  }

  /** How far the shadow turns in a minute at noon. */
  static Formula rate() {
    return new Formula(
        "true-north.rate",
        "r = 0.25 · cos δ / sin ζ",
        List.of(SunFormulas.DECLINATION, new Symbol("ζ", "noon-zenith", Unit.DEGREE)),
        new Symbol("r", "shadow-turn", Unit.DEGREE),
        SUN,
        "10° ≤ ζ ≤ 80°",
        n -> 0.25 * SunFormulas.cos(n[0]) / SunFormulas.sin(n[1]));
  }

  /** How well a noon shadow gives north. */
  Formula noonError() {
    return new Formula(
        "true-north.noon-error",
        "e = √((r · k)² + (0.13 / sin ζ)² + (57.3 · m / (h · tan ζ))²)",
        List.of(
            new Symbol("r", "shadow-turn", Unit.DEGREE),
            new Symbol("k", "clock-error", Unit.MINUTE),
            new Symbol("ζ", "noon-zenith", Unit.DEGREE),
            length("m", "marking-error"),
            length("h", "pole-height")),
        new Symbol("e", "noon-error", Unit.DEGREE),
        Citation.COMMON_PRACTICE,
        "10° ≤ ζ ≤ 80°",
        n ->
            root(
                n[0] * n[1],
                SOFT_DEGREES / SunFormulas.sin(n[2]),
                57.3 * n[3] * SunFormulas.cos(n[2]) / (n[4] * SunFormulas.sin(n[2]))));
  }

  /** How far the middle of two equal shadows misses north, as the sun climbs or sinks meanwhile. */
  static Formula drift() {
    return new Formula(
        "true-north.drift",
        "c = (δ₂ − δ₁) / (2 · cos φ · sin t)",
        List.of(
            new Symbol("δ₁", "declination-before", Unit.DEGREE),
            new Symbol("δ₂", "declination-after", Unit.DEGREE),
            new Symbol("φ", "latitude", Unit.DEGREE),
            new Symbol("t", "shadow-hour-angle", Unit.DEGREE)),
        new Symbol("c", "shadow-drift", Unit.DEGREE),
        Citation.GEOMETRY,
        "",
        n -> (n[1] - n[0]) / (2 * SunFormulas.cos(n[2]) * SunFormulas.sin(n[3])));
  }

  /** As far as the marks of two equal shadows are apart. */
  Formula swing() {
    boolean imperial = unit == Unit.INCH;
    double step = imperial ? 12 : 100;
    return new Formula(
        "true-north.swing",
        imperial
            ? "q = 2 · l · sin(β / 2), set up to whole feet"
            : "q = 2 · l · sin(β / 2), set up to 100 mm",
        List.of(length("l", "shadow-length"), new Symbol("β", "between-shadows", Unit.DEGREE)),
        length("q", "shadow-swing"),
        Citation.GEOMETRY,
        "",
        n -> Math.max(1, Rounding.UP.steps(2 * n[0] * SunFormulas.sin(n[1] / 2), step)) * step);
  }

  /** How well two equal shadows give north. */
  Formula equalError() {
    return new Formula(
        "true-north.equal-error",
        "e = √(c² + ((0.13 / cos a)² + (0.13 · g)² + (57.3 · m · tan a / h)²) / 2)",
        List.of(
            new Symbol("c", "shadow-drift", Unit.DEGREE),
            new Symbol("a", "sun-altitude", Unit.DEGREE),
            new Symbol("g", "turn-per-height", Unit.NONE),
            length("m", "marking-error"),
            length("h", "pole-height")),
        new Symbol("e", "equal-error", Unit.DEGREE),
        Citation.COMMON_PRACTICE,
        "",
        n -> {
          double tip =
              root(
                  SOFT_DEGREES / SunFormulas.cos(n[1]),
                  SOFT_DEGREES * n[2],
                  57.3 * n[3] * SunFormulas.sin(n[1]) / (SunFormulas.cos(n[1]) * n[4]));
          return root(n[0], tip / Math.sqrt(2), 0);
        });
  }

  /** What the error of a noon shadow moves the farthest mark. */
  Formula noonOff() {
    return off("true-north.noon-off");
  }

  /** The same of two equal shadows. */
  Formula equalOff() {
    return off("true-north.equal-off");
  }

  /** The same of a compass that is read by hand. */
  Formula compassOff() {
    return off("true-north.compass-off");
  }

  private Formula off(String id) {
    return new Formula(
        id,
        "x = R · tan e",
        List.of(length("R", "figure-radius"), new Symbol("e", "direction-error", Unit.DEGREE)),
        length("x", "mark-off"),
        Citation.GEOMETRY,
        "",
        n -> n[0] * SunFormulas.sin(n[1]) / SunFormulas.cos(n[1]));
  }

  /** The tape across, from a peg on the north line to the direction of the first mark. */
  Formula chord() {
    return chord("true-north.chord", "w = 2 · b · sin(β / 2), set to the nearest s", "w");
  }

  /** The same from the other peg, where the angle is the rest of the half turn. */
  Formula chordCheck() {
    return chord("true-north.chord-check", "v = 2 · b · sin(β / 2), set to the nearest s", "v");
  }

  private Formula chord(String id, String expression, String letter) {
    return new Formula(
        id,
        expression,
        List.of(
            length("b", "line-distance"),
            new Symbol("β", "turn-angle", Unit.DEGREE),
            length("s", "tape-division")),
        length(letter, letter.equals("w") ? "turn-chord" : "turn-check"),
        Citation.GEOMETRY,
        "",
        n -> Rounding.NEAREST.steps(2 * n[0] * SunFormulas.sin(n[1] / 2), n[2]) * n[2]);
  }

  /** What a compass shows along a true direction. */
  static Formula compass() {
    return new Formula(
        "true-north.compass",
        "B = A − D, brought to 0–360",
        List.of(
            new Symbol("A", "true-azimuth", Unit.DEGREE),
            new Symbol("D", "magnetic-declination", Unit.DEGREE)),
        new Symbol("B", "compass-bearing", Unit.DEGREE),
        Citation.GEOMETRY,
        "",
        n -> SunFormulas.turn(n[0] - n[1]));
  }

  private static double root(double one, double other, double third) {
    return Math.sqrt(one * one + other * other + third * third);
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }
}
