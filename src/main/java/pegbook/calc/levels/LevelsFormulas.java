package pegbook.calc.levels;

import java.util.List;
import java.util.function.ToDoubleFunction;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * The formulas of levels.
 *
 * @param units in which the packet prints
 */
record LevelsFormulas(UnitSystem units) {
  /** Standard gravity, exact by definition. */
  private static final double GRAVITY = 9.80665;

  static LevelsFormulas in(UnitSystem units) {
    return new LevelsFormulas(units);
  }

  private boolean imperial() {
    return units == UnitSystem.IMPERIAL;
  }

  private Unit small() {
    return imperial() ? Unit.INCH : Unit.MILLIMETRE;
  }

  private Unit large() {
    return imperial() ? Unit.FOOT : Unit.METRE;
  }

  /** From the line down to the ground. */
  Formula toGround() {
    return heights(
        "levels.to-ground",
        "g = D − L, set to the nearest s",
        List.of(line(), ground(), division()),
        length("g", "line-to-ground"),
        n -> nearest(n[0] - n[1], n[2]));
  }

  /** From the line down to the top of the concrete. */
  Formula toTop() {
    return heights(
        "levels.to-top",
        "t = D − L − p, set to the nearest s",
        List.of(line(), ground(), top(), division()),
        length("t", "line-to-top"),
        n -> nearest(n[0] - n[1] - n[2], n[3]));
  }

  /** Height of the walking surface. */
  Formula floor() {
    return heights(
        "levels.floor",
        "F = G + f",
        List.of(length("G", "highest-under-floor"), length("f", "floor-over-ground")),
        length("F", "floor-height"),
        n -> n[0] + n[1]);
  }

  /** The walking surface over the datum line. */
  Formula floorOverLine() {
    return heights(
        "levels.floor-over-line",
        "e = F − D",
        List.of(length("F", "floor-height"), line()),
        length("e", "floor-over-line"),
        n -> n[0] - n[1]);
  }

  /** From the top of the concrete up to the walking surface. */
  Formula toFloor() {
    return heights(
        "levels.to-floor",
        "H = F − L − p, set to the nearest s",
        List.of(length("F", "floor-height"), ground(), top(), division()),
        length("H", "top-to-floor"),
        n -> nearest(n[0] - n[1] - n[2], n[3]));
  }

  /** What a post is cut to. */
  Formula cut() {
    return heights(
        "levels.cut",
        "k = F − L − p − b, set to the nearest s",
        List.of(
            length("F", "floor-height"),
            ground(),
            top(),
            length("b", "floor-build-up"),
            division()),
        length("k", "post-cut"),
        n -> nearest(n[0] - n[1] - n[2] - n[3], n[4]));
  }

  /** How far a string sags at its middle. */
  Formula sag() {
    return formula(
        "levels.sag",
        imperial() ? "a = 12 · w · L² / (8 · T)" : "a = 1000 · 9.80665 · w · L² / (8 · T)",
        List.of(weight(), new Symbol("L", "line-span", large()), pull()),
        length("a", "line-sag"),
        n -> sagFactor() * n[0] * n[1] * n[1] / (8 * n[2]));
  }

  /** The longest span that sags by half a division. */
  Formula freeSpan() {
    return formula(
        "levels.free-span",
        imperial()
            ? "M = √(8 · T · (s / 2) / (12 · w)), set down to whole feet"
            : "M = √(8 · T · (s / 2) / (1000 · 9.80665 · w)), set down to 0.1 m",
        List.of(pull(), division(), weight()),
        new Symbol("M", "free-span", large()),
        n -> {
          double free = Math.sqrt(8 * n[0] * (n[1] / 2) / (sagFactor() * n[2]));
          double step = imperial() ? 1 : 0.1;
          return Rounding.DOWN.steps(free, step) * step;
        });
  }

  /** Into how many spans a line is parted. */
  Formula spans() {
    return formula(
        "levels.spans",
        "n = L / M, set up to a whole number",
        List.of(new Symbol("L", "line-span", large()), new Symbol("M", "free-span", large())),
        new Symbol("n", "line-spans", Unit.NONE),
        n -> Rounding.UP.steps(n[0] / n[1], 1));
  }

  private double sagFactor() {
    return imperial() ? 12 : 1000 * GRAVITY;
  }

  /** The sag over a span, with the string's usual weight and pull. */
  Working sagOver(Length span) {
    return new Working(sag(), "", List.of(usualWeight(), large().in(span), usualPull()));
  }

  /** The longest free span for a division of the tape. */
  Working freeSpan(Length division) {
    return new Working(freeSpan(), "", List.of(usualPull(), small().in(division), usualWeight()));
  }

  private double usualWeight() {
    return imperial() ? LineSag.POUNDS_PER_FOOT : LineSag.KILOGRAMS_PER_METRE;
  }

  private double usualPull() {
    return imperial() ? LineSag.PULL_POUNDS : LineSag.PULL_NEWTONS;
  }

  private Symbol weight() {
    return new Symbol(
        "w", "string-weight", imperial() ? Unit.POUND_PER_FOOT : Unit.KILOGRAM_PER_METRE);
  }

  private Symbol pull() {
    return new Symbol("T", "string-pull", imperial() ? Unit.POUND_FORCE : Unit.NEWTON);
  }

  private Symbol line() {
    return length("D", "datum-height");
  }

  private Symbol ground() {
    return length("L", "ground-level");
  }

  private Symbol top() {
    return length("p", "top-over-ground");
  }

  private Symbol division() {
    return length("s", "tape-division");
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small());
  }

  private static double nearest(double value, double step) {
    return Rounding.NEAREST.steps(value, step) * step;
  }

  private static Formula heights(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, Citation.GEOMETRY, "", function);
  }

  private static Formula formula(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      ToDoubleFunction<double[]> function) {
    return new Formula(id, expression, inputs, result, Citation.COMMON_PRACTICE, "", function);
  }
}
