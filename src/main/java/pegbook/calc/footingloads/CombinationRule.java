package pegbook.calc.footingloads;

import java.util.List;
import pegbook.figures.CombinedLoad.Combination;

/**
 * How much of each load a combination takes.
 *
 * @param combination which it is
 * @param live part of the live load
 * @param snow part of the snow load
 */
record CombinationRule(Combination combination, double live, double snow) {
  /** Those that press on the ground; wind and earthquake are not in the job. */
  static final List<CombinationRule> ALL =
      List.of(
          new CombinationRule(Combination.DEAD, 0, 0),
          new CombinationRule(Combination.DEAD_LIVE, 1, 0),
          new CombinationRule(Combination.DEAD_SNOW, 0, 1),
          new CombinationRule(Combination.DEAD_LIVE_SNOW, 0.75, 0.75));

  /** What it gives, all in one unit. */
  double total(double deadLoad, double liveLoad, double snowLoad) {
    return deadLoad + live * liveLoad + snow * snowLoad;
  }

  /** Which gives the most; of equal ones the first. */
  static Combination governs(double deadLoad, double liveLoad, double snowLoad) {
    CombinationRule worst = ALL.get(0);
    for (CombinationRule rule : ALL) {
      if (rule.total(deadLoad, liveLoad, snowLoad) > worst.total(deadLoad, liveLoad, snowLoad)) {
        worst = rule;
      }
    }
    return worst.combination();
  }
}
