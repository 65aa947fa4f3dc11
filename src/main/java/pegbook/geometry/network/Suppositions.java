package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * Tests what may be wrong with a network whose points were all meant to be somewhere.
 *
 * <p>If nothing is wrong, each distance differs from the one meant by its own error and by those of
 * its two points, and the weighted sum of squares of all differences is chi-squared with as many
 * degrees of freedom as there are distances. A supposition — this one distance is misread, this one
 * point is elsewhere — explains some of the differences; the sum falls by what it explains. All
 * suppositions are weighed against the same equations, made once at the places meant, so that one
 * more costs next to nothing; a point's move is followed exactly, however long it is.
 *
 * <p>With the covariance C of the differences y and the changes s that a supposition makes, the sum
 * is yᵀC⁻¹y − 2 sᵀC⁻¹y + sᵀC⁻¹s. C⁻¹ is W − W A Q Aᵀ W, with the weights W and derivatives A of the
 * distances and the cofactors Q of the points.
 */
public final class Suppositions {
  private final List<TapedDistance> taped;
  private final Map<String, Point> meant = new LinkedHashMap<>();
  private final List<Equations.Row> rows;
  private final double[][] cofactors;
  private final double[][] placeCofactors;
  private final Unknowns unknowns;

  /** C⁻¹ y. */
  private final double[] pulls;

  private final double weightedSquares;

  private Suppositions(Network places, List<TapedDistance> taped) {
    this.taped = List.copyOf(taped);
    places.points().forEach(point -> meant.put(point.name(), point.start()));
    this.unknowns = new Unknowns(places.points());
    List<TapedDistance> exact = places.distances().stream().map(this::asMeant).toList();
    List<TapedDistance> all = new ArrayList<>(exact);
    all.addAll(taped);
    this.placeCofactors = normal(new Network(places.points(), exact)).cofactors();
    Network both = new Network(places.points(), all);
    Equations equations = new Equations(both, unknowns, meant);
    this.rows = equations.rows().subList(exact.size(), all.size());
    NormalEquations normal = normal(both);
    this.cofactors = normal.cofactors();
    double[] change = normal.solve(equations.rightSide());
    this.pulls = new double[taped.size()];
    double sum = 0;
    for (int i = 0; i < pulls.length; i++) {
      pulls[i] = weight(i) * (difference(i) - rows.get(i).times(change));
      sum += pulls[i] * difference(i);
    }
    this.weightedSquares = sum;
  }

  private NormalEquations normal(Network network) {
    return NormalEquations.of(
        new Equations(network, unknowns, meant), unknowns, Datum.held(), network, meant);
  }

  private TapedDistance asMeant(TapedDistance distance) {
    Length length = meant(distance.from()).distanceTo(meant(distance.to()));
    return new TapedDistance(distance.from(), distance.to(), length, distance.deviation());
  }

  /**
   * Prepares the tests.
   *
   * @param places where the points were meant to be, every one {@linkplain NetworkPoint#expected
   *     expected} or fixed, and the distances by which they were set out; of these only the
   *     deviations count, as a point stands where it was put
   * @param taped the distances measured afterwards
   * @throws IllegalArgumentException when nothing is expected of a point or a distance ends at none
   */
  public static Suppositions of(Network places, List<TapedDistance> taped) {
    for (NetworkPoint point : places.points()) {
      if (point.expected().isEmpty() && point.freedom() != NetworkPoint.Freedom.FIXED) {
        throw new IllegalArgumentException("nothing is expected of " + point.name());
      }
    }
    return new Suppositions(places, taped);
  }

  /** Weighted sum of squares when nothing is supposed to be wrong. */
  public double weightedSquares() {
    return weightedSquares;
  }

  /** Measured less meant, metres. */
  public double difference(int distance) {
    return measured(distance) - rows.get(distance).metres();
  }

  /** Variance of {@link #difference} when nothing is wrong, square metres. */
  public double variance(int distance) {
    return 1 / weight(distance) + rows.get(distance).throughMatrix(placeCofactors);
  }

  /** Variance of the distance between two points as they were set out, square metres. */
  public double placeVariance(String first, String second) {
    return Equations.Row.between(unknowns, first, meant(first), second, meant(second))
        .throughMatrix(placeCofactors);
  }

  /** How far a point may stand off where it was meant to be, the frame of the others held. */
  public Spread placeSpread(String name) {
    int east = unknowns.east(name);
    int north = unknowns.north(name);
    return east < 0 || north < 0
        ? Spread.NONE
        : new Spread(
            placeCofactors[east][east], placeCofactors[east][north], placeCofactors[north][north]);
  }

  /** Redundancy number of a distance: how much of an error in it shows in its own residual. */
  public double redundancy(int distance) {
    return jointWeight(distance, distance) / weight(distance);
  }

  /** Residual of a distance over its own deviation, with the sign of adjusted less measured. */
  public double standardised(int distance) {
    return -pulls[distance] / Math.sqrt(jointWeight(distance, distance));
  }

  /** The supposition that one distance is misread and nothing else is wrong. */
  public Misreading misread(int distance) {
    double weight = jointWeight(distance, distance);
    return new Misreading(
        pulls[distance] / weight,
        1 / Math.sqrt(weight),
        pulls[distance] * pulls[distance] / weight);
  }

  /**
   * One distance supposed misread.
   *
   * @param errorMetres by how much it is too long
   * @param deviationMetres how far that may be off
   * @param fall by how much the weighted sum of squares falls; with nothing wrong, chi-squared with
   *     one degree of freedom
   */
  public record Misreading(double errorMetres, double deviationMetres, double fall) {}

  /**
   * The supposition that one point is elsewhere and nothing else is wrong.
   *
   * @param name of the point
   * @return the place that explains most; with no distance to the point, no shift
   */
  public Shift elsewhere(String name) {
    List<Integer> own =
        IntStream.range(0, pulls.length).filter(i -> taped.get(i).ends(name)).boxed().toList();
    return new PointSearch(this, meant(name), own).best();
  }

  Point meant(String name) {
    Point at = meant.get(name);
    if (at == null) {
      throw new IllegalArgumentException("no point " + name);
    }
    return at;
  }

  /** Where the other end of a distance was meant to be. */
  Point otherEnd(int distance, Point end) {
    Point from = meant(taped.get(distance).from());
    return from.equals(end) ? meant(taped.get(distance).to()) : from;
  }

  double measured(int distance) {
    return taped.get(distance).length().metres();
  }

  double pull(int distance) {
    return pulls[distance];
  }

  /** An element of C⁻¹. */
  double jointWeight(int first, int second) {
    double through = rows.get(first).throughMatrix(cofactors, rows.get(second));
    double own = first == second ? weight(first) : 0;
    return own - weight(first) * through * weight(second);
  }

  private double weight(int distance) {
    double deviation = taped.get(distance).deviation().metres();
    return 1 / (deviation * deviation);
  }

  /** Names of the points, in order. */
  public List<String> names() {
    return new ArrayList<>(meant.keySet());
  }
}
