package pegbook.calc.placement;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Formulas of the figure on the ground, in inches or millimetres. All are exact plane geometry.
 *
 * @param unit the unit of every length
 */
record PlacementFormulas(Unit unit) {
  private static final double RADIANS_PER_DEGREE = Math.PI / 180;

  static PlacementFormulas in(UnitSystem units) {
    return new PlacementFormulas(units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE);
  }

  /** Radius of the circle through the supports of a regular polygon. */
  Formula supportRadius() {
    return new Formula(
        "placement.support-radius",
        "r = C / 2 − s / cos(180° / n)",
        List.of(length("C", "across-corners"), length("s", "support-inset"), number("n", "sides")),
        length("r", "support-radius"),
        Citation.GEOMETRY,
        "3 ≤ n ≤ 24",
        x -> x[0] / 2 - x[1] / StrictMath.cos(Math.PI / x[2]));
  }

  /** Radius of the circle through the posts of a round floor. */
  Formula postRadius() {
    return new Formula(
        "placement.post-radius",
        "r = D / 2 − s",
        List.of(length("D", "floor-diameter"), length("s", "support-inset")),
        length("r", "support-radius"),
        Citation.GEOMETRY,
        "",
        x -> x[0] / 2 - x[1]);
  }

  /**
   * Azimuth of a mark of a regular figure. It is not brought back under 360 degrees: a formula that
   * jumps could not be worked again from printed numbers.
   */
  Formula azimuth() {
    return new Formula(
        "placement.azimuth",
        "A = A₁ + (i − 1) · 360° / n",
        List.of(
            new Symbol("A₁", "first-azimuth", Unit.DEGREE),
            number("i", "mark-number"),
            number("n", "mark-count")),
        new Symbol("A", "mark-azimuth", Unit.DEGREE),
        Citation.GEOMETRY,
        "",
        x -> x[0] + (x[1] - 1) * 360 / x[2]);
  }

  /** How far east of the centre a mark lies, from its radius and azimuth. */
  Formula east() {
    return new Formula(
        "placement.east",
        "E = r · sin A",
        List.of(length("r", "support-radius"), new Symbol("A", "mark-azimuth", Unit.DEGREE)),
        length("E", "east-of-centre"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * StrictMath.sin(x[1] * RADIANS_PER_DEGREE));
  }

  /** How far north of the centre a mark lies, from its radius and azimuth. */
  Formula north() {
    return new Formula(
        "placement.north",
        "N = r · cos A",
        List.of(length("r", "support-radius"), new Symbol("A", "mark-azimuth", Unit.DEGREE)),
        length("N", "north-of-centre"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * StrictMath.cos(x[1] * RADIANS_PER_DEGREE));
  }

  /** By how much a drawn figure is turned to bring its first mark on its azimuth. */
  Formula turn() {
    return new Formula(
        "placement.turn",
        "T = A₁ − atan2(x₁, y₁)",
        List.of(
            new Symbol("A₁", "first-azimuth", Unit.DEGREE),
            length("x₁", "first-across"),
            length("y₁", "first-up")),
        new Symbol("T", "turn", Unit.DEGREE),
        Citation.GEOMETRY,
        "",
        x -> x[0] - azimuthOf(x[1], x[2]));
  }

  /**
   * Azimuth of a place as drawn; one due south is at 180 degrees, whichever way rounding pulls it.
   */
  private static double azimuthOf(double across, double up) {
    double degrees = StrictMath.atan2(across, up) / RADIANS_PER_DEGREE;
    return degrees < -180 + 1e-9 ? 180 : degrees;
  }

  /** How far east of the centre a mark of a drawn figure lies after the turn. */
  Formula turnedEast() {
    return new Formula(
        "placement.turned-east",
        "E = x · cos T + y · sin T",
        drawnAndTurn(),
        length("E", "east-of-centre"),
        Citation.GEOMETRY,
        "",
        x ->
            x[0] * StrictMath.cos(x[2] * RADIANS_PER_DEGREE)
                + x[1] * StrictMath.sin(x[2] * RADIANS_PER_DEGREE));
  }

  /** How far north of the centre a mark of a drawn figure lies after the turn. */
  Formula turnedNorth() {
    return new Formula(
        "placement.turned-north",
        "N = y · cos T − x · sin T",
        drawnAndTurn(),
        length("N", "north-of-centre"),
        Citation.GEOMETRY,
        "",
        x ->
            x[1] * StrictMath.cos(x[2] * RADIANS_PER_DEGREE)
                - x[0] * StrictMath.sin(x[2] * RADIANS_PER_DEGREE));
  }

  private List<Symbol> drawnAndTurn() {
    return List.of(
        length("x", "drawn-across"), length("y", "drawn-up"), new Symbol("T", "turn", Unit.DEGREE));
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  private static Symbol number(String letter, String id) {
    return new Symbol(letter, id, Unit.NONE);
  }
}
