package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.job.Plan;

/**
 * What work waits for, and when the wait is over: rules of order that no number of hands can
 * hasten.
 */
final class Gates {
  static final long SHUT = Long.MAX_VALUE;

  /** Nothing is waited for. */
  private static final long OPEN = Long.MIN_VALUE;

  /**
   * A wait.
   *
   * @param opens the moment it is over; {@link #SHUT} as long as that is not known
   * @param after the work day that set it off; -1: none, it was known before
   */
  record Gate(Wait kind, int lot, long opens, int after) {
    /** Whether it opens at a moment of the plan. */
    boolean isKnown() {
      return opens != SHUT && opens != OPEN;
    }
  }

  private final Job job;
  private final DayDates dates;
  private final List<Gate> gates = new ArrayList<>();

  Gates(Job job, DayDates dates, int lots) {
    this.job = job;
    this.dates = dates;
    boolean known = job.place().utilities().isPresent() || !dates.isDated();
    long confirmed =
        job.place().utilities().map(marking -> dates.moment(marking.confirmed())).orElse(0L);
    gates.add(new Gate(Wait.UTILITIES, 0, known ? confirmed : SHUT, -1));
    job.plan()
        .machine()
        .filter(machine -> dates.isDated())
        .ifPresent(
            machine -> gates.add(new Gate(Wait.MACHINE, 0, dates.moment(machine.date()), -1)));
    for (int lot = 0; lot < lots; lot++) {
      if (job.plan().inspection().looks() == Plan.Looks.OPEN_HOLE_AND_STEEL) {
        gates.add(new Gate(Wait.LOOK, lot, SHUT, -1));
      }
      gates.add(new Gate(Wait.INSPECTION, lot, SHUT, -1));
    }
    job.power().ifPresent(power -> gates.add(new Gate(Wait.TRENCH_INSPECTION, 0, SHUT, -1)));
  }

  List<Gate> all() {
    return List.copyOf(gates);
  }

  Optional<Gate> find(Wait wait, int lot) {
    return gates.stream().filter(gate -> gate.kind() == wait && gate.lot() == lot).findFirst();
  }

  /** The gates that a step must pass, those of its own lot. */
  List<Gate> before(Step step) {
    return waits(step.task().kind()).stream()
        .flatMap(wait -> find(wait, isOfAll(wait) ? 0 : step.lot()).stream())
        .toList();
  }

  /** Whether nothing that a step waits for is still to come at a moment. */
  boolean isOpen(Step step, long moment) {
    List<Wait> waits = waits(step.task().kind());
    for (Gate gate : gates) {
      boolean own = gate.lot() == step.lot() || isOfAll(gate.kind());
      if (own && gate.opens() > moment && waits.contains(gate.kind())) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOfAll(Wait wait) {
    return wait == Wait.UTILITIES || wait == Wait.MACHINE || wait == Wait.TRENCH_INSPECTION;
  }

  private List<Wait> waits(Task.Kind kind) {
    return switch (kind) {
      case MARK_OUT,
          PROVE,
          LOOK,
          INSPECTION,
          JOINT,
          STRIP,
          LAY_PIPE,
          TRENCH_INSPECTION,
          FRAME,
          BOARDS ->
          List.of();
      case SET_PEGS, DIG, CARRY_SPOIL, TRENCH -> List.of(Wait.UTILITIES);
      case BACKFILL -> List.of(Wait.TRENCH_INSPECTION);
      case BORE -> List.of(Wait.UTILITIES, Wait.MACHINE);
      case GRAVEL, FORM, STEEL -> List.of(Wait.LOOK);
      case FIRST_LIFT, POUR ->
          pours()
              ? List.of(Wait.LOOK, Wait.INSPECTION, Wait.MACHINE)
              : List.of(Wait.LOOK, Wait.INSPECTION);
    };
  }

  private boolean pours() {
    return job.plan().machine().stream()
        .anyMatch(machine -> machine.purpose() == Plan.Purpose.POURING);
  }

  /** A wait for nothing: no work of the lot sets it off. */
  void open(Wait wait, int lot) {
    gates.replaceAll(
        gate ->
            gate.kind() == wait && gate.lot() == lot && gate.opens() == SHUT
                ? new Gate(wait, lot, OPEN, -1)
                : gate);
  }

  /** Sets the waits that begin once marks are painted, a lot is dug, a lot is filled. */
  void setOff(Wait wait, int lot, int day) {
    for (int i = 0; i < gates.size(); i++) {
      Gate gate = gates.get(i);
      if (gate.kind() == wait && gate.lot() == lot && gate.opens() == SHUT) {
        long opens = wait == Wait.UTILITIES ? dates.answered(day) : dates.visit(day);
        gates.set(i, new Gate(wait, lot, opens, day));
      }
    }
  }
}
