package pegbook.published;

import pegbook.measure.Length;
import pegbook.measure.Ratio;

/**
 * A voltage drop that is usually allowed.
 *
 * @param share of the supply's voltage
 * @param citation where it stands
 */
public record DropLimit(Ratio share, Citation citation) {
  /** IEC 60364-5-52, Table G.52.1: a run longer than this may drop a little more. */
  private static final double LONG_METRES = 100;

  /** So many per cent more for each metre beyond it, and at most. */
  private static final double MORE_PER_METRE = 0.005;

  private static final double MOST_MORE = 0.5;

  /** What may be lost over a run of a length, by the metric table. */
  public Ratio over(Length run) {
    double more = Math.max(0, run.metres() - LONG_METRES) * MORE_PER_METRE;
    return new Ratio(share.fraction() + Math.min(MOST_MORE, more) / 100);
  }

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
