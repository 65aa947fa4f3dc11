package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Formula;
import pegbook.figures.MarkRuns;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.published.HaulRate;
import pegbook.published.WorkRange;

/**
 * How long the spoil takes to where it lies in the end: the tip, or the heap beside the hole. Spoil
 * that has no place yet is taken as carried as far as the rates go.
 *
 * @param tasks one for each row, in the rows' order
 */
record CarryPlan(List<Task> tasks, List<Working> workings, List<Finding> findings) {

  /** Holes of which equal volumes go equally far. */
  private record Alike(Volume loose, HaulRate rate) {
    /** The least and the most time. */
    List<Working> worked(Job job, String subject) {
      Formula formula = DigScheduleFormulas.in(job.heading().units()).carryTime(rate.citation());
      WorkRange range = WorkRange.find("carry");
      return List.of(
          Working.of(formula, subject, loose, rate.rate(), new Count(range.least())),
          Working.of(formula, subject, loose, rate.rate(), new Count(range.most())));
    }
  }

  static CarryPlan of(Job job, List<Row> rows, List<HeapSpot> spots) {
    Map<Alike, List<String>> groups = new LinkedHashMap<>();
    for (Row row : rows) {
      Alike alike = new Alike(row.loose(), HaulRate.at(distance(job, row, spots)));
      groups.computeIfAbsent(alike, key -> new ArrayList<>()).add(row.hole().mark());
    }
    Map<String, Task> tasks = new LinkedHashMap<>();
    List<Working> workings = new ArrayList<>();
    groups.forEach(
        (alike, marks) -> {
          List<Working> both = alike.worked(job, MarkRuns.brief(marks));
          workings.addAll(both);
          marks.forEach(mark -> tasks.put(mark, task(mark, both)));
        });
    return new CarryPlan(
        rows.stream().map(row -> find(tasks, row.hole().mark())).toList(),
        workings,
        far(job, rows, spots));
  }

  private static Task task(String mark, List<Working> both) {
    return new Task(
        Task.Kind.CARRY_SPOIL,
        Optional.of(mark),
        both.get(0).asDuration(),
        both.get(1).asDuration());
  }

  private static Task find(Map<String, Task> tasks, String mark) {
    return Optional.ofNullable(tasks.get(mark)).orElseThrow();
  }

  private static Length distance(Job job, Row row, List<HeapSpot> spots) {
    Optional<Point> tip = job.spoil().place();
    if (tip.isPresent()) {
      return row.hole().centre().distanceTo(tip.get());
    }
    return spots.stream()
        .filter(spot -> spot.heap().holes().contains(row.hole().mark()))
        .map(HeapSpot::distance)
        .findFirst()
        .orElse(HaulRate.farthest());
  }

  private static List<Finding> far(Job job, List<Row> rows, List<HeapSpot> spots) {
    List<Row> far =
        rows.stream()
            .filter(row -> distance(job, row, spots).isMoreThan(HaulRate.farthest()))
            .toList();
    return far.stream()
        .map(row -> distance(job, row, spots))
        .max(Length::compareTo)
        .map(
            distance ->
                new Finding(
                        Kind.NOTE,
                        "haul-far",
                        far.stream().map(row -> row.hole().mark()).toList(),
                        "spoil.place",
                        Map.of(),
                        Decider.CREW,
                        List.of(HaulRate.at(distance).citation()))
                    .with("distance", Argument.of(distance))
                    .with("limit", Argument.of(HaulRate.farthest())))
        .stream()
        .toList();
  }
}
