/** Everything that the packet's subjects want bought, on one list by supplier. */
@NullMarked
package pegbook.calc.buyinglist;

import org.jspecify.annotations.NullMarked;
