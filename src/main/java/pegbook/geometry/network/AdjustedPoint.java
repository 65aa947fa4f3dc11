package pegbook.geometry.network;

import java.util.Optional;
import pegbook.geometry.Point;

/**
 * A point after the adjustment.
 *
 * @param name its name
 * @param at the place that fits best
 * @param spread how far that may be off, from the deviations put in; {@link Spread#NONE} if fixed
 * @param shift what the distances say about a point that was expected somewhere; absent otherwise
 */
public record AdjustedPoint(String name, Point at, Spread spread, Optional<Shift> shift) {}
