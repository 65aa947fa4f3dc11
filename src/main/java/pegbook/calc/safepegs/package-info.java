/** Pegs outside the diggings from which every mark is found again, and strings over the centres. */
@NullMarked
package pegbook.calc.safepegs;

import org.jspecify.annotations.NullMarked;
