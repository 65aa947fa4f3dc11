package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;

/** Finds the points that the distances do not fix. */
final class LooseParts {
  /** A change without resistance, against the stiffest. */
  private static final double LOOSE = 1e-10;

  /** A point moves in it when it moves by this much of the one that moves most. */
  private static final double MOVES = 1e-5;

  private final Network network;
  private final Unknowns unknowns;

  LooseParts(Network network, Unknowns unknowns) {
    this.network = network;
    this.unknowns = unknowns;
  }

  /**
   * Names of the points that can move without any distance changing.
   *
   * <p>Where nothing holds the frame, a point with most distances and its neighbour with most are
   * held, so that what is named moves against the best measured part of the figure.
   */
  List<String> names(double[][] normal, Datum datum) {
    double[][] held = copy(normal);
    if (datum instanceof Datum.Inner) {
      hold(held);
    }
    double[] scale = new double[held.length];
    for (int i = 0; i < scale.length; i++) {
      scale[i] = held[i][i] > 0 ? 1 / Math.sqrt(held[i][i]) : 1;
    }
    for (int i = 0; i < scale.length; i++) {
      for (int j = 0; j < scale.length; j++) {
        held[i][j] *= scale[i] * scale[j];
      }
    }
    var eigen = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(held), 1e-14, true);
    double[] moves = new double[scale.length];
    double most = 0;
    for (int k = 0; k < scale.length; k++) {
      if (eigen.getEigenvalue(k) < LOOSE * eigen.getEigenvalue(0)) {
        for (int i = 0; i < moves.length; i++) {
          moves[i] = Math.max(moves[i], Math.abs(eigen.getEigenvector(k).getEntry(i) * scale[i]));
          most = Math.max(most, moves[i]);
        }
      }
    }
    double least = most * MOVES;
    return network.points().stream()
        .map(NetworkPoint::name)
        .filter(
            name ->
                moves(moves, unknowns.east(name), least)
                    || moves(moves, unknowns.north(name), least))
        .toList();
  }

  private static boolean moves(double[] moves, int column, double least) {
    return column >= 0 && moves[column] > least;
  }

  private static double[][] copy(double[][] matrix) {
    double[][] copy = new double[matrix.length][];
    for (int i = 0; i < matrix.length; i++) {
      copy[i] = matrix[i].clone();
    }
    return copy;
  }

  private void hold(double[][] normal) {
    double stiff = RigidMotions.largestDiagonal(normal);
    for (String name : reference()) {
      for (int column : new int[] {unknowns.east(name), unknowns.north(name)}) {
        if (column >= 0) {
          normal[column][column] += stiff;
        }
      }
    }
  }

  private List<String> reference() {
    List<String> pair = new ArrayList<>();
    Comparator<String> byDistances = Comparator.comparingLong(this::distancesOf);
    network.points().stream().map(NetworkPoint::name).max(byDistances).ifPresent(pair::add);
    pair.stream()
        .findFirst()
        .flatMap(
            first ->
                network.distances().stream()
                    .filter(distance -> distance.ends(first))
                    .map(distance -> distance.otherEnd(first))
                    .max(byDistances))
        .ifPresent(pair::add);
    return pair;
  }

  private long distancesOf(String name) {
    return network.distances().stream().filter(distance -> distance.ends(name)).count();
  }
}
