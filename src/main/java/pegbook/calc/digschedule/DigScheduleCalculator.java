package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.calc.digschedule.DigSchedule.Totals;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Rounding;
import pegbook.measure.Volume;

/**
 * Plans the digging: order, tools, time, soil and where it lies.
 *
 * <p>The deepest holes come first, so that no hole is dug below a footing that already stands;
 * holes of one depth follow in the order of the marks. Volumes are those of the drawn hole; a
 * ragged hole gives more.
 */
public final class DigScheduleCalculator {
  private static final Duration HALF_HOUR = new Duration(0.5);

  private DigScheduleCalculator() {}

  /** The dig schedule of a job's holes. */
  public static DigSchedule calculate(Job job, Placement placement, List<Hole> holes) {
    List<Working> workings = new ArrayList<>();
    DugSoil soil = DugSoil.of(job);
    List<Row> rows = rows(job, soil, holes, workings);
    HeapPlan heaps = HeapPlan.of(job, placement, soil, rows);
    CarryPlan carry = CarryPlan.of(job, rows, heaps.spots());
    Totals totals = totals(job, rows, carry.tasks(), soil, workings);
    workings.addAll(carry.workings());
    workings.addAll(heaps.workings());
    List<Finding> findings = new ArrayList<>(ToolFindings.of(job, rows));
    findings.addAll(RateFindings.of(job, soil, rows));
    findings.addAll(heaps.findings());
    findings.addAll(carry.findings());
    return new DigSchedule(
        rows,
        totals,
        soil,
        EdgeRule.of(job),
        heaps.spots(),
        findings,
        workings,
        tasks(rows, carry.tasks()));
  }

  private static List<Row> rows(Job job, DugSoil soil, List<Hole> holes, List<Working> workings) {
    List<Row> unordered = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      Effort effort = Effort.of(job, soil, alike);
      workings.addAll(effort.workings());
      alike.holes().forEach(hole -> unordered.add(effort.row(hole)));
    }
    List<Row> sorted = new ArrayList<>(unordered);
    sorted.sort(
        Comparator.comparing((Row row) -> row.hole().dug(), deepestFirst())
            .thenComparing(row -> holes.indexOf(row.hole())));
    List<Row> rows = new ArrayList<>();
    for (Row row : sorted) {
      rows.add(
          new Row(
              rows.size() + 1,
              row.hole(),
              row.bank(),
              row.loose(),
              row.cartLoads(),
              row.mass(),
              row.tools(),
              row.least(),
              row.most(),
              row.range()));
    }
    return rows;
  }

  /** Depths in tenths of a millimetre, so that noise in the last digit does not mix the order. */
  private static Comparator<Length> deepestFirst() {
    return Comparator.comparing(
        (Length depth) -> -Rounding.NEAREST.steps(depth.millimetres(), 0.1));
  }

  private static Totals totals(
      Job job, List<Row> rows, List<Task> carrying, DugSoil soil, List<Working> workings) {
    Volume bank = rows.stream().map(Row::bank).reduce(Volume.ZERO, Volume::plus);
    Volume loose = rows.stream().map(Row::loose).reduce(Volume.ZERO, Volume::plus);
    Working loads =
        Working.of(
            DigScheduleFormulas.in(job.heading().units()).totalLoads(), "", loose, soil.cart());
    workings.add(loads);
    return new Totals(
        bank,
        loose,
        Math.round(loads.result()),
        rows.stream().map(Row::mass).reduce(Mass.ZERO, Mass::plus),
        rows.stream().map(Row::least).reduce(Duration.ZERO, Duration::plus),
        rows.stream().map(Row::most).reduce(Duration.ZERO, Duration::plus),
        setUp(carrying.stream().map(Task::least).reduce(Duration.ZERO, Duration::plus)),
        setUp(carrying.stream().map(Task::most).reduce(Duration.ZERO, Duration::plus)));
  }

  private static Duration setUp(Duration hours) {
    return HALF_HOUR.times((double) Rounding.UP.steps(hours.hours(), HALF_HOUR.hours()));
  }

  private static List<Task> tasks(List<Row> rows, List<Task> carrying) {
    List<Task> tasks = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      tasks.add(
          new Task(
              Task.Kind.DIG, java.util.Optional.of(row.hole().mark()), row.least(), row.most()));
      tasks.add(carrying.get(i));
    }
    return tasks;
  }
}
