/** How good each mark is: error ellipses, the better baselines, and remedies for a bad mark. */
@NullMarked
package pegbook.calc.markaccuracy;

import org.jspecify.annotations.NullMarked;
