/**
 * Publications, citations and published tables as typed rows with their valid range.
 *
 * <p>The catalogue of publications and every table are text resources beside this package's
 * classes: one CSV each, lines beginning with {@code #} at its head naming the publication, the
 * place in it, the units and how the values were come by. Facts of the trade with no source cite
 * {@link Citation#COMMON_PRACTICE}.
 */
@NullMarked
package pegbook.published;

import org.jspecify.annotations.NullMarked;
