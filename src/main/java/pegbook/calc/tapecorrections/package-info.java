/** What sloping ground and a hot or cold steel tape do to the distances that are taped. */
@NullMarked
package pegbook.calc.tapecorrections;

import org.jspecify.annotations.NullMarked;
