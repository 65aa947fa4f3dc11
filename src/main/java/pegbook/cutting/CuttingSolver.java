package pegbook.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.cutting.CuttingPlan.AlikeBars;

/**
 * Finds the plan of least cost, then of fewest bars, and proves it where it can.
 *
 * <ol>
 *   <li>First fit gives a plan; the length of all pieces gives a bound. Often they meet.
 *   <li>Parts of bars ({@link Relaxation}) give a better bound, rounded up to what whole bars can
 *       cost ({@link StockSums}).
 *   <li>The plans below the best are looked through ({@link LossSearch}), for a few steps; each
 *       weight that no plan has raises the bound.
 *   <li>Dives ({@link Dive}) look for a plan that meets the bound.
 *   <li>Where none does, the plans below the best are looked through again, up to a number of
 *       steps.
 * </ol>
 */
public final class CuttingSolver {
  /** What counts as nearly a whole bar, dive after dive. */
  private static final double[] NEARLY = {0.5, 0.7, 0.9};

  /** How often a dive turns aside. */
  private static final int TURNS = 30;

  /** Steps of a first look, which ends most small jobs before any dive. */
  private static final long FIRST_STEPS = 1_000_000;

  /** Steps of all looks through the plans below the best. */
  private static final long STEPS = 20_000_000;

  /** What a look costs besides its own steps, in steps: millions that each find nothing add up. */
  private static final long LOOK = 20;

  /** Steps spent on fewer bars, once no plan can cost less: a tenth of a second. */
  private static final long STEPS_FOR_FEWER = 1_000_000;

  private final CuttingProblem problem;
  private final Instance instance;
  private final FirstFit firstFit;
  private final StockSums sums;
  private List<Pattern> best;

  /** Kept, as it is asked for after every look. */
  private long bestWeight;

  private long bound;

  private CuttingSolver(CuttingProblem problem) {
    this.problem = problem;
    instance = new Instance(problem);
    firstFit = new FirstFit(instance);
    sums = new StockSums(instance);
    best = firstFit.plan();
    bestWeight = instance.weightOf(best);
  }

  /** Solves a problem; the kerf is already in its lengths. */
  public static CuttingPlan solve(CuttingProblem problem) {
    CuttingSolver solver = new CuttingSolver(problem);
    solver.search();
    return solver.plan();
  }

  private void search() {
    raise(0);
    if (isDone()) {
      return;
    }
    Relaxation relaxation = new Relaxation(instance, best);
    Optional<Relaxation.Outcome> root = relaxation.solve(instance.count, instance.limit);
    if (root.isEmpty()) {
      return;
    }
    raise(upToWhole(root.get().bound()));
    LossSearch search = new LossSearch(instance, root.get().prices(), relaxation.byLength());
    lookThrough(search, FIRST_STEPS);
    for (double nearly : NEARLY) {
      dive(relaxation, root.get(), nearly);
    }
    lookThrough(search, STEPS);
  }

  /** Again and again, as long as each dive betters the last. */
  private void dive(Relaxation relaxation, Relaxation.Outcome root, double nearly) {
    boolean isBetter = true;
    while (isBetter && !isDone()) {
      Optional<List<Pattern>> found =
          new Dive(instance, relaxation, nearly, TURNS).plan(root, weight() - 1);
      found.ifPresent(this::keep);
      isBetter = found.isPresent();
    }
  }

  private void lookThrough(LossSearch search, long steps) {
    long left = steps;
    while (!isDone()) {
      left = isCheapest() ? Math.min(left, STEPS_FOR_FEWER) : left;
      if (left <= 0) {
        return;
      }
      Optional<List<Pattern>> found = search.find(instance.count, instance.limit, bound, left);
      left = search.stepsLeft() - LOOK;
      if (found.isPresent()) {
        keep(found.get());
      } else if (search.wasCut()) {
        return;
      } else {
        raise(bound + 1);
        left -= sums.steps();
      }
    }
  }

  private long upToWhole(long scaled) {
    return Math.floorDiv(scaled + instance.scale - 1, instance.scale);
  }

  private void raise(long to) {
    bound = sums.raise(Math.max(bound, to), weight());
  }

  private void keep(List<Pattern> plan) {
    List<Pattern> lighter = firstFit.lightest(plan);
    if (instance.weightOf(lighter) < weight()) {
      best = lighter;
      bestWeight = instance.weightOf(lighter);
    }
  }

  private long weight() {
    return bestWeight;
  }

  private boolean isDone() {
    return bound >= weight();
  }

  private boolean isCheapest() {
    return bound / instance.unitCost == weight() / instance.unitCost;
  }

  private CuttingPlan plan() {
    Map<Pattern, Integer> alike = new LinkedHashMap<>();
    best.forEach(pattern -> alike.merge(pattern, 1, Integer::sum));
    List<Pattern> patterns = new ArrayList<>(alike.keySet());
    patterns.sort(Comparator.comparingInt(Pattern::stock).thenComparing(CuttingSolver::longest));
    List<AlikeBars> bars = patterns.stream().map(p -> alike(p, alike.getOrDefault(p, 0))).toList();
    long cost = weight() / instance.unitCost;
    long leastCost = bound / instance.unitCost;
    int leastCount = leastCost == cost ? (int) (bound % instance.unitCost) : 0;
    CuttingPlan plan = new CuttingPlan(bars, cost, best.size(), leastCost, leastCount);
    check(plan);
    return plan;
  }

  /** Longest pieces first. */
  private static int longest(Pattern a, Pattern b) {
    return Arrays.compare(b.counts(), a.counts());
  }

  private AlikeBars alike(Pattern pattern, int times) {
    Integer[] counts = new Integer[instance.kinds()];
    for (int kind = 0; kind < counts.length; kind++) {
      counts[instance.place[kind]] = pattern.count(kind);
    }
    return new AlikeBars(pattern.stock(), List.of(counts), times);
  }

  /** Nothing leaves without being counted again from the problem's own lengths. */
  private void check(CuttingPlan plan) {
    int[] given = new int[problem.pieces().size()];
    int[] used = new int[problem.stock().size()];
    for (AlikeBars bar : plan.bars()) {
      long length = 0;
      for (int kind = 0; kind < given.length; kind++) {
        given[kind] += bar.times() * bar.counts().get(kind);
        length += bar.counts().get(kind) * problem.pieces().get(kind).length();
      }
      used[bar.stock()] += bar.times();
      require(length <= problem.stock().get(bar.stock()).length());
    }
    for (int kind = 0; kind < given.length; kind++) {
      require(given[kind] == problem.pieces().get(kind).count());
    }
    for (int stock = 0; stock < used.length; stock++) {
      require(used[stock] <= problem.stock().get(stock).limit().orElse(Integer.MAX_VALUE));
    }
  }

  private static void require(boolean holds) {
    if (!holds) {
      throw new IllegalStateException("a cutting plan that does not give its pieces");
    }
  }
}
