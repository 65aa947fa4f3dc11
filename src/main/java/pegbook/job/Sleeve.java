package pegbook.job;

import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * A sleeve for cables: down from the top of a pier, then out through its side.
 *
 * @param outside outside diameter
 * @param offset from the pier's centre to the sleeve's, at the top
 * @param towards direction of the offset, and of the side by which it leaves, clockwise from true
 *     north
 * @param depth below the ground at which it leaves the pier
 */
public record Sleeve(Length outside, Length offset, Angle towards, Length depth) {}
