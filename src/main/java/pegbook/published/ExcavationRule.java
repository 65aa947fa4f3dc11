package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * A threshold for excavations.
 *
 * @param rule its name in the table
 * @param threshold the depth or distance
 * @param citation where it stands
 */
public record ExcavationRule(String rule, Length threshold, Citation citation) {
  private static final List<ExcavationRule> ALL =
      Table.read("excavation_rules").rows().stream().map(ExcavationRule::of).toList();

  /** Every row, in the table's order. */
  public static List<ExcavationRule> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static ExcavationRule find(String rule) {
    return ALL.stream()
        .filter(row -> row.rule.equals(rule))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("excavation_rules has no rule " + rule));
  }

  private static ExcavationRule of(Table.Row row) {
    return new ExcavationRule(
        row.text("rule"), Length.ofFeet(row.number("threshold_ft")), row.citation());
  }
}
