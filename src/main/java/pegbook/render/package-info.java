/** Sheets to PDF. */
@NullMarked
package pegbook.render;

import org.jspecify.annotations.NullMarked;
