/** Tests of whole packets: every job in {@code input/} is found, printed and read back. */
@NullMarked
package pegbook.whole;

import org.jspecify.annotations.NullMarked;
