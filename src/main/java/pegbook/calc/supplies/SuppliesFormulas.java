package pegbook.calc.supplies;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * How much of each small thing, in the units that the packet prints. Every rate here is common
 * practice, no source.
 */
final class SuppliesFormulas {
  /** Line that a can of marking paint draws: labels promise two to four times as much. */
  private static final double PAINT_FEET = 150;

  private static final double PAINT_METRES = 45;

  /** How far a cover laps the rim on each side. */
  private static final double LAP_INCHES = 6;

  private static final double LAP_MILLIMETRES = 150;

  /** How far from a hole's edge the fence stands. */
  private static final double CLEAR_FEET = 3;

  private static final double CLEAR_METRES = 1;

  /** From post to post. */
  private static final double POSTS_FEET = 8;

  private static final double POSTS_METRES = 2.5;

  private final boolean imperial;
  private final Unit small;
  private final Unit large;

  SuppliesFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    large = imperial ? Unit.FOOT : Unit.METRE;
  }

  private static Symbol count(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }

  private Symbol small(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol large(String letter, String id) {
    return new Symbol(letter, id, large);
  }

  private static Formula practice(
      String id,
      String expression,
      List<Symbol> inputs,
      Symbol result,
      java.util.function.ToDoubleFunction<double[]> function) {
    return new Formula(
        "supplies." + id, expression, inputs, result, Citation.COMMON_PRACTICE, "", function);
  }

  /** Cans of paint: marks, the widest hole. Circle and cross at every mark, both painted twice. */
  Formula paint() {
    return practice(
        "paint",
        imperial ? "c = 2 · n · (π · D / 12 + 2) / 150" : "c = 2 · n · (π · D / 1000 + 0.6) / 45",
        List.of(count("n", "marks-to-paint"), small("D", "widest-hole")),
        count("c", "cans"),
        x ->
            imperial
                ? 2 * x[0] * (Math.PI * x[1] / 12 + 2) / PAINT_FEET
                : 2 * x[0] * (Math.PI * x[1] / 1000 + 0.6) / PAINT_METRES);
  }

  /** Side of a square cover: hole. */
  Formula cover() {
    double lap = imperial ? LAP_INCHES : LAP_MILLIMETRES;
    return practice(
        "cover",
        "s = D + 2 · " + (imperial ? "6" : "150"),
        List.of(small("D", "covered-hole")),
        small("s", "cover-side"),
        x -> x[0] + 2 * lap);
  }

  /**
   * Sheets for covers, before they are set up: covers, their side, width and length of a sheet.
   * What no sheet covers takes whole sheets in two layers crosswise, so that no joint is bare.
   */
  Formula sheets() {
    return practice(
        "sheets",
        "t = n / (⌊W / s⌋ · ⌊L / s⌋); where s > W: t = 2 · n · ⌈s / W⌉ · ⌈s / L⌉",
        List.of(
            count("n", "covers"),
            small("s", "cover-side"),
            small("W", "sheet-width"),
            small("L", "sheet-length")),
        count("t", "sheets"),
        x -> {
          long across = Rounding.DOWN.steps(x[2], x[1]);
          return across > 0
              ? x[0] / (across * Rounding.DOWN.steps(x[3], x[1]))
              : 2 * x[0] * Rounding.UP.steps(x[1], x[2]) * Rounding.UP.steps(x[1], x[3]);
        });
  }

  /** Fence: way round the centres, holes, the widest of them. One round all, or a ring each. */
  Formula fence() {
    double inLarge = imperial ? 12 : 1000;
    double clear = imperial ? CLEAR_FEET : CLEAR_METRES;
    String ring = "π · (D / " + (imperial ? "12 + 2 · 3)" : "1000 + 2 · 1)");
    return practice(
        "fence",
        "f = " + ring + " · n, but not more than g + " + ring,
        List.of(
            large("g", "way-round-open-holes"),
            count("n", "open-holes"),
            small("D", "widest-hole")),
        large("f", "fence"),
        x -> {
          double one = Math.PI * (x[2] / inLarge + 2 * clear);
          return Math.min(x[0] + one, x[1] * one);
        });
  }

  /** Posts of a fence that closes on itself, before they are set up: its length. */
  Formula posts() {
    double apart = imperial ? POSTS_FEET : POSTS_METRES;
    return practice(
        "posts",
        "p = f / " + (imperial ? "8" : "2.5"),
        List.of(large("f", "fence")),
        count("p", "fence-posts"),
        x -> x[0] / apart);
  }

  /** One of the four boards of a box as wide as the hole: hole. */
  Formula boxBoard() {
    return board("box-board", "D", "boxed-hole");
  }

  /** Boards of boxes: boxes, height of the concrete over the ground, width of a board. */
  Formula boxBoards() {
    return boards("box-boards", "boxes", "t", "height-of-concrete");
  }

  /** One of the four boards round a square cap: its side. */
  Formula capBoard() {
    return board("cap-board", "c", "cap-side");
  }

  /** Boards round square caps: caps, their thickness, width of a board. */
  Formula capBoards() {
    return boards("cap-boards", "caps", "k", "thickness-of-cap");
  }

  /** One of four boards round a side. Each runs past the next one. */
  private Formula board(String id, String letter, String side) {
    return practice(
        id,
        "l = " + letter + " + " + (imperial ? "3" : "80"),
        List.of(small(letter, side)),
        small("l", "board-piece"),
        x -> x[0] + (imperial ? 3 : 80));
  }

  /** Boards on the four sides of so many things, one above the other. */
  private Formula boards(String id, String things, String letter, String height) {
    return practice(
        id,
        "n = 4 · b · ⌈" + letter + " / w⌉",
        List.of(count("b", things), small(letter, height), small("w", "board-width")),
        count("n", "board-pieces"),
        x -> 4 * x[0] * Rounding.UP.steps(x[1], x[2]));
  }

  /** Boards side by side under caps: caps, their width, width of a board. */
  Formula capDeck() {
    return practice(
        "cap-deck",
        "n = b · ⌈c / w⌉",
        List.of(count("b", "caps"), small("c", "cap-width"), small("w", "board-width")),
        count("n", "board-pieces"),
        x -> x[0] * Rounding.UP.steps(x[1], x[2]));
  }

  /** Legs under the decks: caps. */
  Formula capLegs() {
    return practice(
        "cap-legs",
        "n = 4 · b",
        List.of(count("b", "caps")),
        count("n", "cap-leg-pieces"),
        x -> 4 * x[0]);
  }

  /** One of the two battens that carry a tube over its hole: hole. */
  Formula hanger() {
    return practice(
        "hanger",
        "l = D + 2 · " + (imperial ? "12" : "300"),
        List.of(small("D", "spanned-hole")),
        small("l", "hanger-piece"),
        x -> x[0] + 2 * (imperial ? 12 : 300));
  }

  /** One of the two braces of a tall tube, at half a right angle from two thirds up: height. */
  Formula brace() {
    return practice(
        "brace",
        "l = √2 · 2 / 3 · t + " + (imperial ? "12, set up to 1" : "300, set up to 10"),
        List.of(small("t", "height-of-concrete")),
        small("l", "brace-piece"),
        x -> {
          double step = imperial ? 1 : 10;
          double exact = Math.sqrt(2) * 2 / 3 * x[0] + (imperial ? 12 : 300);
          return Rounding.UP.steps(exact, step) * step;
        });
  }

  /** Timber as it is sold, before it is set up: pieces, length of one, length sold. */
  Formula timber() {
    return practice(
        "timber",
        "t = n / ⌊s / l⌋; where l > s: t = n · ⌈l / s⌉",
        List.of(
            count("n", "timber-pieces"), small("l", "timber-piece"), small("s", "timber-as-sold")),
        count("t", "timbers"),
        x -> {
          long pieces = Rounding.DOWN.steps(x[2], x[1]);
          return pieces > 0 ? x[0] / pieces : x[0] * Rounding.UP.steps(x[1], x[2]);
        });
  }

  /** Sheet that keeps tops wet: tops, diameter. It hangs down all round. */
  Formula curing() {
    return practice(
        "curing-sheet",
        imperial ? "A = n · (d / 12 + 2)²" : "A = n · (d / 1000 + 0.6)²",
        List.of(count("n", "tops"), small("d", "top-diameter")),
        new Symbol("A", "curing-area", imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE),
        x -> {
          double side = imperial ? x[1] / 12 + 2 : x[1] / 1000 + 0.6;
          return x[0] * side * side;
        });
  }

  /** Tube of a cable sleeve: top, depth at which it leaves, diameter of the pier, offset. */
  Formula cableSleeve() {
    return practice(
        "cable-sleeve",
        "l = t + e + d / 2 + 2 · " + (imperial ? "6" : "150"),
        List.of(
            small("t", "height-of-concrete"),
            small("e", "sleeve-leaves-at"),
            small("d", "pier-diameter-there")),
        small("l", "cable-sleeve-length"),
        x -> x[0] + x[1] + x[2] / 2 + 2 * (imperial ? LAP_INCHES : LAP_MILLIMETRES));
  }

  /** What a sheet of plywood measures, its narrow side first: the narrower of what is sold. */
  static List<Length> sheet(UnitSystem units) {
    return units == UnitSystem.IMPERIAL
        ? List.of(Length.ofInches(48), Length.ofInches(96))
        : List.of(Length.ofMillimetres(1220), Length.ofMillimetres(2440));
  }
}
