package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Duration;

/**
 * The work, split over days.
 *
 * @param days in order; none where there is nothing to do
 * @param dug holes that are dug already: their digging is not planned again
 * @param crewHours person-hours that the crew has on a day
 * @param holds what the work waits for, in the order of the days
 * @param orders the orders of the work that were compared; one where only one makes sense
 * @param chain what the end hangs on, from the first day on
 * @param longPours holes whose pour alone takes more than a day of the crew
 * @param finish when the last footing may be loaded, where the job names its first day
 */
public record DayPlan(
    List<WorkDay> days,
    List<String> dug,
    Duration crewHours,
    List<Hold> holds,
    List<Order> orders,
    List<Link> chain,
    List<String> longPours,
    Optional<Finish> finish,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public DayPlan {
    days = List.copyOf(days);
    dug = List.copyOf(dug);
    holds = List.copyOf(holds);
    orders = List.copyOf(orders);
    chain = List.copyOf(chain);
    longPours = List.copyOf(longPours);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * One working day.
   *
   * @param number from 1
   * @param date where the job names its first day
   * @param portions the work, in order
   * @param openOvernight holes that are begun and not poured when the crew leaves
   * @param trenchOpenOvernight whether the power line's trench is begun and not filled in then
   */
  public record WorkDay(
      int number,
      Optional<LocalDate> date,
      List<Portion> portions,
      List<String> openOvernight,
      boolean trenchOpenOvernight) {
    public WorkDay {
      portions = List.copyOf(portions);
      openOvernight = List.copyOf(openOvernight);
    }

    /** Holes that are worked on, in the order of the work, each once. */
    public List<String> holes() {
      return portions.stream().flatMap(portion -> portion.mark().stream()).distinct().toList();
    }

    /**
     * Those of them that are not full yet: where forms are stripped, nothing is a hole any more.
     */
    public List<String> openHoles() {
      return portions.stream()
          .filter(portion -> portion.kind() != Task.Kind.STRIP)
          .flatMap(portion -> portion.mark().stream())
          .distinct()
          .toList();
    }

    /** Holes with a kind of work on this day, in the order of the work. */
    public List<String> holes(Task.Kind kind) {
      return portions.stream()
          .filter(portion -> portion.kind() == kind)
          .flatMap(portion -> portion.mark().stream())
          .distinct()
          .toList();
    }

    /** Holes that get concrete on this day, each once: no hole gets both its lifts on one. */
    public List<String> poured() {
      return Task.POURS.stream().flatMap(kind -> holes(kind).stream()).distinct().toList();
    }

    /** Which concrete a hole gets on this day. */
    public Task.Kind pour(String mark) {
      return holes(Task.Kind.FIRST_LIFT).contains(mark) ? Task.Kind.FIRST_LIFT : Task.Kind.POUR;
    }

    /** Whether the power line's trench is worked at. */
    public boolean isTrenching() {
      return portions.stream().anyMatch(portion -> portion.kind().isTrenching());
    }

    public boolean has(Task.Kind kind) {
      return portions.stream().anyMatch(portion -> portion.kind() == kind);
    }

    /** Person-hours, all going well. */
    public Duration least() {
      return portions.stream().map(Portion::least).reduce(Duration.ZERO, Duration::plus);
    }

    /** Person-hours, all going badly. */
    public Duration most() {
      return portions.stream().map(Portion::most).reduce(Duration.ZERO, Duration::plus);
    }
  }

  /**
   * A task, or the part of it that falls on a day.
   *
   * @param kind what
   * @param mark the hole, where it is at one
   * @param least person-hours of this part, all going well
   * @param most person-hours of this part, all going badly
   * @param continued true when it was begun on an earlier day
   * @param unfinished true when it goes on on a later day
   */
  public record Portion(
      Task.Kind kind,
      Optional<String> mark,
      Duration least,
      Duration most,
      boolean continued,
      boolean unfinished) {}

  /** What work waits for. */
  public enum Wait {
    /** The marks of buried lines: before any peg and any hole. */
    UTILITIES,
    /** A machine that is booked for one day. */
    MACHINE,
    /** Someone looks into the bare holes: before any gravel. */
    LOOK,
    /** The inspector: before the pour. */
    INSPECTION,
    /** Someone looks at the open trench: before it is filled in. */
    TRENCH_INSPECTION,
    /** The concrete holds without its form. */
    STRIP,
    /** The concrete bears load. */
    LOAD
  }

  /**
   * A time of waiting.
   *
   * @param marks the holes it is about; none: all
   * @param call the latest day on which to call or order, where someone must be called
   * @param date the day on which the wait is over
   * @param afterDay number of the work day after which it begins; 0: before the first
   */
  public record Hold(
      Wait kind,
      List<String> marks,
      Optional<LocalDate> call,
      Optional<LocalDate> date,
      int afterDay) {
    public Hold {
      marks = List.copyOf(marks);
    }
  }

  /**
   * An order of the work that was tried: the holes dug, looked at and poured in so many lots.
   *
   * @param lots one: all holes are dug before any is poured
   * @param days work days
   * @param lastPour its date, where days have dates
   * @param holeNights nights that holes stand open, summed over the holes
   * @param mostOpen most holes that stand open in one night
   * @param chosen true for the one that the days follow
   */
  public record Order(
      int lots,
      int days,
      Optional<LocalDate> lastPour,
      int holeNights,
      int mostOpen,
      boolean chosen) {}

  /**
   * A link of the chain on which the end hangs: work on some days, or a wait.
   *
   * @param kind what is waited for; absent: the crew's hours
   * @param fromDay number of the first work day, or of that after which the wait begins
   * @param toDay number of the last work day, or of that before which the wait ends
   */
  public record Link(Optional<Wait> kind, int fromDay, int toDay) {}

  /**
   * When the last footing may be loaded.
   *
   * @param earliest all going well, no day lost
   * @param planned as the days say
   * @param latest all going badly, the rain days lost
   */
  public record Finish(LocalDate earliest, LocalDate planned, LocalDate latest) {}
}
