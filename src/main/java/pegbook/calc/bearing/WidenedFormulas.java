package pegbook.calc.bearing;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/**
 * Weights of footings with a bell, a pad or a cap. Concrete weighs as in {@link BearingFormulas};
 * soil over a bell or a pad weighs as it lies in the ground.
 */
final class WidenedFormulas {
  private final boolean imperial;
  private final Unit small;
  private final Unit force;
  private final Unit volume;
  private final double cubes;
  private final String cubesText;
  private final double weight;
  private final String weightText;

  WidenedFormulas(UnitSystem units) {
    imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    force = imperial ? Unit.POUND_FORCE : Unit.KILONEWTON;
    volume = imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
    cubes = imperial ? 1728 : 1e9;
    cubesText = imperial ? "1728" : "10⁹";
    weight = BearingFormulas.concreteWeight(units);
    weightText = BearingFormulas.concreteWeightText(units);
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol volume(String letter, String id) {
    return new Symbol(letter, id, volume);
  }

  private Symbol force(String letter, String id) {
    return new Symbol(letter, id, force);
  }

  /**
   * Own weight with what is wider than the shaft: weight of shaft and column, concrete of bell or
   * pad, of the cap, weight of the soil, width on the bottom, depth, shaft, its depth.
   */
  Formula ownWeight(Citation soil) {
    String gravity = imperial ? "" : " · 9.80665 / 1000";
    return new Formula(
        "bearing.own-weight-widened",
        "W = Ws + "
            + weightText
            + " · (Vu + Vc) + y"
            + gravity
            + " · (π / 4 · (B² · h − d² · s) / "
            + cubesText
            + " − Vu)",
        List.of(
            force("Ws", "weight-of-shaft"),
            volume("Vu", "concrete-in-bottom"),
            volume("Vc", "concrete-in-cap"),
            new Symbol(
                "y",
                "soil-weight",
                imperial ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE),
            length("B", "standing-diameter"),
            length("h", "depth-of-concrete"),
            length("d", "shaft-diameter"),
            length("s", "depth-of-shaft")),
        force("W", "footing-own-weight"),
        soil,
        "",
        x ->
            x[0]
                + weight * (x[1] + x[2])
                + x[3]
                    * (imperial ? 1 : 9.80665 / 1000)
                    * (Math.PI / 4 * (x[4] * x[4] * x[5] - x[6] * x[6] * x[7]) / cubes - x[1]));
  }

  /** Weight above the ground with a cap: that of the column, concrete of the cap. */
  Formula withCap() {
    return new Formula(
        "bearing.shaft-and-cap",
        "Wf = Wt + " + weightText + " · Vc",
        List.of(force("Wt", "weight-of-column"), volume("Vc", "concrete-in-cap")),
        force("Wf", "weight-above-ground"),
        Citation.COMMON_PRACTICE,
        "",
        x -> x[0] + weight * x[1]);
  }
}
