package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.measure.Duration;

/**
 * Deals tasks out over days: each day takes the first task of the list that does not wait, until
 * its hours are used; what waits is passed over.
 *
 * <p>A task flows over into the next day where it must. A pour is never cut: concrete does not wait
 * for a morning. No more than two people have room at one hole.
 */
final class Dealer {
  /** Too little time left to begin something else, person-hours. */
  private static final double SLIVER_HOURS = 1;

  private static final double TIE_HOURS = 1e-9;

  /** So many people find room round a hole: common practice, no source. */
  private static final int ROUND_A_HOLE = 2;

  /** Weeks of waiting for an office are a year at most. */
  private static final int MOST_IDLE_DAYS = 1500;

  /** Before the first day. */
  private static final int BEFORE = -1;

  private static final Set<Task.Kind> PAINTING = Set.of(Task.Kind.MARK_OUT, Task.Kind.PROVE);
  private static final Set<Task.Kind> TRENCH = Set.of(Task.Kind.TRENCH, Task.Kind.LAY_PIPE);
  private static final Set<Task.Kind> OPENING = Set.of(Task.Kind.BORE, Task.Kind.DIG);
  private static final Set<Task.Kind> FILLING =
      Set.of(Task.Kind.BORE, Task.Kind.DIG, Task.Kind.GRAVEL, Task.Kind.FORM, Task.Kind.STEEL);

  private final Job job;
  private final WorkList list;
  private final Pace pace;
  private final DayDates dates;
  private final Gates gates;
  private final double capacity;
  private final double holeCapacity;
  private final double[] rest;
  private final List<List<Integer>> needs;
  private final Progress progress;
  private final Set<String> held = new TreeSet<>();
  private final Map<Integer, List<Portion>> days = new LinkedHashMap<>();
  private final Map<Integer, Step> lastSteps = new LinkedHashMap<>();

  private Dealer(Job job, WorkList list, Pace pace, int people, int rainDays) {
    this.job = job;
    this.list = list;
    this.pace = pace;
    this.dates = new DayDates(job, rainDays);
    this.gates = new Gates(job, dates, list.lots().size());
    this.capacity = people * job.crew().hoursPerDay().hours();
    if (!(capacity > 0)) {
      throw new IllegalArgumentException("a crew's day of " + capacity + " hours");
    }
    this.holeCapacity = Math.min(people, ROUND_A_HOLE) * job.crew().hoursPerDay().hours();
    this.rest = list.steps().stream().mapToDouble(step -> pace.hours(step.task())).toArray();
    this.needs = TaskOrder.needs(list.steps());
    this.progress = new Progress(list);
  }

  /**
   * Deals them out.
   *
   * @param people how many work
   * @param rainDays work days that the weather takes
   */
  static Schedule deal(Job job, WorkList list, Pace pace, int people, int rainDays) {
    Dealer dealer = new Dealer(job, list, pace, people, rainDays);
    dealer.openIdle();
    int idle = 0;
    for (int day = 0; !dealer.progress.isAllDone(); day++) {
      dealer.work(day);
      idle = dealer.days.containsKey(day) ? 0 : idle + 1;
      if (idle > MOST_IDLE_DAYS) {
        throw new IllegalStateException("work waits for something that never comes");
      }
    }
    return new Schedule(
        job, list, dealer.dates, dealer.gates, dealer.progress, dealer.days, dealer.lastSteps);
  }

  /**
   * Waits that no work of the list would set off are over; those for holes that were dug before the
   * first day begin before it.
   */
  private void openIdle() {
    if (progress.isPast(0, PAINTING)) {
      gates.open(Wait.UTILITIES, 0);
    }
    if (progress.isPast(0, TRENCH)) {
      gates.open(Wait.TRENCH_INSPECTION, 0);
    }
    for (int lot = 0; lot < list.lots().size(); lot++) {
      if (!progress.isPast(lot, OPENING)) {
        continue;
      }
      if (list.lots().get(lot).stream().anyMatch(list.dug()::contains)) {
        lookInto(lot, BEFORE);
      } else {
        gates.open(Wait.LOOK, lot);
        gates.open(Wait.INSPECTION, lot);
      }
    }
  }

  private void work(int day) {
    double left = capacity;
    Map<String, Double> atHole = new LinkedHashMap<>();
    boolean placed = true;
    while (placed && left > TIE_HOURS) {
      placed = false;
      for (int i = 0; i < rest.length; i++) {
        double hours = !progress.isDone(i) && isReady(i, day) ? fitting(i, left, atHole) : 0;
        if (hours > 0) {
          place(i, day, hours);
          left -= hours;
          atHole.merge(list.steps().get(i).task().mark().orElse(""), hours, Double::sum);
          placed = true;
        }
      }
    }
  }

  /** How many hours of a step find room on a day that has so many left; 0: none. */
  private double fitting(int i, double left, Map<String, Double> atHole) {
    Task task = list.steps().get(i).task();
    if (Task.POURS.contains(task.kind())) {
      return rest[i] <= left + TIE_HOURS || left >= capacity - TIE_HOURS ? rest[i] : 0;
    }
    double room =
        task.mark()
            .map(mark -> Math.min(left, holeCapacity - atHole.getOrDefault(mark, 0.0)))
            .orElse(left);
    return room < Math.min(rest[i], SLIVER_HOURS) - TIE_HOURS ? 0 : Math.min(rest[i], room);
  }

  private void place(int i, int day, double hours) {
    Step step = list.steps().get(i);
    List<Portion> portions = days.computeIfAbsent(day, any -> new ArrayList<>());
    holdPoint(step, Wait.LOOK, Task.Kind.LOOK).ifPresent(portions::add);
    holdPoint(step, Wait.INSPECTION, Task.Kind.INSPECTION).ifPresent(portions::add);
    holdPoint(step, Wait.TRENCH_INSPECTION, Task.Kind.TRENCH_INSPECTION).ifPresent(portions::add);
    double part = hours / pace.hours(step.task());
    rest[i] -= hours;
    boolean unfinished = rest[i] > TIE_HOURS;
    portions.add(
        new Portion(
            step.task().kind(),
            step.task().mark(),
            step.task().least().times(part),
            step.task().most().times(part),
            progress.isBegun(i),
            unfinished));
    progress.begin(i, day);
    lastSteps.put(day, step);
    if (!unfinished) {
      progress.finish(i, day);
      setOff(step.lot(), day);
    }
  }

  /** A hold point stands before the first work of its lot that waits for it. */
  private Optional<Portion> holdPoint(Step step, Wait wait, Task.Kind kind) {
    boolean waits = gates.before(step).stream().anyMatch(gate -> gate.kind() == wait);
    return waits && held.add(wait + " " + step.lot())
        ? Optional.of(
            new Portion(kind, Optional.empty(), Duration.ZERO, Duration.ZERO, false, false))
        : Optional.empty();
  }

  /** Begins the waits that a finished step of a lot sets off. */
  private void setOff(int lot, int day) {
    if (progress.isPast(0, PAINTING)) {
      gates.setOff(Wait.UTILITIES, 0, day);
    }
    if (progress.isPast(0, TRENCH)) {
      gates.setOff(Wait.TRENCH_INSPECTION, 0, day);
    }
    lookInto(lot, day);
  }

  /** Begins the waits for those who look into a lot's holes. */
  private void lookInto(int lot, int day) {
    if (progress.isPast(lot, OPENING)) {
      gates.setOff(Wait.LOOK, lot, day);
      if (progress.isPast(lot, FILLING)) {
        gates.setOff(Wait.INSPECTION, lot, day);
      }
    }
  }

  private boolean isReady(int i, int day) {
    for (int before : needs.get(i)) {
      if (!progress.isDone(before)) {
        return false;
      }
    }
    Step step = list.steps().get(i);
    return gates.isOpen(step, dates.moment(day))
        && (step.task().kind() != Task.Kind.STRIP || isHard(step, Task.Kind.POUR, day))
        && (step.task().kind() != Task.Kind.JOINT || isHard(step, Task.Kind.FIRST_LIFT, day))
        && (step.task().kind() != Task.Kind.FRAME || isLoadable(day));
  }

  /** Nothing is built on a footing before its concrete bears it. */
  private boolean isLoadable(int day) {
    int poured = progress.day(Task.Kind.POUR, list.marks(), true);
    return poured < 0
        || dates
            .date(poured)
            .flatMap(
                from ->
                    dates.date(day).map(here -> !here.isBefore(job.plan().loadAfter().after(from))))
            .orElse(day > poured);
  }

  /** Forms stay on, and the first of two lifts sets, overnight at least. */
  private boolean isHard(Step next, Task.Kind kind, int day) {
    String mark = next.task().mark().orElse("");
    if (!progress.has(kind, mark)) {
      return true;
    }
    int poured = progress.day(kind, List.of(mark), true);
    return poured >= 0 && dates.moment(poured) < dates.moment(day);
  }
}
