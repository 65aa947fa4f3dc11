/**
 * Drawings as data: lines, arcs, text and hatch in millimetres on paper.
 *
 * <p>Frame: origin at the lower left corner of the drawing, x to the right, y up, millimetres.
 * Angles run anticlockwise from the x axis, in degrees. Later elements lie over earlier ones. The
 * renderer paints them exactly; it decides nothing.
 */
@NullMarked
package pegbook.sheet.drawing;

import org.jspecify.annotations.NullMarked;
