package pegbook.calc.dayplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Order;
import pegbook.figures.Task;
import pegbook.job.Job;

/**
 * Compares orders of the work: all holes dug before any is poured, or dug, looked at and poured in
 * lots. The earlier last pour wins; of equal ones the fewer visits of the inspector, unless each
 * more spares a quarter of the nights that holes stand open.
 *
 * @param chosen the schedule that won
 * @param orders all that were compared
 */
record OrderChoice(Schedule chosen, List<Order> orders) {
  private static final int MOST_LOTS = 4;

  /** More people find no use in holes for posts: common practice, no source. */
  static final int MOST_PEOPLE = 12;

  /** Nights spared for which one more visit is worth its call: common practice, no source. */
  private static final double WORTH_A_VISIT = 0.75;

  static OrderChoice of(Job job, List<Task> tasks, List<String> dug, int people) {
    List<Schedule> tried = new ArrayList<>();
    int holes = WorkList.of(tasks, dug, 1).lots().get(0).size();
    int most = isOneLot(job) ? 1 : Math.max(1, Math.min(MOST_LOTS, holes));
    for (int lots = 1; lots <= most; lots++) {
      WorkList list = WorkList.of(tasks, dug, lots);
      if (list.lots().size() == lots) {
        tried.add(quickest(job, list, people));
      }
    }
    int best = 0;
    for (int i = 1; i < tried.size(); i++) {
      best = isBetter(tried.get(i), tried.get(best)) ? i : best;
    }
    List<Order> orders = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      orders.add(order(tried.get(i), i == best));
    }
    return new OrderChoice(tried.get(best), orders);
  }

  /** Without dates no office can be waited for; a mixer or truck wants all holes on its one day. */
  private static boolean isOneLot(Job job) {
    return job.crew().start().isEmpty() || job.plan().machine().isPresent();
  }

  /** The quickest of what the crew, or a part of it, can do: more hands never take longer. */
  static Schedule quickest(Job job, WorkList list, int people) {
    int most = Math.min(people, MOST_PEOPLE);
    Schedule best = Dealer.deal(job, list, Pace.PLANNED, most, 0);
    for (int fewer = most - 1; fewer > 0; fewer--) {
      Schedule other = Dealer.deal(job, list, Pace.PLANNED, fewer, 0);
      best = end(other) < end(best) ? other : best;
    }
    return best;
  }

  /** The moment of the last pour; without pours that of the last work. */
  static long end(Schedule schedule) {
    return schedule.dates().moment(endDay(schedule));
  }

  static int endDay(Schedule schedule) {
    List<Integer> worked = schedule.worked();
    int last = worked.isEmpty() ? 0 : worked.get(worked.size() - 1);
    return schedule.lastPour() < 0 ? last : schedule.lastPour();
  }

  private static boolean isBetter(Schedule other, Schedule best) {
    return end(other) < end(best)
        || (end(other) == end(best)
            && other.holeNights() <= worth(other, best) * best.holeNights());
  }

  /** What part of the nights may be left for the visits that one order has more than another. */
  private static double worth(Schedule other, Schedule best) {
    double part = 1;
    for (int lots = best.list().lots().size(); lots < other.list().lots().size(); lots++) {
      part *= WORTH_A_VISIT;
    }
    return part;
  }

  private static Order order(Schedule schedule, boolean chosen) {
    Optional<Integer> pour = Optional.of(schedule.lastPour()).filter(day -> day >= 0);
    return new Order(
        schedule.list().lots().size(),
        schedule.worked().size(),
        pour.flatMap(schedule.dates()::date),
        schedule.holeNights(),
        schedule.worked().stream().mapToInt(day -> schedule.open(day).size()).max().orElse(0),
        chosen);
  }
}
