/**
 * What must be settled before the first mark is painted, and what this packet has not looked at.
 */
@NullMarked
package pegbook.calc.startconditions;

import org.jspecify.annotations.NullMarked;
