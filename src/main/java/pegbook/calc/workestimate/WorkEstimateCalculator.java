package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.workestimate.WorkEstimate.Basis;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.calc.workestimate.WorkEstimate.Real;
import pegbook.figures.AlikeHoles;
import pegbook.figures.DigWork;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Field.Dug;
import pegbook.job.Job;
import pegbook.job.Plan;
import pegbook.measure.Count;
import pegbook.measure.Duration;
import pegbook.published.HandDigRate;
import pegbook.published.WorkRange;

/**
 * Estimates the work: digging part by part from published rates, carting from published rates,
 * forms by common practice, all else as its subject says; the job's own hours stand in place of any
 * of them, and what a first hole really took rescales the others.
 */
public final class WorkEstimateCalculator {
  private final Job job;
  private final List<DigWork> digging;
  private final HandDigRate rate;
  private final OwnEstimates own;
  private final List<Working> workings = new ArrayList<>();
  private final Map<String, DigTime> times = new LinkedHashMap<>();
  private final Map<String, List<Working>> ranges = new LinkedHashMap<>();

  private WorkEstimateCalculator(Job job, List<DigWork> digging) {
    this.job = job;
    this.digging = digging;
    this.rate = GroundRate.of(job.ground());
    this.own = new OwnEstimates(job.plan().estimates());
  }

  /**
   * The estimate.
   *
   * @param job ground, units, piers, own estimates, what was dug
   * @param digging every hole, in the order of digging
   * @param sleeves against frost, to be set with the forms
   * @param others what else must be done, each subject's in its order
   */
  public static WorkEstimate calculate(
      Job job, List<DigWork> digging, List<FrostSleeve> sleeves, List<Task> others) {
    return new WorkEstimateCalculator(job, digging).estimate(sleeves, others);
  }

  private WorkEstimate estimate(List<FrostSleeve> sleeves, List<Task> others) {
    for (AlikeHoles alike : AlikeHoles.of(digging.stream().map(DigWork::hole).toList())) {
      time(alike);
    }
    Optional<Real> real = real();
    List<HoleWork> holes = holes(real);
    CarryTime carry = CarryTime.of(job.heading().units(), digging);
    workings.addAll(carry.workings());
    List<Task> tasks = new ArrayList<>(others);
    for (HoleWork hole : holes) {
      tasks.addAll(digTasks(hole));
      tasks.add(Optional.ofNullable(carry.tasks().get(hole.hole().mark())).orElseThrow());
    }
    tasks.addAll(FormTimes.of(job, digging.stream().map(DigWork::hole).toList(), sleeves));
    return new WorkEstimate(
        holes,
        rate,
        real,
        tasks.stream()
            .map(task -> task.kind() == Task.Kind.DIG ? task : own.applied(task))
            .toList(),
        WorkEstimateFindings.of(job, rate, digging, holes, real, times),
        workings);
  }

  private void time(AlikeHoles alike) {
    DigTime time = DigTime.of(work(alike.first()), alike.subject(), rate, job.heading().units());
    workings.addAll(time.workings());
    List<Working> range = time.whole(alike.subject());
    workings.addAll(range);
    for (Hole hole : alike.holes()) {
      times.put(hole.mark(), time);
      ranges.put(hole.mark(), range);
    }
  }

  private DigWork work(Hole hole) {
    return digging.stream().filter(work -> work.hole().equals(hole)).findFirst().orElseThrow();
  }

  private DigTime time(String mark) {
    return Optional.ofNullable(times.get(mark)).orElseThrow();
  }

  private Optional<Real> real() {
    List<Dug> dug = job.field().dug().stream().filter(one -> one.hours().isPresent()).toList();
    if (dug.isEmpty()) {
      return Optional.empty();
    }
    Duration hours =
        dug.stream().flatMap(one -> one.hours().stream()).reduce(Duration.ZERO, Duration::plus);
    Duration atRate =
        dug.stream().map(one -> time(one.hole()).atRate()).reduce(Duration.ZERO, Duration::plus);
    Working factor = Working.of(WorkEstimateFormulas.realFactor(), "", hours, atRate);
    workings.add(factor);
    return Optional.of(new Real(dug.stream().map(Dug::hole).toList(), hours, factor.result()));
  }

  private List<HoleWork> holes(Optional<Real> real) {
    Map<String, HoleWork> byMark = new LinkedHashMap<>();
    if (real.isPresent()) {
      for (AlikeHoles alike : AlikeHoles.of(digging.stream().map(DigWork::hole).toList())) {
        rescale(alike, real.get(), byMark);
      }
    }
    return digging.stream().map(work -> hole(work.hole(), byMark)).toList();
  }

  /** The hours of holes that were not dug yet, from what others took. */
  private void rescale(AlikeHoles alike, Real real, Map<String, HoleWork> byMark) {
    List<Hole> left =
        alike.holes().stream()
            .filter(hole -> !real.holes().contains(hole.mark()))
            .filter(hole -> own.find(Plan.Work.DIG, hole.mark()).isEmpty())
            .toList();
    if (left.isEmpty()) {
      return;
    }
    String subject = new AlikeHoles(left).subject();
    WorkRange likeness = WorkRange.find("after-first");
    Duration atRate = time(left.get(0).mark()).atRate();
    Count factor = new Count(real.factor());
    Working least =
        Working.of(
            WorkEstimateFormulas.rescaledLeast(),
            subject,
            atRate,
            factor,
            new Count(likeness.least()));
    Working most =
        Working.of(
            WorkEstimateFormulas.rescaledMost(),
            subject,
            atRate,
            factor,
            new Count(likeness.most()));
    workings.add(least);
    workings.add(most);
    left.forEach(
        hole ->
            byMark.put(
                hole.mark(),
                new HoleWork(
                    hole,
                    List.of(),
                    least.asDuration(),
                    most.asDuration(),
                    time(hole.mark()).range(),
                    Basis.RESCALED)));
  }

  private HoleWork hole(Hole hole, Map<String, HoleWork> rescaled) {
    String mark = hole.mark();
    DigTime time = time(mark);
    Optional<Duration> dug = job.field().dug(mark).flatMap(Dug::hours);
    if (dug.isPresent()) {
      Duration hours = dug.get();
      return new HoleWork(hole, List.of(), hours, hours, time.range(), Basis.DUG);
    }
    Optional<Plan.Estimate> set = own.find(Plan.Work.DIG, mark);
    if (set.isPresent()) {
      return new HoleWork(
          hole, List.of(), set.get().least(), set.get().most(), time.range(), Basis.JOB);
    }
    List<Working> range = Optional.ofNullable(ranges.get(mark)).orElseThrow();
    return Optional.ofNullable(rescaled.get(mark))
        .orElseGet(
            () ->
                new HoleWork(
                    hole,
                    time.parts(),
                    range.get(0).asDuration(),
                    range.get(1).asDuration(),
                    time.range(),
                    Basis.RATES));
  }

  /** Digging in one, or the booked machine's boring and the rest. */
  private List<Task> digTasks(HoleWork work) {
    Optional<String> mark = Optional.of(work.hole().mark());
    boolean booked =
        job.plan().machine().stream()
            .anyMatch(machine -> machine.purpose() == Plan.Purpose.DIGGING);
    DigTime time = time(work.hole().mark());
    if (!booked || !time.hasMachine() || work.basis() == Basis.DUG) {
      return List.of(new Task(Task.Kind.DIG, mark, work.least(), work.most()));
    }
    double share = time.machineShare();
    return List.of(
        new Task(Task.Kind.BORE, mark, work.least().times(share), work.most().times(share)),
        new Task(Task.Kind.DIG, mark, work.least().times(1 - share), work.most().times(1 - share)));
  }
}
