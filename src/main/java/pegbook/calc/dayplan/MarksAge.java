package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.job.DaySpan;
import pegbook.job.Job;
import pegbook.published.Citation;
import pegbook.published.SafetyLimit;

/** Whether the marks of buried lines still hold when the last hole or trench is dug. */
record MarksAge(Job job, Schedule schedule) {

  Optional<Finding> finding() {
    int last =
        Math.max(
            schedule.day(Task.Kind.DIG, schedule.marks(), true),
            schedule.progress().day(Task.Kind.TRENCH));
    Optional<LocalDate> from =
        job.place()
            .utilities()
            .map(marking -> marking.confirmed())
            .or(
                () ->
                    schedule
                        .gates()
                        .find(Wait.UTILITIES, 0)
                        .filter(Gates.Gate::isKnown)
                        .flatMap(gate -> schedule.dates().dateOf(gate.opens())));
    if (last < 0 || from.isEmpty() || !schedule.dates().isDated()) {
      return Optional.empty();
    }
    LocalDate until = valid().after(from.get());
    LocalDate dug = schedule.dates().date(last).orElseThrow();
    // Marks that are old on the first day already are another finding.
    boolean oldAtStart = job.crew().start().filter(until::isBefore).isPresent();
    if (oldAtStart || !until.isBefore(dug)) {
      return Optional.empty();
    }
    List<String> after = schedule.marks().stream().filter(mark -> isDugAfter(mark, until)).toList();
    return Optional.of(
        Finding.of(
                Kind.ASK,
                "utility-marks-run-out",
                "plan.utility.valid",
                Decider.UTILITY_SERVICE,
                job.plan().utility().valid().isPresent()
                    ? Citation.COMMON_PRACTICE
                    : SafetyLimit.find("marks-age").source())
            .about(after)
            .with("until", Argument.of(until))
            .with("last", Argument.of(dug)));
  }

  private boolean isDugAfter(String mark, LocalDate until) {
    int done = schedule.day(Task.Kind.DIG, List.of(mark), true);
    return done >= 0 && schedule.dates().date(done).orElseThrow().isAfter(until);
  }

  private DaySpan valid() {
    return job.plan()
        .utility()
        .valid()
        .orElseGet(() -> new DaySpan((int) SafetyLimit.find("marks-age").value(), false));
  }
}
