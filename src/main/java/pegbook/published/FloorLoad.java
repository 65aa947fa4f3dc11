package pegbook.published;

import java.util.List;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;

/**
 * A load of a floor that is taken where the job gives none.
 *
 * @param load its name in the table
 * @param imperial for a packet in feet and pounds
 * @param metric for a packet in metres, set up
 * @param citation where it stands
 */
public record FloorLoad(String load, Pressure imperial, Pressure metric, Citation citation) {
  private static final List<FloorLoad> ALL =
      Table.read("floor_loads").rows().stream().map(FloorLoad::of).toList();

  /** Every row, in the table's order. */
  public static List<FloorLoad> all() {
    return ALL;
  }

  /**
   * The row of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static FloorLoad find(String load) {
    return ALL.stream()
        .filter(row -> row.load.equals(load))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("floor_loads has no load " + load));
  }

  public Pressure in(UnitSystem units) {
    return units == UnitSystem.IMPERIAL ? imperial : metric;
  }

  private static FloorLoad of(Table.Row row) {
    return new FloorLoad(
        row.text("load"),
        Pressure.ofPsf(row.number("psf")),
        Pressure.ofKilopascals(row.number("kilopascals")),
        row.citation());
  }
}
