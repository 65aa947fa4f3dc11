package pegbook.calc.provingmarks;

/**
 * The cheapest distances that meet the demand of one mark, each distance having a price. The demand
 * is a list of sets of which each must have one distance taken ({@link Demands#rows}). The set with
 * the fewest left is gone through, the cheapest first; what was gone through before is then barred.
 * A branch ends when what sets without a common distance cost at least makes it no cheaper than the
 * best found.
 */
final class CheapestAtMark {
  /** What it costs when the demand cannot be met. */
  static final long NEVER = Long.MAX_VALUE;

  private final long[] rows;

  /**
   * The distances from the cheapest to the dearest; a bit of the search is a place in this order.
   */
  private int[] order = new int[0];

  private long[] ordered = new long[0];

  /** What the search has to meet, in bits of that order. */
  private final long[] sets;

  private int setCount;
  private long found;
  private long bits;
  private long price;
  private long steps;

  CheapestAtMark(long[] rows) {
    this.rows = rows;
    this.sets = new long[rows.length];
  }

  /**
   * Searches.
   *
   * @param prices of the mark's distances, none below zero
   * @param taken distances that are taken whatever they cost
   * @param barred distances that must not be taken
   * @return the price, or {@link #NEVER}
   */
  long find(long[] prices, long taken, long barred) {
    order(prices);
    price = NEVER;
    found = 0;
    long spent = 0;
    for (long left = taken; left != 0; left &= left - 1) {
      spent += prices[Long.numberOfTrailingZeros(left)];
    }
    setCount = 0;
    for (long row : rows) {
      if ((row & taken) == 0) {
        sets[setCount++] = places(row & ~barred);
      }
    }
    branch(0, 0, spent);
    bits = taken;
    for (long left = found; left != 0; left &= left - 1) {
      bits |= 1L << order[Long.numberOfTrailingZeros(left)];
    }
    return price;
  }

  /** What was found last. */
  long bits() {
    return bits;
  }

  /** Branches looked at so far. */
  long steps() {
    return steps;
  }

  /** Puts the distances in order; of the same price, as they stand. */
  private void order(long[] prices) {
    if (order.length != prices.length) {
      order = new int[prices.length];
      ordered = new long[prices.length];
    }
    for (int next = 0; next < prices.length; next++) {
      int at = next;
      while (at > 0 && ordered[at - 1] > prices[next]) {
        ordered[at] = ordered[at - 1];
        order[at] = order[at - 1];
        at--;
      }
      ordered[at] = prices[next];
      order[at] = next;
    }
  }

  private long places(long row) {
    long places = 0;
    for (int place = 0; place < order.length; place++) {
      places |= (row >>> order[place] & 1L) << place;
    }
    return places;
  }

  private void branch(long taken, long barred, long spent) {
    steps++;
    long fewest = 0;
    long apart = 0;
    long more = 0;
    for (int at = 0; at < setCount; at++) {
      if ((sets[at] & taken) == 0) {
        long open = sets[at] & ~barred;
        if (open == 0) {
          return;
        }
        if (fewest == 0 || Long.bitCount(open) < Long.bitCount(fewest)) {
          fewest = open;
        }
        if ((open & apart) == 0) {
          apart |= open;
          more += ordered[Long.numberOfTrailingZeros(open)];
        }
      }
    }
    if (spent + more >= price) {
      return;
    }
    if (fewest == 0) {
      price = spent;
      found = taken;
      return;
    }
    long gone = barred;
    for (long left = fewest; left != 0; left &= left - 1) {
      int next = Long.numberOfTrailingZeros(left);
      branch(taken | 1L << next, gone, spent + ordered[next]);
      gone |= 1L << next;
    }
  }
}
