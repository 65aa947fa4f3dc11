package pegbook.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ojalgo.OjAlgoUtils;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * How many bars of each pattern, were parts of bars allowed.
 *
 * <p>What the library gives is a guide only: it is in doubles, and nothing is proved by it. It runs
 * in one thread, and Java's arithmetic is the same everywhere, so it gives the same on each
 * machine.
 */
final class LinearProgram {
  /** More steps of the library than a program of this size takes. */
  private static final int MOST_STEPS = 200_000;

  static {
    OjAlgoUtils.limitThreadsTo(1);
  }

  /**
   * A solution.
   *
   * @param bars of each pattern
   * @param prices of a piece of each kind, in weights
   */
  record Solution(List<Double> bars, List<Double> prices) {}

  private LinearProgram() {}

  /**
   * Solves it: least weight of all bars that give the pieces wanted, within the stock there is.
   *
   * @param instance for weights
   * @param patterns to choose from
   * @param wanted pieces of each kind
   * @param limit bars of each stock
   */
  static Optional<Solution> solve(
      Instance instance, List<Pattern> patterns, int[] wanted, int[] limit) {
    double[] weights =
        patterns.stream().mapToDouble(p -> instance.weight[p.stock()] * unit(instance)).toArray();
    LinearSolver.Builder program = LinearSolver.newBuilder(weights);
    program.lower(0);
    for (int kind = 0; kind < wanted.length; kind++) {
      int row = kind;
      program.inequality(
          -wanted[kind], patterns.stream().mapToDouble(p -> -p.count(row)).toArray());
    }
    for (int stock = 0; stock < limit.length; stock++) {
      int row = stock;
      if (instance.isLimited(stock)) {
        program.inequality(
            limit[stock], patterns.stream().mapToDouble(p -> p.stock() == row ? 1 : 0).toArray());
      }
    }
    return solve(program, patterns.size(), wanted.length, 1 / unit(instance));
  }

  /** The heaviest stock weighs one, so that the library's own tolerances suit. */
  private static double unit(Instance instance) {
    return 1.0 / Arrays.stream(instance.weight).max().orElse(1);
  }

  private static Optional<Solution> solve(
      LinearSolver.Builder program, int patterns, int kinds, double unit) {
    Optimisation.Options options = new Optimisation.Options();
    options.time_abort = Long.MAX_VALUE;
    options.time_suffice = Long.MAX_VALUE;
    options.iterations_abort = MOST_STEPS;
    options.iterations_suffice = MOST_STEPS;
    Optimisation.Result result = program.build(options).solve();
    if (!result.getState().isOptimal() || result.getMultipliers().isEmpty()) {
      return Optional.empty();
    }
    double[] bars = result.toRawCopy1D();
    double[] prices = result.getMultipliers().get().toRawCopy1D();
    return Optional.of(
        new Solution(
            IntStream.range(0, patterns).mapToObj(i -> bars[i]).toList(),
            IntStream.range(0, kinds).mapToObj(i -> Math.abs(prices[i]) * unit).toList()));
  }
}
