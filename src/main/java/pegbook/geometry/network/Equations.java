package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.geometry.Point;

/**
 * The observation equations at some places of the points, and the normal equations that follow.
 *
 * <p>A distance changes by the cosines of its direction when its ends move: derivatives are exact.
 */
final class Equations {
  /** One distance's row: only the columns of its ends are not zero. */
  static final class Row {
    private final int[] columns;
    private final double[] values;
    private final double metres;

    /**
     * A row.
     *
     * @param columns east and north of its ends; {@link Unknowns#NONE} where not sought
     * @param values change of the distance for a metre's change of each
     * @param metres the distance between the places
     */
    Row(int[] columns, double[] values, double metres) {
      this.columns = columns;
      this.values = values;
      this.metres = metres;
    }

    /** The row of the distance between two points at their places. */
    static Row between(Unknowns unknowns, String from, Point fromAt, String to, Point toAt) {
      double metres = fromAt.distanceTo(toAt).metres();
      double east = metres > 0 ? (toAt.east() - fromAt.east()) / metres : 0;
      double north = metres > 0 ? (toAt.north() - fromAt.north()) / metres : 0;
      return new Row(
          new int[] {
            unknowns.east(from), unknowns.north(from), unknowns.east(to), unknowns.north(to)
          },
          new double[] {-east, -north, east, north},
          metres);
    }

    /** The distance between the places. */
    double metres() {
      return metres;
    }

    /** The row times a square matrix times the row. */
    double throughMatrix(double[][] matrix) {
      return throughMatrix(matrix, this);
    }

    /** The row times a square matrix times another row. */
    double throughMatrix(double[][] matrix, Row other) {
      double sum = 0;
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          if (columns[i] >= 0 && other.columns[j] >= 0) {
            sum += values[i] * matrix[columns[i]][other.columns[j]] * other.values[j];
          }
        }
      }
      return sum;
    }

    /** The row times a vector. */
    double times(double[] vector) {
      double sum = 0;
      for (int i = 0; i < 4; i++) {
        sum += columns[i] >= 0 ? values[i] * vector[columns[i]] : 0;
      }
      return sum;
    }

    private void addSquareTo(double[][] normal, double weight) {
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          if (columns[i] >= 0 && columns[j] >= 0) {
            normal[columns[i]][columns[j]] += weight * values[i] * values[j];
          }
        }
      }
    }

    private void addTo(double[] right, double weighted) {
      for (int i = 0; i < 4; i++) {
        if (columns[i] >= 0) {
          right[columns[i]] += weighted * values[i];
        }
      }
    }
  }

  private final Network network;
  private final Unknowns unknowns;
  private final Map<String, Point> places;
  private final List<Row> rows = new ArrayList<>();

  Equations(Network network, Unknowns unknowns, Map<String, Point> places) {
    this.network = network;
    this.unknowns = unknowns;
    this.places = places;
    network.distances().forEach(distance -> rows.add(row(distance)));
  }

  private Row row(TapedDistance distance) {
    return Row.between(
        unknowns, distance.from(), place(distance.from()), distance.to(), place(distance.to()));
  }

  private Point place(String name) {
    Point place = places.get(name);
    if (place == null) {
      throw new IllegalArgumentException("no place of " + name);
    }
    return place;
  }

  List<Row> rows() {
    return rows;
  }

  /** The matrix of the normal equations. */
  double[][] normalMatrix() {
    double[][] normal = new double[unknowns.count()][unknowns.count()];
    for (int k = 0; k < rows.size(); k++) {
      rows.get(k).addSquareTo(normal, weight(network.distances().get(k)));
    }
    for (Expected expected : expected()) {
      normal[expected.east()][expected.east()] += expected.weight().eastEast();
      normal[expected.east()][expected.north()] += expected.weight().eastNorth();
      normal[expected.north()][expected.east()] += expected.weight().eastNorth();
      normal[expected.north()][expected.north()] += expected.weight().northNorth();
    }
    return normal;
  }

  /** The right side of the normal equations. */
  double[] rightSide() {
    double[] right = new double[unknowns.count()];
    for (int k = 0; k < rows.size(); k++) {
      TapedDistance distance = network.distances().get(k);
      double missing = distance.length().metres() - rows.get(k).metres();
      rows.get(k).addTo(right, missing * weight(distance));
    }
    for (Expected expected : expected()) {
      right[expected.east()] -= expected.pullEast();
      right[expected.north()] -= expected.pullNorth();
    }
    return right;
  }

  /** Sum of the squares of residuals over deviations. */
  double weightedSquares() {
    double sum = 0;
    for (int k = 0; k < rows.size(); k++) {
      TapedDistance distance = network.distances().get(k);
      double missing = distance.length().metres() - rows.get(k).metres();
      sum += missing * missing * weight(distance);
    }
    for (Expected expected : expected()) {
      sum += expected.pullEast() * expected.offEast() + expected.pullNorth() * expected.offNorth();
    }
    return sum;
  }

  private static double weight(TapedDistance distance) {
    return 1 / (distance.deviation().metres() * distance.deviation().metres());
  }

  /** A point that was expected somewhere, as an observation of both its coordinates. */
  record Expected(int east, int north, Spread weight, double offEast, double offNorth) {
    double pullEast() {
      return weight.eastEast() * offEast + weight.eastNorth() * offNorth;
    }

    double pullNorth() {
      return weight.eastNorth() * offEast + weight.northNorth() * offNorth;
    }
  }

  private List<Expected> expected() {
    List<Expected> all = new ArrayList<>();
    for (NetworkPoint point : network.points()) {
      point
          .expected()
          .ifPresent(
              spread -> {
                Point at = place(point.name());
                all.add(
                    new Expected(
                        unknowns.east(point.name()),
                        unknowns.north(point.name()),
                        Shifts.inverse(spread),
                        at.east() - point.start().east(),
                        at.north() - point.start().north()));
              });
    }
    return all;
  }

  /** The places after a step. */
  Map<String, Point> stepped(double[] step, double share) {
    Map<String, Point> moved = new LinkedHashMap<>();
    places.forEach(
        (name, at) -> {
          int east = unknowns.east(name);
          int north = unknowns.north(name);
          moved.put(
              name,
              at.plus(east < 0 ? 0 : step[east] * share, north < 0 ? 0 : step[north] * share));
        });
    return moved;
  }
}
