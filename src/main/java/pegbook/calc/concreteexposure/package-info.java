/** What the concrete must stand: frost, water, salt; the weather it is poured in; its age. */
@NullMarked
package pegbook.calc.concreteexposure;

import org.jspecify.annotations.NullMarked;
