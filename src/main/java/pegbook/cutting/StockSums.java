package pegbook.cutting;

/**
 * Which total weights whole bars can have at all: a bound rises to the least of these that is not
 * below it and whose bars are together long enough for all pieces.
 */
final class StockSums {
  private static final int MOST_STEPS = 200_000;

  private final Instance instance;
  private final long material;
  private long atLeast;
  private long best;
  private int steps;

  StockSums(Instance instance) {
    this.instance = instance;
    this.material = instance.used(instance.count);
  }

  /**
   * Raises a bound.
   *
   * @param bound what no plan weighs less than
   * @param known weight of a plan
   */
  long raise(long bound, long known) {
    if (isGivenUp()) {
      return Math.min(bound, known);
    }
    atLeast = bound;
    best = known;
    steps = 0;
    look(0, 0, 0);
    return isGivenUp() ? Math.min(bound, known) : best;
  }

  /** How many sums the last raise looked at; none once all of them are too many to look at. */
  int steps() {
    return isGivenUp() ? 0 : steps;
  }

  /** With so many stocks and bars that looking at all sums takes longer than it is worth. */
  private boolean isGivenUp() {
    return steps > MOST_STEPS;
  }

  private void look(int stock, long weight, long length) {
    steps++;
    if (weight >= best || isGivenUp()) {
      return;
    }
    if (stock == instance.stocks() - 1) {
      long bars =
          Math.max(
              0,
              Math.max(
                  up(atLeast - weight, instance.weight[stock]),
                  up(material - length, instance.size[stock])));
      if (bars <= instance.limit[stock]) {
        best = Math.min(best, weight + bars * instance.weight[stock]);
      }
      return;
    }
    for (int bars = 0; bars <= instance.limit[stock] && !isGivenUp(); bars++) {
      long more = weight + bars * instance.weight[stock];
      if (more >= best) {
        break;
      }
      look(stock + 1, more, length + bars * instance.size[stock]);
    }
  }

  private static long up(long amount, long part) {
    return -Math.floorDiv(-amount, part);
  }
}
