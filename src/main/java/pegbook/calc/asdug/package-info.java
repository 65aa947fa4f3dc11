/** Holes as they were dug: what that changes, and what must be done. */
@NullMarked
package pegbook.calc.asdug;

import org.jspecify.annotations.NullMarked;
