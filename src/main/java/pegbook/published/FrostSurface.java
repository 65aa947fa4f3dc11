package pegbook.published;

import java.util.List;
import pegbook.measure.Ratio;

/**
 * How much of the air's freezing index reaches the ground.
 *
 * @param surface its name, lower case with hyphens
 * @param n the factor
 * @param citation where it stands
 */
public record FrostSurface(String surface, Ratio n, Citation citation) {
  private static final List<FrostSurface> ALL =
      Table.read("frost_surfaces").rows().stream()
          .map(
              row ->
                  new FrostSurface(row.text("surface"), new Ratio(row.number("n")), row.citation()))
          .toList();

  /** Every row, in the table's order. */
  public static List<FrostSurface> all() {
    return ALL;
  }

  /**
   * The row of a surface.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static FrostSurface find(String surface) {
    return ALL.stream()
        .filter(row -> row.surface.equals(surface))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("frost_surfaces has no " + surface));
  }
}
