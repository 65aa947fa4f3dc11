package pegbook.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The problem with parts of bars allowed, by column generation: the library chooses among the
 * patterns known and gives prices for pieces; a pattern whose pieces are worth more than its bar is
 * added; when there is none, the prices prove a bound.
 */
final class Relaxation {
  /** Programs solved for one problem; enough for some hundred kinds of pieces. */
  private static final int MOST_PROGRAMS = 1_500;

  /** A pattern that is better by less than this part of its bar's weight is left out. */
  private static final long FINEST = 10_000_000;

  private final Instance instance;
  private final Knapsack within;
  private final Knapsack beyond;
  private final Set<Pattern> known = new LinkedHashSet<>();
  private final Prices byLength;
  private int programs;

  /**
   * What came out.
   *
   * @param patterns that are used
   * @param bars of each, parts allowed
   * @param prices that prove the bound
   * @param bound in scaled weights
   */
  record Outcome(List<Pattern> patterns, List<Double> bars, Prices prices, long bound) {}

  Relaxation(Instance instance, List<Pattern> first) {
    this.instance = instance;
    this.within = Knapsack.within(instance);
    this.beyond = Knapsack.beyond(instance);
    this.byLength = Prices.byLength(instance, beyond);
    known.addAll(first);
    for (int kind = 0; kind < instance.kinds(); kind++) {
      for (int stock = 0; stock < instance.stocks(); stock++) {
        int[] alone = new int[instance.kinds()];
        alone[kind] =
            (int) Math.min(instance.count[kind], instance.size[stock] / instance.length[kind]);
        if (alone[kind] > 0 && !instance.isLimited(stock)) {
          known.add(new Pattern(stock, alone));
        }
      }
    }
  }

  /** Solves it for pieces that are left and stock that is left; nothing when a limit is reached. */
  Optional<Outcome> solve(int[] wanted, int[] limit) {
    Optional<Outcome> best = Optional.empty();
    while (programs < MOST_PROGRAMS) {
      programs++;
      List<Pattern> patterns =
          known.stream().filter(p -> limit[p.stock()] > 0 && isOfUse(p, wanted)).toList();
      Optional<LinearProgram.Solution> solved =
          LinearProgram.solve(instance, patterns, wanted, limit);
      if (solved.isEmpty()) {
        return best;
      }
      long[] guide =
          solved.get().prices().stream()
              .mapToLong(price -> (long) (price * instance.scale))
              .toArray();
      boolean isLast = !addBetter(guide, wanted, limit);
      Prices prices = Prices.of(instance, beyond, guide, wanted);
      long bound = prices.bound(wanted, limit);
      if (best.isEmpty() || isLast || bound > best.get().bound()) {
        long proved = Math.max(bound, best.map(Outcome::bound).orElse(Long.MIN_VALUE));
        Prices by = proved == bound ? prices : best.orElseThrow().prices();
        best = Optional.of(new Outcome(patterns, solved.get().bars(), by, proved));
      }
      if (isLast) {
        return best;
      }
    }
    return best;
  }

  private static boolean isOfUse(Pattern pattern, int[] wanted) {
    for (int kind = 0; kind < wanted.length; kind++) {
      if (wanted[kind] > 0 && pattern.count(kind) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Adds the best pattern of each stock, where it betters the plan. */
  private boolean addBetter(long[] guide, int[] wanted, int[] limit) {
    within.solve(guide, wanted);
    List<Pattern> better = new ArrayList<>();
    for (int stock = 0; stock < instance.stocks(); stock++) {
      long weight = instance.weight[stock] * instance.scale;
      if (limit[stock] > 0 && within.value(instance.size[stock]) > weight + weight / FINEST) {
        better.add(new Pattern(stock, within.counts(instance.size[stock])));
      }
    }
    return known.addAll(better);
  }

  /** Prices that every length has alike. */
  Prices byLength() {
    return byLength;
  }
}
