package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.calc.concreteplan.ConcretePlan.Mix;
import pegbook.calc.concreteplan.ConcretePlan.Span;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Task.Kind;
import pegbook.figures.Working;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Job;
import pegbook.job.Side;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/** Fills holes that are alike, and keeps the steps by which it was done. */
final class Filling {
  private final Job job;
  private final Mix mix;
  private final AlikeHoles alike;
  private final ConcretePlanFormulas formulas;
  private final List<Working> workings = new ArrayList<>();

  Filling(Job job, Mix mix, AlikeHoles alike) {
    this.job = job;
    this.mix = mix;
    this.alike = alike;
    this.formulas = new ConcretePlanFormulas(job.heading().units());
  }

  /** The steps, once {@link #fills()} was asked. */
  List<Working> workings() {
    return List.copyOf(workings);
  }

  /** One filling for each of the holes. */
  List<Fill> fills() {
    Hole hole = alike.first();
    Length standing = hole.standing();
    FootingParts parts = parts(alike.subject(), hole.depth().plus(hole.top()));
    List<Lift> lifts = lifts(hole, parts);
    Fill fill =
        new Fill(
            hole.mark(),
            standing,
            work(formulas.bearing(), standing).asArea(),
            gravel(hole),
            parts.parts(),
            parts.below(),
            parts.above(),
            lifts.stream().map(Lift::poured).reduce(Volume.ZERO, Volume::plus),
            backfill(hole),
            sideGravel(hole),
            lifts.stream().mapToInt(Lift::bags).sum(),
            lifts.stream().mapToInt(Lift::batches).sum(),
            work(formulas.mass(), parts.below().plus(parts.above())).asMass(),
            lifts);
    return alike.marks().stream().map(mark -> forMark(mark, fill)).toList();
  }

  private FootingParts parts(String subject, Length upTo) {
    return FootingParts.of(alike.first(), upTo, job.heading().units(), subject, workings);
  }

  /** All in one go; or up to the joint, and from there on another day. */
  private List<Lift> lifts(Hole hole, FootingParts parts) {
    Length whole = hole.depth().plus(hole.top());
    Volume soil = parts.againstSoil();
    Volume forms = parts.below().plus(parts.above()).minus(soil);
    if (hole.joint().isEmpty()) {
      return List.of(lift(alike.subject(), Kind.POUR, whole, soil, forms));
    }
    Length joint = hole.joint().get();
    FootingParts first = parts(alike.subject() + " · 1", joint);
    Volume firstSoil = first.againstSoil();
    Volume firstForms = first.below().plus(first.above()).minus(firstSoil);
    return List.of(
        lift(alike.subject() + " · 1", Kind.FIRST_LIFT, joint, firstSoil, firstForms),
        lift(
            alike.subject() + " · 2",
            Kind.POUR,
            whole,
            soil.minus(firstSoil),
            forms.minus(firstForms)));
  }

  private Lift lift(String subject, Kind kind, Length to, Volume soil, Volume forms) {
    Volume poured =
        work(subject, formulas.poured(), soil, mix.overBreak(), forms, mix.waste()).asVolume();
    int bags = bags(subject, poured);
    return new Lift(
        kind,
        to,
        poured,
        bags,
        batches(subject, bags, poured),
        new Span(
            work(subject, formulas.pourTime(true), poured, rate(true), pairs()).asDuration(),
            work(subject, formulas.pourTime(false), poured, rate(false), pairs()).asDuration()));
  }

  private static Fill forMark(String mark, Fill fill) {
    return new Fill(
        mark,
        fill.standing(),
        fill.bearing(),
        fill.gravelLoose(),
        fill.parts(),
        fill.below(),
        fill.above(),
        fill.poured(),
        fill.backfill(),
        fill.sideGravel(),
        fill.bags(),
        fill.batches(),
        fill.mass(),
        fill.lifts());
  }

  private Working work(Formula formula, Quantity... quantities) {
    return work(alike.subject(), formula, quantities);
  }

  private Working work(String subject, Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, subject, quantities);
    workings.add(working);
    return working;
  }

  private Volume gravel(Hole hole) {
    if (!hole.gravel().isMoreThan(Length.ZERO)) {
      return Volume.ZERO;
    }
    return work(formulas.gravel(), hole.bottomWidth(), hole.gravel(), mix.overBreak()).asVolume();
  }

  /** Soil round a tube; none where gravel keeps the frost off. */
  private Optional<Volume> backfill(Hole hole) {
    return isInGravel() ? Optional.empty() : round(hole, formulas.backfill());
  }

  private Optional<Volume> sideGravel(Hole hole) {
    return isInGravel() ? round(hole, formulas.sideGravel()) : Optional.empty();
  }

  private boolean isInGravel() {
    return isInGravel(job, alike.first());
  }

  /** Whether gravel goes round the tube, and not soil. */
  static boolean isInGravel(Job job, Hole hole) {
    return job.side(hole.mark()).equals(Optional.of(Side.GRANULAR_BACKFILL));
  }

  /** What is filled in round a tube that stands on the bottom. */
  private Optional<Volume> round(Hole hole, Formula formula) {
    return hole.tubeFromBottom()
        .filter(tube -> tube.inside().isLessThan(hole.diameter()))
        .map(
            tube ->
                work(formula, hole.diameter(), mix.overBreak(), tube.inside(), hole.shaftDepth())
                    .asVolume());
  }

  private int bags(String subject, Volume poured) {
    double bags = work(subject, formulas.bags(), poured, mix.yield()).result();
    return (int) Rounding.UP.steps(bags, 1);
  }

  /** None where the concrete comes mixed. */
  private int batches(String subject, int bags, Volume poured) {
    if (job.concrete().mixing() == Mixing.READY_MIX) {
      return 0;
    }
    double batches =
        job.concrete().ownMix().isPresent()
            ? work(subject, formulas.loads(), poured, mix.batch()).result()
            : work(subject, formulas.batches(), new Count(bags), new Count(mix.bagsInBatch()))
                .result();
    return (int) Rounding.UP.steps(batches, 1);
  }

  private Count rate(boolean best) {
    UnitSystem units = job.heading().units();
    return new Count(MixingRate.of(job.concrete().mixing()).minutes(best, units));
  }

  private Count pairs() {
    return new Count(MixingRate.of(job.concrete().mixing()).pairs(job.crew()));
  }
}
