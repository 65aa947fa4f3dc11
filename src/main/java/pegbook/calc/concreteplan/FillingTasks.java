package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/** What must be done to fill the holes, in person-hours. Common practice, no source. */
final class FillingTasks {
  /** Carry, tip, level and tamp the gravel of one hole. */
  private static final Duration GRAVEL_LEAST = Duration.ofMinutes(10);

  private static final Duration GRAVEL_MOST = Duration.ofMinutes(30);

  /** Strike off, set what sticks out, cover; two people. The form is another task. */
  private static final Duration ROUND_THE_POUR_LEAST = Duration.ofMinutes(15);

  private static final Duration ROUND_THE_POUR_MOST = Duration.ofMinutes(40);

  /** Person-hours to tamp in a cubic metre of soil or gravel round a tube. */
  private static final double BACKFILL_LEAST_HOURS = 1;

  private static final double BACKFILL_MOST_HOURS = 2;

  private FillingTasks() {}

  /** Gravel hole by hole, the inspector's visit, pours in their order. */
  static List<Task> of(Job job, List<Hole> holes, List<Fill> fills, List<String> pourOrder) {
    List<Task> tasks = new ArrayList<>();
    for (Hole hole : holes) {
      if (hole.gravel().isMoreThan(Length.ZERO)) {
        tasks.add(new Task(Task.Kind.GRAVEL, Optional.of(hole.mark()), GRAVEL_LEAST, GRAVEL_MOST));
      }
    }
    tasks.add(new Task(Task.Kind.INSPECTION, Optional.empty(), Duration.ZERO, Duration.ZERO));
    for (String mark : pourOrder) {
      fills.stream()
          .filter(fill -> fill.mark().equals(mark))
          .forEach(fill -> fill.lifts().forEach(lift -> tasks.add(pour(job, fill, lift))));
    }
    return tasks;
  }

  /** What goes round a tube goes in before its first concrete. */
  private static Task pour(Job job, Fill fill, Lift lift) {
    boolean first = lift.equals(fill.lifts().get(0));
    double backfill =
        first ? fill.backfill().or(fill::sideGravel).orElse(Volume.ZERO).cubicMetres() : 0;
    return new Task(
        lift.kind(),
        Optional.of(fill.mark()),
        ROUND_THE_POUR_LEAST
            .plus(mixing(job, lift, true))
            .plus(new Duration(backfill * BACKFILL_LEAST_HOURS)),
        ROUND_THE_POUR_MOST
            .plus(mixing(job, lift, false))
            .plus(new Duration(backfill * BACKFILL_MOST_HOURS)));
  }

  /** Person-hours of a pair for the concrete of a hole. */
  private static Duration mixing(Job job, Lift lift, boolean best) {
    MixingRate rate = MixingRate.of(job.concrete().mixing());
    double minutes = lift.poured().cubicMetres() * rate.minutes(best, UnitSystem.METRIC);
    return Duration.ofMinutes(2 * minutes);
  }
}
