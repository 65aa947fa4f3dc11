/**
 * The floor's frame: beams from support to support, joists over them, boards, posts; their sizes by
 * calculation, and what each support carries.
 */
@NullMarked
package pegbook.calc.floorframe;

import org.jspecify.annotations.NullMarked;
