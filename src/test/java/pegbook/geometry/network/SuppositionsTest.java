package pegbook.geometry.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import pegbook.geometry.Point;
import pegbook.measure.Length;

class SuppositionsTest {
  private static final List<Point> PLAN =
      List.of(
          new Point(0, 0), new Point(5, 0.5), new Point(4, 4), new Point(0.5, 5), new Point(2, 2));

  /** Every distance of the plan, with small errors and the last point moved. */
  private static Network network(double eastMetres, double northMetres) {
    List<NetworkPoint> points = new ArrayList<>();
    for (int i = 0; i < PLAN.size(); i++) {
      points.add(
          NetworkPoint.expected(
              "M" + i, PLAN.get(i), new Spread(4e-6 + i * 1e-6, 1e-6, 5e-6 - i * 5e-7)));
    }
    List<TapedDistance> distances = new ArrayList<>();
    for (int i = 0; i < PLAN.size(); i++) {
      for (int j = 0; j < i; j++) {
        Point at = i == 4 ? PLAN.get(4).plus(eastMetres, northMetres) : PLAN.get(i);
        double error = ((i * 7 + j * 3) % 5 - 2) * 0.0008;
        distances.add(
            new TapedDistance(
                "M" + i,
                "M" + j,
                new Length(at.distanceTo(PLAN.get(j)).metres() + error),
                new Length(0.0015 + 0.0001 * j)));
      }
    }
    return new Network(points, distances);
  }

  private static Suppositions suppositions(Network network) {
    return Suppositions.of(new Network(network.points(), List.of()), network.distances());
  }

  @Test
  void theSumIsThatOfTheFullCovariance() {
    Network network = network(0.004, 0.003);
    int count = network.distances().size();
    RealMatrix covariance = MatrixUtils.createRealMatrix(count, count);
    RealVector differences = MatrixUtils.createRealVector(new double[count]);
    RealMatrix derivatives = MatrixUtils.createRealMatrix(count, 10);
    RealMatrix places = MatrixUtils.createRealMatrix(10, 10);
    for (int i = 0; i < 5; i++) {
      Spread spread = network.points().get(i).expected().orElseThrow();
      places.setEntry(2 * i, 2 * i, spread.eastEast());
      places.setEntry(2 * i, 2 * i + 1, spread.eastNorth());
      places.setEntry(2 * i + 1, 2 * i, spread.eastNorth());
      places.setEntry(2 * i + 1, 2 * i + 1, spread.northNorth());
    }
    for (int k = 0; k < count; k++) {
      TapedDistance taped = network.distances().get(k);
      int from = taped.from().charAt(1) - '0';
      int to = taped.to().charAt(1) - '0';
      double metres = PLAN.get(from).distanceTo(PLAN.get(to)).metres();
      double east = (PLAN.get(to).east() - PLAN.get(from).east()) / metres;
      double north = (PLAN.get(to).north() - PLAN.get(from).north()) / metres;
      derivatives.setEntry(k, 2 * to, east);
      derivatives.setEntry(k, 2 * to + 1, north);
      derivatives.setEntry(k, 2 * from, -east);
      derivatives.setEntry(k, 2 * from + 1, -north);
      differences.setEntry(k, taped.length().metres() - metres);
      covariance.setEntry(k, k, taped.deviation().metres() * taped.deviation().metres());
    }
    covariance = covariance.add(derivatives.multiply(places).multiply(derivatives.transpose()));
    RealMatrix inverse = new LUDecomposition(covariance).getSolver().getInverse();
    RealVector pulls = inverse.operate(differences);

    Suppositions suppositions = suppositions(network);

    assertThat(suppositions.weightedSquares())
        .isCloseTo(differences.dotProduct(pulls), within(1e-6));
    for (int k = 0; k < count; k++) {
      double own = inverse.getEntry(k, k);
      assertThat(suppositions.variance(k)).isCloseTo(covariance.getEntry(k, k), within(1e-12));
      Suppositions.Misreading misreading = suppositions.misread(k);
      assertThat(misreading.errorMetres()).isCloseTo(pulls.getEntry(k) / own, within(1e-9));
      assertThat(misreading.deviationMetres()).isCloseTo(1 / Math.sqrt(own), within(1e-9));
      assertThat(misreading.fall())
          .isCloseTo(pulls.getEntry(k) * pulls.getEntry(k) / own, within(1e-6));
    }
  }

  @Test
  void agreesWithTheAdjustmentWhereMovesAreSmall() {
    Network network = network(0.004, 0.003);
    Suppositions suppositions = suppositions(network);
    Adjustment adjustment = NetworkAdjustment.of(network, Datum.held()).adjusted();
    assertThat(suppositions.weightedSquares())
        .isCloseTo(adjustment.weightedSquares(), within(0.01));
    for (int k = 0; k < network.distances().size(); k++) {
      AdjustedDistance distance = adjustment.distances().get(k);
      assertThat(suppositions.redundancy(k)).isCloseTo(distance.redundancy(), within(1e-3));
      assertThat(suppositions.standardised(k))
          .isCloseTo(distance.standardised().orElseThrow(), within(0.01));
    }
    Shift linear = adjustment.point("M4").shift().orElseThrow();
    Shift exact = suppositions.elsewhere("M4");
    assertThat(exact.eastMetres()).isCloseTo(linear.eastMetres(), within(1e-5));
    assertThat(exact.northMetres()).isCloseTo(linear.northMetres(), within(1e-5));
    assertThat(exact.fall()).isCloseTo(linear.fall(), within(0.05));
    assertThat(exact.spread().orElseThrow().eastEast())
        .isCloseTo(linear.spread().orElseThrow().eastEast(), within(1e-8));
  }

  @Test
  void followsAPointHoweverFarItMoved() {
    for (double[] move : new double[][] {{0.3, -0.4}, {-2, 1.5}, {3, 3}}) {
      Network network = network(move[0], move[1]);
      Suppositions suppositions = suppositions(network);
      Shift shift = suppositions.elsewhere("M4");
      assertThat(shift.eastMetres()).isCloseTo(move[0], within(0.004));
      assertThat(shift.northMetres()).isCloseTo(move[1], within(0.004));
      assertThat(shift.seen()).isEqualTo(2);
      assertThat(suppositions.weightedSquares() - shift.fall()).isLessThan(20);
      for (String other : List.of("M0", "M1", "M2", "M3")) {
        assertThat(suppositions.elsewhere(other).fall()).isLessThan(shift.fall() / 2);
      }
    }
  }

  @Test
  void onOneTapeAPointIsSeenInOneDirection() {
    List<NetworkPoint> points = network(0, 0).points();
    Network network =
        new Network(
            points,
            List.of(
                new TapedDistance(
                    "M0",
                    "M4",
                    new Length(PLAN.get(4).distanceTo(PLAN.get(0)).metres() + 0.02),
                    new Length(0.002))));
    Suppositions suppositions = suppositions(network);
    Shift shift = suppositions.elsewhere("M4");
    assertThat(shift.seen()).isEqualTo(1);
    assertThat(shift.eastMetres()).isCloseTo(0.02 / Math.sqrt(2), within(1e-6));
    assertThat(shift.northMetres()).isCloseTo(0.02 / Math.sqrt(2), within(1e-6));
    assertThat(shift.fall()).isCloseTo(suppositions.misread(0).fall(), within(1e-6));
    assertThat(suppositions.elsewhere("M2").seen()).isZero();
  }

  @Test
  void everyPointMustBeExpectedSomewhere() {
    Network network = network(0, 0);
    assertThatThrownBy(() -> suppositions(network.with(NetworkPoint.free("M1", new Point(5, 0)))))
        .hasMessageContaining("M1");
  }
}
