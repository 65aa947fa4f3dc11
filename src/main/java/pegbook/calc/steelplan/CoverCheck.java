package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.CoverRule;
import pegbook.published.CoverRule.Exposure;

/**
 * Holds the cover beside a cage to its rule: against the soil where the hole is the form, and
 * behind a tube where there is one. Below a tube that begins at the ground the concrete is as wide
 * as the hole, so the cover there is more than the job's.
 *
 * @param alike the footings
 * @param cage their steel
 * @param units whose round figures the rule is read in
 */
record CoverCheck(AlikeHoles alike, Cage cage, UnitSystem units) {

  List<Finding> findings() {
    Hole hole = alike.first();
    List<Finding> findings = new ArrayList<>();
    if (hole.tube().isPresent()) {
      check(cage.cover(), Exposure.FORMED_IN_GROUND_OR_WEATHER).ifPresent(findings::add);
    }
    if (hole.tube().filter(tube -> tube.from() == Tube.From.BOTTOM).isEmpty()) {
      Length toEarth = cage.cover().plus(hole.diameter().minus(cage.concrete()).times(0.5));
      check(toEarth, Exposure.CAST_AGAINST_GROUND).ifPresent(findings::add);
    }
    return findings;
  }

  private Optional<Finding> check(Length cover, Exposure exposure) {
    Length wanted = least(exposure);
    if (!cover.plus(SteelPlanFindings.TOLERANCE).isLessThan(wanted)) {
      return Optional.empty();
    }
    return Optional.of(
        SteelPlanFindings.finding(
                Finding.Kind.ASK, "cover-short", alike, "steel.cover", CoverRule.SOURCE)
            .with("cover", Argument.of(cover))
            .with("wanted", Argument.of(wanted))
            .with("exposure", Argument.entry(words(exposure))));
  }

  /** The rule holds for the ring and, from behind it, for the vertical bars. */
  private Length least(Exposure exposure) {
    Length vertical = CoverRule.least(exposure, cage.diameter(), units);
    return cage.rings()
        .map(Rings::diameter)
        .map(ring -> CoverRule.least(exposure, ring, units).max(vertical.minus(ring)))
        .orElse(vertical);
  }

  private static String words(Exposure exposure) {
    return switch (exposure) {
      case CAST_AGAINST_GROUND -> "steel-plan.exposure.cast-against-ground";
      case FORMED_IN_GROUND_OR_WEATHER -> "steel-plan.exposure.formed";
    };
  }
}
