/** Which piece is cut from which bar, what to order, and how far from the least it is. */
@NullMarked
package pegbook.calc.cutplan;

import org.jspecify.annotations.NullMarked;
