/** The pace of a pour: its batches against the time that the concrete allows, and what follows. */
@NullMarked
package pegbook.calc.pourday;

import org.jspecify.annotations.NullMarked;
