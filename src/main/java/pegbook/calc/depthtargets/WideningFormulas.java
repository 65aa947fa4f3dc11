package pegbook.calc.depthtargets;

import java.util.List;
import pegbook.figures.Formula;
import pegbook.figures.Symbol;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** The formulas of bells, pads and caps, in the packet's small unit of length. */
final class WideningFormulas {
  /** How steep the side of a bell stands. */
  static final Citation SLOPE = new Citation("aci-336-1-memory", "bells");

  /** A footing of plain concrete is as thick as it stands out, and 6 in at least. */
  static final Citation PLAIN = new Citation("irc", "R403.1.1");

  private final Unit unit;

  WideningFormulas(UnitSystem units) {
    unit = units == UnitSystem.IMPERIAL ? Unit.INCH : Unit.MILLIMETRE;
  }

  private Symbol length(String letter, String id) {
    return new Symbol(letter, id, unit);
  }

  /** Slope of a bell's side against the level: its flare, its diameter, the hole. */
  Formula slope() {
    return new Formula(
        "depth-targets.bell-slope",
        "α = atan2(2 · f, B − D)",
        List.of(
            length("f", "bell-flare"),
            length("B", "bell-diameter"),
            length("D", "filled-hole-diameter")),
        new Symbol("α", "bell-slope", Unit.DEGREE),
        SLOPE,
        "B > D",
        x -> StrictMath.toDegrees(StrictMath.atan2(2 * x[0], x[1] - x[2])));
  }

  /** Thickness that plain concrete asks of a pad or a cap: its width, the shaft, least, step. */
  Formula thickness() {
    return new Formula(
        "depth-targets.plain-thickness",
        "T = max(m, (B − c) / 2), set up to the next s",
        List.of(
            length("B", "width-of-slab"),
            length("c", "width-at-slab"),
            length("m", "least-thickness"),
            length("s", "size-step")),
        length("T", "slab-thickness"),
        PLAIN,
        "",
        x -> Rounding.UP.steps(Math.max(x[2], (x[0] - x[1]) / 2), x[3]) * x[3]);
  }

  /** Ground or air left between two footings where they are widest: distance, widths. */
  Formula between() {
    return new Formula(
        "depth-targets.between-widest",
        "u = a − (b₁ + b₂) / 2",
        List.of(
            length("a", "hole-distance"),
            length("b₁", "wide-of-one"),
            length("b₂", "wide-of-other")),
        length("u", "left-between"),
        Citation.GEOMETRY,
        "",
        x -> x[0] - (x[1] + x[2]) / 2);
  }
}
