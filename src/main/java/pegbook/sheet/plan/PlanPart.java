package pegbook.sheet.plan;

import java.util.List;
import pegbook.figures.Hole;
import pegbook.sheet.drafting.Extent;

/**
 * A part of the figure, drawn larger on a plan of its own, because names found no room on the plan
 * of the whole.
 *
 * @param letter A, B and so on; it stands on the plan of the whole too
 * @param ground the part, in metres
 * @param holes whose marks lie in it
 */
record PlanPart(String letter, Extent ground, List<Hole> holes) {
  PlanPart {
    holes = List.copyOf(holes);
  }
}
