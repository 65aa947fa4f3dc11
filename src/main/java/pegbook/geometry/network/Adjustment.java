package pegbook.geometry.network;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * An adjusted network.
 *
 * <p>Spreads and deviations are those that follow from the deviations put in. Multiply variances by
 * {@link #varianceFactor} (deviations by its root) to have them as the residuals say.
 */
public final class Adjustment implements Outcome {
  private final Map<String, AdjustedPoint> points;
  private final List<AdjustedDistance> distances;
  private final Unknowns unknowns;
  private final double[][] cofactors;
  private final double weightedSquares;
  private final int degreesOfFreedom;
  private final int steps;

  Adjustment(
      List<AdjustedPoint> points,
      List<AdjustedDistance> distances,
      Unknowns unknowns,
      double[][] cofactors,
      Tally tally) {
    Map<String, AdjustedPoint> named = new LinkedHashMap<>();
    points.forEach(point -> named.put(point.name(), point));
    this.points = Collections.unmodifiableMap(named);
    this.distances = List.copyOf(distances);
    this.unknowns = unknowns;
    this.cofactors = cofactors;
    this.weightedSquares = tally.weightedSquares();
    this.degreesOfFreedom = tally.degreesOfFreedom();
    this.steps = tally.steps();
  }

  /** Sums of an adjustment. */
  record Tally(double weightedSquares, int degreesOfFreedom, int steps) {}

  /** The points, in the network's order. */
  public List<AdjustedPoint> points() {
    return List.copyOf(points.values());
  }

  /**
   * The point with a name.
   *
   * @throws IllegalArgumentException when there is none
   */
  public AdjustedPoint point(String name) {
    AdjustedPoint point = points.get(name);
    if (point == null) {
      throw new IllegalArgumentException("no point " + name);
    }
    return point;
  }

  /** The distances, in the network's order. */
  public List<AdjustedDistance> distances() {
    return distances;
  }

  /** Sum of the squares of residuals over deviations, expected places included. */
  public double weightedSquares() {
    return weightedSquares;
  }

  /** How many measurements there are beyond those needed. */
  public int degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /** How many times the equations were solved. */
  public int steps() {
    return steps;
  }

  /**
   * Weighted squares over degrees of freedom: about 1 when the deviations put in were honest and
   * nothing is wrong. Empty when nothing is measured beyond need.
   */
  public OptionalDouble varianceFactor() {
    return degreesOfFreedom > 0
        ? OptionalDouble.of(weightedSquares / degreesOfFreedom)
        : OptionalDouble.empty();
  }

  /**
   * Global test: the chance of weighted squares as large as these when nothing is wrong. Empty when
   * nothing is measured beyond need.
   */
  public OptionalDouble chance() {
    return degreesOfFreedom > 0
        ? OptionalDouble.of(Chances.chiSquaredTail(weightedSquares, degreesOfFreedom))
        : OptionalDouble.empty();
  }

  /** How far the difference of two places may be off, their common errors left out. */
  public Spread between(String first, String second) {
    Spread a = point(first).spread();
    Spread b = point(second).spread();
    int ea = unknowns.east(first);
    int na = unknowns.north(first);
    int eb = unknowns.east(second);
    int nb = unknowns.north(second);
    return new Spread(
        a.eastEast() + b.eastEast() - 2 * cofactor(ea, eb),
        a.eastNorth() + b.eastNorth() - cofactor(ea, nb) - cofactor(na, eb),
        a.northNorth() + b.northNorth() - 2 * cofactor(na, nb));
  }

  /** Distance between two adjusted places, measured or not. */
  public Length distance(String first, String second) {
    return point(first).at().distanceTo(point(second).at());
  }

  /** Standard deviation of {@link #distance}: what the network alone says about it. */
  public Length distanceDeviation(String first, String second) {
    Point from = point(first).at();
    return between(first, second).deviationAlong(from.azimuthTo(point(second).at()));
  }

  private double cofactor(int row, int column) {
    return row < 0 || column < 0 ? 0 : cofactors[row][column];
  }
}
