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
 *
 * <p>What is done is not estimated again. A hole that was dug leaves neither digging nor carting,
 * one that was begun its rest; and before the first of them the marks were painted and proved and
 * the pegs set.
 */
public final class WorkEstimateCalculator {
  /** What is done before anybody digs. */
  private static final List<Task.Kind> BEFORE_DIGGING =
      List.of(Task.Kind.MARK_OUT, Task.Kind.PROVE, Task.Kind.SET_PEGS);

  private final Job job;
  private final List<DigWork> digging;
  private final LeftToDig left;
  private final HandDigRate rate;
  private final OwnEstimates own;
  private final List<Working> workings = new ArrayList<>();
  private final Map<String, HoleWork> works = new LinkedHashMap<>();
  private final Map<String, DigTime> times = new LinkedHashMap<>();

  private WorkEstimateCalculator(Job job, LeftToDig left) {
    this.job = job;
    this.digging = left.digging();
    this.left = left;
    this.rate = GroundRate.of(job.ground());
    this.own = new OwnEstimates(job.plan().estimates());
  }

  /**
   * The estimate.
   *
   * @param job ground, units, piers, own estimates, what was dug
   * @param left every hole, in the order of digging, and how far some were dug
   * @param sleeves against frost, to be set with the forms
   * @param others what else must be done, each subject's in its order
   */
  public static WorkEstimate calculate(
      Job job, LeftToDig left, List<FrostSleeve> sleeves, List<Task> others) {
    return new WorkEstimateCalculator(job, left).estimate(sleeves, others);
  }

  private WorkEstimate estimate(List<FrostSleeve> sleeves, List<Task> others) {
    RealTime real = RealTime.of(job, digging, rate);
    workings.addAll(real.workings());
    left.kinds().forEach(alike -> work(alike, real.real()));
    List<HoleWork> holes = digging.stream().map(work -> work(work.hole())).toList();
    CarryTime carry =
        CarryTime.of(job.heading().units(), left.carting(job.heading().units(), workings));
    workings.addAll(carry.workings());
    List<Task> tasks = new ArrayList<>(others);
    if (!left.soFar().isEmpty()) {
      tasks.removeIf(task -> BEFORE_DIGGING.contains(task.kind()));
    }
    for (HoleWork hole : holes) {
      if (hole.basis() != Basis.DUG) {
        tasks.addAll(digTasks(hole));
        tasks.add(Optional.ofNullable(carry.tasks().get(hole.hole().mark())).orElseThrow());
      }
    }
    tasks.addAll(FormTimes.of(job, digging.stream().map(DigWork::hole).toList(), sleeves));
    return new WorkEstimate(
        holes,
        rate,
        real.real(),
        tasks.stream()
            .map(task -> task.kind() == Task.Kind.DIG ? task : own.applied(task))
            .toList(),
        WorkEstimateFindings.of(job, rate, digging, holes, real),
        workings);
  }

  /** Digging holes that are alike, or the rest of one that was begun. */
  private void work(AlikeHoles alike, Optional<Real> real) {
    Hole first = alike.first();
    DigTime time =
        DigTime.of(
            planned(first), left.from(first), alike.subject(), rate(first), job.heading().units());
    workings.addAll(time.workings());
    alike.holes().forEach(hole -> times.put(hole.mark(), time));
    List<Hole> ours =
        alike.holes().stream()
            .filter(hole -> own.find(Plan.Work.DIG, hole.mark()).isPresent())
            .toList();
    ours.forEach(hole -> works.put(hole.mark(), byJob(hole, time)));
    List<Hole> others = alike.holes().stream().filter(hole -> !ours.contains(hole)).toList();
    if (others.isEmpty()) {
      return;
    }
    String subject = new AlikeHoles(others).subject();
    List<Working> range =
        real.map(some -> rescaled(subject, time, some)).orElseGet(() -> time.whole(subject));
    workings.addAll(range);
    for (Hole hole : others) {
      works.put(
          hole.mark(),
          new HoleWork(
              hole,
              real.isPresent() ? List.of() : time.parts(),
              range.get(0).asDuration(),
              range.get(1).asDuration(),
              time.range(),
              left.isBegun(hole),
              real.isPresent() ? Basis.RESCALED : Basis.RATES));
    }
  }

  /** Where rock was met, a hole goes on in rock. */
  private HandDigRate rate(Hole hole) {
    boolean rock = job.field().dug(hole.mark()).flatMap(Dug::rock).isPresent();
    return rock && left.isBegun(hole) ? rate.slower(HandDigRate.find("rock")) : rate;
  }

  private DigWork planned(Hole hole) {
    return digging.stream().filter(work -> work.hole().equals(hole)).findFirst().orElseThrow();
  }

  /** The hours that the job sets; of a hole that was begun, those of its rest. */
  private HoleWork byJob(Hole hole, DigTime time) {
    Plan.Estimate set = own.find(Plan.Work.DIG, hole.mark()).orElseThrow();
    return new HoleWork(
        hole,
        List.of(),
        rest(hole, set.least()),
        rest(hole, set.most()),
        time.range(),
        left.isBegun(hole),
        Basis.JOB);
  }

  private Duration rest(Hole hole, Duration whole) {
    if (!left.isBegun(hole)) {
      return whole;
    }
    Working rest =
        Working.of(
            WorkEstimateFormulas.in(job.heading().units()).restHours(),
            hole.mark(),
            whole,
            hole.dug(),
            left.from(hole));
    workings.add(rest);
    return rest.asDuration();
  }

  /** The least and the most time of holes, from what others took. */
  private static List<Working> rescaled(String subject, DigTime time, Real real) {
    WorkRange likeness = WorkRange.find("after-first");
    Count factor = new Count(real.factor());
    return List.of(
        Working.of(
            WorkEstimateFormulas.rescaledLeast(),
            subject,
            time.atRate(),
            factor,
            new Count(likeness.least())),
        Working.of(
            WorkEstimateFormulas.rescaledMost(),
            subject,
            time.atRate(),
            factor,
            new Count(likeness.most())));
  }

  /** Digging at a hole that is left; nothing where it is dug. */
  private HoleWork work(Hole hole) {
    return Optional.ofNullable(works.get(hole.mark()))
        .orElseGet(
            () ->
                new HoleWork(
                    hole,
                    List.of(),
                    Duration.ZERO,
                    Duration.ZERO,
                    DigTime.range(hole),
                    false,
                    Basis.DUG));
  }

  /** Digging in one, or the booked machine's boring and the rest. */
  private List<Task> digTasks(HoleWork work) {
    Optional<String> mark = Optional.of(work.hole().mark());
    boolean booked =
        job.plan().machine().stream()
            .anyMatch(machine -> machine.purpose() == Plan.Purpose.DIGGING);
    DigTime time = Optional.ofNullable(times.get(work.hole().mark())).orElseThrow();
    if (!booked || !time.hasMachine()) {
      return List.of(new Task(Task.Kind.DIG, mark, work.least(), work.most()));
    }
    double share = time.machineShare();
    return List.of(
        new Task(Task.Kind.BORE, mark, work.least().times(share), work.most().times(share)),
        new Task(Task.Kind.DIG, mark, work.least().times(1 - share), work.most().times(1 - share)));
  }
}
