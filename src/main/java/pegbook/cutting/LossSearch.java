package pegbook.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every plan that loses no more than allowed.
 *
 * <p>With proved prices, a bar loses what its pieces are worth less than it weighs, and a plan
 * weighs the bound plus all losses. So few bars can follow one another below a given weight. The
 * prices of the relaxation and prices by length are both held: the one knows what goes together,
 * the other counts every offcut. The longest piece left is put on a bar in every way that loses
 * little, fewest losses first, and the rest likewise; what has once led nowhere is remembered. On a
 * bar no further piece that is left may fit: moving one there from a later bar would harm nothing.
 */
final class LossSearch {
  private static final int MOST_REMEMBERED = 200_000;

  private final Instance instance;
  private final Prices prices;
  private final Prices byLength;
  private final Worth worth;
  private final Worth lengthWorth;

  /** Pieces and stock left, and the greatest weight by which they were not to be had. */
  private final Map<State, Long> failed = new LinkedHashMap<>();

  private long stepsLeft;

  /** A bar and what it loses. */
  private record Choice(Pattern pattern, long loss) {}

  LossSearch(Instance instance, Prices prices, Prices byLength) {
    this.instance = instance;
    this.prices = prices;
    this.byLength = byLength;
    worth = new Worth(instance, prices.piece);
    lengthWorth = new Worth(instance, byLength.piece);
  }

  /** Whether the last search ended because of its steps: then finding nothing proves nothing. */
  boolean wasCut() {
    return stepsLeft <= 0;
  }

  /** What the last search left of its steps. */
  long stepsLeft() {
    return Math.max(0, stepsLeft);
  }

  /**
   * A plan for the pieces wanted.
   *
   * @param wanted pieces left
   * @param limit stock left
   * @param atMost its greatest weight
   * @param steps after which the search ends
   */
  Optional<List<Pattern>> find(int[] wanted, int[] limit, long atMost, long steps) {
    stepsLeft = steps;
    failed.clear();
    List<Pattern> plan = new ArrayList<>();
    if (follow(wanted.clone(), limit.clone(), atMost, plan)) {
      Collections.reverse(plan);
      return Optional.of(plan);
    }
    return Optional.empty();
  }

  private boolean follow(int[] wanted, int[] limit, long left, List<Pattern> plan) {
    int longest = 0;
    while (longest < wanted.length && wanted[longest] == 0) {
      longest++;
    }
    if (longest == wanted.length) {
      return left >= 0;
    }
    State state = state(wanted, limit);
    if (left <= 0 || failed.getOrDefault(state, -1L) >= left) {
      return false;
    }
    for (Choice choice : choices(longest, wanted, limit, left)) {
      if (stepsLeft <= 0) {
        return false;
      }
      int stock = choice.pattern().stock();
      int[] after = wanted.clone();
      choice.pattern().takeFrom(after);
      limit[stock]--;
      boolean found = follow(after, limit, left - instance.weight[stock], plan);
      limit[stock]++;
      if (found) {
        plan.add(choice.pattern());
        return true;
      }
    }
    if (stepsLeft > 0 && failed.size() < MOST_REMEMBERED) {
      failed.merge(state, left, Math::max);
    }
    return false;
  }

  private State state(int[] wanted, int[] limit) {
    int[] left = Arrays.copyOf(wanted, wanted.length + limit.length);
    for (int stock = 0; stock < limit.length; stock++) {
      left[wanted.length + stock] = instance.isLimited(stock) ? limit[stock] : 0;
    }
    return new State(left);
  }

  /** Pieces and limited stock that are left. */
  private static final class State {
    private final int[] left;

    private State(int[] left) {
      this.left = left;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof State that && Arrays.equals(left, that.left);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(left);
    }
  }

  private List<Choice> choices(int longest, int[] wanted, int[] limit, long left) {
    long budget = left * instance.scale - prices.bound(wanted, limit);
    long lengthBudget = left * instance.scale - byLength.bound(wanted, limit);
    List<Choice> choices = new ArrayList<>();
    for (int stock = 0; stock < limit.length; stock++) {
      if (limit[stock] > 0 && instance.size[stock] >= instance.length[longest]) {
        long bar = instance.weight[stock] * instance.scale;
        new Filling(
                stock,
                wanted,
                bar + prices.extra[stock] - budget,
                bar + byLength.extra[stock] - lengthBudget,
                choices)
            .fill(longest, longest, 0, 0);
      }
    }
    choices.sort(Comparator.comparingLong(Choice::loss));
    return choices;
  }

  /** Every way to fill one bar that loses no more than allowed. */
  private final class Filling {
    private final int stock;
    private final int[] wanted;
    private final long least;
    private final long leastByLength;
    private final List<Choice> choices;
    private final int[] counts;
    private long free;

    /** What the pieces must be worth at least, by either prices. */
    private Filling(int stock, int[] wanted, long least, long leastByLength, List<Choice> choices) {
      this.stock = stock;
      this.wanted = wanted;
      this.least = least;
      this.leastByLength = leastByLength;
      this.choices = choices;
      this.counts = new int[wanted.length];
      this.free = instance.size[stock];
    }

    private void fill(int kind, int longest, long value, long lengthValue) {
      if (--stepsLeft <= 0
          || value + worth.most(kind, free) < least
          || lengthValue + lengthWorth.most(kind, free) < leastByLength) {
        return;
      }
      if (kind == wanted.length) {
        if (!holdsMore()) {
          long loss = instance.weight[stock] * instance.scale + prices.extra[stock] - value;
          choices.add(new Choice(new Pattern(stock, counts), loss));
        }
        return;
      }
      long length = instance.length[kind];
      int most = (int) Math.min(wanted[kind], free / length);
      for (int count = most; count >= (kind == longest ? 1 : 0); count--) {
        counts[kind] = count;
        free -= count * length;
        fill(
            kind + 1,
            longest,
            value + count * prices.piece[kind],
            lengthValue + count * byLength.piece[kind]);
        free += count * length;
      }
      counts[kind] = 0;
    }

    private boolean holdsMore() {
      for (int kind = 0; kind < wanted.length; kind++) {
        if (counts[kind] < wanted[kind] && instance.length[kind] <= free) {
          return true;
        }
      }
      return false;
    }
  }
}
