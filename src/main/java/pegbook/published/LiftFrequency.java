package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * How much less may be lifted the oftener it is done, for an hour at most.
 *
 * @param perMinute lifts a minute
 * @param low factor where the hands start below 30 in
 * @param high factor where they start there or above
 * @param citation where it stands
 */
public record LiftFrequency(int perMinute, double low, double high, Citation citation) {
  private static final Length HIGH = Length.ofInches(30);

  private static final List<LiftFrequency> ALL =
      Table.read("lift_frequency").rows().stream().map(LiftFrequency::of).toList();

  /** Every row, in the table's order. */
  public static List<LiftFrequency> all() {
    return ALL;
  }

  /**
   * The factor.
   *
   * @throws IllegalArgumentException when the table has no such row
   */
  public static double factor(int perMinute, Length from) {
    LiftFrequency row =
        ALL.stream()
            .filter(each -> each.perMinute == perMinute)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException(perMinute + " lifts a minute"));
    return from.isLessThan(HIGH) ? row.low : row.high;
  }

  private static LiftFrequency of(Table.Row row) {
    return new LiftFrequency(
        (int) row.number("per_minute"),
        row.number("below_30_in"),
        row.number("from_30_in"),
        row.citation());
  }
}
