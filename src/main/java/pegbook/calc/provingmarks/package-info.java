/** Which distances prove the marks, and what no distance shows. */
@NullMarked
package pegbook.calc.provingmarks;

import org.jspecify.annotations.NullMarked;
