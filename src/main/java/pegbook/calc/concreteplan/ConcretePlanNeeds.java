package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan.Totals;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Job;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/** What must be bought to fill the holes. */
final class ConcretePlanNeeds {
  private ConcretePlanNeeds() {}

  static List<Need> of(Job job, List<Hole> holes, Totals totals) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    List<Need> needs = new ArrayList<>();
    needs.add(concrete(job, totals, imperial));
    if (totals.gravelLoose().isMoreThan(Volume.ZERO)) {
      Unit unit = imperial ? Unit.CUBIC_FOOT : Unit.LITRE;
      needs.add(
          new Need(
              "gravel",
              Map.of(),
              unit.in(totals.gravelLoose()),
              unit.in(totals.gravelOrder()),
              unit,
              Optional.empty()));
    }
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      alike
          .first()
          .tube()
          .filter(tube -> tubeLength(alike.first(), tube).isMoreThan(Length.ZERO))
          .ifPresent(tube -> needs.add(tube(alike, tube)));
    }
    return needs;
  }

  private static Need concrete(Job job, Totals totals, boolean imperial) {
    if (job.concrete().mixing() == Mixing.READY_MIX) {
      Unit unit = imperial ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
      return new Need(
          "ready-mix",
          Map.of("strength", Argument.of(job.concrete().strength())),
          unit.in(totals.poured()),
          unit.in(totals.readyMix()),
          unit,
          Optional.empty());
    }
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("bag", Argument.of(job.concrete().bag()));
    words.put("strength", Argument.of(job.concrete().strength()));
    return new Need(
        "concrete-bags", words, totals.bags(), totals.bags(), Unit.NONE, Optional.empty());
  }

  /** Form tubes, one for each footing, long enough for what they form. */
  private static Need tube(AlikeHoles alike, Tube tube) {
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("inside", Argument.of(tube.inside()));
    words.put("length", Argument.of(tubeLength(alike.first(), tube)));
    words.put("marks", Argument.of(alike.marks()));
    return new Need("form-tube", words, alike.count(), alike.count(), Unit.NONE, Optional.empty());
  }

  private static Length tubeLength(Hole hole, Tube tube) {
    return tube.from() == Tube.From.BOTTOM ? hole.depth().plus(hole.top()) : hole.top();
  }
}
