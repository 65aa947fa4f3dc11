/**
 * Tools of the tests: what was printed is read back from the PDF as text, lines and boxes in
 * millimetres, and held against the rules that every page keeps; jobs are made up at random.
 *
 * <p>Frame of a page: origin at its lower left corner, x to the right, y up, millimetres.
 */
@NullMarked
package pegbook.testing;

import org.jspecify.annotations.NullMarked;
