/** Which holes and tasks fall on which working day. */
@NullMarked
package pegbook.calc.dayplan;

import org.jspecify.annotations.NullMarked;
