/** How long each task takes at each hole, as a range of person-hours. */
@NullMarked
package pegbook.calc.workestimate;

import org.jspecify.annotations.NullMarked;
