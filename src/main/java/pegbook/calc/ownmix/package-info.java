/** Concrete from cement, sand and stone, by weight. */
@NullMarked
package pegbook.calc.ownmix;

import org.jspecify.annotations.NullMarked;
