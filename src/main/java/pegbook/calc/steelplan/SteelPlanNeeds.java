package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.Need;
import pegbook.measure.Unit;

/**
 * What must be bought for the steel beside its bars, which the cut plan counts. Numbers of small
 * things are common practice.
 */
final class SteelPlanNeeds {
  /** Blocks of concrete or plastic feet that carry one cage off the bottom. */
  private static final int FEET = 3;

  /** Spacers that keep one cage off the sides: three low, three high. */
  private static final int SPACERS = 6;

  private static final int TIES_A_LAP = 3;

  private SteelPlanNeeds() {}

  static List<Need> of(List<Cage> cages) {
    List<Need> needs = new ArrayList<>();
    int footings = cages.stream().mapToInt(cage -> cage.marks().size()).sum();
    if (footings > 0) {
      needs.add(pieces("bar-feet", FEET * footings));
      needs.add(pieces("side-spacers", SPACERS * footings));
      needs.add(pieces("bar-caps", cages.stream().mapToInt(SteelPlanNeeds::bars).sum()));
    }
    int crossings = cages.stream().mapToInt(SteelPlanNeeds::crossings).sum();
    if (crossings > 0) {
      needs.add(pieces("wire-ties", crossings));
    }
    return needs;
  }

  private static Need pieces(String id, int count) {
    return new Need(id, Map.of(), count, count, Unit.NONE, Optional.empty());
  }

  private static int bars(Cage cage) {
    return cage.bars() * cage.marks().size();
  }

  /** Every bar is tied to every ring, every lap at its ends and in its middle. */
  private static int crossings(Cage cage) {
    int laps = cage.uprights().starters().isPresent() ? TIES_A_LAP : 0;
    return bars(cage) * (laps + cage.rings().map(SteelPlan.Rings::count).orElse(0));
  }
}
