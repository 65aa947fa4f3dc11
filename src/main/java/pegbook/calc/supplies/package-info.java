/**
 * Small things that the work needs beside concrete and steel: paint, covers, fence, forms, bolts.
 */
@NullMarked
package pegbook.calc.supplies;

import org.jspecify.annotations.NullMarked;
