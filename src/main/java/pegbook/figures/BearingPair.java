package pegbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.published.Citation;

/**
 * A hole beside a shallower footing.
 *
 * <p>A footing's load spreads down and outwards from the edge of its underside. A hole whose bottom
 * lies below a line falling one in one (45°) from that edge takes away ground that carries (common
 * practice, no source; weak soils want a flatter line). Depths are compared from the datum line
 * where both levels are known, else from the ground, taken as level.
 *
 * @param shallower the footing
 * @param deeper the hole
 * @param working how far the hole's bottom stays above the line, see {@link #formula}
 */
public record BearingPair(Hole shallower, Hole deeper, Working working) {
  /** No tape shows less. */
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  /**
   * How far a hole's bottom stays above the line that spreads from a footing beside it.
   *
   * @param id the formula's name
   * @param unit of all its lengths
   */
  public static Formula formula(String id, Unit unit) {
    return new Formula(
        id,
        "m = a − (d₁ + d₂) / 2 − (b₂ − b₁)",
        List.of(
            new Symbol("a", "hole-distance", unit),
            new Symbol("d₁", "diameter-of-shallower", unit),
            new Symbol("d₂", "diameter-of-deeper", unit),
            new Symbol("b₁", "underside-of-shallower", unit),
            new Symbol("b₂", "bottom-of-deeper", unit)),
        new Symbol("m", "bearing-line-margin", unit),
        Citation.COMMON_PRACTICE,
        "",
        n -> n[0] - (n[1] + n[2]) / 2 - (n[4] - n[3]));
  }

  /** Every two holes of which one goes below the other's concrete. */
  public static List<BearingPair> all(List<Hole> holes, Formula formula) {
    List<BearingPair> pairs = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        of(holes.get(i), holes.get(j), formula).ifPresent(pairs::add);
      }
    }
    return pairs;
  }

  /**
   * Two holes; none where neither goes below the other's concrete.
   *
   * @param formula made by {@link #formula}
   */
  public static Optional<BearingPair> of(Hole one, Hole other, Formula formula) {
    Length oneUp = below(one, other);
    Length otherUp = below(other, one);
    boolean otherIsDeeper = otherUp.plus(other.gravel()).isMoreThan(oneUp.plus(one.gravel()));
    Hole shallower = otherIsDeeper ? one : other;
    Hole deeper = otherIsDeeper ? other : one;
    Length underside = otherIsDeeper ? oneUp : otherUp;
    Length bottom = (otherIsDeeper ? otherUp : oneUp).plus(deeper.gravel());
    if (!underside.plus(TOLERANCE).isLessThan(bottom)) {
      return Optional.empty();
    }
    return Optional.of(
        new BearingPair(
            shallower,
            deeper,
            Working.of(
                formula,
                deeper.mark() + " / " + shallower.mark(),
                one.centre().distanceTo(other.centre()),
                shallower.bottomWidth(),
                deeper.bottomWidth(),
                underside,
                bottom)));
  }

  /** Depth of a hole's underside below a level that it shares with the other hole. */
  private static Length below(Hole hole, Hole other) {
    return other
        .datumToUnderside()
        .flatMap(otherKnown -> hole.datumToUnderside())
        .orElse(hole.depth());
  }

  /** How far the bottom stays above the line; below it less than zero. */
  public Length margin() {
    return working.asLength();
  }

  /** Whether the hole takes away ground that carries. */
  public boolean fails() {
    return margin().plus(TOLERANCE).isLessThan(Length.ZERO);
  }
}
