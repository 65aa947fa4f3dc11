/**
 * The power line: its route and trench, how deep it lies, and which conductors keep the voltage at
 * the far end.
 */
@NullMarked
package pegbook.calc.powerline;

import org.jspecify.annotations.NullMarked;
