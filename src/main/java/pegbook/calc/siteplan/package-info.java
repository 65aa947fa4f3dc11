/** The figure among its surroundings: clearances, ties, overall sizes. */
@NullMarked
package pegbook.calc.siteplan;

import org.jspecify.annotations.NullMarked;
