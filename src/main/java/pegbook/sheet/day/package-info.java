/** Drawings of day sheets. */
@NullMarked
package pegbook.sheet.day;

import org.jspecify.annotations.NullMarked;
