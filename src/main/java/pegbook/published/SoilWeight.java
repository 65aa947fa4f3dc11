package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Density;

/**
 * What soil weighs as it lies in the ground.
 *
 * @param soil class of soil, lower case with hyphens
 * @param bank mass of the soil over its volume in the ground, dry
 * @param citation where it stands
 */
public record SoilWeight(String soil, Density bank, Citation citation) {
  private static final List<SoilWeight> ALL =
      Table.read("soil_weights").rows().stream().map(SoilWeight::of).toList();

  /** Every row, in the table's order. */
  public static List<SoilWeight> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static SoilWeight find(String soil) {
    return ALL.stream()
        .filter(row -> row.soil.equals(soil))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("soil_weights has no soil " + soil));
  }

  /** The row of a name, or what a job says in its place. */
  public static SoilWeight find(String soil, Optional<Density> given) {
    return given
        .map(weight -> new SoilWeight(soil, weight, Citation.COMMON_PRACTICE))
        .orElseGet(() -> find(soil));
  }

  private static SoilWeight of(Table.Row row) {
    return new SoilWeight(
        row.text("soil"),
        Density.ofPoundsPerCubicFoot(row.number("pounds_per_cubic_foot")),
        row.citation());
  }
}
