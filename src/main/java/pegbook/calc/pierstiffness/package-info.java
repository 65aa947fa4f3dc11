/** What a pier does under a hand and in the wind: sway, tilt, first frequency, overturning, gap. */
@NullMarked
package pegbook.calc.pierstiffness;

import org.jspecify.annotations.NullMarked;
