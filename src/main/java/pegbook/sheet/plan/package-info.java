/**
 * Plans: the site and the figure from above, at a true scale, north up.
 *
 * <p>A {@link pegbook.sheet.plan.PlanView} maps the ground to a window of the drawing and cuts off
 * what lies beyond it. Painters draw one layer each; labels come last and step aside for one
 * another.
 */
@NullMarked
package pegbook.sheet.plan;

import org.jspecify.annotations.NullMarked;
