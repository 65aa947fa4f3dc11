/**
 * Results for other programs: JSON and CSV; and the packet's folder, written whole or not at all.
 */
@NullMarked
package pegbook.export;

import org.jspecify.annotations.NullMarked;
