/**
 * Quantities, SI inside, with the trade's notation read and written.
 *
 * <p>Every quantity is an immutable record of one finite double in its SI unit. Exact factors: 1 in
 * = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s² (International Yard and Pound
 * Agreement 1959; CGPM 1901). Setting a value to a step (a tape division, a bag, the next size)
 * always names its direction; a value within a millionth of a step of a mark counts as lying on it
 * ({@link Rounding#TIE}), so that noise in the last digits never moves an order or a depth by a
 * whole step.
 */
@NullMarked
package pegbook.measure;

import org.jspecify.annotations.NullMarked;
