package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Pressure;

/**
 * What a soil may be taken to carry where nobody has tested it.
 *
 * @param soil class of soil, lower case with hyphens
 * @param kind the class of the published table that it falls into
 * @param pressure on a level bed
 * @param citation where it stands
 */
public record SoilBearing(String soil, String kind, Pressure pressure, Citation citation) {
  private static final List<SoilBearing> ALL =
      Table.read("soil_bearing").rows().stream().map(SoilBearing::of).toList();

  /** Every row, in the table's order. */
  public static List<SoilBearing> all() {
    return ALL;
  }

  /** The row of a soil; none for soils that no class covers. */
  public static Optional<SoilBearing> find(String soil) {
    return ALL.stream().filter(row -> row.soil.equals(soil)).findFirst();
  }

  private static SoilBearing of(Table.Row row) {
    return new SoilBearing(
        row.text("soil"), row.text("class"), Pressure.ofPsf(row.number("psf")), row.citation());
  }
}
