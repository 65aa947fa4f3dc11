/**
 * Aids for drawing, after open drawing standards: true scale, dimension lines, arrows, bars,
 * hatches, and labels that step aside for one another.
 *
 * <p>A {@link pegbook.sheet.drafting.Canvas} collects what is drawn and remembers where text
 * stands. Every text goes through it, so that no text lies over another or leaves the drawing. The
 * frame is that of {@link pegbook.sheet.drawing}: millimetres on paper, x to the right, y up.
 */
@NullMarked
package pegbook.sheet.drafting;

import org.jspecify.annotations.NullMarked;
