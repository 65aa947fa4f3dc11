package pegbook.figures;

import pegbook.geometry.Point;

/**
 * A peg outside the diggings.
 *
 * @param id K1, K2 and so on
 * @param at where it stands
 * @param taped true for a peg from which marks are taped; false for one that only carries strings
 */
public record SafePeg(String id, Point at, boolean taped) {}
