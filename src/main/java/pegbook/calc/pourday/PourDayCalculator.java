package pegbook.calc.pourday;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.pourday.PourDay.After;
import pegbook.calc.pourday.PourDay.Batching;
import pegbook.figures.MarkRuns;
import pegbook.figures.Pour;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.job.Concrete;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Duration;
import pegbook.measure.Rounding;

/**
 * Finds the pace that the batches of each hole must keep, and says when forms may come off and
 * loads may come on. Whether a pour fits at all, the concrete plan decides.
 */
public final class PourDayCalculator {
  private PourDayCalculator() {}

  /**
   * The days of pouring.
   *
   * @param job how concrete is mixed, when it is loaded
   * @param pours every hole's concrete
   * @param days which work is done on which day
   */
  public static PourDay calculate(Job job, List<Pour> pours, List<TaskDay> days) {
    List<Working> workings = new ArrayList<>();
    List<Batching> batchings = new ArrayList<>();
    if (job.concrete().mixing() != Concrete.Mixing.READY_MIX) {
      alike(pours).forEach(some -> batchings.add(batching(some, workings)));
    }
    List<After> afters =
        days.stream()
            .filter(day -> day.kind() == Task.Kind.POUR)
            .distinct()
            .map(
                day ->
                    new After(
                        day.day(),
                        day.date().map(poured -> poured.plusDays(1)),
                        day.date().map(job.plan().loadAfter()::after)))
            .toList();
    return new PourDay(batchings, afters, List.of(), workings);
  }

  /** Holes that take as many batches in the same window, in the order of the first of each. */
  private static List<List<Pour>> alike(List<Pour> pours) {
    Map<List<Double>, List<Pour>> alike = new LinkedHashMap<>();
    for (Pour pour : pours) {
      alike
          .computeIfAbsent(
              List.of(
                  (double) pour.batches(),
                  pour.window().minutes(),
                  pour.kind() == Task.Kind.POUR ? 1.0 : 0.0),
              key -> new ArrayList<>())
          .add(pour);
    }
    return List.copyOf(alike.values());
  }

  private static Batching batching(List<Pour> alike, List<Working> workings) {
    Pour pour = alike.get(0);
    List<String> marks = alike.stream().map(Pour::mark).toList();
    int batches = pour.batches();
    Working each =
        Working.of(
            PourDayFormulas.each(), MarkRuns.brief(marks), pour.window(), new Count(batches));
    workings.add(each);
    Duration pace = Duration.ofMinutes(Rounding.DOWN.steps(each.result(), 0.5) * 0.5);
    return new Batching(marks, pour.kind(), pour.bagsInBatch(), batches, pace, (batches + 1) / 2);
  }
}
