package pegbook.published;

import java.util.List;
import pegbook.measure.WorkRate;

/**
 * How much of a trench one person digs by hand in an hour.
 *
 * @param ground kind of ground
 * @param upper bank volume an hour down to {@link HandDigRate#BAND}
 * @param lower from there down to {@link HandDigRate#DEEPEST}
 * @param citation where it stands
 */
public record TrenchRate(String ground, WorkRate upper, WorkRate lower, Citation citation) {
  private static final List<TrenchRate> ALL =
      Table.read("trench_rates").rows().stream().map(TrenchRate::of).toList();

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static TrenchRate find(String ground) {
    return ALL.stream()
        .filter(row -> row.ground.equals(ground))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("trench_rates has no ground " + ground));
  }

  /** The slower of two kinds of ground. */
  public TrenchRate slower(TrenchRate other) {
    return other.upper.compareTo(upper) < 0 ? other : this;
  }

  private static TrenchRate of(Table.Row row) {
    return new TrenchRate(
        row.text("ground"),
        new WorkRate(row.number("upper")),
        new WorkRate(row.number("lower")),
        row.citation());
  }
}
