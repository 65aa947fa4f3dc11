/** Runs the calculators, one call a line, in order; the result is the packet's figures. */
@NullMarked
package pegbook.packet;

import org.jspecify.annotations.NullMarked;
