package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Mix;
import pegbook.calc.concreteplan.ConcretePlan.Totals;
import pegbook.calc.concreteplan.ConcretePlan.WaterRange;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Concrete;
import pegbook.job.Digging;
import pegbook.job.Job;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.ConcreteBag;

/**
 * Fills the holes: gravel under the concrete, concrete in the hole and above it, bags, the truck's
 * alternative, and the time of each pour.
 *
 * <p>A tube from the ground up leaves the hole below it to be filled with concrete; a tube from the
 * bottom is concrete all the way, with soil or gravel tamped in round it, and then only the tube's
 * area stands on the bottom. The thickness of the tube's wall is left out. Whole bags are opened at
 * every hole, and their sum is the order: an opened bag does not keep.
 */
public final class ConcretePlanCalculator {
  private ConcretePlanCalculator() {}

  /**
   * Fills all holes.
   *
   * @param job the job: mix, digging, crew and units
   * @param holes with the depths that were decided
   */
  public static ConcretePlan calculate(Job job, List<Hole> holes) {
    List<Working> workings = new ArrayList<>();
    Mix mix = mix(job, workings);
    List<Fill> fills = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(holes, hole -> job.side(hole.mark()))) {
      Filling filling = new Filling(job, mix, alike);
      fills.addAll(filling.fills());
      workings.addAll(filling.workings());
    }
    List<String> marks = holes.stream().map(Hole::mark).toList();
    fills.sort(Comparator.comparing(fill -> marks.indexOf(fill.mark())));
    Optional<GravelOrder> gravel = gravel(job, "gravel", "", fills, Fill::gravelLoose);
    Optional<GravelOrder> sideGravel = sideGravel(job, fills);
    Totals totals = totals(job, fills, gravel, workings);
    gravel.ifPresent(order -> workings.add(order.working()));
    sideGravel.ifPresent(order -> workings.add(order.working()));
    List<Need> needs = new ConcretePlanNeeds(job, holes, workings).of(totals, gravel, sideGravel);
    List<String> pourOrder = pourOrder(holes);
    return new ConcretePlan(
        fills,
        totals,
        mix,
        MixingRate.of(job.concrete().mixing()).pace(job.heading().units()),
        pourOrder,
        ConcretePlanFindings.of(job, holes, fills, mix),
        workings,
        needs,
        FillingTasks.of(job, holes, fills, pourOrder));
  }

  private static Mix mix(Job job, List<Working> workings) {
    Concrete concrete = job.concrete();
    Volume yield = concrete.yield().orElseGet(() -> yieldByMass(job, workings));
    ConcretePlanFormulas formulas = new ConcretePlanFormulas(job.heading().units());
    Working inBatch = Working.of(formulas.bagsInBatch(), "", batch(job, yield), yield);
    workings.add(inBatch);
    return new Mix(
        concrete.bag(),
        yield,
        ConcreteBag.find(concrete.bag())
            .flatMap(ConcreteBag::water)
            .map(water -> new WaterRange(water.least(), water.most())),
        concrete.overBreak().orElseGet(() -> overBreak(job.ground().digging())),
        concrete.waste(),
        concrete.ownMix().isPresent() ? 0 : (int) inBatch.result(),
        batch(job, yield));
  }

  /**
   * Common practice: what turns well in a drum of a hire shop; a bag, or half as much, in a tub.
   */
  private static Volume batch(Job job, Volume yield) {
    Volume drum =
        job.heading().units() == UnitSystem.IMPERIAL ? Volume.ofCubicFeet(2) : new Volume(0.06);
    Volume tub = job.concrete().ownMix().isPresent() ? drum.times(0.5) : yield;
    return job.concrete()
        .batch()
        .orElse(job.concrete().mixing() == Concrete.Mixing.MIXER ? drum : tub);
  }

  private static Volume yieldByMass(Job job, List<Working> workings) {
    ConcretePlanFormulas formulas = new ConcretePlanFormulas(job.heading().units());
    Working working = Working.of(formulas.bagYield(), "", job.concrete().bag());
    workings.add(working);
    return working.asVolume();
  }

  /** Common practice: loose sides ravel, stones leave pockets where they come out. */
  static Ratio overBreak(Digging digging) {
    return switch (digging) {
      case EASY -> Ratio.ofPercent(10);
      case ORDINARY, HEAVY -> Ratio.ofPercent(5);
      case STONY -> Ratio.ofPercent(15);
    };
  }

  private static Optional<GravelOrder> sideGravel(Job job, List<Fill> fills) {
    List<String> marks =
        fills.stream().filter(fill -> fill.sideGravel().isPresent()).map(Fill::mark).toList();
    return gravel(
        job,
        "side-gravel",
        MarkRuns.brief(marks),
        fills,
        fill -> fill.sideGravel().orElse(Volume.ZERO));
  }

  private static Optional<GravelOrder> gravel(
      Job job, String id, String subject, List<Fill> fills, Function<Fill, Volume> what) {
    Volume loose = sum(fills, what);
    return loose.isMoreThan(Volume.ZERO)
        ? Optional.of(GravelOrder.of(job, id, subject, loose))
        : Optional.empty();
  }

  private static Totals totals(
      Job job, List<Fill> fills, Optional<GravelOrder> gravel, List<Working> workings) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    int bags = fills.stream().mapToInt(Fill::bags).sum();
    Volume poured = sum(fills, Fill::poured);
    ConcretePlanFormulas formulas = new ConcretePlanFormulas(job.heading().units());
    Working readyMix = Working.of(formulas.readyMix(), "", poured);
    workings.add(readyMix);
    return new Totals(
        sum(fills, Fill::drawn),
        poured,
        readyMix
            .asVolume()
            .setTo(imperial ? Volume.ofCubicYards(0.25) : new Volume(0.25), Rounding.UP),
        bags,
        job.concrete().bag().times(bags),
        sum(fills, Fill::gravelLoose),
        gravel.map(GravelOrder::volume).orElse(Volume.ZERO),
        sum(fills, fill -> fill.backfill().orElse(Volume.ZERO)),
        sum(fills, fill -> fill.sideGravel().orElse(Volume.ZERO)),
        fills.stream().map(Fill::mass).reduce(Mass.ZERO, Mass::plus));
  }

  private static Volume sum(List<Fill> fills, Function<Fill, Volume> what) {
    return fills.stream().map(what).reduce(Volume.ZERO, Volume::plus);
  }

  private static List<String> pourOrder(List<Hole> holes) {
    return holes.stream()
        .sorted(Comparator.comparing(hole -> hole.kind() == MarkKind.PIER ? 0 : 1))
        .map(Hole::mark)
        .toList();
  }
}
