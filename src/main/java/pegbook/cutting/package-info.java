/**
 * Pieces onto lengths of stock: least cost, then fewest bars.
 *
 * <p>The search follows column generation (Gilmore and Gomory, A linear programming approach to the
 * cutting-stock problem, Operations Research 9, 1961, and part II, 11, 1963). A library solves the
 * linear programs ({@link pegbook.cutting.LinearProgram}); everything that decides is in whole
 * numbers: lengths, costs, and the prices of pieces by which a bound is proved ({@link
 * pegbook.cutting.Relaxation}). So no rounding error can prove what is not so.
 *
 * <p>Limits count steps, never time, so that the same problem always gives the same plan.
 */
@NullMarked
package pegbook.cutting;

import org.jspecify.annotations.NullMarked;
