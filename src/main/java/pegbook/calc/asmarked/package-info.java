/** The distances taped between painted marks, against the plan. */
@NullMarked
package pegbook.calc.asmarked;

import org.jspecify.annotations.NullMarked;
