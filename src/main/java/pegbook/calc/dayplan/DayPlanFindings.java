package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.published.Citation;

/** What the reader must know of the days. */
final class DayPlanFindings {
  /**
   * A hole that stays open longer than this has rain, frost and visitors to come; common practice.
   */
  private static final long LONG_OPEN_NIGHTS = 7;

  private DayPlanFindings() {}

  static List<Finding> of(Job job, List<Task> tasks, List<WorkDay> days, Duration crewHours) {
    List<Finding> findings = new ArrayList<>();
    longer(tasks, Task.Kind.POUR, crewHours)
        .map(marks -> finding(Kind.STOP, "pour-longer-than-day", Decider.ENGINEER).about(marks))
        .map(finding -> finding.with("hours", Argument.of(crewHours)))
        .ifPresent(findings::add);
    longer(tasks, Task.Kind.DIG, crewHours)
        .map(marks -> finding(Kind.NOTE, "hole-longer-than-day", Decider.CREW).about(marks))
        .map(finding -> finding.with("hours", Argument.of(crewHours)))
        .ifPresent(findings::add);
    firstDay(job, days).ifPresent(findings::add);
    openLong(days).ifPresent(findings::add);
    return findings;
  }

  private static Finding finding(Kind kind, String id, Decider decides) {
    return Finding.of(kind, id, "crew", decides, Citation.COMMON_PRACTICE);
  }

  private static Optional<List<String>> longer(
      List<Task> tasks, Task.Kind kind, Duration crewHours) {
    List<String> marks =
        tasks.stream()
            .filter(task -> task.kind() == kind)
            .filter(task -> DaySplit.planned(task) > crewHours.hours() + 1e-9)
            .flatMap(task -> task.mark().stream())
            .toList();
    return marks.isEmpty() ? Optional.empty() : Optional.of(marks);
  }

  /** The start that the job names falls on a day on which nobody works. */
  private static Optional<Finding> firstDay(Job job, List<WorkDay> days) {
    Optional<LocalDate> start = job.crew().start();
    Optional<LocalDate> first = days.stream().findFirst().flatMap(WorkDay::date);
    if (start.isEmpty() || first.isEmpty() || start.equals(first)) {
      return Optional.empty();
    }
    return Optional.of(
        finding(Kind.NOTE, "start-not-a-work-day", Decider.OWNER)
            .with("start", Argument.of(start.get()))
            .with("first", Argument.of(first.get())));
  }

  /** Nights from the first hole to the last pour, where the days have dates. */
  private static Optional<Finding> openLong(List<WorkDay> days) {
    Optional<WorkDay> first = days.stream().filter(day -> day.has(Task.Kind.DIG)).findFirst();
    Optional<WorkDay> last =
        days.stream().filter(day -> day.has(Task.Kind.POUR)).reduce((one, next) -> next);
    if (first.flatMap(WorkDay::date).isEmpty() || last.flatMap(WorkDay::date).isEmpty()) {
      return Optional.empty();
    }
    LocalDate from = first.get().date().orElseThrow();
    LocalDate to = last.get().date().orElseThrow();
    long nights = ChronoUnit.DAYS.between(from, to);
    if (nights <= LONG_OPEN_NIGHTS) {
      return Optional.empty();
    }
    int most = days.stream().mapToInt(day -> day.openOvernight().size()).max().orElse(0);
    return Optional.of(
        finding(Kind.NOTE, "holes-open-long", Decider.CREW)
            .with("nights", Argument.of(nights))
            .with("holes", Argument.of(most))
            .with("from", Argument.of(from))
            .with("to", Argument.of(to)));
  }
}
