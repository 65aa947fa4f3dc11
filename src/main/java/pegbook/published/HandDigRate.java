package pegbook.published;

import java.util.List;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.WorkRate;

/**
 * How much one person digs by hand in an hour, in a pit of up to {@link #LARGEST_PIT}.
 *
 * @param ground kind of ground
 * @param upper bank volume an hour down to {@link #BAND}
 * @param lower from there down to {@link #DEEPEST}
 * @param citation where it stands
 */
public record HandDigRate(String ground, WorkRate upper, WorkRate lower, Citation citation) {
  /** Depth at which the rate changes. */
  public static final Length BAND = new Length(1.5);

  /** Depth down to which the rates hold. */
  public static final Length DEEPEST = new Length(3.0);

  /** Area of pit up to which the rates hold. */
  public static final Area LARGEST_PIT = new Area(2.0);

  private static final List<HandDigRate> ALL =
      Table.read("hand_dig_rates").rows().stream().map(HandDigRate::of).toList();

  /** Every row, in the table's order. */
  public static List<HandDigRate> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static HandDigRate find(String ground) {
    return ALL.stream()
        .filter(row -> row.ground.equals(ground))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("hand_dig_rates has no ground " + ground));
  }

  /** The slower of two kinds of ground. */
  public HandDigRate slower(HandDigRate other) {
    return other.upper.compareTo(upper) < 0 ? other : this;
  }

  private static HandDigRate of(Table.Row row) {
    return new HandDigRate(
        row.text("ground"),
        new WorkRate(row.number("upper")),
        new WorkRate(row.number("lower")),
        row.citation());
  }
}
