package pegbook.calc.siteplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.calc.siteplan.SitePlan.Keeper;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.measure.Length;

/** Measures how far holes, heaps and the floor keep from features and lot lines. */
final class Surroundings {
  /** A clearance short by less than this is kept. */
  static final Length TOLERANCE = new Length(1e-6);

  /** With more lot lines than this only the nearest is listed. */
  private static final int MOST_LOT_LINES = 8;

  private final SitePlanFormulas formulas;
  private final Placement placement;
  private final List<Round> holes;
  private final List<Round> heaps;
  private final List<Working> workings = new ArrayList<>();

  /** A hole or a heap seen from above. */
  private record Round(Keeper keeper, String mark, Point centre, Length radius) {}

  Surroundings(
      SitePlanFormulas formulas, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    this.formulas = formulas;
    this.placement = placement;
    this.holes =
        holes.stream()
            .map(
                hole ->
                    new Round(Keeper.HOLE, hole.mark(), hole.centre(), hole.widest().times(0.5)))
            .toList();
    this.heaps =
        heaps.stream()
            .map(
                heap ->
                    new Round(
                        Keeper.HEAP, String.join(", ", heap.holes()), heap.centre(), heap.radius()))
            .toList();
  }

  List<Working> workings() {
    return workings;
  }

  /** Of every hole to a feature, in the order of the holes. */
  List<Clearance> holesTo(Feature feature) {
    return toFeature(holes, feature);
  }

  /** Of every heap to a feature, in the order of the heaps. */
  List<Clearance> heapsTo(Feature feature) {
    return toFeature(heaps, feature);
  }

  /** The nearest; of several alike to a micrometre, the first. */
  static Optional<Clearance> nearest(List<Clearance> clearances) {
    return clearances.stream()
        .min(
            Comparator.comparingLong(clearance -> Math.round(clearance.distance().metres() * 1e6)));
  }

  private List<Clearance> toFeature(List<Round> rounds, Feature feature) {
    return rounds.stream()
        .map(
            round ->
                clearance(round, feature.name(), gap(round.centre(), feature), feature.keepClear()))
        .toList();
  }

  /** Of the floor's edge to a feature. */
  Clearance floorTo(Feature feature) {
    Gap gap =
        feature.shape() instanceof Feature.Shape.Spot spot
            ? turned(Gap.between(spot.at(), placement.outline().sides()))
            : Gap.between(placement.outline().sides(), lines(feature));
    boolean under =
        placement.outline().contains(gap.to())
            || (feature.shape() instanceof Feature.Shape.Block block
                && block.corners().contains(gap.from()));
    Gap reached = under ? new Gap(gap.to(), gap.to()) : gap;
    return floor(feature.name(), reached, feature.keepClear());
  }

  private static Gap turned(Gap gap) {
    return new Gap(gap.to(), gap.from());
  }

  /** Of the floor's edge to the lot lines: each of them, or the nearest where there are many. */
  List<Clearance> floorTo(Polygon boundary, Optional<Length> setback) {
    List<Segment> edge = placement.outline().sides();
    List<Clearance> all =
        boundary.sides().stream()
            .map(line -> floor("", Gap.between(edge, List.of(line)), setback))
            .toList();
    return all.size() <= MOST_LOT_LINES ? all : nearest(all).stream().toList();
  }

  /** Of the hole that is nearest to a lot line. */
  Optional<Clearance> nearestHoleTo(Polygon boundary, Optional<Length> setback) {
    return nearest(
        holes.stream()
            .map(hole -> clearance(hole, "", Gap.between(hole.centre(), boundary.sides()), setback))
            .toList());
  }

  /** Holes whose centre is not on the lot. */
  List<String> holesOutside(Polygon boundary) {
    return holes.stream()
        .filter(hole -> !boundary.contains(hole.centre()))
        .map(Round::mark)
        .toList();
  }

  boolean isFloorOutside(Polygon boundary) {
    boolean corner =
        placement.outline().corners().stream().anyMatch(place -> !boundary.contains(place));
    boolean inside = boundary.corners().stream().anyMatch(placement.outline()::contains);
    return corner || inside;
  }

  /** True when a place would be dug away, buried or built over. */
  boolean isInTheWay(Point place) {
    boolean under = placement.outline().contains(place);
    return under
        || holes.stream().anyMatch(hole -> covers(hole, place))
        || heaps.stream().anyMatch(heap -> covers(heap, place));
  }

  private static boolean covers(Round round, Point place) {
    return !round.centre().distanceTo(place).isMoreThan(round.radius());
  }

  /** Keeps the workings of clearances that are printed: C1, C2 and so on. */
  void work(List<Clearance> clearances) {
    for (int i = 0; i < clearances.size(); i++) {
      work(clearances.get(i), "C" + (i + 1));
    }
  }

  private void work(Clearance clearance, String name) {
    Length diameter =
        clearance.keeper() == Keeper.FLOOR
            ? Length.ZERO
            : clearance.gap().length().minus(clearance.distance()).times(2);
    workings.add(
        Working.of(
            formulas.clearance(),
            name,
            new Length(clearance.gap().from().east()),
            new Length(clearance.gap().from().north()),
            new Length(clearance.gap().to().east()),
            new Length(clearance.gap().to().north()),
            diameter));
  }

  private Clearance clearance(Round round, String feature, Gap gap, Optional<Length> required) {
    Length distance = gap.length().minus(round.radius());
    return new Clearance(
        round.keeper(),
        round.mark(),
        feature,
        distance,
        required,
        isLess(distance, required),
        towards(gap),
        gap);
  }

  private Clearance floor(String feature, Gap gap, Optional<Length> required) {
    return new Clearance(
        Keeper.FLOOR,
        "",
        feature,
        gap.length(),
        required,
        isLess(gap.length(), required),
        towards(gap),
        gap);
  }

  private static boolean isLess(Length distance, Optional<Length> required) {
    return required.filter(least -> distance.plus(TOLERANCE).isLessThan(least)).isPresent();
  }

  /** Where the thing lies; seen from the centre when it is touched. */
  private static Compass towards(Gap gap) {
    boolean touching = gap.length().isLessThan(TOLERANCE);
    return Compass.of((touching ? Point.ORIGIN : gap.from()).azimuthTo(gap.to()));
  }

  private static Gap gap(Point place, Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Spot spot) {
      return new Gap(place, spot.at());
    }
    if (feature.shape() instanceof Feature.Shape.Block block && block.corners().contains(place)) {
      return new Gap(place, place);
    }
    return Gap.between(place, lines(feature));
  }

  private static List<Segment> lines(Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Block block) {
      return block.corners().sides();
    }
    if (feature.shape() instanceof Feature.Shape.Line line) {
      return List.of(line.along());
    }
    throw new IllegalArgumentException("a single place has no lines: " + feature.name());
  }
}
