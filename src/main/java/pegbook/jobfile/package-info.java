/**
 * The job file: JSON text to the checked records of {@link pegbook.job}.
 *
 * <p>{@link pegbook.jobfile.JobFileReader} goes in one direction: bytes to text (size, encoding),
 * text to a tree that knows the line of every value (syntax, doubled keys, depth), tree to records
 * by tables of keys (unknown and missing keys, types, units, limits, defaults), records to each
 * other (marks, baseline, outline, holes). Each stage reports everything it finds; the last one
 * looks only at parts that were read whole, so that one mistake is told once.
 *
 * <p>The tables of keys are data: what may stand where, in which limits, and what holds when it is
 * left out. {@code input/job.schema.json} says the same to an editor and a test compares the two.
 */
@NullMarked
package pegbook.jobfile;

import org.jspecify.annotations.NullMarked;
