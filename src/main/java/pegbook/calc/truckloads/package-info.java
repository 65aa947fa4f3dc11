/** What trucks bring on each day of pours. */
@NullMarked
package pegbook.calc.truckloads;

import org.jspecify.annotations.NullMarked;
