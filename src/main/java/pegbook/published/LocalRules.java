package pegbook.published;

import java.util.List;

/** Which publications a country outside the United States has for a topic. */
public final class LocalRules {
  private static final List<Table.Row> ROWS = Table.read("local_rules").rows();

  private LocalRules() {}

  /** Topics, each with a kind of authority of its own. */
  public enum Topic {
    UTILITIES,
    WORK_SAFETY,
    ELECTRICAL
  }

  /**
   * A country's publications on a topic; empty where none is known.
   *
   * @param country ISO 3166 code of two letters
   */
  public static List<Citation> of(String country, Topic topic) {
    return ROWS.stream()
        .filter(row -> row.text("country").equals(country))
        .filter(row -> Topic.valueOf(row.text("topic")) == topic)
        .map(row -> new Citation(row.text("publication"), row.text("locator")))
        .toList();
  }
}
