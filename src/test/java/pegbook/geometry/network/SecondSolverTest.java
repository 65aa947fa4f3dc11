package pegbook.geometry.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.geometry.Point;

/** A general solver of least squares, with numerical derivatives, finds the same places. */
class SecondSolverTest {
  static List<String> networks() {
    return PublishedNetworks.names();
  }

  @ParameterizedTest
  @MethodSource("networks")
  void findsTheSamePlacesAndSpreads(String name) {
    Network network = PublishedNetworks.network(name);
    Adjustment adjustment = NetworkAdjustment.of(network, Datum.held()).adjusted();
    List<NetworkPoint> free =
        network.points().stream()
            .filter(point -> point.freedom() == NetworkPoint.Freedom.FREE)
            .toList();
    // Reckoned from the starting places, so that large coordinates cost no digits.
    LeastSquaresOptimizer.Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(new double[2 * free.size()])
                    .model(model(network, free))
                    .target(new double[network.distances().size()])
                    .lazyEvaluation(false)
                    .maxEvaluations(1000)
                    .maxIterations(1000)
                    .build());
    RealMatrix covariances = optimum.getCovariances(1e-14);
    for (int i = 0; i < free.size(); i++) {
      AdjustedPoint point = adjustment.point(free.get(i).name());
      Point found =
          free.get(i)
              .start()
              .plus(optimum.getPoint().getEntry(2 * i), optimum.getPoint().getEntry(2 * i + 1));
      assertThat(found.distanceTo(point.at()).metres()).isLessThan(1e-6);
      assertThat(point.spread().eastEast())
          .isCloseTo(covariances.getEntry(2 * i, 2 * i), within(1e-8));
      assertThat(point.spread().eastNorth())
          .isCloseTo(covariances.getEntry(2 * i, 2 * i + 1), within(1e-8));
      assertThat(point.spread().northNorth())
          .isCloseTo(covariances.getEntry(2 * i + 1, 2 * i + 1), within(1e-8));
    }
    assertThat(optimum.getCost() * optimum.getCost())
        .isCloseTo(adjustment.weightedSquares(), within(1e-6 * adjustment.weightedSquares()));
  }

  /** Residuals over deviations, their derivatives by differences. */
  private static MultivariateJacobianFunction model(Network network, List<NetworkPoint> free) {
    return at -> {
      double[] values = residuals(network, free, at.toArray());
      RealMatrix jacobian =
          org.hipparchus.linear.MatrixUtils.createRealMatrix(values.length, at.getDimension());
      double step = 1e-3;
      for (int j = 0; j < at.getDimension(); j++) {
        double[] more = at.toArray();
        double[] less = at.toArray();
        more[j] += step;
        less[j] -= step;
        double[] high = residuals(network, free, more);
        double[] low = residuals(network, free, less);
        for (int i = 0; i < values.length; i++) {
          jacobian.setEntry(i, j, (high[i] - low[i]) / (2 * step));
        }
      }
      return new Pair<>(new ArrayRealVector(values), jacobian);
    };
  }

  private static double[] residuals(Network network, List<NetworkPoint> free, double[] changes) {
    return network.distances().stream()
        .mapToDouble(
            distance -> {
              Point from = place(network, free, changes, distance.from());
              Point to = place(network, free, changes, distance.to());
              double computed = Math.hypot(to.east() - from.east(), to.north() - from.north());
              return (computed - distance.length().metres()) / distance.deviation().metres();
            })
        .toArray();
  }

  private static Point place(
      Network network, List<NetworkPoint> free, double[] changes, String name) {
    for (int i = 0; i < free.size(); i++) {
      if (free.get(i).name().equals(name)) {
        return free.get(i).start().plus(changes[2 * i], changes[2 * i + 1]);
      }
    }
    return network.points().stream()
        .filter(point -> point.name().equals(name))
        .findFirst()
        .orElseThrow()
        .start();
  }
}
