package pegbook.calc.siteplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.siteplan.SitePlan.Fixed;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.PlacedMark;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Ties: from two fixed things to two marks, each to each.
 *
 * <p>The marks are those of the baseline: two ties that cross at each set it, and its own length
 * proves them. The fixed things are things and corners of things, the benchmark, and corners of the
 * lot. Pairs whose tapes cross between 30 and 150 degrees at both marks come first, then those
 * within the tape's reach, then those with fewest corners of the lot, then the one whose longest
 * tie is shortest.
 */
final class Ties {
  /** A weaker crossing than this is a finding; common practice. */
  static final Angle LEAST = Angle.ofDegrees(30);

  /** A crossing weaker by less than this counts as on the limit. */
  static final Angle TOLERANCE = Angle.ofDegrees(1e-5);

  /** Fixed things nearer than this to a mark, or to one another, are no use to measure from. */
  private static final Length TOO_NEAR = new Length(0.3);

  private final Job job;
  private final SitePlanFormulas formulas;
  private final PlacedMark first;
  private final PlacedMark second;
  private final List<Working> workings = new ArrayList<>();

  private record Station(Fixed fixed, Point at) {}

  /**
   * Two fixed things.
   *
   * @param weakest the weaker crossing at the two marks, from 0 to 90 degrees
   * @param longest the longest of its ties
   */
  private record Pair(
      Station one, Station other, Angle weakest, int beyondReach, int lotCorners, Length longest) {
    boolean isStrong() {
      return !weakest.isLessThan(LEAST.minus(TOLERANCE));
    }
  }

  Ties(Job job, SitePlanFormulas formulas, PlacedMark first, PlacedMark second) {
    this.job = job;
    this.formulas = formulas;
    this.first = first;
    this.second = second;
  }

  List<Working> workings() {
    return workings;
  }

  /** What is chosen: four ties, and how strongly they cross. */
  record Chosen(List<Tie> ties, Angle weakest, boolean withinReach) {}

  /** The best two fixed things; nothing when there are not two. */
  Optional<Chosen> choose() {
    List<Station> stations = stations();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < stations.size(); i++) {
      for (int j = i + 1; j < stations.size(); j++) {
        if (stations.get(i).at().distanceTo(stations.get(j).at()).isMoreThan(TOO_NEAR)) {
          pairs.add(pair(stations.get(i), stations.get(j)));
        }
      }
    }
    return pairs.stream()
        .min(
            Comparator.comparing((Pair pair) -> pair.isStrong() ? 0 : 1)
                .thenComparing(Pair::beyondReach)
                .thenComparing(Pair::lotCorners)
                .thenComparing(pair -> Math.round(pair.longest().metres() * 1e6))
                .thenComparing(pair -> -Math.round(pair.weakest().degrees() * 1e6)))
        .map(pair -> new Chosen(ties(pair), pair.weakest(), pair.beyondReach() == 0));
  }

  private Pair pair(Station one, Station other) {
    Angle weakest = weakest(one, other, first.at()).min(weakest(one, other, second.at()));
    int beyond = 0;
    int lot = 0;
    Length longest = Length.ZERO;
    for (Station station : List.of(one, other)) {
      longest = longest.max(station.at().distanceTo(first.at()));
      longest = longest.max(station.at().distanceTo(second.at()));
      beyond += isBeyondReach(station, first) ? 1 : 0;
      beyond += isBeyondReach(station, second) ? 1 : 0;
      lot += station.fixed() instanceof Fixed.LotCorner ? 1 : 0;
    }
    return new Pair(one, other, weakest, beyond, lot, longest);
  }

  private boolean isBeyondReach(Station station, PlacedMark mark) {
    return station.at().distanceTo(mark.at()).isMoreThan(job.layout().tape().length());
  }

  private static Angle weakest(Station one, Station other, Point mark) {
    Angle angle = Swing.angleAt(mark, one.at(), other.at());
    return angle.min(Angle.ofDegrees(180).minus(angle));
  }

  private List<Tie> ties(Pair pair) {
    List<Tie> ties = new ArrayList<>();
    for (Station station : List.of(pair.one(), pair.other())) {
      for (PlacedMark mark : List.of(first, second)) {
        ties.add(tie(ties.size() + 1, station, mark));
      }
    }
    return ties;
  }

  private Tie tie(int number, Station station, PlacedMark mark) {
    Working working =
        Working.of(
            formulas.tie(),
            "T" + number,
            new Length(station.at().east()),
            new Length(station.at().north()),
            new Length(mark.at().east()),
            new Length(mark.at().north()));
    workings.add(working);
    Length division = job.layout().tape().division();
    return new Tie(
        number,
        station.fixed(),
        station.at(),
        mark.id(),
        mark.at(),
        working.asLength().setTo(division, Rounding.NEAREST),
        Compass.of(station.at().azimuthTo(mark.at())));
  }

  private List<Station> stations() {
    List<Station> stations = new ArrayList<>();
    job.site().features().stream()
        .filter(feature -> feature.kind() == Feature.Kind.OBJECT)
        .forEach(feature -> stations.addAll(ofFeature(feature)));
    job.ground()
        .benchmark()
        .ifPresent(mark -> stations.add(new Station(new Fixed.OfBenchmark(mark.on()), mark.at())));
    job.site()
        .boundary()
        .ifPresent(
            lot ->
                lot.corners()
                    .forEach(
                        corner ->
                            stations.add(
                                new Station(new Fixed.LotCorner(side(lot, corner)), corner))));
    return stations.stream().filter(this::isFarEnough).toList();
  }

  private boolean isFarEnough(Station station) {
    return station.at().distanceTo(first.at()).isMoreThan(TOO_NEAR)
        && station.at().distanceTo(second.at()).isMoreThan(TOO_NEAR);
  }

  private static List<Station> ofFeature(Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Spot spot) {
      return List.of(new Station(new Fixed.Thing(feature.name()), spot.at()));
    }
    if (feature.shape() instanceof Feature.Shape.Block block) {
      return block.corners().corners().stream()
          .map(
              corner ->
                  new Station(
                      new Fixed.Corner(feature.name(), side(block.corners(), corner)), corner))
          .toList();
    }
    Segment line = ((Feature.Shape.Line) feature.shape()).along();
    return List.of(line.from(), line.to()).stream()
        .map(
            end ->
                new Station(
                    new Fixed.Corner(feature.name(), Compass.of(line.middle().azimuthTo(end))),
                    end))
        .toList();
  }

  private static Compass side(Polygon polygon, Point corner) {
    return Compass.of(polygon.centroid().azimuthTo(corner));
  }
}
