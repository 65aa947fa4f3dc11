package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Link;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.Gates.Gate;
import pegbook.calc.dayplan.WorkList.Step;
import pegbook.figures.Task;

/**
 * What the end hangs on, found backwards from the last pour: work that could not have been done on
 * the work day before hangs on what it waited for; else on the crew's hours, and so on the last
 * work of the day before.
 */
final class CriticalChain {
  private final Schedule schedule;
  private final List<Link> links = new ArrayList<>();

  private CriticalChain(Schedule schedule) {
    this.schedule = schedule;
  }

  /** The links, from the first day on. */
  static List<Link> of(Schedule schedule) {
    if (schedule.worked().isEmpty()) {
      return List.of();
    }
    CriticalChain chain = new CriticalChain(schedule);
    chain.walk();
    Collections.reverse(chain.links);
    return chain.links;
  }

  private void walk() {
    int end = OrderChoice.endDay(schedule);
    if (schedule.lastPour() >= 0) {
      links.add(new Link(Optional.of(Wait.LOAD), number(end), number(end)));
    }
    int day = end;
    int last = end;
    Step step = lastPourOr(end);
    while (day >= 0) {
      Optional<Gate> gate = binding(step, day);
      int before = previous(day);
      if (gate.isPresent()) {
        links.add(new Link(Optional.empty(), number(day), number(last)));
        links.add(
            new Link(Optional.of(gate.get().kind()), number(gate.get().after()), number(day)));
        day = gate.get().after();
        last = day;
      } else if (before < 0) {
        links.add(new Link(Optional.empty(), number(day), number(last)));
        day = -1;
      } else {
        day = before;
      }
      if (day >= 0) {
        step = schedule.last(day);
      }
    }
  }

  private Step lastPourOr(int end) {
    return schedule.list().steps().stream()
        .filter(step -> step.task().kind() == Task.Kind.POUR)
        .filter(
            step -> schedule.day(Task.Kind.POUR, step.task().mark().stream().toList(), true) == end)
        .reduce((one, next) -> next)
        .orElseGet(() -> schedule.last(end));
  }

  /** The wait that was over only after the work day before. */
  private Optional<Gate> binding(Step step, int day) {
    if (day == 0) {
      return Optional.empty();
    }
    long before = schedule.dates().moment(day - 1);
    return schedule.gates().before(step).stream()
        .filter(gate -> gate.opens() > before)
        .reduce((one, other) -> other.opens() > one.opens() ? other : one);
  }

  private int previous(int day) {
    int place = schedule.worked().indexOf(day);
    return place <= 0 ? -1 : schedule.worked().get(place - 1);
  }

  private int number(int day) {
    return schedule.worked().indexOf(day) + 1;
  }
}
