package pegbook.figures;

import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * A mark with its place.
 *
 * @param id S1, P1 and so on
 * @param kind what stands on it
 * @param at east and north of the outline's centre
 * @param level height of the ground above the benchmark, where it is known
 */
public record PlacedMark(String id, MarkKind kind, Point at, Optional<Length> level) {}
