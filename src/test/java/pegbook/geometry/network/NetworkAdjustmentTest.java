package pegbook.geometry.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.geometry.Point;
import pegbook.measure.Length;

class NetworkAdjustmentTest {
  private static final Length MILLIMETRE = Length.ofMillimetres(1);

  private static TapedDistance taped(String from, String to, double metres) {
    return new TapedDistance(from, to, new Length(metres), MILLIMETRE);
  }

  private static List<NetworkPoint> square() {
    return new ArrayList<>(
        List.of(
            NetworkPoint.free("A", new Point(0, 0)),
            NetworkPoint.free("B", new Point(4, 0)),
            NetworkPoint.free("C", new Point(4, 4)),
            NetworkPoint.free("D", new Point(0, 4))));
  }

  private static List<TapedDistance> sidesAndOneDiagonal() {
    return new ArrayList<>(
        List.of(
            taped("A", "B", 4.001),
            taped("B", "C", 3.999),
            taped("C", "D", 4.002),
            taped("D", "A", 4),
            taped("A", "C", 5.657)));
  }

  @Test
  void aFreeNetworkKeepsItsMiddleAndItsDirection() {
    List<TapedDistance> distances = sidesAndOneDiagonal();
    distances.add(taped("B", "D", 5.655));
    Adjustment adjustment =
        NetworkAdjustment.of(new Network(square(), distances), Datum.free()).adjusted();
    double east = 0;
    double north = 0;
    double turn = 0;
    for (NetworkPoint point : square()) {
      Point at = adjustment.point(point.name()).at();
      double changeEast = at.east() - point.start().east();
      double changeNorth = at.north() - point.start().north();
      east += changeEast;
      north += changeNorth;
      turn += (point.start().east() - 2) * changeNorth - (point.start().north() - 2) * changeEast;
    }
    assertThat(east).isCloseTo(0, within(1e-9));
    assertThat(north).isCloseTo(0, within(1e-9));
    assertThat(turn).isCloseTo(0, within(1e-5));
    assertThat(adjustment.degreesOfFreedom()).isEqualTo(1);
  }

  @Test
  void whatDoesNotDependOnTheFrameIsTheSameInEveryFrame() {
    List<TapedDistance> distances = sidesAndOneDiagonal();
    distances.add(taped("B", "D", 5.655));
    List<NetworkPoint> held = square();
    held.set(0, NetworkPoint.fixed("A", new Point(0, 0)));
    held.set(
        1,
        new NetworkPoint(
            "B", new Point(4, 0), NetworkPoint.Freedom.ALONG_EAST, java.util.Optional.empty()));
    Adjustment fixed = NetworkAdjustment.of(new Network(held, distances), Datum.held()).adjusted();
    for (Datum datum : List.of(Datum.free(), Datum.freeOver(List.of("A", "C")))) {
      Adjustment free = NetworkAdjustment.of(new Network(square(), distances), datum).adjusted();
      assertThat(free.weightedSquares()).isCloseTo(fixed.weightedSquares(), within(1e-9));
      for (int i = 0; i < distances.size(); i++) {
        AdjustedDistance one = free.distances().get(i);
        AdjustedDistance other = fixed.distances().get(i);
        assertThat(one.adjusted().metres()).isCloseTo(other.adjusted().metres(), within(1e-9));
        assertThat(one.redundancy()).isCloseTo(other.redundancy(), within(1e-7));
      }
      assertThat(free.distanceDeviation("B", "D").metres())
          .isCloseTo(fixed.distanceDeviation("B", "D").metres(), within(1e-9));
    }
  }

  @Test
  void theFreeNetworkHasTheLeastSumOfVariances() {
    Network network = new Network(square(), sidesAndOneDiagonal());
    double free = variances(NetworkAdjustment.of(network, Datum.free()).adjusted());
    double partly =
        variances(NetworkAdjustment.of(network, Datum.freeOver(List.of("A", "B"))).adjusted());
    assertThat(free).isLessThan(partly);
  }

  private static double variances(Adjustment adjustment) {
    return adjustment.points().stream()
        .mapToDouble(point -> point.spread().eastEast() + point.spread().northNorth())
        .sum();
  }

  @Test
  void pointsOnALineNeedNoSecondDirection() {
    List<NetworkPoint> line =
        List.of(NetworkPoint.fixed("A", new Point(0, 0)), alongEast("B", 3), alongEast("C", 7.1));
    Adjustment adjustment =
        NetworkAdjustment.of(
                new Network(
                    line, List.of(taped("A", "B", 3), taped("B", "C", 4), taped("A", "C", 7.003))),
                Datum.held())
            .adjusted();
    // A closing error of 3 mm is shared alike by three like distances.
    assertThat(adjustment.point("B").at().east()).isCloseTo(3.001, within(1e-9));
    assertThat(adjustment.point("C").at().east()).isCloseTo(7.002, within(1e-9));
    assertThat(adjustment.weightedSquares()).isCloseTo(3, within(1e-6));
  }

  private static NetworkPoint alongEast(String name, double east) {
    return new NetworkPoint(
        name, new Point(east, 0), NetworkPoint.Freedom.ALONG_EAST, java.util.Optional.empty());
  }

  @Test
  void aPointMeasuredOnceIsNamed() {
    List<NetworkPoint> points = square();
    points.add(NetworkPoint.free("E", new Point(8, 2)));
    List<TapedDistance> distances = sidesAndOneDiagonal();
    distances.add(taped("B", "E", 4.5));
    assertThat(NetworkAdjustment.of(new Network(points, distances), Datum.free()))
        .isEqualTo(new Outcome.Undetermined(List.of("E")));
  }

  @Test
  void aPartThatHangsOnNothingIsNamed() {
    List<NetworkPoint> points = square();
    points.add(NetworkPoint.free("E", new Point(8, 2)));
    points.add(NetworkPoint.free("F", new Point(9, 2)));
    List<TapedDistance> distances = sidesAndOneDiagonal();
    distances.add(taped("F", "E", 1));
    assertThat(NetworkAdjustment.of(new Network(points, distances), Datum.free()))
        .isEqualTo(new Outcome.Undetermined(List.of("E", "F")));
  }

  @Test
  void aFigureThatNothingHoldsIsNamedWhole() {
    assertThat(NetworkAdjustment.of(new Network(square(), sidesAndOneDiagonal()), Datum.held()))
        .isEqualTo(new Outcome.Undetermined(List.of("A", "B", "C", "D")));
  }

  @Test
  void tapesThatTouchOnTheBaselineDoNotFixAPoint() {
    List<NetworkPoint> points =
        List.of(
            NetworkPoint.fixed("A", new Point(0, 0)),
            NetworkPoint.fixed("B", new Point(4, 0)),
            NetworkPoint.free("C", new Point(1, 0)));
    assertThat(
            NetworkAdjustment.of(
                new Network(points, List.of(taped("A", "C", 1), taped("B", "C", 3))), Datum.held()))
        .isEqualTo(new Outcome.Undetermined(List.of("C")));
  }

  @Test
  void aPointIsFoundFromFarAway() {
    List<NetworkPoint> points =
        List.of(
            NetworkPoint.fixed("A", new Point(0, 0)),
            NetworkPoint.fixed("B", new Point(10, 0)),
            NetworkPoint.free("C", new Point(60, 50)));
    Adjustment adjustment =
        NetworkAdjustment.of(
                new Network(points, List.of(taped("A", "C", 5), taped("B", "C", Math.sqrt(65)))),
                Datum.held())
            .adjusted();
    assertThat(adjustment.point("C").at().distanceTo(new Point(3, 4)).metres()).isLessThan(1e-9);
    assertThat(adjustment.varianceFactor()).isEmpty();
    assertThat(adjustment.distances().get(0).standardised()).isEmpty();
  }

  @Test
  void anExpectedPointSaysHowFarItMoved() {
    Spread spread = Spread.round(MILLIMETRE);
    List<NetworkPoint> points =
        square().stream()
            .map(point -> NetworkPoint.expected(point.name(), point.start(), spread))
            .toList();
    Point moved = new Point(4.012, 3.991);
    List<TapedDistance> distances =
        List.of(
            taped("A", "B", 4),
            taped("A", "D", 4),
            taped("B", "D", Math.sqrt(32)),
            taped("A", "C", moved.distanceTo(new Point(0, 0)).metres()),
            taped("B", "C", moved.distanceTo(new Point(4, 0)).metres()),
            taped("D", "C", moved.distanceTo(new Point(0, 4)).metres()));
    Adjustment adjustment =
        NetworkAdjustment.of(new Network(points, distances), Datum.held()).adjusted();
    Shift shift = adjustment.point("C").shift().orElseThrow();
    assertThat(shift.eastMetres()).isCloseTo(0.012, within(1e-4));
    assertThat(shift.northMetres()).isCloseTo(-0.009, within(1e-4));
    assertThat(shift.seen()).isEqualTo(2);
    assertThat(adjustment.weightedSquares() - shift.fall()).isCloseTo(0, within(0.02));
    assertThat(adjustment.degreesOfFreedom()).isEqualTo(6);
    // The same as leaving the expectation of that one point out altogether.
    Adjustment without =
        NetworkAdjustment.of(
                new Network(points, distances).with(points.get(2).freedAt(moved)), Datum.held())
            .adjusted();
    assertThat(without.weightedSquares())
        .isCloseTo(adjustment.weightedSquares() - shift.fall(), within(0.02));
  }

  @Test
  void namesMustAgree() {
    assertThatThrownBy(() -> new Network(square(), List.of(taped("A", "X", 1))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("X");
    assertThatThrownBy(() -> taped("A", "A", 1)).hasMessageContaining("to itself");
  }
}
