package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Finish;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.job.Job;

/**
 * Whether the last footing bears load by the job's deadline; else by how much not, and what fits.
 */
record Deadline(Job job, Schedule schedule) {

  Optional<Finding> finding(Finish finish) {
    Optional<LocalDate> deadline = job.plan().deadline();
    if (deadline.isEmpty() || !finish.latest().isAfter(deadline.get())) {
      return Optional.empty();
    }
    return Optional.of(
        finish.planned().isAfter(deadline.get())
            ? missed(finish.planned(), deadline.get())
            : about(Kind.NOTE, "deadline-at-risk", deadline.get())
                .with("latest", Argument.of(finish.latest())));
  }

  private Finding missed(LocalDate planned, LocalDate deadline) {
    Optional<Integer> people = people(deadline);
    Finding missed =
        about(
            Kind.ASK, people.isPresent() ? "deadline-missed-people" : "deadline-missed", deadline);
    missed =
        missed
            .with("planned", Argument.of(planned))
            .with("days", Argument.of(ChronoUnit.DAYS.between(deadline, planned)))
            .with("fits", Argument.of(ready(deadline)))
            .with("holes", Argument.of(schedule.marks().size()));
    return people.isPresent() ? missed.with("people", Argument.of(people.get())) : missed;
  }

  /** The smallest larger crew that would be ready in time in the same order. */
  private Optional<Integer> people(LocalDate deadline) {
    for (int people = job.crew().people() + 1; people <= OrderChoice.MOST_PEOPLE; people++) {
      Schedule other = Dealer.deal(job, schedule.list(), Pace.PLANNED, people, 0);
      if (HoldList.loadable(job, other).filter(date -> !date.isAfter(deadline)).isPresent()) {
        return Optional.of(people);
      }
    }
    return Optional.empty();
  }

  /** How many footings bear load by the deadline as planned. */
  private int ready(LocalDate deadline) {
    return (int)
        schedule.marks().stream()
            .map(mark -> schedule.day(Task.Kind.POUR, List.of(mark), true))
            .filter(day -> day >= 0)
            .flatMap(day -> schedule.dates().date(day).stream())
            .filter(poured -> !job.plan().loadAfter().after(poured).isAfter(deadline))
            .count();
  }

  private static Finding about(Kind kind, String id, LocalDate deadline) {
    return DayPlanFindings.finding(kind, id, "plan.deadline", Decider.OWNER)
        .with("deadline", Argument.of(deadline));
  }
}
