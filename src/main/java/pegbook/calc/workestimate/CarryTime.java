package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.DigWork;
import pegbook.figures.Formula;
import pegbook.figures.MarkRuns;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.measure.Count;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.HaulRate;
import pegbook.published.WorkRange;

/**
 * How long the spoil takes to where it lies in the end: the tip, or the heap beside the hole.
 *
 * @param tasks one for each hole, by its mark
 */
record CarryTime(Map<String, Task> tasks, List<Working> workings) {

  /** Holes of which equal volumes go equally far. */
  private record Alike(Volume loose, HaulRate rate) {
    /** The least and the most time. */
    List<Working> worked(UnitSystem units, String subject) {
      Formula formula = WorkEstimateFormulas.in(units).carryTime(rate.citation());
      WorkRange range = WorkRange.find("carry");
      return List.of(
          Working.of(formula, subject, loose, rate.rate(), new Count(range.least())),
          Working.of(formula, subject, loose, rate.rate(), new Count(range.most())));
    }
  }

  static CarryTime of(UnitSystem units, List<DigWork> digging) {
    Map<Alike, List<String>> groups = new LinkedHashMap<>();
    for (DigWork work : digging) {
      groups
          .computeIfAbsent(
              new Alike(work.loose(), HaulRate.at(work.haul())), key -> new ArrayList<>())
          .add(work.hole().mark());
    }
    Map<String, Task> tasks = new LinkedHashMap<>();
    List<Working> workings = new ArrayList<>();
    groups.forEach(
        (alike, marks) -> {
          List<Working> both = alike.worked(units, MarkRuns.brief(marks));
          workings.addAll(both);
          marks.forEach(mark -> tasks.put(mark, task(mark, both)));
        });
    return new CarryTime(tasks, workings);
  }

  private static Task task(String mark, List<Working> both) {
    return new Task(
        Task.Kind.CARRY_SPOIL,
        Optional.of(mark),
        both.get(0).asDuration(),
        both.get(1).asDuration());
  }
}
