/**
 * The program: its arguments and streams ({@link pegbook.Main}), and the flow from a job file to
 * the printed packet.
 */
@NullMarked
package pegbook;

import org.jspecify.annotations.NullMarked;
