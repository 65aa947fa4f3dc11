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
 * @param crewHours person-hours that the crew has on a day
 */
public record DayPlan(
    List<WorkDay> days, Duration crewHours, List<Finding> findings, List<Working> workings)
    implements Result {
  public DayPlan {
    days = List.copyOf(days);
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
   */
  public record WorkDay(
      int number, Optional<LocalDate> date, List<Portion> portions, List<String> openOvernight) {
    public WorkDay {
      portions = List.copyOf(portions);
      openOvernight = List.copyOf(openOvernight);
    }

    /** Holes that are worked on, in the order of the work, each once. */
    public List<String> holes() {
      return portions.stream().flatMap(portion -> portion.mark().stream()).distinct().toList();
    }

    /** Holes with a kind of work on this day, in the order of the work. */
    public List<String> holes(Task.Kind kind) {
      return portions.stream()
          .filter(portion -> portion.kind() == kind)
          .flatMap(portion -> portion.mark().stream())
          .distinct()
          .toList();
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
}
