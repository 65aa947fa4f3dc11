package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.dayplan.DayPlan.Finish;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.SafetyLimit;

/**
 * What the reader must know of the days.
 *
 * @param holes of the job
 * @param tasks of all subjects
 * @param days as they were dealt out
 * @param schedule from which they come
 */
record DayPlanFindings(
    Job job, List<Hole> holes, List<Task> tasks, List<WorkDay> days, Schedule schedule) {
  /**
   * A hole that stays open longer than this has rain, frost and visitors to come; common practice.
   */
  private static final long LONG_OPEN_NIGHTS = 7;

  /** A hole so little less deep than a limit counts as reaching it. */
  private static final Length TOLERANCE = Length.ofMillimetres(1);

  List<Finding> all(Optional<Finish> finish) {
    List<Finding> findings = new ArrayList<>();
    Stream.of(longPour(), longDig(), firstDay(), afterIssue(), beforeIssue(), openLong(), alone())
        .flatMap(Optional::stream)
        .forEach(findings::add);
    findings.addAll(new MachineFindings(job, schedule).all());
    new MarksAge(job, schedule).finding().ifPresent(findings::add);
    finish.flatMap(range -> new Deadline(job, schedule).finding(range)).ifPresent(findings::add);
    return findings;
  }

  static Finding finding(Kind kind, String id, String place, Decider decider) {
    return Finding.of(kind, id, place, decider, Citation.COMMON_PRACTICE);
  }

  /** Holes whose pour is more than all of the crew do in a day. */
  List<String> longPours() {
    return longer(Task.POURS, dayOf(job.crew().people()));
  }

  private Duration dayOf(int people) {
    return job.crew().hoursPerDay().times(people);
  }

  /** Tasks that take more than so many person-hours. */
  private List<String> longer(List<Task.Kind> kinds, Duration hours) {
    return tasks.stream()
        .filter(task -> kinds.contains(task.kind()))
        .filter(task -> Pace.PLANNED.hours(task) > hours.hours() + 1e-9)
        .flatMap(task -> task.mark().stream())
        .distinct()
        .toList();
  }

  private Optional<Finding> longPour() {
    List<String> marks = longPours();
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            finding(Kind.STOP, "pour-longer-than-day", "crew", Decider.ENGINEER)
                .about(marks)
                .with("hours", Argument.of(dayOf(job.crew().people()))));
  }

  /** Two people find room at a hole. */
  private Optional<Finding> longDig() {
    Duration hours = dayOf(Math.min(2, job.crew().people()));
    List<String> marks = longer(List.of(Task.Kind.DIG), hours);
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            finding(Kind.NOTE, "hole-longer-than-day", "crew", Decider.CREW)
                .about(marks)
                .with("hours", Argument.of(hours)));
  }

  /** The start that the job names falls on a day on which nobody works. */
  private Optional<Finding> firstDay() {
    Optional<LocalDate> start = DayDates.start(job);
    Optional<LocalDate> first = days.stream().findFirst().flatMap(WorkDay::date);
    if (start.isEmpty() || first.isEmpty() || start.equals(first)) {
      return Optional.empty();
    }
    return Optional.of(
        finding(Kind.NOTE, "start-not-a-work-day", "crew", Decider.OWNER)
            .with("start", Argument.of(start.get()))
            .with("first", Argument.of(first.get())));
  }

  /** Work has begun, and what is left is not done before the packet's issue. */
  private Optional<Finding> afterIssue() {
    Optional<LocalDate> start = job.crew().start();
    Optional<LocalDate> from = DayDates.start(job);
    if (start.isEmpty() || from.isEmpty() || start.equals(from) || days.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        finding(Kind.NOTE, "rest-from-issue", "crew.start", Decider.OWNER)
            .with("start", Argument.of(start.get()))
            .with("issued", Argument.of(from.get())));
  }

  /** Days that lay in the past when the packet was issued, with nothing written down from them. */
  private Optional<Finding> beforeIssue() {
    Optional<LocalDate> issued = job.heading().issued();
    Optional<LocalDate> first = days.stream().findFirst().flatMap(WorkDay::date);
    boolean begun = !job.field().marked().isEmpty() || !job.field().dug().isEmpty();
    if (begun || issued.isEmpty() || first.isEmpty() || !first.get().isBefore(issued.get())) {
      return Optional.empty();
    }
    return Optional.of(
        finding(Kind.ASK, "start-before-issue", "crew.start", Decider.OWNER)
            .with("first", Argument.of(first.get()))
            .with("issued", Argument.of(issued.get())));
  }

  /** Nights from the first hole to the last pour, where the days have dates. */
  private Optional<Finding> openLong() {
    long nights = 0;
    LocalDate from = LocalDate.MIN;
    LocalDate to = LocalDate.MIN;
    for (String mark : schedule.marks()) {
      int opened = schedule.opened(mark);
      int poured = schedule.day(Task.Kind.POUR, List.of(mark), true);
      if (opened >= 0 && poured >= 0 && schedule.dates().isDated()) {
        LocalDate first = schedule.dates().date(opened).orElseThrow();
        LocalDate last = schedule.dates().date(poured).orElseThrow();
        long open = ChronoUnit.DAYS.between(first, last);
        if (open > nights) {
          nights = open;
          from = first;
          to = last;
        }
      }
    }
    if (nights <= LONG_OPEN_NIGHTS) {
      return Optional.empty();
    }
    int most = days.stream().mapToInt(day -> day.openOvernight().size()).max().orElse(0);
    return Optional.of(
        finding(Kind.NOTE, "holes-open-long", "crew", Decider.CREW)
            .with("nights", Argument.of(nights))
            .with("holes", Argument.of(most))
            .with("from", Argument.of(from))
            .with("to", Argument.of(to)));
  }

  /** One person at holes in which someone who falls cannot climb out. */
  private Optional<Finding> alone() {
    SafetyLimit wayOut = SafetyLimit.find("way-out");
    List<String> deep =
        holes.stream()
            .filter(hole -> !hole.dug().plus(TOLERANCE).isLessThan(wayOut.length()))
            .map(Hole::mark)
            .toList();
    return job.crew().people() > 1 || deep.isEmpty()
        ? Optional.empty()
        : Optional.of(
            finding(Kind.ASK, "alone-at-deep-holes", "crew.people", Decider.OWNER)
                .about(deep)
                .with("limit", Argument.of(wayOut.length())));
  }
}
