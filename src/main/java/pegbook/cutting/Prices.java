package pegbook.cutting;

import java.math.BigInteger;

/**
 * A price for a piece of each kind, such that no pattern's pieces are together worth more than its
 * bar weighs. Then all pieces together are worth no more than any plan weighs: a proved bound.
 *
 * <p>Whole numbers, in scaled weights. A stock of which there is only so much may be worth more by
 * an extra, which is taken off for each bar of it.
 */
final class Prices {
  final long[] piece;
  final long[] extra;

  private Prices(long[] piece, long[] extra) {
    this.piece = piece;
    this.extra = extra;
  }

  /**
   * Sets prices down until they prove something.
   *
   * @param guide prices near to the best ones, in scaled weights
   */
  static Prices of(Instance instance, Knapsack beyond, long[] guide, int[] wanted) {
    beyond.solve(guide, wanted);
    BigInteger worth = BigInteger.ONE;
    BigInteger weight = BigInteger.ONE;
    for (int stock = 0; stock < instance.stocks(); stock++) {
      BigInteger most = BigInteger.valueOf(beyond.value(instance.size[stock]));
      BigInteger bar = BigInteger.valueOf(instance.weight[stock] * instance.scale);
      if (!instance.isLimited(stock)
          && most.compareTo(bar) > 0
          && most.multiply(weight).compareTo(worth.multiply(bar)) > 0) {
        worth = most;
        weight = bar;
      }
    }
    long[] piece = new long[guide.length];
    for (int kind = 0; kind < guide.length; kind++) {
      piece[kind] = BigInteger.valueOf(guide[kind]).multiply(weight).divide(worth).longValueExact();
    }
    beyond.solve(piece, wanted);
    long[] extra = new long[instance.stocks()];
    for (int stock = 0; stock < extra.length; stock++) {
      long over = beyond.value(instance.size[stock]) - instance.weight[stock] * instance.scale;
      extra[stock] = Math.max(0, over);
    }
    return new Prices(piece, extra);
  }

  /** Every length is worth the same, wherever it is: what offcuts cost. */
  static Prices byLength(Instance instance, Knapsack beyond) {
    BigInteger least = BigInteger.ZERO;
    BigInteger size = BigInteger.ZERO;
    for (int stock = 0; stock < instance.stocks(); stock++) {
      BigInteger bar = BigInteger.valueOf(instance.weight[stock] * instance.scale);
      BigInteger of = BigInteger.valueOf(instance.size[stock]);
      if (!instance.isLimited(stock)
          && (size.signum() == 0 || bar.multiply(size).compareTo(least.multiply(of)) < 0)) {
        least = bar;
        size = of;
      }
    }
    long[] guide = new long[instance.kinds()];
    for (int kind = 0; kind < guide.length; kind++) {
      guide[kind] =
          BigInteger.valueOf(instance.length[kind]).multiply(least).divide(size).longValueExact();
    }
    return of(instance, beyond, guide, instance.count);
  }

  /** What no plan for these pieces from this stock is below, in scaled weights. */
  long bound(int[] wanted, int[] limit) {
    long bound = 0;
    for (int kind = 0; kind < wanted.length; kind++) {
      bound += piece[kind] * wanted[kind];
    }
    for (int stock = 0; stock < limit.length; stock++) {
      bound -= extra[stock] * limit[stock];
    }
    return bound;
  }
}
