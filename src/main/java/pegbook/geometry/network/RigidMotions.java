package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pegbook.geometry.Point;

/** Shift and turn of the whole figure, as far as nothing holds them. */
final class RigidMotions {
  /** Against the largest, what counts as nothing. */
  private static final double NOTHING = 1e-10;

  private RigidMotions() {}

  /** Directions in the space of the unknowns, each of length 1 and square to the others. */
  static List<RealVector> leftOpen(
      double[][] normal, Unknowns unknowns, Map<String, Point> places) {
    List<RealVector> all = squared(motions(unknowns, places));
    if (all.isEmpty()) {
      return all;
    }
    RealMatrix columns = MatrixUtils.createRealMatrix(unknowns.count(), all.size());
    for (int i = 0; i < all.size(); i++) {
      columns.setColumnVector(i, all.get(i));
    }
    RealMatrix held =
        columns.transposeMultiply(MatrixUtils.createRealMatrix(normal).multiply(columns));
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(symmetric(held), 1e-14, true);
    double largest = largestDiagonal(normal);
    List<RealVector> open = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (eigen.getEigenvalue(i) <= NOTHING * largest) {
        open.add(columns.operate(eigen.getEigenvector(i)));
      }
    }
    return open;
  }

  static double largestDiagonal(double[][] normal) {
    double largest = 0;
    for (int i = 0; i < normal.length; i++) {
      largest = Math.max(largest, normal[i][i]);
    }
    return largest;
  }

  private static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }

  private static List<RealVector> motions(Unknowns unknowns, Map<String, Point> places) {
    double[] east = new double[unknowns.count()];
    double[] north = new double[unknowns.count()];
    double[] turn = new double[unknowns.count()];
    places.forEach(
        (name, at) -> {
          int e = unknowns.east(name);
          int n = unknowns.north(name);
          if (e >= 0) {
            east[e] = 1;
            turn[e] = at.north();
          }
          if (n >= 0) {
            north[n] = 1;
            turn[n] = -at.east();
          }
        });
    return List.of(
        MatrixUtils.createRealVector(east),
        MatrixUtils.createRealVector(north),
        MatrixUtils.createRealVector(turn));
  }

  /** Made square to each other and of length 1; those that say nothing new are left out. */
  private static List<RealVector> squared(List<RealVector> vectors) {
    List<RealVector> square = new ArrayList<>();
    for (RealVector vector : vectors) {
      RealVector rest = vector;
      for (int twice = 0; twice < 2; twice++) {
        for (RealVector earlier : square) {
          rest = rest.subtract(earlier.mapMultiply(earlier.dotProduct(rest)));
        }
      }
      if (rest.getNorm() > 1e-9 * Math.max(1e-9, vector.getNorm())) {
        square.add(rest.mapDivide(rest.getNorm()));
      }
    }
    return square;
  }
}
