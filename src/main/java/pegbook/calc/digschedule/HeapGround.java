package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.PowerPath;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * Where on the ground a heap may lie: back from every hole's edge, off the benchmark and the fixed
 * features with their keep-clear distances, inside the lot lines, off other heaps.
 */
final class HeapGround {
  /** The benchmark stays in sight: common practice. */
  private static final Length BENCHMARK_CLEAR = Length.ofMillimetres(300);

  private static final double TOLERANCE_METRES = 1e-6;

  private final Job job;
  private final Placement placement;
  private final List<Hole> holes;
  private final Length edge;
  private final Optional<PowerPath> power;
  private final List<SpoilHeap> heaps = new ArrayList<>();

  HeapGround(Job job, Placement placement, List<Hole> holes) {
    this.job = job;
    this.placement = placement;
    this.holes = List.copyOf(holes);
    this.edge = EdgeRule.of(job).distance();
    this.power = PowerPath.of(job);
  }

  /** Least distance from a hole's edge to a heap's foot. */
  Length edge() {
    return edge;
  }

  /** Takes the ground for a heap. */
  void take(SpoilHeap heap) {
    heaps.add(heap);
  }

  /** True when a heap of this foot may lie there. */
  boolean isFree(Point centre, Length radius) {
    return holes.stream().allMatch(hole -> isClearOf(hole, centre, radius))
        && heaps.stream().allMatch(heap -> clear(centre, heap.centre(), radius, heap.radius()))
        && power.map(path -> !path.from(centre).isLessThan(radius.plus(edge))).orElse(true)
        && obstacles(centre, radius).isEmpty()
        && isOnTheLot(centre, radius);
  }

  /** True when it also leaves the floor's figure free. */
  boolean isOffTheFloor(Point centre, Length radius) {
    Polygon floor = placement.outline();
    return floor.distanceToEdge(centre).metres() >= radius.metres() && !floor.contains(centre);
  }

  /** Holes whose edge a heap there would come too near, or which it would bury. */
  List<String> nearHoles(Point centre, Length radius) {
    return holes.stream().filter(hole -> !isClearOf(hole, centre, radius)).map(Hole::mark).toList();
  }

  private boolean isClearOf(Hole hole, Point centre, Length radius) {
    return clear(centre, hole.centre(), radius, hole.bottomWidth().times(0.5).plus(edge));
  }

  /** Names of fixed features in the way of a heap there. */
  List<String> obstacles(Point centre, Length radius) {
    List<String> names = new ArrayList<>();
    for (Feature feature : job.site().features()) {
      Length needed = radius.plus(feature.keepClear().orElse(Length.ZERO));
      if (distance(feature.shape(), centre).metres() < needed.metres() - TOLERANCE_METRES) {
        names.add(feature.name());
      }
    }
    Optional<Benchmark> benchmark = job.ground().benchmark();
    if (benchmark.isPresent() && !clear(centre, benchmark.get().at(), radius, BENCHMARK_CLEAR)) {
      names.add(benchmark.get().on());
    }
    return names;
  }

  /** True when a heap there stays inside the lot lines, or there are none. */
  boolean isOnTheLot(Point centre, Length radius) {
    return job.site()
        .boundary()
        .map(
            lot ->
                lot.distanceToEdge(centre).metres() >= radius.metres() - TOLERANCE_METRES
                    && lot.contains(centre))
        .orElse(true);
  }

  private static boolean clear(Point one, Point other, Length oneRadius, Length otherRadius) {
    double needed = oneRadius.metres() + otherRadius.metres();
    // Most are far off, which a look along one axis shows without a root.
    return Math.abs(one.east() - other.east()) >= needed
        || Math.abs(one.north() - other.north()) >= needed
        || one.distanceTo(other).metres() >= needed - TOLERANCE_METRES;
  }

  private static Length distance(Feature.Shape shape, Point from) {
    if (shape instanceof Feature.Shape.Spot spot) {
      return spot.at().distanceTo(from);
    }
    if (shape instanceof Feature.Shape.Line line) {
      return line.along().distanceTo(from);
    }
    Polygon block = ((Feature.Shape.Block) shape).corners();
    return block.contains(from) ? Length.ZERO : block.distanceToEdge(from);
  }
}
