/** What each hole is filled with: gravel, concrete, bags, and how long a pour takes. */
@NullMarked
package pegbook.calc.concreteplan;

import org.jspecify.annotations.NullMarked;
