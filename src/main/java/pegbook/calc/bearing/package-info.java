/**
 * What each footing presses on the ground, what the ground may carry, and how wide the footing must
 * be: by two published ways, decided by the cautious one.
 */
@NullMarked
package pegbook.calc.bearing;

import org.jspecify.annotations.NullMarked;
