package pegbook.published;

import java.util.List;
import pegbook.measure.Angle;

/**
 * The slope of a heap of dug soil.
 *
 * @param soil class of soil, lower case with hyphens
 * @param angle from the level ground up to the heap's side
 * @param citation where it stands
 */
public record ReposeAngle(String soil, Angle angle, Citation citation) {
  private static final List<ReposeAngle> ALL =
      Table.read("repose_angles").rows().stream().map(ReposeAngle::of).toList();

  /** Every row, in the table's order. */
  public static List<ReposeAngle> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static ReposeAngle find(String soil) {
    return ALL.stream()
        .filter(row -> row.soil.equals(soil))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("repose_angles has no soil " + soil));
  }

  private static ReposeAngle of(Table.Row row) {
    return new ReposeAngle(
        row.text("soil"), Angle.ofDegrees(row.number("degrees")), row.citation());
  }
}
