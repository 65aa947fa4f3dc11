package pegbook.calc.markaccuracy;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Diggings;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Where beside the work a baseline's peg may stand: off the floor, the holes and the heaps, inside
 * the lot lines, outside every keep-clear zone, and not above a buried line. Places are tried on a
 * grid of whole feet or quarter metres that is turned with the figure.
 */
final class PegGround {
  /** From the edge of a hole or the floor: common practice, room for the digger's feet. */
  private static final Length FROM_HOLES = Length.ofFeet(2);

  /** From the foot of a heap, from lot lines and from features that name no distance. */
  private static final Length FROM_THINGS = Length.ofFeet(1);

  /** From a buried line that names no distance; common practice. */
  private static final Length FROM_BURIED = Length.ofFeet(2);

  /** How far beyond the marks places are tried, at least and at most, metres. */
  private static final double LEAST_BEYOND = 3;

  private static final double MOST_BEYOND = 10;

  /** Places tried along and across the figure, at most. */
  private static final int MOST_STEPS = 18;

  private final Job job;
  private final Placement placement;
  private final Diggings diggings;

  PegGround(Job job, Placement placement, Diggings diggings) {
    this.job = job;
    this.placement = placement;
    this.diggings = diggings;
  }

  /** The places that are free, in the order of the grid. */
  List<Point> places() {
    Angle turn = turn();
    List<Point> upright =
        placement.marks().stream()
            .map(PlacedMark::at)
            .map(at -> at.turned(turn.negated()))
            .toList();
    double west = upright.stream().mapToDouble(Point::east).min().orElse(0);
    double east = upright.stream().mapToDouble(Point::east).max().orElse(0);
    double south = upright.stream().mapToDouble(Point::north).min().orElse(0);
    double north = upright.stream().mapToDouble(Point::north).max().orElse(0);
    double larger = Math.max(east - west, north - south);
    double beyond = Math.max(LEAST_BEYOND, Math.min(MOST_BEYOND, larger / 2));
    double step = step(larger + 2 * beyond);
    List<Point> places = new ArrayList<>();
    for (long i = index(south - beyond, step); i * step <= north + beyond; i++) {
      for (long j = index(west - beyond, step); j * step <= east + beyond; j++) {
        Point place = new Point(j * step, i * step).turned(turn);
        if (isFree(place)) {
          places.add(place);
        }
      }
    }
    return places;
  }

  /** The figure's own direction: from the centre to its first mark. */
  private Angle turn() {
    Point first = placement.marks().get(0).at();
    return Point.ORIGIN.distanceTo(first).metres() < 1e-6
        ? Angle.ZERO
        : Point.ORIGIN.azimuthTo(first);
  }

  private double step(double acrossMetres) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    double step = (imperial ? Length.ofFeet(1) : Length.ofMillimetres(250)).metres();
    while (acrossMetres / step > MOST_STEPS) {
      step *= 2;
    }
    return step;
  }

  private static long index(double metres, double step) {
    return (long) Math.ceil(metres / step - 1e-9);
  }

  private boolean isFree(Point place) {
    Polygon floor = placement.outline();
    boolean offFloor =
        !floor.contains(place) && !floor.distanceToEdge(place).isLessThan(FROM_HOLES);
    return offFloor && isOffDiggings(place) && isOnLot(place) && isOffFeatures(place);
  }

  private boolean isOffDiggings(Point place) {
    return diggings.holes().stream()
            .noneMatch(
                hole ->
                    place
                        .distanceTo(hole.centre())
                        .isLessThan(hole.diameter().times(0.5).plus(FROM_HOLES)))
        && diggings.heaps().stream()
            .noneMatch(
                heap ->
                    place.distanceTo(heap.centre()).isLessThan(heap.radius().plus(FROM_THINGS)));
  }

  private boolean isOnLot(Point place) {
    return job.site()
        .boundary()
        .map(lot -> lot.contains(place) && !lot.distanceToEdge(place).isLessThan(FROM_THINGS))
        .orElse(true);
  }

  private boolean isOffFeatures(Point place) {
    return job.site().features().stream()
        .noneMatch(feature -> distance(feature.shape(), place).isLessThan(clear(feature)));
  }

  private static Length clear(Feature feature) {
    boolean buried = feature.kind() == Feature.Kind.BURIED_LINE;
    return feature.keepClear().orElse(buried ? FROM_BURIED : FROM_THINGS).max(FROM_THINGS);
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
