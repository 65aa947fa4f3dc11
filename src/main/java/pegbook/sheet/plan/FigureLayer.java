package pegbook.sheet.plan;

import java.util.List;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Draws what is to be built: the floor's edge, holes at their true size, heaps, the baseline. */
final class FigureLayer {
  static final Pen FLOOR = Pen.HEAVY;
  static final Pen HOLE = Pen.MEDIUM;
  static final Pen HEAP = Pen.THIN.dashed();
  static final Pen BASELINE = Pen.MEDIUM.centre();

  static final Pen PART = Pen.THIN.dotted();

  private static final double LETTER_SIZE = 14;
  private static final double CROSS_MM = 1.6;

  private final PlanView view;

  FigureLayer(PlanView view) {
    this.view = view;
  }

  void floor(Placement placement) {
    if (placement.round()) {
      Point edge = placement.outline().corners().get(0);
      double radius = view.millimetres(Point.ORIGIN.distanceTo(edge));
      view.circle(view.spot(Point.ORIGIN), radius, FLOOR);
    } else {
      view.ring(view.frame().spots(placement.outline()), FLOOR);
    }
  }

  /** Rings with a cross at the centre, which is the mark. */
  void holes(List<Hole> holes) {
    for (Hole hole : holes) {
      Spot centre = view.spot(hole.centre());
      double radius = view.millimetres(hole.diameter()) / 2;
      view.circle(centre, radius, HOLE);
      cross(view.canvas(), centre, Math.min(CROSS_MM, Math.max(0.5, radius * 0.7)));
      view.canvas().keepFree(new Plate(centre, radius, radius, 0));
    }
  }

  /** The mark itself. */
  static void cross(Canvas canvas, Spot centre, double armMm) {
    canvas.line(Spots.shifted(centre, -armMm, 0), Spots.shifted(centre, armMm, 0), Pen.HAIR);
    canvas.line(Spots.shifted(centre, 0, -armMm), Spots.shifted(centre, 0, armMm), Pen.HAIR);
  }

  void heaps(List<SpoilHeap> heaps) {
    heaps.forEach(
        heap -> view.circle(view.spot(heap.centre()), view.millimetres(heap.radius()), HEAP));
  }

  /**
   * The edge of a part that has a plan of its own.
   *
   * @param lettered true where its letter says which, near its middle
   */
  void part(PlanPart part, boolean lettered) {
    Extent ground = part.ground();
    Spot topLeft = view.spot(new Point(ground.west(), ground.north()));
    Spot bottomRight = view.spot(new Point(ground.east(), ground.south()));
    view.ring(
        List.of(
            topLeft,
            new Spot(bottomRight.x(), topLeft.y()),
            bottomRight,
            new Spot(topLeft.x(), bottomRight.y())),
        PART);
    if (lettered) {
      Spot middle = Spots.middle(topLeft, bottomRight);
      view.placer().placeOver(Wording.bold(part.letter(), LETTER_SIZE), middle, 0, 45);
    }
  }

  void baseline(Point first, Point second) {
    view.line(view.spot(first), view.spot(second), BASELINE);
  }
}
