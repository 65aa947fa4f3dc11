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
  private long[] prices = new long[0];
  private long bits;
  private long price;
  private long steps;

  CheapestAtMark(long[] rows) {
    this.rows = rows;
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
    this.prices = prices;
    price = NEVER;
    bits = taken;
    long spent = 0;
    for (long left = taken; left != 0; left &= left - 1) {
      spent += prices[Long.numberOfTrailingZeros(left)];
    }
    branch(taken, barred, spent);
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

  private void branch(long taken, long barred, long spent) {
    steps++;
    long fewest = 0;
    long apart = 0;
    long more = 0;
    for (long row : rows) {
      if ((row & taken) == 0) {
        long open = row & ~barred;
        if (open == 0) {
          return;
        }
        if (fewest == 0 || Long.bitCount(open) < Long.bitCount(fewest)) {
          fewest = open;
        }
        if ((open & apart) == 0) {
          apart |= open;
          more += prices[cheapest(open)];
        }
      }
    }
    if (spent + more >= price) {
      return;
    }
    if (fewest == 0) {
      price = spent;
      bits = taken;
      return;
    }
    long gone = barred;
    for (long left = fewest; left != 0; ) {
      int next = cheapest(left);
      branch(taken | 1L << next, gone, spent + prices[next]);
      gone |= 1L << next;
      left &= ~(1L << next);
    }
  }

  private int cheapest(long open) {
    int best = Long.numberOfTrailingZeros(open);
    for (long left = open & (open - 1); left != 0; left &= left - 1) {
      int next = Long.numberOfTrailingZeros(left);
      if (prices[next] < prices[best]) {
        best = next;
      }
    }
    return best;
  }
}
