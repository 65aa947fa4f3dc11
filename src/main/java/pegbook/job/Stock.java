package pegbook.job;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;
import pegbook.measure.Money;

/**
 * What pieces are cut from.
 *
 * @param length of bars whose size is not named under {@code bars}
 * @param bars lengths sold of a size
 * @param offcuts that lie in the shed already
 * @param kerf what one cut takes
 * @param usefulOffcut from which length on what is left over is kept
 */
public record Stock(
    Length length, List<Bar> bars, List<Offcut> offcuts, Length kerf, Length usefulOffcut) {
  public Stock {
    bars = List.copyOf(bars);
    offcuts = List.copyOf(offcuts);
  }

  /**
   * A length that is sold.
   *
   * @param size name of the bar
   * @param length of a bar
   * @param price of a bar, where it is known
   * @param count how many can be had; empty: as many as wanted
   */
  public record Bar(String size, Length length, Optional<Money> price, Optional<Integer> count) {}

  /**
   * Offcuts that cost nothing any more.
   *
   * @param size name of the bar
   * @param length of one
   * @param count how many
   */
  public record Offcut(String size, Length length, int count) {}
}
