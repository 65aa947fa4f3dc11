package pegbook.calc.pierstiffness;

import pegbook.figures.Hole;
import pegbook.job.Pier;
import pegbook.measure.Length;
import pegbook.measure.Mass;

/**
 * The measures of a pier that decide how stiff it stands.
 *
 * @param column diameter of the concrete above the ground
 * @param base diameter of the concrete below the ground, without bell or pad
 * @param depth of its underside below the ground
 * @param top height of its top above the ground
 * @param instrument mass on its top
 */
record PierShape(Length column, Length base, Length depth, Length top, Mass instrument) {
  /** A column shorter than this above the ground has no height to speak of. */
  private static final Length LEAST_TOP = Length.ofMillimetres(50);

  static PierShape of(Hole hole, Pier pier) {
    return new PierShape(
        hole.formAbove(),
        hole.shaft(),
        hole.depth(),
        hole.top(),
        pier.instrument().orElse(Mass.ZERO));
  }

  /** From the base to the top: the lever of what pushes there. */
  Length lever() {
    return depth.plus(top);
  }

  Length radius() {
    return base.times(0.5);
  }

  PierShape wider(Length change) {
    return new PierShape(column.plus(change), base.plus(change), depth, top, instrument);
  }

  PierShape deeper(Length change) {
    return new PierShape(column, base, depth.plus(change), top, instrument);
  }

  /** True where the method for soil tight along the whole side was made for such a pier. */
  boolean isShaft() {
    double slenderness = depth.dividedBy(base);
    return slenderness >= 1 - 1e-9 && slenderness <= 10 + 1e-9 && top.compareTo(LEAST_TOP) >= 0;
  }
}
