package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.figures.WorkDates;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Duration;

/** Splits the work over days by the crew's hours: {@link TaskOrder}, then {@link DaySplit}. */
public final class DayPlanCalculator {
  private DayPlanCalculator() {}

  /**
   * The days.
   *
   * @param job crew, first day, days of the week
   * @param holes every hole of the job
   * @param tasks of all subjects, each subject's in the order in which it wants them done
   */
  public static DayPlan calculate(Job job, List<Hole> holes, List<Task> tasks) {
    List<Working> workings = new ArrayList<>();
    Working crewHours =
        Working.of(
            DayPlanFormulas.crewHours(),
            "",
            new Count(job.crew().people()),
            job.crew().hoursPerDay());
    workings.add(crewHours);
    List<Task> ordered = TaskOrder.of(tasks);
    workings.add(
        Working.of(DayPlanFormulas.planned(), "", sum(ordered, true), sum(ordered, false)));
    List<List<Portion>> portions = DaySplit.split(ordered, crewHours.asDuration());
    List<LocalDate> dates = WorkDates.first(job.crew(), portions.size());
    List<WorkDay> days = new ArrayList<>();
    for (int i = 0; i < portions.size(); i++) {
      days.add(
          new WorkDay(
              i + 1,
              dates.isEmpty() ? Optional.empty() : Optional.of(dates.get(i)),
              portions.get(i),
              openAfter(holes, portions.subList(0, i + 1))));
    }
    return new DayPlan(
        days,
        crewHours.asDuration(),
        DayPlanFindings.of(job, ordered, days, crewHours.asDuration()),
        workings);
  }

  private static Duration sum(List<Task> tasks, boolean best) {
    return tasks.stream()
        .map(task -> best ? task.least() : task.most())
        .reduce(Duration.ZERO, Duration::plus);
  }

  /** Holes in which digging has begun and no concrete stands yet. */
  private static List<String> openAfter(List<Hole> holes, List<List<Portion>> done) {
    return holes.stream()
        .map(Hole::mark)
        .filter(mark -> has(done, mark, Task.Kind.DIG) && !has(done, mark, Task.Kind.POUR))
        .toList();
  }

  private static boolean has(List<List<Portion>> days, String mark, Task.Kind kind) {
    return days.stream()
        .flatMap(List::stream)
        .anyMatch(portion -> portion.kind() == kind && portion.mark().equals(Optional.of(mark)));
  }
}
