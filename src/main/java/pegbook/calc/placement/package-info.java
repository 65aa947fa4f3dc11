/**
 * The figure on the ground: its outline and its marks, from the drawing's sizes and one azimuth.
 */
@NullMarked
package pegbook.calc.placement;

import org.jspecify.annotations.NullMarked;
