package pegbook.published;

import java.util.List;
import pegbook.measure.Length;
import pegbook.measure.WorkRate;

/**
 * How much loose spoil is moved by hand in an hour.
 *
 * @param upTo distance one way up to which the rate holds
 * @param rate loose volume an hour
 * @param citation where it stands
 */
public record HaulRate(Length upTo, WorkRate rate, Citation citation) {
  private static final List<HaulRate> ALL =
      Table.read("haul_rates").rows().stream().map(HaulRate::of).toList();

  /** Every row, the shortest distance first. */
  public static List<HaulRate> all() {
    return ALL;
  }

  /** Distance up to which there are rates. */
  public static Length farthest() {
    return ALL.get(ALL.size() - 1).upTo;
  }

  /**
   * The row for a distance; beyond {@link #farthest()} the last row, which then no longer holds.
   */
  public static HaulRate at(Length distance) {
    return ALL.stream()
        .filter(row -> !distance.isMoreThan(row.upTo))
        .findFirst()
        .orElse(ALL.get(ALL.size() - 1));
  }

  private static HaulRate of(Table.Row row) {
    return new HaulRate(
        new Length(row.number("up_to_m")), new WorkRate(row.number("rate")), row.citation());
  }
}
