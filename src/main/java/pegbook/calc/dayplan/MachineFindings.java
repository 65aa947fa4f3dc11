package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.job.Plan;

/** Whether the machine's day is one on which it can do its work. */
record MachineFindings(Job job, Schedule schedule) {

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    if (schedule.dates().isDated()) {
      job.plan().machine().ifPresent(machine -> add(machine, findings));
    }
    return findings;
  }

  private void add(Plan.Machine machine, List<Finding> findings) {
    if (!job.crew().workDays().contains(machine.date().getDayOfWeek())) {
      findings.add(about(Kind.NOTE, "machine-outside-work-days", machine));
    }
    Task.Kind kind = machine.purpose() == Plan.Purpose.DIGGING ? Task.Kind.BORE : Task.Kind.POUR;
    int first = schedule.day(kind, schedule.marks(), false);
    if (first < 0) {
      findings.add(about(Kind.NOTE, "machine-without-work", machine));
      return;
    }
    LocalDate possible = schedule.dates().date(first).orElseThrow();
    if (possible.isAfter(machine.date())) {
      findings.add(
          about(Kind.STOP, "machine-too-early", machine).with("possible", Argument.of(possible)));
      return;
    }
    List<String> left =
        schedule.marks().stream()
            .filter(
                mark -> {
                  int done = schedule.day(kind, List.of(mark), true);
                  return done >= 0
                      && schedule.dates().date(done).orElseThrow().isAfter(machine.date());
                })
            .toList();
    if (!left.isEmpty()) {
      findings.add(about(Kind.ASK, "machine-day-too-short", machine).about(left));
    }
  }

  private static Finding about(Kind kind, String id, Plan.Machine machine) {
    return DayPlanFindings.finding(kind, id, "plan.machine", Decider.OWNER)
        .with("machine", Argument.words(machine.what()))
        .with("date", Argument.of(machine.date()));
  }
}
