package pegbook.calc.safepegs;

import java.util.List;
import java.util.Optional;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.measure.Length;

/**
 * What a tape or string meets on its way.
 *
 * <p>Fixed things block it: a building, a fence, a trunk that it does not pass clear of. Lines in
 * the ground and wires above do not, nor does the floor, of which only an outline is there. A heap
 * is a cone; it blocks where it is higher than the tape or string right under it.
 *
 * @param features fixed things
 * @param heaps spoil
 * @param rules heights and distances
 */
record Sight(List<Feature> features, List<SpoilHeap> heaps, PegRules rules) {
  Sight {
    features = List.copyOf(features);
    heaps = List.copyOf(heaps);
  }

  /** What blocks a tape or string at a height, if anything. */
  Optional<Obstacle> blocked(Point from, Point to, Length height) {
    return blockedByFeature(from, to).or(() -> blockedByHeap(from, to, height));
  }

  /** What blocks it before any hole is dug. */
  Optional<Obstacle> blockedByFeature(Point from, Point to) {
    Segment way = new Segment(from, to);
    return features.stream()
        .filter(feature -> feature.kind() == Feature.Kind.OBJECT)
        .filter(feature -> stands(feature.shape(), way))
        .findFirst()
        .map(feature -> new Obstacle(false, List.of(feature.name())));
  }

  private boolean stands(Feature.Shape shape, Segment way) {
    if (shape instanceof Feature.Shape.Spot spot) {
      return way.distanceTo(spot.at()).isLessThan(rules.passing());
    }
    if (shape instanceof Feature.Shape.Line line) {
      return Gap.between(List.of(way), List.of(line.along())).length().isLessThan(rules.passing());
    }
    Feature.Shape.Block block = (Feature.Shape.Block) shape;
    return block.corners().contains(way.from())
        || Gap.between(List.of(way), block.corners().sides()).length().isLessThan(rules.passing());
  }

  private Optional<Obstacle> blockedByHeap(Point from, Point to, Length height) {
    Strip way = Strip.along(new Segment(from, to), 0);
    for (SpoilHeap heap : heaps) {
      if (heap.height().isMoreThan(height)
          && way.isNearer(heap.centre(), blockingRadius(heap, height).metres())) {
        return Optional.of(new Obstacle(true, heap.holes()));
      }
    }
    return Optional.empty();
  }

  /** How far from its centre a cone is higher than a height. */
  private static Length blockingRadius(SpoilHeap heap, Length height) {
    return heap.radius().times(1 - height.dividedBy(heap.height()));
  }
}
