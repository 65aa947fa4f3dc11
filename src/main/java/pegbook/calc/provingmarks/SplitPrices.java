package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.LongSupplier;

/**
 * A lower bound for the price of any set of distances that meets the demands of all marks.
 *
 * <p>The price of each distance is split between its two marks. Each mark then takes the cheapest
 * of its own that meet its demand, as if no other mark were there; no set for all marks costs less
 * than these together, however the prices are split. The splits are changed, round by round, so
 * that the sum grows: a distance that only one of its marks takes becomes dearer there and cheaper
 * at the other (the subgradient method for the Lagrangian dual). Prices are whole numbers, so the
 * bound is exact.
 */
final class SplitPrices {
  /** After so many rounds without a better bound the steps become shorter. */
  private static final int PATIENCE = 8;

  private static final double SHORTER = 0.625;

  /** An array, as every round goes through all of them several times. */
  private final CheckLine[] lines;

  private final List<CheapestAtMark> marks = new ArrayList<>();
  private final long[] prices;
  private final long[] taken;
  private final long[] barred;
  private final int[] apart;
  private final long reach;
  private long[] own;
  private long[][] split;
  private int differ;

  /**
   * Splits evenly.
   *
   * @param prices of all distances
   * @param reach how far above the bound that ends a search steps aim; without it they would die
   *     away just below that bound
   */
  SplitPrices(Demands demands, long[] prices, long reach) {
    CheckLines all = demands.lines();
    this.lines = all.all().toArray(CheckLine[]::new);
    this.prices = prices.clone();
    this.taken = new long[all.marks()];
    this.barred = new long[all.marks()];
    this.own = new long[all.marks()];
    this.split = new long[all.marks()][];
    this.apart = new int[prices.length];
    this.reach = reach;
    for (int i = 0; i < all.marks(); i++) {
      marks.add(new CheapestAtMark(demands.rows(i)));
      split[i] = new long[all.linesAt(i).size()];
    }
    for (CheckLine line : lines) {
      put(line, prices[line.number()] / 2);
    }
  }

  /** How a distance's price stands to what is taken and barred. */
  enum State {
    OPEN,
    TAKEN,
    BARRED
  }

  /**
   * Raises the bound.
   *
   * @param rounds at most so many
   * @param stride how long the first steps are; 1 for a fresh start
   * @param enough asked after each round: the bound that ends the search
   * @return the best bound for what is taken and barred; {@link CheapestAtMark#NEVER} when the
   *     demands cannot be met
   */
  long raise(int rounds, double stride, LongSupplier enough) {
    Arrays.fill(apart, 0);
    long bound = Long.MIN_VALUE;
    long[][] best = split();
    double length = stride;
    int idle = 0;
    for (int round = 0; round < rounds; round++) {
      long sum = sum();
      if (sum == CheapestAtMark.NEVER) {
        return sum;
      }
      if (sum > bound) {
        bound = sum;
        best = split();
        idle = 0;
      } else if (++idle >= PATIENCE) {
        length *= SHORTER;
        idle = 0;
      }
      differ = differ();
      long end = enough.getAsLong();
      if (bound >= end || agrees()) {
        break;
      }
      move(Math.max(1, Math.round(length * (end + reach - sum) / (2.0 * differ))));
    }
    split = best;
    return bound;
  }

  /** The price of what the marks take, each by itself. */
  private long sum() {
    long sum = 0;
    for (int i = 0; i < own.length; i++) {
      long price = marks.get(i).find(split[i], taken[i], barred[i]);
      if (price == CheapestAtMark.NEVER) {
        return CheapestAtMark.NEVER;
      }
      sum += price;
      own[i] = marks.get(i).bits();
    }
    return sum;
  }

  private int differ() {
    int count = 0;
    for (CheckLine line : lines) {
      if (takers(line) == 1) {
        count++;
        apart[line.number()]++;
      }
    }
    return count;
  }

  private void move(long step) {
    for (CheckLine line : lines) {
      if (takers(line) == 1) {
        long here = split[line.from()][line.atFrom()];
        long moved = here + (takes(line, line.from()) ? step : -step);
        put(line, Math.max(0, Math.min(prices[line.number()], moved)));
      }
    }
  }

  private void put(CheckLine line, long atFrom) {
    split[line.from()][line.atFrom()] = atFrom;
    split[line.to()][line.atTo()] = prices[line.number()] - atFrom;
  }

  private boolean takes(CheckLine line, int mark) {
    return (own[mark] & line.bit(mark)) != 0;
  }

  /** How many of a distance's marks took it in the last round. */
  int takers(CheckLine line) {
    return (takes(line, line.from()) ? 1 : 0) + (takes(line, line.to()) ? 1 : 0);
  }

  /** True when no distance was taken by one of its marks alone in the last round. */
  boolean agrees() {
    return differ == 0;
  }

  /** All distances that so many marks, or more, took in the last round. */
  BitSet taken(int takers) {
    BitSet some = new BitSet();
    for (CheckLine line : lines) {
      some.set(line.number(), takers(line) >= takers);
    }
    return some;
  }

  /** In how many rounds of the last raise only one of a distance's marks took it. */
  int apart(CheckLine line) {
    return apart[line.number()];
  }

  /** Takes a distance, bars it or leaves it open. */
  void set(CheckLine line, State state) {
    for (int mark : new int[] {line.from(), line.to()}) {
      long bit = line.bit(mark);
      taken[mark] = state == State.TAKEN ? taken[mark] | bit : taken[mark] & ~bit;
      barred[mark] = state == State.BARRED ? barred[mark] | bit : barred[mark] & ~bit;
    }
  }

  State state(CheckLine line) {
    long bit = line.bit(line.from());
    if ((taken[line.from()] & bit) != 0) {
      return State.TAKEN;
    }
    return (barred[line.from()] & bit) != 0 ? State.BARRED : State.OPEN;
  }

  /** How the prices are split now, for {@link #restore}. */
  long[][] split() {
    return Arrays.stream(split).map(long[]::clone).toArray(long[][]::new);
  }

  void restore(long[][] earlier) {
    split = Arrays.stream(earlier).map(long[]::clone).toArray(long[][]::new);
  }

  /** Branches looked at so far, over all marks. */
  long steps() {
    return marks.stream().mapToLong(CheapestAtMark::steps).sum();
  }
}
