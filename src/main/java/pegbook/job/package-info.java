/**
 * The checked job: immutable records, one for each part of the job file.
 *
 * <p>What stands here has passed the reader. Optional parts are {@code Optional}; a level that was
 * not given is unknown, never zero. Values that the user left out hold their default, and each
 * default that was used is listed in {@link pegbook.job.Job#defaults()}, so that it can be printed
 * as an assumption.
 */
@NullMarked
package pegbook.job;

import org.jspecify.annotations.NullMarked;
