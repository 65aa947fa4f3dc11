/** The steel of each footing: bars, rings, cut lengths, masses, and the rules they are held to. */
@NullMarked
package pegbook.calc.steelplan;

import org.jspecify.annotations.NullMarked;
