package pegbook.calc.concreteplan;

import pegbook.job.Concrete.Mixing;
import pegbook.job.Crew;
import pegbook.measure.Duration;
import pegbook.measure.UnitSystem;

/**
 * How fast two people mix and place, and how long the concrete allows. Common practice, no source,
 * but for the window: the standard for ready-mixed concrete wants a load out of the truck an hour
 * and a half after the water went in, and the same is taken here from the first batch of a hole to
 * its last, so that steel and form are not moved in concrete that has begun to set.
 */
enum MixingRate {
  BY_HAND(Mixing.BY_HAND, 7, 12, 250, 420, 0),
  MIXER(Mixing.MIXER, 3.5, 7, 125, 250, 0),
  /** By barrow from the truck, half an hour of whose time goes on the road. */
  READY_MIX(Mixing.READY_MIX, 1, 2, 35, 70, 30);

  private static final double WINDOW_MINUTES = 90;

  private final Mixing mixing;
  private final double leastPerCubicFoot;
  private final double mostPerCubicFoot;
  private final double leastPerCubicMetre;
  private final double mostPerCubicMetre;
  private final double minutesOnTheRoad;

  MixingRate(
      Mixing mixing,
      double leastPerCubicFoot,
      double mostPerCubicFoot,
      double leastPerCubicMetre,
      double mostPerCubicMetre,
      double minutesOnTheRoad) {
    this.mixing = mixing;
    this.leastPerCubicFoot = leastPerCubicFoot;
    this.mostPerCubicFoot = mostPerCubicFoot;
    this.leastPerCubicMetre = leastPerCubicMetre;
    this.mostPerCubicMetre = mostPerCubicMetre;
    this.minutesOnTheRoad = minutesOnTheRoad;
  }

  static MixingRate of(Mixing mixing) {
    for (MixingRate rate : values()) {
      if (rate.mixing == mixing) {
        return rate;
      }
    }
    throw new IllegalArgumentException("no rate for " + mixing);
  }

  /** Minutes that a pair needs for a cubic foot or a cubic metre. */
  double minutes(boolean best, UnitSystem units) {
    if (units == UnitSystem.IMPERIAL) {
      return best ? leastPerCubicFoot : mostPerCubicFoot;
    }
    return best ? leastPerCubicMetre : mostPerCubicMetre;
  }

  /** Pairs of people at work; one drum keeps no more than one pair busy. */
  double pairs(Crew crew) {
    double pairs = crew.people() / 2.0;
    return this == MIXER ? Math.min(1, pairs) : pairs;
  }

  /** The same as figures of the plan. */
  ConcretePlan.Pace pace(UnitSystem units) {
    return new ConcretePlan.Pace(
        Duration.ofMinutes(minutes(true, units)),
        Duration.ofMinutes(minutes(false, units)),
        window());
  }

  /** From the first concrete in a hole to the last. */
  Duration window() {
    return Duration.ofMinutes(WINDOW_MINUTES - minutesOnTheRoad);
  }
}
