/** Two tapes to every mark: baseline, readings, sides, crossings, checks, and the order of work. */
@NullMarked
package pegbook.calc.tapetable;

import org.jspecify.annotations.NullMarked;
