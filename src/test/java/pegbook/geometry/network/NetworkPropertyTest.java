package pegbook.geometry.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import pegbook.geometry.Point;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;

/** What shifting, turning, scaling, renaming and reordering must not change. */
class NetworkPropertyTest {
  /** Points on a wobbly ring with many distances between them, each with a small error. */
  private static Network network(int seed) {
    Random random = new Random(seed);
    int count = 5 + random.nextInt(5);
    List<NetworkPoint> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double azimuth = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / count;
      double radius = 3 + 2 * random.nextDouble();
      points.add(
          NetworkPoint.free(
              "M" + i,
              new Point(radius * StrictMath.sin(azimuth), radius * StrictMath.cos(azimuth))));
    }
    List<TapedDistance> distances = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < i; j++) {
        double metres = points.get(i).start().distanceTo(points.get(j).start()).metres();
        distances.add(
            new TapedDistance(
                "M" + i,
                "M" + j,
                new Length(metres + 0.002 * random.nextGaussian()),
                new Length(0.001 + 0.002 * random.nextDouble())));
      }
    }
    return new Network(points, distances);
  }

  private static Network placed(Network network, UnaryOperator<Point> change) {
    return new Network(
        network.points().stream()
            .map(point -> NetworkPoint.free(point.name(), change.apply(point.start())))
            .toList(),
        network.distances());
  }

  private static void sameDistances(Adjustment one, Adjustment other) {
    assertThat(other.weightedSquares()).isCloseTo(one.weightedSquares(), within(1e-6));
    assertThat(other.degreesOfFreedom()).isEqualTo(one.degreesOfFreedom());
    for (int i = 0; i < one.distances().size(); i++) {
      AdjustedDistance first = one.distances().get(i);
      AdjustedDistance second = other.distances().get(i);
      assertThat(second.adjusted().metres()).isCloseTo(first.adjusted().metres(), within(1e-8));
      assertThat(second.redundancy()).isCloseTo(first.redundancy(), within(1e-6));
    }
  }

  private static Adjustment adjusted(Network network) {
    return NetworkAdjustment.of(network, Datum.free()).adjusted();
  }

  @Property(tries = 40, seed = Chance.SEED)
  void shiftAndTurnMoveThePlacesAndNothingElse(
      @ForAll @IntRange(min = 0, max = 100_000) int seed,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double east,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double north,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    Network network = network(seed);
    Adjustment before = adjusted(network);
    Angle turn = Angle.ofDegrees(degrees);
    Adjustment after = adjusted(placed(network, point -> point.turned(turn).plus(east, north)));
    sameDistances(before, after);
    for (AdjustedPoint point : before.points()) {
      Point expected = point.at().turned(turn).plus(east, north);
      AdjustedPoint found = after.point(point.name());
      assertThat(found.at().distanceTo(expected).metres()).isLessThan(1e-7);
      assertThat(found.spread().longHalfAxis().metres())
          .isCloseTo(point.spread().longHalfAxis().metres(), within(1e-8));
      assertThat(found.spread().totalDeviation().metres())
          .isCloseTo(point.spread().totalDeviation().metres(), within(1e-8));
    }
  }

  @Property(tries = 40, seed = Chance.SEED)
  void scalingEverythingScalesTheResult(
      @ForAll @IntRange(min = 0, max = 100_000) int seed,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double scale) {
    Network network = network(seed);
    Adjustment before = adjusted(network);
    Network larger =
        new Network(
            placed(network, at -> new Point(at.east() * scale, at.north() * scale)).points(),
            network.distances().stream()
                .map(
                    distance ->
                        new TapedDistance(
                            distance.from(),
                            distance.to(),
                            distance.length().times(scale),
                            distance.deviation().times(scale)))
                .toList());
    Adjustment after = adjusted(larger);
    assertThat(after.weightedSquares()).isCloseTo(before.weightedSquares(), within(1e-5));
    for (AdjustedPoint point : before.points()) {
      assertThat(after.point(point.name()).spread().totalDeviation().metres() / scale)
          .isCloseTo(point.spread().totalDeviation().metres(), within(1e-8));
    }
  }

  @Property(tries = 40, seed = Chance.SEED)
  void neitherNamesNorOrderMatter(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
    Network network = network(seed);
    Adjustment before = adjusted(network);
    List<NetworkPoint> points = new ArrayList<>();
    network
        .points()
        .forEach(point -> points.add(NetworkPoint.free("K" + point.name(), point.start())));
    Collections.shuffle(points, new Random(seed));
    Adjustment after =
        adjusted(
            new Network(
                points,
                network.distances().stream()
                    .map(
                        distance ->
                            new TapedDistance(
                                "K" + distance.to(),
                                "K" + distance.from(),
                                distance.length(),
                                distance.deviation()))
                    .toList()));
    sameDistances(before, after);
    for (AdjustedPoint point : before.points()) {
      assertThat(after.point("K" + point.name()).at().distanceTo(point.at()).metres())
          .isLessThan(1e-8);
    }
  }

  @Property(tries = 40, seed = Chance.SEED)
  void redundancyNumbersAddUp(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
    Adjustment adjustment = adjusted(network(seed));
    assertThat(adjustment.distances().stream().mapToDouble(AdjustedDistance::redundancy).sum())
        .isCloseTo(adjustment.degreesOfFreedom(), within(1e-7));
  }
}
