package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.figures.Task;
import pegbook.measure.Duration;

/**
 * Deals tasks out over days until each day's hours are used.
 *
 * <p>A task is planned with the middle of its range and flows over into the next day where it must.
 * A pour is planned with the worst of its range and never cut: concrete does not wait for a
 * morning. The pours begin on a day of their own, so that the inspection can come before them.
 */
final class DaySplit {
  /** Too little time left to begin something else, person-hours. */
  private static final double SLIVER_HOURS = 1;

  /** Work so near its end is finished on the day. */
  private static final double OVERRUN_HOURS = 0.5;

  private static final double TIE_HOURS = 1e-9;

  private final double capacity;
  private final List<List<Portion>> days = new ArrayList<>();
  private double left;

  private DaySplit(Duration crewHours) {
    capacity = crewHours.hours();
    if (!(capacity > 0)) {
      throw new IllegalArgumentException("a crew's day of " + capacity + " hours");
    }
  }

  /** The portions of each day. */
  static List<List<Portion>> split(List<Task> tasks, Duration crewHours) {
    DaySplit split = new DaySplit(crewHours);
    boolean pouring = false;
    for (Task task : tasks) {
      boolean last = task.kind() == Task.Kind.INSPECTION || task.kind() == Task.Kind.POUR;
      if (last && !pouring) {
        split.nextDay();
        pouring = true;
      }
      if (task.kind() == Task.Kind.POUR) {
        split.whole(task);
      } else {
        split.flowing(task);
      }
    }
    split.days.removeIf(List::isEmpty);
    return split.days;
  }

  static double planned(Task task) {
    return task.kind() == Task.Kind.POUR
        ? task.most().hours()
        : (task.least().hours() + task.most().hours()) / 2;
  }

  private void nextDay() {
    days.add(new ArrayList<>());
    left = capacity;
  }

  private void whole(Task task) {
    double hours = planned(task);
    if (days.isEmpty() || (hours > left + TIE_HOURS && left < capacity)) {
      nextDay();
    }
    add(task, 1, false, false);
    left -= hours;
  }

  private void flowing(Task task) {
    double all = planned(task);
    double rest = all;
    boolean continued = false;
    do {
      if (days.isEmpty() || left < Math.min(rest, SLIVER_HOURS) - TIE_HOURS) {
        nextDay();
      }
      double here = rest <= left + OVERRUN_HOURS ? rest : left;
      double after = rest - here;
      add(task, all == 0 ? 1 : here / all, continued, after > TIE_HOURS);
      continued = true;
      left -= here;
      rest = after;
    } while (rest > TIE_HOURS);
  }

  private void add(Task task, double part, boolean continued, boolean unfinished) {
    days.get(days.size() - 1)
        .add(
            new Portion(
                task.kind(),
                task.mark(),
                task.least().times(part),
                task.most().times(part),
                continued,
                unfinished));
  }
}
