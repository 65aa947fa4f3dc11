package pegbook.figures;

import pegbook.job.Tool;
import pegbook.measure.Length;

/**
 * A tool at work in a stretch of a hole.
 *
 * @param tool the tool
 * @param use how it is used
 * @param from depth at which the stretch begins
 * @param to depth at which it ends
 */
public record ToolStep(Tool tool, Use use, Length from, Length to) {
  /** Uses of a tool. */
  public enum Use {
    /** Opens the first inches by hand, so that an auger holds its place. */
    START,
    /** Digs and lifts the soil. */
    DIG,
    /** Cuts the hole at its full width. */
    BORE,
    /** Cuts a narrower hole, which is then opened by hand. */
    PILOT,
    /** Loosens stones; lifts nothing. */
    BAR
  }
}
