package pegbook.published;

import java.util.List;
import pegbook.measure.Area;
import pegbook.measure.Length;

/**
 * A pipe for conductors.
 *
 * @param kind "pvc-40", "pvc-80" or "metal"
 * @param trade its trade size in inches, such as "3/4"
 * @param inside diameter
 * @param outside diameter
 * @param area inside, as the table prints it
 * @param citation where it stands
 */
public record Raceway(
    String kind, String trade, Length inside, Length outside, Area area, Citation citation) {
  /** How much of a raceway may be filled: National Electrical Code, Chapter 9, Table 1. */
  public static final Citation FILL = new Citation("nec-memory", "Chapter 9, Table 1");

  private static final List<Raceway> ALL =
      Table.read("raceways").rows().stream().map(Raceway::of).toList();

  /** Those of a kind, the smallest first. */
  public static List<Raceway> of(String kind) {
    return ALL.stream().filter(raceway -> raceway.kind.equals(kind)).toList();
  }

  /** Share of the inside that so many conductors may fill, per cent. */
  public static double fillPercent(int conductors) {
    return switch (conductors) {
      case 1 -> 53;
      case 2 -> 31;
      default -> 40;
    };
  }

  private static Raceway of(Table.Row row) {
    return new Raceway(
        row.text("kind"),
        row.text("trade"),
        Length.ofInches(row.number("inside_in")),
        Length.ofInches(row.number("outside_in")),
        Area.ofSquareInches(row.number("area_in2")),
        row.citation());
  }
}
