/**
 * Levels: what a stick reads from the datum line at every hole, how long the posts of a level floor
 * are, and how far the line sags.
 */
@NullMarked
package pegbook.calc.levels;

import org.jspecify.annotations.NullMarked;
