package pegbook.figures;

import pegbook.measure.Duration;
import pegbook.measure.Volume;

/**
 * The concrete of one hole.
 *
 * @param mark the hole
 * @param poured concrete to mix or to order
 * @param most how long the crew needs to place it, all going badly
 * @param window what the concrete allows from its first batch, or from the truck's arrival
 */
public record Pour(String mark, Volume poured, Duration most, Duration window) {}
