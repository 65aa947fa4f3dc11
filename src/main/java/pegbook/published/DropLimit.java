package pegbook.published;

import pegbook.measure.Ratio;

/**
 * A voltage drop that is usually allowed.
 *
 * @param share of the supply's voltage
 * @param citation where it stands
 */
public record DropLimit(Ratio share, Citation citation) {
  /** Metric: a run longer than this may drop a little more. */
  public static final double LONG_METRES = 100;

  /** So many per cent more for each metre beyond it, and at most. */
  public static final double MORE_PER_METRE = 0.005;

  public static final double MOST_MORE = 0.5;

  /**
   * The limit of a name.
   *
   * @throws IllegalArgumentException when the table has none
   */
  public static DropLimit find(String id) {
    return Table.read("drop_limits").rows().stream()
        .filter(row -> row.text("id").equals(id))
        .map(row -> new DropLimit(Ratio.ofPercent(row.number("percent")), row.citation()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("drop_limits has no " + id));
  }
}
