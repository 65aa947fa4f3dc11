package pegbook.calc.concreteplan;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** Volumes of what is wider than a footing's shaft, in the units that the packet prints. */
final class PartFormulas {
  private final Unit small;
  private final Unit volume;

  /** Cubes of the small unit in one of volume. */
  private final double cubes;

  private final String cubesText;

  PartFormulas(UnitSystem units) {
    boolean imperial = units == UnitSystem.IMPERIAL;
    small = imperial ? Unit.INCH : Unit.MILLIMETRE;
    volume = imperial ? Unit.CUBIC_FOOT : Unit.CUBIC_METRE;
    cubes = imperial ? 1728 : 1e9;
    cubesText = imperial ? "1728" : "10⁹";
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, small);
  }

  private Symbol volume(String letter, String id) {
    return new Symbol(letter, id, volume);
  }

  /** A bell, the frustum of a cone over an upright edge: hole, bell, flare, toe. */
  Formula bell() {
    return new Formula(
        "concrete-plan.bell",
        "Vu = π / 4 · ((D² + D · B + B²) / 3 · f + B² · e) / " + cubesText,
        List.of(
            length("D", "filled-hole-diameter"),
            length("B", "bell-diameter"),
            length("f", "bell-flare"),
            length("e", "bell-toe")),
        volume("Vu", "concrete-in-bell"),
        Citation.GEOMETRY,
        "",
        x ->
            Math.PI
                / 4
                * ((x[0] * x[0] + x[0] * x[1] + x[1] * x[1]) / 3 * x[2] + x[1] * x[1] * x[3])
                / cubes);
  }

  /** A round pad as wide as the hole: hole, thickness. */
  Formula pad() {
    return new Formula(
        "concrete-plan.pad",
        "Vp = π · D² / 4 · p / " + cubesText,
        List.of(length("D", "filled-hole-diameter"), length("p", "thickness-of-pad")),
        volume("Vp", "concrete-in-pad"),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 * x[1] / cubes);
  }

  /** A round cap, or as much of it as is poured: diameter, thickness. */
  Formula roundCap() {
    return new Formula(
        "concrete-plan.cap",
        "Vc = π · c² / 4 · k / " + cubesText,
        List.of(length("c", "cap-diameter"), length("k", "thickness-of-cap")),
        volume("Vc", "concrete-in-cap"),
        Citation.GEOMETRY,
        "",
        x -> Math.PI * x[0] * x[0] / 4 * x[1] / cubes);
  }

  /** A square cap, or as much of it as is poured: side, thickness. */
  Formula squareCap() {
    return new Formula(
        "concrete-plan.square-cap",
        "Vc = c² · k / " + cubesText,
        List.of(length("c", "cap-side"), length("k", "thickness-of-cap")),
        volume("Vc", "concrete-in-cap"),
        Citation.GEOMETRY,
        "",
        x -> x[0] * x[0] * x[1] / cubes);
  }
}
