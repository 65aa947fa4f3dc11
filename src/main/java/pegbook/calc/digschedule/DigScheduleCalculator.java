package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.calc.digschedule.DigSchedule.Totals;
import pegbook.figures.AlikeHoles;
import pegbook.figures.DigWork;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Rounding;
import pegbook.measure.Volume;
import pegbook.published.HaulRate;

/**
 * Plans the digging: order, tools, soil and where it lies. How long it takes is another subject.
 *
 * <p>The deepest holes come first, so that no hole is dug below a footing that already stands;
 * holes of one depth follow in the order of the marks. Volumes are those of the drawn hole; a
 * ragged hole gives more.
 */
public final class DigScheduleCalculator {
  private DigScheduleCalculator() {}

  /** The dig schedule of a job's holes. */
  public static DigSchedule calculate(Job job, Placement placement, List<Hole> holes) {
    List<Working> workings = new ArrayList<>();
    DugSoil soil = DugSoil.of(job);
    List<Row> rows = rows(job, soil, holes, workings);
    HeapPlan heaps = HeapPlan.of(job, placement, soil, rows);
    Totals totals = totals(job, rows, soil, workings);
    workings.addAll(heaps.workings());
    List<Finding> findings = new ArrayList<>(ToolFindings.of(job, rows));
    CartFindings.of(job, soil).ifPresent(findings::add);
    findings.addAll(heaps.findings());
    return new DigSchedule(
        rows,
        totals,
        soil,
        EdgeRule.of(job),
        heaps.spots(),
        findings,
        workings,
        digging(job, rows, heaps.spots()));
  }

  private static List<Row> rows(Job job, DugSoil soil, List<Hole> holes, List<Working> workings) {
    List<Row> unordered = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(holes, hole -> job.side(hole.mark()))) {
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
              row.kept(),
              row.tools()));
    }
    return rows;
  }

  /** Depths in tenths of a millimetre, so that noise in the last digit does not mix the order. */
  private static Comparator<Length> deepestFirst() {
    return Comparator.comparing(
        (Length depth) -> -Rounding.NEAREST.steps(depth.millimetres(), 0.1));
  }

  private static Totals totals(Job job, List<Row> rows, DugSoil soil, List<Working> workings) {
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
        rows.stream().map(Row::kept).reduce(Volume.ZERO, Volume::plus));
  }

  private static List<DigWork> digging(Job job, List<Row> rows, List<HeapSpot> spots) {
    return rows.stream()
        .map(row -> new DigWork(row.hole(), row.loose(), row.tools(), haul(job, row.hole(), spots)))
        .toList();
  }

  /** To the tip, or the heap beside the hole. */
  private static Length haul(Job job, Hole hole, List<HeapSpot> spots) {
    return job.spoil()
        .place()
        .map(tip -> hole.centre().distanceTo(tip))
        .or(
            () ->
                spots.stream()
                    .filter(spot -> spot.heap().holes().contains(hole.mark()))
                    .map(HeapSpot::distance)
                    .findFirst())
        .orElse(HaulRate.farthest());
  }
}
