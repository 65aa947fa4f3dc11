/**
 * Sections through holes: what is dug, what fills it, and from where its depths are read, to scale.
 *
 * <p>Takes sizes and finished words; knows nothing of jobs and packets.
 */
@NullMarked
package pegbook.sheet.section;

import org.jspecify.annotations.NullMarked;
