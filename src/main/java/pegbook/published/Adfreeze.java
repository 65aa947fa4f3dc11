package pegbook.published;

import java.util.List;
import pegbook.measure.Pressure;

/**
 * How hard freezing ground grips what stands in it.
 *
 * @param id soil and surface, lower case with hyphens
 * @param stress mean over the frozen side
 * @param citation where it stands
 */
public record Adfreeze(String id, Pressure stress, Citation citation) {
  private static final List<Adfreeze> ALL =
      Table.read("adfreeze").rows().stream()
          .map(
              row ->
                  new Adfreeze(
                      row.text("id"),
                      Pressure.ofKilopascals(row.number("kilopascals")),
                      row.citation()))
          .toList();

  /** Every row, in the table's order. */
  public static List<Adfreeze> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static Adfreeze find(String id) {
    return ALL.stream()
        .filter(row -> row.id.equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("adfreeze has no " + id));
  }
}
