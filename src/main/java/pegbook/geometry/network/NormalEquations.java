package pegbook.geometry.network;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pegbook.geometry.Point;

/**
 * The normal equations, solved.
 *
 * <p>The unknowns are scaled so that the matrix has a diagonal of ones; a pivot is then the share
 * of an unknown that those before it do not already explain, and a pivot of nothing means that the
 * distances do not fix it. In a free network the open motions are weighed in to make the matrix
 * regular and taken out of the solution again by the inner constraints.
 */
final class NormalEquations {
  /** The least share of an unknown that its distances must fix. */
  private static final double LEAST_PIVOT = 1e-11;

  private final Optional<CholeskyDecomposition> factors;
  private final double[] scale;
  private final Optional<Constraint> constraint;
  private final int defect;

  private NormalEquations(
      Optional<CholeskyDecomposition> factors,
      double[] scale,
      Optional<Constraint> constraint,
      int defect) {
    this.factors = factors;
    this.scale = scale;
    this.constraint = constraint;
    this.defect = defect;
  }

  static NormalEquations of(
      Equations equations,
      Unknowns unknowns,
      Datum datum,
      Network network,
      Map<String, Point> places) {
    double[][] normal = equations.normalMatrix();
    List<RealVector> open =
        datum instanceof Datum.Inner ? RigidMotions.leftOpen(normal, unknowns, places) : List.of();
    double weight = RigidMotions.largestDiagonal(normal);
    for (RealVector motion : open) {
      for (int i = 0; i < normal.length; i++) {
        for (int j = 0; j < normal.length; j++) {
          normal[i][j] += weight * motion.getEntry(i) * motion.getEntry(j);
        }
      }
    }
    double[] scale = scale(normal);
    return new NormalEquations(
        factors(normal, scale), scale, constraint(open, unknowns, datum, network), open.size());
  }

  private static double[] scale(double[][] normal) {
    double[] scale = new double[normal.length];
    for (int i = 0; i < scale.length; i++) {
      scale[i] = normal[i][i] > 0 ? 1 / Math.sqrt(normal[i][i]) : 0;
    }
    return scale;
  }

  private static Optional<CholeskyDecomposition> factors(double[][] normal, double[] scale) {
    int count = scale.length;
    double[][] scaled = new double[count][count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j <= i; j++) {
        scaled[i][j] = normal[i][j] * scale[i] * scale[j];
        scaled[j][i] = scaled[i][j];
      }
    }
    if (count == 0) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new CholeskyDecomposition(MatrixUtils.createRealMatrix(scaled), 1e-12, LEAST_PIVOT));
    } catch (MathIllegalArgumentException singular) {
      return Optional.empty();
    }
  }

  /**
   * What takes the open motions G out of a solution: 1 − G H with H = (GᵀB)⁻¹ GᵀB, B picking the
   * unknowns over which the changes are to be least. Both are narrow, so this costs next to
   * nothing.
   *
   * @param motions G
   * @param through H
   */
  private record Constraint(RealMatrix motions, RealMatrix through) {
    double[] applied(double[] solved) {
      double[] out = motions.operate(through.operate(solved));
      for (int i = 0; i < solved.length; i++) {
        out[i] = solved[i] - out[i];
      }
      return out;
    }

    /** From both sides. */
    RealMatrix applied(RealMatrix cofactors) {
      RealMatrix once = cofactors.subtract(motions.multiply(through.multiply(cofactors)));
      RealMatrix across = once.multiplyTransposed(through);
      return once.subtract(across.multiplyTransposed(motions));
    }
  }

  private static Optional<Constraint> constraint(
      List<RealVector> open, Unknowns unknowns, Datum datum, Network network) {
    if (open.isEmpty() || !(datum instanceof Datum.Inner inner)) {
      return Optional.empty();
    }
    boolean[] over = over(inner, unknowns, network);
    RealMatrix motions = MatrixUtils.createRealMatrix(unknowns.count(), open.size());
    RealMatrix picked = MatrixUtils.createRealMatrix(open.size(), unknowns.count());
    for (int j = 0; j < open.size(); j++) {
      motions.setColumnVector(j, open.get(j));
      for (int i = 0; i < over.length; i++) {
        picked.setEntry(j, i, over[i] ? open.get(j).getEntry(i) : 0);
      }
    }
    DecompositionSolver within = new LUDecomposition(picked.multiply(motions), 1e-12).getSolver();
    if (!within.isNonSingular()) {
      throw new IllegalArgumentException("the points named do not hold the frame: " + inner.over());
    }
    return Optional.of(new Constraint(motions, within.solve(picked)));
  }

  private static boolean[] over(Datum.Inner inner, Unknowns unknowns, Network network) {
    boolean[] over = new boolean[unknowns.count()];
    List<String> names =
        inner.over().isEmpty()
            ? network.points().stream().map(NetworkPoint::name).toList()
            : inner.over();
    for (String name : names) {
      for (int column : new int[] {unknowns.east(name), unknowns.north(name)}) {
        if (column >= 0) {
          over[column] = true;
        }
      }
    }
    return over;
  }

  /** False when the distances do not fix every unknown. */
  boolean areRegular() {
    return factors.isPresent() || scale.length == 0;
  }

  /** How many motions of the whole figure the distances leave open. */
  int defect() {
    return defect;
  }

  /** The changes of the unknowns. */
  double[] solve(double[] right) {
    if (scale.length == 0) {
      return right;
    }
    double[] scaled = new double[right.length];
    for (int i = 0; i < right.length; i++) {
      scaled[i] = right[i] * scale[i];
    }
    double[] solved =
        factors.orElseThrow().getSolver().solve(MatrixUtils.createRealVector(scaled)).toArray();
    for (int i = 0; i < solved.length; i++) {
      solved[i] *= scale[i];
    }
    return constraint.map(some -> some.applied(solved)).orElse(solved);
  }

  /** The cofactors of the unknowns: their covariances, the deviations put in being right. */
  double[][] cofactors() {
    if (scale.length == 0) {
      return new double[0][0];
    }
    RealMatrix inverse = factors.orElseThrow().getSolver().getInverse();
    for (int i = 0; i < scale.length; i++) {
      for (int j = 0; j < scale.length; j++) {
        inverse.multiplyEntry(i, j, scale[i] * scale[j]);
      }
    }
    return constraint.map(some -> some.applied(inverse)).orElse(inverse).getData();
  }
}
