package pegbook.sheet.plan;

import java.util.List;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Drawing;

/**
 * A finished plan.
 *
 * @param drawing the picture
 * @param scale its scale
 * @param unnamed names that found no room on it
 */
public record PlanPicture(Drawing drawing, DrawingScale scale, List<String> unnamed) {
  public PlanPicture {
    unnamed = List.copyOf(unnamed);
  }
}
