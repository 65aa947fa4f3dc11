/** Safety notes, chosen by what a job contains, and who decides where a rule is local. */
@NullMarked
package pegbook.calc.safetynotes;

import org.jspecify.annotations.NullMarked;
