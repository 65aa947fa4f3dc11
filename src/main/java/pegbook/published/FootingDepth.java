package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * A rule for the least depth of a footing.
 *
 * @param rule its name in the table
 * @param least from undisturbed ground to the underside of the footing
 * @param citation where it stands
 */
public record FootingDepth(String rule, Length least, Citation citation) {
  private static final List<FootingDepth> ALL =
      Table.read("footing_depths").rows().stream().map(FootingDepth::of).toList();

  /** Every row, in the table's order. */
  public static List<FootingDepth> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static FootingDepth find(String rule) {
    return ALL.stream()
        .filter(row -> row.rule.equals(rule))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("footing_depths has no rule " + rule));
  }

  private static FootingDepth of(Table.Row row) {
    return new FootingDepth(
        row.text("rule"), Length.ofInches(row.number("least_in")), row.citation());
  }
}
