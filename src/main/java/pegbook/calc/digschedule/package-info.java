/**
 * The dig schedule: in which order the holes are dug, with which tool, how long it takes, how much
 * soil comes out and where it may lie.
 */
@NullMarked
package pegbook.calc.digschedule;

import org.jspecify.annotations.NullMarked;
