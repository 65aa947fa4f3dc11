/** Drawings of reinforcement: sections, elevations, shapes of bars. */
@NullMarked
package pegbook.sheet.steel;

import org.jspecify.annotations.NullMarked;
