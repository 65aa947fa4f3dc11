package pegbook.calc.safepegs;

import java.util.List;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.PowerPath;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Length;

/** Where a peg may stand. */
final class PegGround {
  private final Job job;
  private final Placement placement;
  private final List<Hole> holes;
  private final List<SpoilHeap> heaps;
  private final PegRules rules;
  private final TakenGround taken = new TakenGround();
  private final double floorReachMetres;
  private final double slackMetres;

  /**
   * Takes what a peg keeps clear of.
   *
   * <p>Every distance is kept with two divisions of the tape to spare, as a peg is set by readings
   * that are set to the division.
   */
  PegGround(
      Job job,
      Placement placement,
      List<Hole> holes,
      List<SpoilHeap> heaps,
      List<CartPath> paths,
      PegRules rules) {
    this.job = job;
    this.placement = placement;
    this.holes = List.copyOf(holes);
    this.heaps = List.copyOf(heaps);
    this.rules = rules;
    this.slackMetres = 2 * job.layout().tape().division().metres();
    this.floorReachMetres =
        placement.outline().corners().stream()
            .mapToDouble(corner -> Point.ORIGIN.distanceTo(corner).metres())
            .max()
            .orElse(0);
    take(paths);
  }

  /** Holes, heaps, cart paths and the benchmark, each with what a peg keeps from it. */
  private void take(List<CartPath> paths) {
    for (Hole hole : holes) {
      taken.take(around(hole.centre(), hole.diameter().times(0.5).plus(rules.hole())));
    }
    for (SpoilHeap heap : heaps) {
      taken.take(around(heap.centre(), heap.radius().plus(rules.heap())));
    }
    for (CartPath path : paths) {
      taken.take(Strip.along(path.along(), path.width().metres() / 2 + slackMetres));
    }
    // As beside a hole: a trench's edge crumbles as well.
    PowerPath.of(job)
        .ifPresent(
            path ->
                path.legs()
                    .forEach(
                        leg ->
                            taken.take(
                                Strip.along(
                                    leg, path.half().plus(rules.hole()).metres() + slackMetres))));
    job.ground().benchmark().ifPresent(mark -> taken.take(around(mark.at(), rules.feature())));
  }

  private Strip around(Point centre, Length kept) {
    return Strip.round(centre, kept.metres() + slackMetres);
  }

  /** True when a peg may stand there. */
  boolean isFree(Point place) {
    return isOffTheFloor(place) && isFreeUnderTheFloor(place);
  }

  /** True when a peg may stand there until the floor comes. */
  boolean isFreeUnderTheFloor(Point place) {
    return !taken.covers(place)
        && isOnTheLot(place)
        && job.site().features().stream().allMatch(feature -> isOff(feature, place));
  }

  private boolean isClear(Length distance, Length needed) {
    return distance.metres() >= needed.metres() + slackMetres;
  }

  /** True when a place is as far outside the floor as a peg should be. */
  boolean isOffTheFloor(Point place) {
    return isOffTheFloor(place, rules.floor().plus(new Length(slackMetres)));
  }

  /** True when a place lies outside the floor's edge, as far as asked for. */
  boolean isOffTheFloor(Point place, Length needed) {
    double away = Point.ORIGIN.distanceTo(place).metres() - floorReachMetres;
    if (away >= needed.metres()) {
      return true;
    }
    Polygon floor = placement.outline();
    return !placement.round()
        && !floor.distanceToEdge(place).isLessThan(needed)
        && !floor.contains(place);
  }

  private boolean isOnTheLot(Point place) {
    return job.site()
        .boundary()
        .map(lot -> isClear(lot.distanceToEdge(place), rules.lot()) && lot.contains(place))
        .orElse(true);
  }

  private boolean isOff(Feature feature, Point place) {
    return isClear(distance(feature.shape(), place), needed(feature));
  }

  /** A feature's own distance counts; without one what is common for its kind. */
  private Length needed(Feature feature) {
    return switch (feature.kind()) {
      case BURIED_LINE -> feature.keepClear().orElse(rules.line());
      case OVERHEAD_WIRE -> feature.keepClear().orElse(Length.ZERO);
      case OBJECT -> feature.keepClear().orElse(Length.ZERO).max(rules.feature());
    };
  }

  private static Length distance(Feature.Shape shape, Point place) {
    if (shape instanceof Feature.Shape.Spot spot) {
      return spot.at().distanceTo(place);
    }
    if (shape instanceof Feature.Shape.Line line) {
      return line.along().distanceTo(place);
    }
    Polygon block = ((Feature.Shape.Block) shape).corners();
    return block.contains(place) ? Length.ZERO : block.distanceToEdge(place);
  }

  /** What a tape or string passes over this ground. */
  Sight sight() {
    return new Sight(job.site().features(), heaps, rules);
  }

  /** How far holes and floor reach from an axis: least and most along it, least and most off it. */
  double[] reach(Segment axis) {
    double[] box = {0, 0, 0, 0};
    placement.outline().corners().forEach(corner -> widen(box, axis, corner, 0));
    holes.forEach(hole -> widen(box, axis, hole.centre(), hole.diameter().metres() / 2));
    return box;
  }

  private static void widen(double[] box, Segment axis, Point place, double radiusMetres) {
    double along = axis.alongMetres(place);
    double offset = axis.offsetMetres(place);
    box[0] = Math.min(box[0], along - radiusMetres);
    box[1] = Math.max(box[1], along + radiusMetres);
    box[2] = Math.min(box[2], offset - radiusMetres);
    box[3] = Math.max(box[3], offset + radiusMetres);
  }
}
