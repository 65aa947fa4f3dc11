package pegbook.published;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Area;
import pegbook.measure.Length;

/**
 * A kind of structure that a code may let stay above the frost depth.
 *
 * @param id names the words for it
 * @param area largest, where the code limits it
 * @param eave highest, where the code limits it
 * @param citation where it stands
 */
public record FrostExemption(
    String id, Optional<Area> area, Optional<Length> eave, Citation citation) {
  private static final List<FrostExemption> ALL =
      Table.read("frost_exemptions").rows().stream().map(FrostExemption::of).toList();

  /** Every row, in the table's order. */
  public static List<FrostExemption> all() {
    return ALL;
  }

  private static FrostExemption of(Table.Row row) {
    return new FrostExemption(
        row.text("id"),
        row.isEmpty("area_ft2")
            ? Optional.empty()
            : Optional.of(Area.ofSquareFeet(row.number("area_ft2"))),
        row.isEmpty("eave_ft")
            ? Optional.empty()
            : Optional.of(Length.ofFeet(row.number("eave_ft"))),
        row.citation());
  }
}
