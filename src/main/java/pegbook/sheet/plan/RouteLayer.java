package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import pegbook.geometry.Point;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Draws the power line: a heavy broken line, a dot and a name at each of its places. */
final class RouteLayer {
  static final Pen ROUTE = Pen.HEAVY.dashed();

  private static final double DOT_MM = 0.9;
  private static final double CLEAR_MM = 1.2;
  private static final double FIRST_DEGREES = 45;

  private final PlanView view;
  private final PlanContent content;

  RouteLayer(PlanView view, PlanContent content) {
    this.view = view;
    this.content = content;
  }

  void draw() {
    List<Point> route = content.route();
    for (int i = 0; i < route.size(); i++) {
      Spot at = view.spot(route.get(i));
      if (view.window().contains(at, DOT_MM)) {
        view.canvas().dot(at, DOT_MM);
      }
      if (i > 0) {
        view.line(view.spot(route.get(i - 1)), at, ROUTE);
      }
    }
  }

  /** Names the places R1 and so on, but not an end at a pier; gives those without room. */
  List<String> name(double size) {
    List<String> unnamed = new ArrayList<>();
    for (int i = 0; i < content.route().size(); i++) {
      Spot at = view.spot(content.route().get(i));
      if (view.window().contains(at)
          && !isAtHole(content.route().get(i))
          && !view.placer().place(Wording.of("R" + (i + 1), size), at, CLEAR_MM, FIRST_DEGREES)) {
        unnamed.add("R" + (i + 1));
      }
    }
    return unnamed;
  }

  private boolean isAtHole(Point place) {
    return content.holes().stream()
        .anyMatch(hole -> !hole.centre().distanceTo(place).isMoreThan(hole.diameter().times(0.51)));
  }
}
