package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The figure seen from above, with today's holes picked out: filled, their names bold. Other holes
 * are rings, named while they are few. To scale, north up.
 */
final class DayPicture {
  private static final double TYPE = 11;
  private static final double MARGIN_MM = 7.5;
  private static final double NORTH_MM = 12;
  private static final double TITLE_MM = 6;

  /** With more holes than this only today's are named: the rest would only crowd them. */
  private static final int MOST_NAMED = 12;

  private static final double LEAST_RADIUS_MM = 1.2;

  private final Writing writing;
  private final Placement placement;
  private final List<Hole> holes;
  private final List<String> today;
  private final Canvas canvas;
  private final PlanFrame frame;

  private DayPicture(
      Writing writing, Placement placement, List<Hole> holes, List<String> today, Spot size) {
    this.writing = writing;
    this.placement = placement;
    this.holes = holes;
    this.today = today;
    List<Point> places = new ArrayList<>(placement.outline().corners());
    for (Hole hole : holes) {
      double half = hole.diameter().metres() / 2;
      places.add(hole.centre().plus(-half, -half));
      places.add(hole.centre().plus(half, half));
    }
    Extent extent = Extent.of(places);
    DrawingScale scale =
        DrawingScale.largestThatFits(
                writing.formats().units(),
                extent,
                size.x() - 2 * MARGIN_MM - NORTH_MM,
                size.y() - 2 * MARGIN_MM - TITLE_MM)
            .orElseThrow(() -> new IllegalStateException("no scale for " + extent));
    double height = scale.millimetres(metres(extent.heightMetres())) + 2 * MARGIN_MM + TITLE_MM;
    this.canvas = new Canvas(size.x(), Math.max(height, 40), writing.lettering());
    Spot middle =
        new Spot((size.x() - NORTH_MM) / 2, TITLE_MM + (canvas.heightMm() - TITLE_MM) / 2);
    this.frame = new PlanFrame(extent.centre(), middle, scale);
  }

  private static Length metres(double metres) {
    return new Length(metres);
  }

  /**
   * The picture of a day.
   *
   * @param holes every hole of the job
   * @param today marks of the holes worked on
   * @param id of the drawing
   * @param size width on paper, and the greatest height
   */
  static Drawing of(
      Writing writing,
      Placement placement,
      List<Hole> holes,
      List<String> today,
      String id,
      Spot size) {
    DayPicture picture = new DayPicture(writing, placement, holes, today, size);
    picture.draw();
    return picture.canvas.drawing(
        id,
        writing
            .texts()
            .say("day-plan.picture.description", Map.of("holes", writing.formats().names(today))));
  }

  private void draw() {
    NorthArrow.draw(
        canvas,
        new Spot(canvas.widthMm() - 6, canvas.heightMm() - NorthArrow.HEIGHT_MM - 1),
        writing.texts().say("day-plan.picture.north"));
    canvas.writeFixed(
        new Element.Label(
            new Spot(2, 2),
            writing.texts().say("day-plan.picture.title", Map.of("scale", frame.scale().text())),
            TYPE,
            Element.Anchor.LEFT,
            0,
            false,
            false));
    canvas.path(frame.spots(placement.outline()), true, Pen.THIN);
    holes.forEach(this::hole);
    LabelPlacer placer = new LabelPlacer(canvas);
    holes.stream()
        .filter(hole -> holes.size() <= MOST_NAMED || today.contains(hole.mark()))
        .sorted(Comparator.comparing(hole -> today.contains(hole.mark()) ? 0 : 1))
        .forEach(hole -> name(placer, hole));
  }

  private double radius(Hole hole) {
    return Math.max(LEAST_RADIUS_MM, frame.millimetres(hole.diameter()) / 2);
  }

  private void hole(Hole hole) {
    Spot centre = frame.spot(hole.centre());
    if (today.contains(hole.mark())) {
      canvas.dot(centre, radius(hole));
    } else {
      canvas.circle(centre, radius(hole), Pen.MEDIUM);
    }
  }

  private void name(LabelPlacer placer, Hole hole) {
    boolean now = today.contains(hole.mark());
    Wording name = now ? Wording.bold(hole.mark(), TYPE + 1) : Wording.of(hole.mark(), TYPE);
    Spot centre = frame.spot(hole.centre());
    double outwards =
        Spots.distanceMm(frame.paper(), centre) < 1
            ? 0
            : Spots.directionDegrees(frame.paper(), centre);
    placer.place(name, centre, radius(hole) + 1, outwards);
  }
}
