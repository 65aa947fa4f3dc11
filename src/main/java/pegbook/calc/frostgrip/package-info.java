/**
 * What lifts footings: frost that grips their sides, and wind under a roof or a dome; and what
 * holds them down.
 */
@NullMarked
package pegbook.calc.frostgrip;

import org.jspecify.annotations.NullMarked;
