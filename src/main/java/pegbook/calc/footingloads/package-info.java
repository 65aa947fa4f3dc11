/**
 * What each support carries: the part of the floor that is nearest to it, its dead, live and snow
 * load, the combination that governs, and what all of it rests on.
 */
@NullMarked
package pegbook.calc.footingloads;

import org.jspecify.annotations.NullMarked;
