package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.MarkRuns;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/**
 * Where the dug soil lies.
 *
 * <p>Without a place to tip, each hole has a heap of all its soil beside it. With one, carts take
 * everything there, and beside each hole is only room for a tarp or cart with one load. What finds
 * no place is carried away at once, which a finding says.
 */
final class HeapPlan {
  private final Job job;
  private final DugSoil soil;
  private final HeapGround ground;
  private final List<HeapSpot> spots = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  /** Cones by their volume, each with the names of the holes that they are for. */
  private final Map<Volume, Cone> cones = new LinkedHashMap<>();

  /** The cone that a volume makes. */
  private record Cone(List<String> names, Working radius, Working height) {
    Cone named(String subject) {
      return new Cone(
          names,
          new Working(radius.formula(), subject, radius.inputs()),
          new Working(height.formula(), subject, height.inputs()));
    }
  }

  private HeapPlan(Job job, Placement placement, DugSoil soil, List<Row> rows) {
    this.job = job;
    this.soil = soil;
    this.ground = new HeapGround(job, placement, rows.stream().map(Row::hole).toList());
  }

  static HeapPlan of(Job job, Placement placement, DugSoil soil, List<Row> rows) {
    HeapPlan plan = new HeapPlan(job, placement, soil, rows);
    Optional<HeapSpot> tip = job.spoil().place().map(place -> plan.tip(place, rows));
    tip.ifPresent(spot -> plan.ground.take(spot.heap()));
    plan.beside(rows, tip.isPresent());
    tip.ifPresent(plan.spots::add);
    return plan;
  }

  List<HeapSpot> spots() {
    return spots;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Working> workings() {
    List<Cone> named =
        cones.values().stream().map(cone -> cone.named(MarkRuns.brief(cone.names()))).toList();
    List<Working> workings = new ArrayList<>(named.stream().map(Cone::radius).toList());
    workings.addAll(named.stream().map(Cone::height).toList());
    return workings;
  }

  /** One heap of all the soil where the job wants it, and a finding when it lies badly. */
  private HeapSpot tip(Point place, List<Row> rows) {
    Volume all = rows.stream().map(Row::loose).reduce(Volume.ZERO, Volume::plus);
    List<String> marks = rows.stream().map(row -> row.hole().mark()).toList();
    SpoilHeap heap = heap(marks, place, all);
    List<String> buried = new ArrayList<>(ground.nearHoles(place, heap.radius()));
    buried.addAll(ground.obstacles(place, heap.radius()));
    boolean offTheLot = !ground.isOnTheLot(place, heap.radius());
    if (!buried.isEmpty() || offTheLot) {
      findings.add(
          finding(buried, offTheLot ? "tip-off-the-lot" : "tip-in-the-way", "spoil.place")
              .with("radius", Argument.of(heap.radius()))
              .with("height", Argument.of(heap.height()))
              .with("edge", Argument.of(ground.edge())));
    }
    Row nearest =
        rows.stream()
            .min(Comparator.comparing(row -> row.hole().centre().distanceTo(place)))
            .orElseThrow();
    Point from = nearest.hole().centre();
    return new HeapSpot(
        heap,
        HeapSpot.Kind.TIP,
        nearest.hole().mark(),
        from.distanceTo(place),
        from.azimuthTo(place));
  }

  private void beside(List<Row> rows, boolean carted) {
    Map<String, HeapSpot> byMark = new LinkedHashMap<>();
    for (Row row : outermostFirst(rows)) {
      besideOne(row, carted)
          .ifPresent(
              spot -> {
                ground.take(spot.heap());
                byMark.put(row.hole().mark(), spot);
              });
    }
    List<String> marks = rows.stream().map(row -> row.hole().mark()).toList();
    marks.stream()
        .flatMap(mark -> Optional.ofNullable(byMark.get(mark)).stream())
        .forEach(spots::add);
    List<String> without = marks.stream().filter(mark -> !byMark.containsKey(mark)).toList();
    if (!without.isEmpty()) {
      findings.add(
          finding(without, carted ? "no-room-for-cart" : "carry-away", "spoil.place")
              .with("edge", Argument.of(ground.edge())));
    }
  }

  private Optional<HeapSpot> besideOne(Row row, boolean carted) {
    Volume volume = carted ? row.loose().min(soil.cart()) : row.loose();
    SpoilHeap cone = heap(List.of(row.hole().mark()), row.hole().centre(), volume);
    return new HeapSearch(ground, step())
        .beside(row.hole(), cone, carted ? HeapSpot.Kind.TARP : HeapSpot.Kind.BESIDE);
  }

  /** The outer holes choose first: their heaps lie straight outwards, the inner ones' between. */
  private static List<Row> outermostFirst(List<Row> rows) {
    List<Row> sorted = new ArrayList<>(rows);
    sorted.sort(
        Comparator.comparing(
            row ->
                -Rounding.NEAREST.steps(
                    row.hole().centre().distanceTo(Point.ORIGIN).millimetres(), 1)));
    return sorted;
  }

  private SpoilHeap heap(List<String> marks, Point centre, Volume volume) {
    Cone cone = cones.computeIfAbsent(volume, this::cone);
    for (String mark : marks) {
      if (!cone.names().contains(mark)) {
        cone.names().add(mark);
      }
    }
    return new SpoilHeap(marks, centre, cone.radius().asLength(), cone.height().asLength(), volume);
  }

  private Cone cone(Volume volume) {
    DigScheduleFormulas formulas = DigScheduleFormulas.in(job.heading().units());
    Working radius =
        Working.of(formulas.heapRadius(soil.repose().citation()), "", volume, soil.angle(), step());
    Working height = Working.of(formulas.heapHeight(), "", radius.asLength(), soil.angle());
    return new Cone(new ArrayList<>(), radius, height);
  }

  private Length step() {
    return job.heading().units() == UnitSystem.IMPERIAL
        ? Length.ofInches(1)
        : Length.ofMillimetres(10);
  }

  private Finding finding(List<String> subjects, String id, String place) {
    return new Finding(
        Kind.ASK, id, subjects, place, Map.of(), Decider.OWNER, List.of(EdgeRule.of(job).source()));
  }
}
