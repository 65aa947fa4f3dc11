package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Finish;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Duration;

/**
 * Splits the work over days by the crew's hours and by what must be waited for: {@link WorkList}
 * orders it, {@link Schedule} deals it out, {@link OrderChoice} compares.
 */
public final class DayPlanCalculator {
  private DayPlanCalculator() {}

  /**
   * The days.
   *
   * @param job crew, first day, days of the week, plan
   * @param holes every hole of the job
   * @param tasks of all subjects, each subject's in the order in which it wants them done
   * @param dug holes that are dug already, and so stand open until they are poured
   */
  public static DayPlan calculate(Job job, List<Hole> holes, List<Task> tasks, List<String> dug) {
    List<Working> workings = new ArrayList<>();
    Working crewHours =
        Working.of(
            DayPlanFormulas.crewHours(),
            "",
            new Count(job.crew().people()),
            job.crew().hoursPerDay());
    workings.add(crewHours);
    workings.add(Working.of(DayPlanFormulas.planned(), "", sum(tasks, true), sum(tasks, false)));
    OrderChoice choice = OrderChoice.of(job, tasks, dug, job.crew().people());
    Schedule chosen = choice.chosen();
    List<WorkDay> days = days(chosen);
    Optional<Finish> finish = finish(job, chosen);
    DayPlanFindings judge = new DayPlanFindings(job, holes, tasks, days, chosen);
    return new DayPlan(
        days,
        dug,
        crewHours.asDuration(),
        new HoldList(job, chosen).holds(),
        choice.orders(),
        CriticalChain.of(chosen),
        judge.longPours(),
        finish,
        judge.all(finish),
        workings);
  }

  private static Duration sum(List<Task> tasks, boolean best) {
    return tasks.stream()
        .map(task -> best ? task.least() : task.most())
        .reduce(Duration.ZERO, Duration::plus);
  }

  private static List<WorkDay> days(Schedule schedule) {
    List<WorkDay> days = new ArrayList<>();
    for (int day : schedule.worked()) {
      days.add(
          new WorkDay(
              days.size() + 1,
              schedule.dates().date(day),
              schedule.portions(day),
              schedule.open(day),
              schedule.isTrenchOpen(day)));
    }
    return days;
  }

  /** The same order with all going well, as planned, and with all going badly in the rain. */
  private static Optional<Finish> finish(Job job, Schedule planned) {
    Optional<LocalDate> middle = HoldList.loadable(job, planned);
    if (middle.isEmpty()) {
      return Optional.empty();
    }
    LocalDate early = loadable(job, planned, Pace.BEST, 0).orElseThrow();
    LocalDate late = loadable(job, planned, Pace.WORST, job.plan().rainDays()).orElseThrow();
    return Optional.of(
        new Finish(
            early.isAfter(middle.get()) ? middle.get() : early,
            middle.get(),
            late.isBefore(middle.get()) ? middle.get() : late));
  }

  private static Optional<LocalDate> loadable(Job job, Schedule planned, Pace pace, int rainDays) {
    int people = Math.min(job.crew().people(), OrderChoice.MOST_PEOPLE);
    return HoldList.loadable(job, Dealer.deal(job, planned.list(), pace, people, rainDays));
  }
}
