/** Widths of text in the packet's fonts, so that labels can be placed without touching. */
@NullMarked
package pegbook.lettering;

import org.jspecify.annotations.NullMarked;
