package pegbook.published;

import java.util.List;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Least concrete cover over steel.
 *
 * @param exposure what the concrete touches
 * @param greatestBar the row holds for bars up to this diameter
 * @param inches cover in inch-pound editions
 * @param metric cover in metric editions, a rounded figure of its own
 */
public record CoverRule(Exposure exposure, Length greatestBar, Length inches, Length metric) {
  /** Where the table stands. */
  public static final Citation SOURCE = new Citation("aci-318-19", "Table 20.5.1.3.1");

  private static final List<CoverRule> TABLE =
      Table.read("cover").rows().stream().map(CoverRule::of).toList();

  /** What the concrete touches. */
  public enum Exposure {
    /** Poured against the soil itself and left there. */
    CAST_AGAINST_GROUND,
    /** Poured in a form; weather or backfill reaches it later. */
    FORMED_IN_GROUND_OR_WEATHER
  }

  private static CoverRule of(Table.Row row) {
    return new CoverRule(
        Exposure.valueOf(row.text("exposure")),
        Length.ofInches(row.number("greatest_bar_in")),
        Length.ofInches(row.number("cover_in")),
        Length.ofMillimetres(row.number("cover_mm")));
  }

  /**
   * The least cover over a bar.
   *
   * @throws IllegalArgumentException when the bar is thicker than the table knows
   */
  public static Length least(Exposure exposure, Length bar, UnitSystem units) {
    return TABLE.stream()
        .filter(row -> row.exposure == exposure && !bar.isMoreThan(row.greatestBar))
        .findFirst()
        .map(row -> units == UnitSystem.IMPERIAL ? row.inches : row.metric)
        .orElseThrow(() -> new IllegalArgumentException("no cover rule for a bar of " + bar));
  }
}
