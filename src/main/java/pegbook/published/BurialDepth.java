package pegbook.published;

import java.util.List;
import pegbook.measure.Length;

/**
 * Least cover over a buried cable or raceway at a kind of place.
 *
 * @param location what lies over it, as the table's rows are named here
 * @param row the table's row
 */
public record BurialDepth(String location, Table.Row row) {

  /** What the table's columns tell apart. */
  public enum Column {
    DIRECT("direct", "direct"),
    METAL("metal", "metal"),
    CONDUIT("conduit", "conduit"),
    /** Four conditions, all at once; see the table's header. */
    RESIDENTIAL("residential_direct", "residential_raceway"),
    /** Control of irrigation and landscape lighting up to 30 V. */
    LOW_VOLTAGE("low_direct", "low_raceway");

    private final String laid;
    private final String inRaceway;

    Column(String laid, String inRaceway) {
      this.laid = laid;
      this.inRaceway = inRaceway;
    }
  }

  private static final List<BurialDepth> ALL =
      Table.read("burial_depths").rows().stream()
          .map(row -> new BurialDepth(row.text("location"), row))
          .toList();

  /** Every row, in the table's order. */
  public static List<BurialDepth> all() {
    return ALL;
  }

  /**
   * The row of a place.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static BurialDepth find(String location) {
    return ALL.stream()
        .filter(depth -> depth.location.equals(location))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("burial_depths has no " + location));
  }

  /**
   * Least cover, from the ground to the top of the cable or raceway.
   *
   * @param raceway false for a cable that lies in the ground itself
   */
  public Length cover(Column column, boolean raceway) {
    return Length.ofInches(row.number(raceway ? column.inRaceway : column.laid));
  }

  /** Where it stands. */
  public Citation citation() {
    return row.citation();
  }
}
