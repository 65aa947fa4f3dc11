package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.geometry.Point;

/**
 * Adjusts a network by least squares.
 *
 * <p>The places are sought for which the sum of the squares of residuals over standard deviations
 * is least: the equations are made linear at the starting places with exact derivatives, solved,
 * and made anew at the places found, until these come to rest (Gauss–Newton; a step that would make
 * the sum larger is halved). Cofactors, redundancy numbers and supposed shifts are those of the
 * last equations.
 *
 * <p>Where the starting places lie decides which of two mirror images is found.
 */
public final class NetworkAdjustment {
  private static final int MOST_STEPS = 60;
  private static final int MOST_HALVINGS = 12;

  private final Network network;
  private final Unknowns unknowns;
  private final Datum datum;
  private final Point origin;

  private NetworkAdjustment(Network network, Datum datum, Point origin) {
    this.network = network;
    this.unknowns = new Unknowns(network.points());
    this.datum = datum;
    this.origin = origin;
  }

  /**
   * Adjusts.
   *
   * @param network points with starting places, and distances
   * @param datum what holds the frame
   * @return the adjustment; or which points stay undetermined; or that it did not come to rest
   * @throws IllegalArgumentException when the datum names a point that is not in the network
   */
  public static Outcome of(Network network, Datum datum) {
    Point origin = middle(network.points());
    return new NetworkAdjustment(moved(network, -origin.east(), -origin.north()), datum, origin)
        .adjusted();
  }

  /** Numbers stay small, and keep their digits, when reckoned from the middle of the figure. */
  private static Point middle(List<NetworkPoint> points) {
    double east = points.stream().mapToDouble(point -> point.start().east()).average().orElse(0);
    double north = points.stream().mapToDouble(point -> point.start().north()).average().orElse(0);
    return new Point(Math.rint(east), Math.rint(north));
  }

  private static Network moved(Network network, double east, double north) {
    return new Network(
        network.points().stream()
            .map(
                point ->
                    new NetworkPoint(
                        point.name(),
                        point.start().plus(east, north),
                        point.freedom(),
                        point.expected()))
            .toList(),
        network.distances());
  }

  private Outcome adjusted() {
    Map<String, Point> places = new LinkedHashMap<>();
    network.points().forEach(point -> places.put(point.name(), point.start()));
    Map<String, Point> at = places;
    double span = span(places);
    String worst = "";
    for (int step = 1; step <= MOST_STEPS; step++) {
      Equations equations = new Equations(network, unknowns, at);
      NormalEquations normal = NormalEquations.of(equations, unknowns, datum, network, at);
      if (!normal.areRegular()) {
        return new Outcome.Undetermined(
            new LooseParts(network, unknowns).names(equations.normalMatrix(), datum));
      }
      double[] change = normal.solve(equations.rightSide());
      int largest = largest(change);
      if (largest < 0 || Math.abs(change[largest]) <= rest(span)) {
        return result(equations.stepped(change, 1), step);
      }
      worst = nameOf(largest);
      at = nearer(equations, change);
    }
    return new Outcome.Astray(worst);
  }

  /** A step smaller than this, metres, is rest. */
  private static double rest(double span) {
    return Math.max(1e-9, span * 1e-13);
  }

  private static double span(Map<String, Point> places) {
    return places.values().stream()
        .mapToDouble(at -> Math.max(Math.abs(at.east()), Math.abs(at.north())))
        .max()
        .orElse(0);
  }

  private static int largest(double[] change) {
    int largest = -1;
    for (int i = 0; i < change.length; i++) {
      if (largest < 0 || Math.abs(change[i]) > Math.abs(change[largest])) {
        largest = i;
      }
    }
    return largest;
  }

  private String nameOf(int column) {
    return network.points().stream()
        .map(NetworkPoint::name)
        .filter(name -> unknowns.east(name) == column || unknowns.north(name) == column)
        .findFirst()
        .orElseThrow();
  }

  private Map<String, Point> nearer(Equations equations, double[] change) {
    double before = equations.weightedSquares();
    double share = 1;
    Map<String, Point> next = equations.stepped(change, share);
    for (int i = 0; i < MOST_HALVINGS; i++) {
      double after = new Equations(network, unknowns, next).weightedSquares();
      if (after <= before * (1 + 1e-9) + 1e-12) {
        break;
      }
      share /= 2;
      next = equations.stepped(change, share);
    }
    return next;
  }

  private Outcome result(Map<String, Point> at, int steps) {
    Equations equations = new Equations(network, unknowns, at);
    NormalEquations normal = NormalEquations.of(equations, unknowns, datum, network, at);
    double[][] cofactors = normal.cofactors();
    List<AdjustedDistance> distances = new ArrayList<>();
    for (int k = 0; k < network.distances().size(); k++) {
      TapedDistance taped = network.distances().get(k);
      Equations.Row row = equations.rows().get(k);
      double deviation = taped.deviation().metres();
      double redundancy = 1 - row.throughMatrix(cofactors) / (deviation * deviation);
      distances.add(
          new AdjustedDistance(
              taped,
              new pegbook.measure.Length(row.metres()),
              Math.max(0, Math.min(1, redundancy))));
    }
    int known = network.distances().size() + normal.defect();
    int expected = (int) network.points().stream().filter(p -> p.expected().isPresent()).count();
    return new Adjustment(
        network.points().stream().map(point -> pointOf(point, at, cofactors)).toList(),
        distances,
        unknowns,
        cofactors,
        new Adjustment.Tally(
            equations.weightedSquares(), known + 2 * expected - unknowns.count(), steps));
  }

  private AdjustedPoint pointOf(NetworkPoint point, Map<String, Point> at, double[][] cofactors) {
    Point place = java.util.Objects.requireNonNull(at.get(point.name()));
    int east = unknowns.east(point.name());
    int north = unknowns.north(point.name());
    Spread spread =
        new Spread(
            east < 0 ? 0 : cofactors[east][east],
            east < 0 || north < 0 ? 0 : cofactors[east][north],
            north < 0 ? 0 : cofactors[north][north]);
    Optional<Shift> shift =
        point
            .expected()
            .map(
                expected ->
                    Shifts.of(
                        expected,
                        spread,
                        place.east() - point.start().east(),
                        place.north() - point.start().north()));
    return new AdjustedPoint(
        point.name(), place.plus(origin.east(), origin.north()), spread, shift);
  }
}
