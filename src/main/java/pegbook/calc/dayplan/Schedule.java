package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.EnumMap;
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
final class Schedule {
  /** Too little time left to begin something else, person-hours. */
  private static final double SLIVER_HOURS = 1;

  private static final double TIE_HOURS = 1e-9;

  /** So many people find room round a hole: common practice, no source. */
  private static final int ROUND_A_HOLE = 2;

  /** Weeks of waiting for an office are a year at most. */
  private static final int MOST_IDLE_DAYS = 1500;

  private final Job job;
  private final WorkList list;
  private final Pace pace;
  private final DayDates dates;
  private final Gates gates;
  private final double capacity;
  private final double holeCapacity;
  private final double[] rest;
  private final List<List<Integer>> needs = new ArrayList<>();

  /** The steps of a kind at a hole, by their places. */
  private final Map<Task.Kind, Map<String, List<Integer>>> atHoles = new EnumMap<>(Task.Kind.class);

  private final Set<String> held = new TreeSet<>();
  private final int[] begun;
  private final int[] done;
  private final Map<Integer, List<Portion>> days = new LinkedHashMap<>();
  private final Map<Integer, Integer> lastStep = new LinkedHashMap<>();

  private Schedule(Job job, WorkList list, Pace pace, int people, int rainDays) {
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
    int count = list.steps().size();
    this.rest = new double[count];
    this.begun = new int[count];
    this.done = new int[count];
    for (int i = 0; i < count; i++) {
      rest[i] = pace.hours(list.steps().get(i).task());
      begun[i] = -1;
      done[i] = -1;
      needs.add(before(i));
      putAtHole(i);
    }
  }

  private void putAtHole(int i) {
    Task task = list.steps().get(i).task();
    task.mark()
        .ifPresent(
            mark ->
                atHoles
                    .computeIfAbsent(task.kind(), kind -> new LinkedHashMap<>())
                    .computeIfAbsent(mark, hole -> new ArrayList<>())
                    .add(i));
  }

  /** Waits that no work of the list would set off are over. */
  private void openIdle() {
    if (isPast(0, Set.of(Task.Kind.MARK_OUT, Task.Kind.PROVE))) {
      gates.open(Wait.UTILITIES, 0);
    }
    if (isPast(0, Set.of(Task.Kind.TRENCH, Task.Kind.LAY_PIPE))) {
      gates.open(Wait.TRENCH_INSPECTION, 0);
    }
    for (int lot = 0; lot < list.lots().size(); lot++) {
      if (isPast(lot, Set.of(Task.Kind.BORE, Task.Kind.DIG))) {
        gates.open(Wait.LOOK, lot);
        gates.open(Wait.INSPECTION, lot);
      }
    }
  }

  /**
   * Deals them out.
   *
   * @param people how many work
   * @param rainDays work days that the weather takes
   */
  static Schedule of(Job job, WorkList list, Pace pace, int people, int rainDays) {
    Schedule schedule = new Schedule(job, list, pace, people, rainDays);
    schedule.openIdle();
    int idle = 0;
    for (int day = 0; !schedule.isDone(); day++) {
      schedule.work(day);
      idle = schedule.days.containsKey(day) ? 0 : idle + 1;
      if (idle > MOST_IDLE_DAYS) {
        throw new IllegalStateException("work waits for something that never comes");
      }
    }
    return schedule;
  }

  private boolean isDone() {
    for (int day : done) {
      if (day < 0) {
        return false;
      }
    }
    return true;
  }

  private void work(int day) {
    double left = capacity;
    Map<String, Double> atHole = new LinkedHashMap<>();
    boolean placed = true;
    while (placed && left > TIE_HOURS) {
      placed = false;
      for (int i = 0; i < rest.length; i++) {
        double hours = done[i] < 0 && isReady(i, day) ? fitting(i, left, atHole) : 0;
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
    boolean continued = begun[i] >= 0;
    rest[i] -= hours;
    boolean unfinished = rest[i] > TIE_HOURS;
    portions.add(
        new Portion(
            step.task().kind(),
            step.task().mark(),
            step.task().least().times(part),
            step.task().most().times(part),
            continued,
            unfinished));
    begun[i] = continued ? begun[i] : day;
    lastStep.put(day, i);
    if (!unfinished) {
      done[i] = day;
      setOff(step, day);
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

  /** Begins the waits that a finished step sets off. */
  private void setOff(Step step, int day) {
    if (isPast(0, Set.of(Task.Kind.MARK_OUT, Task.Kind.PROVE))) {
      gates.setOff(Wait.UTILITIES, 0, day);
    }
    if (isPast(0, Set.of(Task.Kind.TRENCH, Task.Kind.LAY_PIPE))) {
      gates.setOff(Wait.TRENCH_INSPECTION, 0, day);
    }
    int lot = step.lot();
    Set<Task.Kind> open = new TreeSet<>(Set.of(Task.Kind.BORE, Task.Kind.DIG));
    if (isPast(lot, open)) {
      gates.setOff(Wait.LOOK, lot, day);
      open.addAll(Set.of(Task.Kind.GRAVEL, Task.Kind.FORM, Task.Kind.STEEL));
      if (isPast(lot, open)) {
        gates.setOff(Wait.INSPECTION, lot, day);
      }
    }
  }

  private boolean isPast(int lot, Set<Task.Kind> kinds) {
    for (int i = 0; i < rest.length; i++) {
      Step step = list.steps().get(i);
      if (done[i] < 0 && step.lot() == lot && kinds.contains(step.task().kind())) {
        return false;
      }
    }
    return true;
  }

  private boolean isReady(int i, int day) {
    for (int before : needs.get(i)) {
      if (done[before] < 0) {
        return false;
      }
    }
    Step step = list.steps().get(i);
    return gates.isOpen(step, dates.moment(day))
        && (step.task().kind() != Task.Kind.STRIP || isHard(step, Task.Kind.POUR, day))
        && (step.task().kind() != Task.Kind.JOINT || isHard(step, Task.Kind.FIRST_LIFT, day))
        && (step.task().kind() != Task.Kind.FRAME || isLoadable(day));
  }

  /** The steps that must be done before a step, by their places. */
  private List<Integer> before(int i) {
    Step step = list.steps().get(i);
    List<Integer> before = new ArrayList<>();
    for (int j = 0; j < list.steps().size(); j++) {
      if (j != i && isBefore(j, i, list.steps().get(j), step)) {
        before.add(j);
      }
    }
    return before;
  }

  /** Marking out in its order, then the kinds at a hole in theirs; pours of a lot one by one. */
  private static boolean isBefore(int j, int i, Step other, Step step) {
    Task.Kind first = other.task().kind();
    Task.Kind kind = step.task().kind();
    if (first.compareTo(Task.Kind.SET_PEGS) <= 0) {
      return kind.compareTo(Task.Kind.SET_PEGS) > 0 || j < i;
    }
    boolean atHole =
        other.task().mark().equals(step.task().mark())
            && first.isTrenching() == kind.isTrenching()
            && first.compareTo(kind) < 0
            && first != Task.Kind.CARRY_SPOIL;
    // The floor comes after all that is done at the holes; the trench beside it is its own.
    boolean floor =
        kind == Task.Kind.FRAME && first != Task.Kind.BOARDS && !first.isTrenching() && j != i;
    boolean pours =
        Task.POURS.contains(first) && kind == first && other.lot() == step.lot() && j < i;
    return atHole || pours || floor;
  }

  /** Nothing is built on a footing before its concrete bears it. */
  private boolean isLoadable(int day) {
    int poured = lastPour();
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
    Map<String, List<Integer>> pours = atHoles.getOrDefault(kind, Map.of());
    List<Integer> here = pours.getOrDefault(next.task().mark().orElse(""), List.of());
    if (here.isEmpty()) {
      return true;
    }
    int poured = done[here.get(0)];
    return poured >= 0 && dates.moment(poured) < dates.moment(day);
  }

  WorkList list() {
    return list;
  }

  DayDates dates() {
    return dates;
  }

  Gates gates() {
    return gates;
  }

  Job job() {
    return job;
  }

  /** Days on which something is done, in order: their numbers among the crew's work days. */
  List<Integer> worked() {
    return List.copyOf(days.keySet());
  }

  List<Portion> portions(int day) {
    return List.copyOf(days.getOrDefault(day, List.of()));
  }

  /** The step that was last at work on a day. */
  Step last(int day) {
    return list.steps().get(Optional.ofNullable(lastStep.get(day)).orElseThrow());
  }

  /** The day on which the first, or last, step of a kind is done, for some holes; -1: none. */
  int day(Task.Kind kind, List<String> marks, boolean last) {
    Map<String, List<Integer>> steps = atHoles.getOrDefault(kind, Map.of());
    int found = -1;
    for (String mark : marks) {
      for (int i : steps.getOrDefault(mark, List.of())) {
        int day = last ? done[i] : begun[i];
        boolean better = found < 0 || (last ? day > found : day < found);
        found = better ? day : found;
      }
    }
    return found;
  }

  List<String> marks() {
    return list.lots().stream().flatMap(List::stream).toList();
  }

  /** The day of the last pour; -1 where nothing is poured. */
  int lastPour() {
    return day(Task.Kind.POUR, marks(), true);
  }

  /** The day on which digging begins at a hole; -1 where it is not dug. */
  int opened(String mark) {
    int bored = day(Task.Kind.BORE, List.of(mark), false);
    int dug = day(Task.Kind.DIG, List.of(mark), false);
    return bored < 0 ? dug : Math.min(bored, dug);
  }

  /**
   * Nights that holes stand open from their first soil to their concrete, summed over the holes.
   */
  int holeNights() {
    long nights = 0;
    for (String mark : marks()) {
      int poured = day(Task.Kind.POUR, List.of(mark), true);
      int opened = opened(mark);
      if (poured >= 0 && opened >= 0) {
        nights += dates.moment(poured) - dates.moment(opened);
      }
    }
    return Math.toIntExact(nights);
  }

  /** Holes that are begun and not poured when the crew leaves. */
  List<String> open(int day) {
    return marks().stream()
        .filter(
            mark -> {
              int opened = opened(mark);
              return opened >= 0 && opened <= day;
            })
        .filter(
            mark -> {
              int poured = day(Task.Kind.POUR, List.of(mark), true);
              return poured < 0 || poured > day;
            })
        .toList();
  }
}
