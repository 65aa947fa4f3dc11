/**
 * True north without a compass: when the sun stands highest, where a shadow then points, how well
 * that gives north, and how to turn from it to the first mark.
 */
@NullMarked
package pegbook.calc.truenorth;

import org.jspecify.annotations.NullMarked;
