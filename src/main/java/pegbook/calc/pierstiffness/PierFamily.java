package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pegbook.calc.pierstiffness.PierOnGround.Forces;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.calc.pierstiffness.PierStiffness.Hold;
import pegbook.calc.pierstiffness.PierStiffness.Other;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * What other piers would do: wider and narrower ones of the same depth, deeper and shallower ones
 * of the same diameter. Hole and form widen together.
 */
final class PierFamily {
  /** Narrower or shallower than this is no pier. */
  private static final Length LEAST_COLUMN = Length.ofMillimetres(150);

  private static final Length LEAST_DEPTH = Length.ofMillimetres(300);

  private final Job job;
  private final GroundModulus ground;
  private final PierShape shape;
  private final Forces forces;
  private final boolean imperial;

  PierFamily(Job job, GroundModulus ground, PierShape shape, Forces forces) {
    this.job = job;
    this.ground = ground;
    this.shape = shape;
    this.forces = forces;
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
  }

  /** From 4 in narrower to 8 in wider, or 100 mm and 200 mm. */
  List<Other> byDiameter() {
    Length step = imperial ? Length.ofInches(2) : Length.ofMillimetres(50);
    return others(-2, 4, step, shape::wider);
  }

  /** From 12 in shallower to 24 in deeper, or 300 mm and 600 mm. */
  List<Other> byDepth() {
    Length step = imperial ? Length.ofInches(6) : Length.ofMillimetres(150);
    return others(-2, 4, step, shape::deeper);
  }

  private List<Other> others(
      int fewest, int most, Length step, Function<Length, PierShape> changed) {
    List<Other> others = new ArrayList<>();
    for (int i = fewest; i <= most; i++) {
      Length change = step.times(i);
      PierShape other = changed.apply(change);
      boolean isThis = i == 0;
      if (isThis
          || (!other.column().isLessThan(LEAST_COLUMN) && !other.depth().isLessThan(LEAST_DEPTH))) {
        others.add(other(change, isThis, other));
      }
    }
    return List.copyOf(others);
  }

  private Other other(Length change, boolean isThis, PierShape other) {
    // Their steps are not printed: only the pier as planned is a figure of the packet.
    PierOnGround standing = new PierOnGround(job, ground, other, forces, "", new Steps());
    return new Other(
        change,
        isThis,
        standing.softTilt(Hold.BASE_ALONE),
        other.isShaft() ? Optional.of(standing.softTilt(Hold.ALL_DEPTH)) : Optional.empty());
  }
}
