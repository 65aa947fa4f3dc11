package pegbook.cutting;

import java.util.List;

/**
 * A way of cutting, with what is known of the best there can be.
 *
 * @param bars bars cut alike, by stock in the problem's order
 * @param cost of all bars
 * @param count of all bars
 * @param leastCost no plan costs less
 * @param leastCount no plan of the same cost has fewer bars; zero while the cost is not proved
 */
public record CuttingPlan(
    List<AlikeBars> bars, long cost, int count, long leastCost, int leastCount) {
  /**
   * Bars cut alike.
   *
   * @param stock index of the stock in the problem
   * @param counts how many of each kind of piece one bar gives, in the problem's order
   * @param times how many such bars
   */
  public record AlikeBars(int stock, List<Integer> counts, int times) {
    public AlikeBars {
      counts = List.copyOf(counts);
    }
  }

  public CuttingPlan {
    bars = List.copyOf(bars);
  }

  /** Whether no plan costs less. */
  public boolean isCheapest() {
    return cost == leastCost;
  }

  /** Whether no plan costs less, and none that costs as much has fewer bars. */
  public boolean isBest() {
    return isCheapest() && count == leastCount;
  }
}
