package pegbook.calc.workestimate;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Duration;
import pegbook.published.HandDigRate;
import pegbook.published.WorkRange;

/**
 * How long the work that is left takes, in person-hours.
 *
 * @param holes in the order of digging
 * @param rate how fast one person digs this ground
 * @param real how a hole that was dug compares with the published rate, where one was
 * @param tasks every task of the job, hole by hole as its subject orders them
 */
public record WorkEstimate(
    List<HoleWork> holes,
    HandDigRate rate,
    Optional<Real> real,
    List<Task> tasks,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public WorkEstimate {
    holes = List.copyOf(holes);
    tasks = List.copyOf(tasks);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /** Where the hours of a hole's digging are from. */
  public enum Basis {
    /** The published rates and the range of common practice. */
    RATES,
    /** The rates, set to what a first hole really took. */
    RESCALED,
    /** What the job says. */
    JOB,
    /** It is dug: nothing is left of it. */
    DUG
  }

  /** A part of digging a hole. */
  public enum Part {
    /** The first inches by hand, so that an auger holds its place. */
    START,
    /** An auger cuts the hole, or a narrower one. */
    AUGER,
    /** The rim of what an auger left, by hand. */
    WIDEN,
    /** Digging and lifting by hand. */
    BY_HAND,
    /** Loose soil out of the bottom, levelled, measured, written down. */
    CLEAR
  }

  /** Person-hours of a part. */
  public record PartTime(Part part, Duration least, Duration most) {}

  /**
   * What is left of digging one hole.
   *
   * @param parts in their order; none where the whole is not from the rates
   * @param least person-hours, a booked machine's boring included
   * @param most person-hours
   * @param range how far people may lie from the published rate
   * @param begun whether it was begun, and this is its rest
   */
  public record HoleWork(
      Hole hole,
      List<PartTime> parts,
      Duration least,
      Duration most,
      WorkRange range,
      boolean begun,
      Basis basis) {
    public HoleWork {
      parts = List.copyOf(parts);
    }

    /** The hours of a part, where the hole has it. */
    public Optional<PartTime> part(Part part) {
      return parts.stream().filter(time -> time.part() == part).findFirst();
    }
  }

  /**
   * What holes really took.
   *
   * @param holes their marks
   * @param hours person-hours of all of them
   * @param factor their time over that of the published rate
   */
  public record Real(List<String> holes, Duration hours, double factor) {
    public Real {
      holes = List.copyOf(holes);
    }
  }

  /** Digging the hole at a mark; without one: {@link IllegalArgumentException}. */
  public HoleWork dig(String mark) {
    return holes.stream()
        .filter(work -> work.hole().mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole at " + mark));
  }

  /** Holes that are dug, in the order of digging. */
  public List<String> dug() {
    return marks(work -> work.basis() == Basis.DUG);
  }

  /** Holes that were begun and must be dug on. */
  public List<String> begun() {
    return marks(HoleWork::begun);
  }

  private List<String> marks(Predicate<HoleWork> wanted) {
    return holes.stream().filter(wanted).map(work -> work.hole().mark()).toList();
  }

  /** A task at a hole, where it has it. */
  public Optional<Task> task(Task.Kind kind, String mark) {
    return tasks.stream()
        .filter(task -> task.kind() == kind && task.mark().equals(Optional.of(mark)))
        .findFirst();
  }

  /** Person-hours of all tasks of a kind, all going well. */
  public Duration least(Task.Kind kind) {
    return tasks.stream()
        .filter(task -> task.kind() == kind)
        .map(Task::least)
        .reduce(Duration.ZERO, Duration::plus);
  }

  /** Person-hours of all tasks of a kind, all going badly. */
  public Duration most(Task.Kind kind) {
    return tasks.stream()
        .filter(task -> task.kind() == kind)
        .map(Task::most)
        .reduce(Duration.ZERO, Duration::plus);
  }

  /** Person-hours of digging all that is left, all going well. */
  public Duration digLeast() {
    return holes.stream().map(HoleWork::least).reduce(Duration.ZERO, Duration::plus);
  }

  /** Person-hours of digging all that is left, all going badly. */
  public Duration digMost() {
    return holes.stream().map(HoleWork::most).reduce(Duration.ZERO, Duration::plus);
  }
}
