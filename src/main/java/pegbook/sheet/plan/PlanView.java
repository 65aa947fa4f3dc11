package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The ground seen through a window of a drawing.
 *
 * @param canvas the drawing
 * @param frame from ground to paper
 * @param window what lies beyond it is cut off
 */
record PlanView(Canvas canvas, PlanFrame frame, ClipWindow window) {
  private static final int CIRCLE_PARTS = 72;

  /** Keeps text that comes later inside the window. */
  void keepTextInside() {
    double width = canvas.widthMm();
    double height = canvas.heightMm();
    canvas.keepFree(Plate.between(0, 0, width, window.bottom()));
    canvas.keepFree(Plate.between(0, window.top(), width, height));
    canvas.keepFree(Plate.between(0, 0, window.left(), height));
    canvas.keepFree(Plate.between(window.right(), 0, width, height));
  }

  LabelPlacer placer() {
    return new LabelPlacer(canvas);
  }

  Spot spot(Point place) {
    return frame.spot(place);
  }

  double millimetres(Length length) {
    return frame.millimetres(length);
  }

  boolean isSeen(Point place) {
    return window.contains(spot(place));
  }

  void line(Spot from, Spot to, Pen pen) {
    window.cut(from, to).ifPresent(part -> canvas.line(part.from(), part.to(), pen));
  }

  /** A closed row of lines; drawn as one where nothing is cut off, so that its pattern runs on. */
  void ring(List<Spot> spots, Pen pen) {
    if (spots.stream().allMatch(window::contains)) {
      canvas.path(spots, true, pen);
      return;
    }
    for (int i = 0; i < spots.size(); i++) {
      line(spots.get(i), spots.get((i + 1) % spots.size()), pen);
    }
  }

  void circle(Spot centre, double radiusMm, Pen pen) {
    if (window.contains(centre, radiusMm)) {
      canvas.circle(centre, radiusMm, pen);
      return;
    }
    List<Spot> ring = new ArrayList<>();
    for (int i = 0; i < CIRCLE_PARTS; i++) {
      ring.add(Spots.towards(centre, 360.0 * i / CIRCLE_PARTS, radiusMm));
    }
    ring(ring, pen);
  }
}
