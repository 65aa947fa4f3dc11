package pegbook.job;

import pegbook.geometry.Point;

/**
 * A fixed point outside the diggings; its height is zero.
 *
 * @param at where it is
 * @param on what it is, in words
 */
public record Benchmark(Point at, String on) {}
