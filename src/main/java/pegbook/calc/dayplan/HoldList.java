package pegbook.calc.dayplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.Gates.Gate;
import pegbook.figures.Task;
import pegbook.job.DaySpan;
import pegbook.job.Job;

/** What a schedule waits for, as the calendar shows it. */
record HoldList(Job job, Schedule schedule) {

  List<Hold> holds() {
    List<Hold> holds = new ArrayList<>();
    for (Gate gate : schedule.gates().all()) {
      if (gate.isKnown() && isUsed(gate)) {
        holds.add(hold(gate));
      }
    }
    strip().ifPresent(holds::add);
    load().ifPresent(holds::add);
    return holds;
  }

  /** A wait that no work of the job stands behind is none. */
  private boolean isUsed(Gate gate) {
    return schedule.list().steps().stream()
        .anyMatch(step -> schedule.gates().before(step).contains(gate));
  }

  private Hold hold(Gate gate) {
    List<List<String>> lots = schedule.list().lots();
    boolean ofLot = gate.kind() == Wait.LOOK || gate.kind() == Wait.INSPECTION;
    Optional<LocalDate> date =
        gate.kind() == Wait.UTILITIES && gate.after() < 0
            ? job.place().utilities().map(marking -> marking.confirmed())
            : schedule.dates().dateOf(gate.opens());
    return new Hold(
        gate.kind(),
        ofLot && lots.size() > 1 ? lots.get(gate.lot()) : List.of(),
        call(gate, date),
        date,
        number(gate.after()));
  }

  /**
   * The latest day for the call: the request once the marks are painted, the notice before a visit.
   */
  private Optional<LocalDate> call(Gate gate, Optional<LocalDate> date) {
    return switch (gate.kind()) {
      case UTILITIES ->
          gate.after() < 0 || !schedule.dates().isDated()
              ? Optional.empty()
              : Optional.of(schedule.dates().request(gate.after()));
      case LOOK, INSPECTION, TRENCH_INSPECTION ->
          date.map(visit -> job.plan().inspection().notice().before(visit))
              .map(HoldList::backToOffice);
      case MACHINE, STRIP, LOAD -> Optional.empty();
    };
  }

  private static LocalDate backToOffice(LocalDate from) {
    LocalDate day = from;
    while (!DaySpan.isOfficeDay(day)) {
      day = day.minusDays(1);
    }
    return day;
  }

  /** Number of a work day as the days are numbered; 0 for none. */
  private int number(int day) {
    return schedule.worked().indexOf(day) + 1;
  }

  private Optional<Hold> strip() {
    int stripped = schedule.day(Task.Kind.STRIP, schedule.marks(), true);
    return stripped < 0
        ? Optional.empty()
        : Optional.of(
            new Hold(
                Wait.STRIP,
                List.of(),
                Optional.empty(),
                schedule.dates().date(schedule.lastPour()).map(poured -> poured.plusDays(1)),
                number(schedule.lastPour())));
  }

  private Optional<Hold> load() {
    return schedule.lastPour() < 0
        ? Optional.empty()
        : Optional.of(
            new Hold(
                Wait.LOAD,
                List.of(),
                Optional.empty(),
                loadable(job, schedule),
                number(schedule.lastPour())));
  }

  /** When the last footing may be loaded. */
  static Optional<LocalDate> loadable(Job job, Schedule schedule) {
    return schedule.lastPour() < 0
        ? Optional.empty()
        : schedule.dates().date(schedule.lastPour()).map(job.plan().loadAfter()::after);
  }
}
