/**
 * Depth targets: how deep each hole goes, which rule decided it, and the datum line from which the
 * depths are read.
 */
@NullMarked
package pegbook.calc.depthtargets;

import org.jspecify.annotations.NullMarked;
