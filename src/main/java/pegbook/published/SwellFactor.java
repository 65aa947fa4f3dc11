package pegbook.published;

import java.util.List;
import pegbook.measure.Ratio;

/**
 * How much more room dug soil takes than it took in the ground.
 *
 * @param soil class of soil, lower case with hyphens
 * @param material the source's own name of the row
 * @param swell room over room in the ground, less one
 * @param citation where it stands
 */
public record SwellFactor(String soil, String material, Ratio swell, Citation citation) {
  private static final List<SwellFactor> ALL =
      Table.read("swell_factors").rows().stream().map(SwellFactor::of).toList();

  /** Every row, in the table's order. */
  public static List<SwellFactor> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static SwellFactor find(String soil) {
    return ALL.stream()
        .filter(row -> row.soil.equals(soil))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("swell_factors has no soil " + soil));
  }

  private static SwellFactor of(Table.Row row) {
    return new SwellFactor(
        row.text("soil"),
        row.text("material"),
        new Ratio(row.number("loose_over_bank") - 1),
        row.citation());
  }
}
