/** How long things take: programs to be run by hand, not tests, as times belong to a machine. */
@NullMarked
package pegbook.bench;

import org.jspecify.annotations.NullMarked;
