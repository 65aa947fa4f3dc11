package pegbook.published;

import java.util.List;

/**
 * How far the time for work may lie from what a published rate gives.
 *
 * @param work kind of work
 * @param least factor when all goes well
 * @param most factor when all goes badly
 * @param citation where it stands
 */
public record WorkRange(String work, double least, double most, Citation citation) {
  private static final List<WorkRange> ALL =
      Table.read("work_ranges").rows().stream().map(WorkRange::of).toList();

  /** Every row, in the table's order. */
  public static List<WorkRange> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static WorkRange find(String work) {
    return ALL.stream()
        .filter(row -> row.work.equals(work))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("work_ranges has no work " + work));
  }

  private static WorkRange of(Table.Row row) {
    return new WorkRange(row.text("work"), row.number("least"), row.number("most"), row.citation());
  }
}
