package pegbook.calc.markaccuracy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PairError;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.Setting;
import pegbook.calc.markaccuracy.MarkAccuracy.Verdict;
import pegbook.figures.BaselineErrors;
import pegbook.figures.Diggings;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Layout.Tape;
import pegbook.measure.Length;
import pegbook.measure.TapeDivision;
import pegbook.measure.UnitSystem;

/**
 * Works out how good each mark is.
 *
 * <p>The errors of the tapes are carried to every mark as the tape table sets it (see {@link
 * PlanErrors}): an error ellipse, and the radius that holds 95 % of all errors, which is what the
 * job's tolerance means. All pairs of marks, and pairs of pegs beside the work, are looked at for
 * the smallest worst radius. Where a mark is worse than the tolerance, remedies are tried in the
 * order of what they cost: another pair of marks, a third tape to each bad mark, two pegs.
 */
public final class MarkAccuracyCalculator {
  private final Job job;
  private final Placement placement;
  private final Swings swings;
  private final BaselineErrors errors;
  private final PlanErrors plan;
  private final List<Point> places;

  private MarkAccuracyCalculator(Job job, Placement placement, Swings swings) {
    Tape tape = job.layout().tape();
    this.job = job;
    this.placement = placement;
    this.swings = swings;
    this.errors = new BaselineErrors(TapeAccuracy.of(tape), Crossings.onTape(tape.division()));
    this.plan = new PlanErrors(errors, placement, swings);
    this.places = placement.marks().stream().map(PlacedMark::at).toList();
  }

  /**
   * Works out the errors of a job's marks.
   *
   * @param swings from which marks each is taped
   * @param diggings where no peg may stand
   */
  public static MarkAccuracy calculate(
      Job job, Placement placement, Swings swings, Diggings diggings) {
    return new MarkAccuracyCalculator(job, placement, swings).result(diggings);
  }

  private MarkAccuracy result(Diggings diggings) {
    List<MarkError> marks = placement.marks().stream().map(this::mark).toList();
    PairSearch search = PairSearch.among(errors, places, job.layout().tape().length());
    PairError bestPair = pair(search.best().orElseThrow());
    Optional<PeggedBaseline> pegged =
        new Pegging(job, placement, errors).best(new PegGround(job, placement, diggings).places());
    PairError asked = asked(marks);
    Remedies remedies = new Remedies(job.layout(), placement, plan, marks);
    Optional<Remedy> remedy = remedies.cheapest(bestPair, pegged);
    MarkWorkings workings =
        new MarkWorkings(MarkAccuracyFormulas.in(job.heading().units()), errors);
    marks.stream()
        .filter(mark -> mark.isBad() || mark.mark().equals(asked.worst()))
        .forEach(mark -> work(workings, mark));
    return new MarkAccuracy(
        errors.tape(),
        job.layout().tolerance(),
        marks,
        asked,
        bestPair,
        pegged,
        remedy,
        new MarkAccuracyFindings(job.layout(), step(), marks, bestPair, pegged).of(remedy),
        workings.all());
  }

  /** The step to which the packet writes lengths. */
  private Length step() {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    return (imperial ? TapeDivision.SIXTEENTH_INCH : TapeDivision.MILLIMETRE).step();
  }

  private MarkError mark(PlacedMark mark) {
    Setting setting = setting(mark);
    Optional<Swings.OwnPair> pair = swings.pairOf(mark.id());
    PlacedMark first = placement.mark(pair.map(Swings.OwnPair::first).orElse(swings.first()));
    PlacedMark second = placement.mark(pair.map(Swings.OwnPair::second).orElse(swings.second()));
    ErrorEllipse ellipse = ErrorEllipse.of(plan.of(mark.id()).covariance());
    Length radius = ellipse.radiusHolding(BaselineErrors.SHARE);
    boolean swung = setting == Setting.SWING || setting == Setting.OWN_PAIR;
    double offset = Math.abs(new Segment(first.at(), second.at()).offsetMetres(mark.at()));
    boolean told = !swung || BaselineErrors.isTold(ellipse, offset);
    return new MarkError(
        mark.id(),
        setting,
        first.id(),
        second.id(),
        ellipse,
        radius,
        told ? verdict(radius) : Verdict.NOT_TOLD,
        new Leaning(placement.marks()).of(ellipse, mark, first, second));
  }

  private Setting setting(PlacedMark mark) {
    if (mark.id().equals(swings.first())) {
      return Setting.FIRST;
    }
    if (mark.id().equals(swings.second())) {
      return Setting.SECOND;
    }
    if (swings.pairOf(mark.id()).isPresent()) {
      return Setting.OWN_PAIR;
    }
    Segment baseline =
        new Segment(placement.mark(swings.first()).at(), placement.mark(swings.second()).at());
    return errors.crossings().isOnLine(baseline, mark.at()) ? Setting.STRING : Setting.SWING;
  }

  private Verdict verdict(Length radius) {
    return Remedies.isWithin(radius, job.layout().tolerance()) ? Verdict.WITHIN : Verdict.WORSE;
  }

  /** The baseline in use, with the marks set as the tape table sets them. */
  private PairError asked(List<MarkError> marks) {
    MarkError worst =
        marks.stream().max(Comparator.comparing(MarkAccuracyCalculator::badness)).orElseThrow();
    Optional<Length> radius =
        worst.verdict() == Verdict.NOT_TOLD ? Optional.empty() : Optional.of(worst.radius());
    return new PairError(swings.first(), swings.second(), worst.mark(), radius);
  }

  /**
   * A radius in whole millionths of a millimetre, so that marks that are alike keep their order.
   */
  private static double badness(MarkError mark) {
    return mark.verdict() == Verdict.NOT_TOLD
        ? Double.POSITIVE_INFINITY
        : Math.rint(mark.radius().metres() * 1e9);
  }

  private PairError pair(PairSearch.Found found) {
    List<String> names = placement.marks().stream().map(PlacedMark::id).toList();
    return new PairError(
        names.get(found.first()),
        names.get(found.second()),
        names.get(found.worst()),
        found.radius());
  }

  private void work(MarkWorkings workings, MarkError mark) {
    if (mark.setting() == Setting.SWING) {
      workings.swing(
          placement.mark(mark.mark()), placement.mark(mark.first()), placement.mark(mark.second()));
    } else {
      workings.radius(mark.mark(), mark.ellipse());
    }
  }
}
