package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The outline with its marks, north up, small but to scale. Names stand at the marks as far as
 * there is room; the site plan names them all.
 *
 * @param drawing the picture
 * @param scale in words
 */
record CoverPicture(Drawing drawing, String scale) {
  private static final double HEIGHT_MM = 48;

  /** Room round the figure for the names of marks. */
  private static final double EDGE_MM = 3;

  private static final double PIER_MM = 1.6;
  private static final double SUPPORT_MM = 0.9;
  private static final double TYPE_SIZE = 8;
  private static final int MOST_NAMED = 16;

  static CoverPicture of(Packet packet, Writing writing) {
    Placement placement = packet.placement();
    double widthMm = Math.floor(writing.page().widthMm() / 2) - 4;
    Canvas canvas = new Canvas(widthMm, HEIGHT_MM, writing.lettering());
    NorthArrow.draw(
        canvas,
        new Spot(widthMm - NorthArrow.WIDTH_MM / 2, HEIGHT_MM - NorthArrow.HEIGHT_MM),
        writing.texts().say("cover.north"));
    PlanFrame frame = frame(packet, widthMm - NorthArrow.WIDTH_MM - 2 * EDGE_MM);
    canvas.path(frame.spots(placement.outline()), true, Pen.THICK);
    placement.marks().forEach(mark -> draw(mark, canvas, frame));
    LabelPlacer labels = new LabelPlacer(canvas);
    for (PlacedMark mark : named(placement.marks())) {
      labels.place(Wording.bold(mark.id(), TYPE_SIZE), frame.spot(mark.at()), PIER_MM + 0.6);
    }
    return new CoverPicture(
        canvas.drawing("cover-plan", writing.texts().say("cover.picture")), frame.scale().text());
  }

  /** All marks where they are few; otherwise the piers, and S1 from which the marks are counted. */
  private static List<PlacedMark> named(List<PlacedMark> marks) {
    return marks.size() <= MOST_NAMED
        ? marks
        : marks.stream()
            .filter(mark -> mark.kind() == MarkKind.PIER || mark.equals(marks.get(0)))
            .toList();
  }

  private static PlanFrame frame(Packet packet, double widthMm) {
    List<Point> places = new ArrayList<>(packet.placement().outline().corners());
    packet.placement().marks().forEach(mark -> places.add(mark.at()));
    Extent extent = Extent.of(places);
    DrawingScale scale =
        DrawingScale.largestThatFits(
                packet.job().heading().units(), extent, widthMm, HEIGHT_MM - 2 * EDGE_MM)
            .orElseGet(() -> smallest(packet));
    return new PlanFrame(extent.centre(), new Spot(EDGE_MM + widthMm / 2, HEIGHT_MM / 2), scale);
  }

  private static DrawingScale smallest(Packet packet) {
    List<DrawingScale> series = DrawingScale.series(packet.job().heading().units());
    return series.get(series.size() - 1);
  }

  private static void draw(PlacedMark mark, Canvas canvas, PlanFrame frame) {
    Spot spot = frame.spot(mark.at());
    if (mark.kind() == MarkKind.PIER) {
      canvas.circle(spot, PIER_MM, Pen.MEDIUM);
    }
    canvas.dot(spot, SUPPORT_MM);
  }
}
