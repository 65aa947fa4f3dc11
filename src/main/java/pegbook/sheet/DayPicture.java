package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
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
 * are rings, named while they are few. On a day of the power line its trench is a broken line from
 * place to place; where holes are worked at too, only as far as there is room beside the figure. To
 * scale, north up. Of a large figure only the part round today's holes is shown.
 */
final class DayPicture {
  static final double TYPE = 11;
  private static final double MARGIN_MM = 7.5;
  private static final double MARGIN_ABOVE_MM = 6;
  private static final double NORTH_MM = 12;
  private static final double TITLE_MM = 5;

  /** With more holes than this only today's are named: the rest would only crowd them. */
  private static final int MOST_NAMED = 12;

  private static final double LEAST_RADIUS_MM = 1.2;

  /** So far the trench is drawn above and below the figure. */
  private static final double BESIDE_MM = 3;

  /** Nearer to one another than this, holes cannot be told apart. */
  private static final double LEAST_APART_MM = 4;

  /** How far round today's holes a part of the figure reaches, in distances between holes. */
  private static final double NEIGHBOURS = 1.6;

  private final Writing writing;
  private final Placement placement;
  private final List<Hole> holes;
  private final List<String> today;
  private final List<Leg> trench;
  private final Canvas canvas;
  private final PlanFrame frame;
  private final View view;
  private final Extent window;

  private DayPicture(
      Writing writing, Placement placement, List<Hole> holes, Today work, Spot size) {
    this.writing = writing;
    this.placement = placement;
    this.holes = holes;
    this.today = work.holes();
    this.trench = work.trench();
    this.view = View.of(writing, placement, holes, work, room(size));
    this.window = view.window(room(size));
    Extent extent = view.extent();
    double height =
        view.scale().millimetres(metres(extent.heightMetres())) + 2 * MARGIN_ABOVE_MM + TITLE_MM;
    this.canvas = new Canvas(size.x(), Math.max(height, 40), writing.lettering());
    Spot middle =
        new Spot((size.x() - NORTH_MM) / 2, TITLE_MM + (canvas.heightMm() - TITLE_MM) / 2);
    this.frame = new PlanFrame(extent.centre(), middle, view.scale());
  }

  /**
   * What is worked on.
   *
   * @param holes marks of the holes
   * @param trench the power line's stretches, from the supply on; none on a day without
   */
  record Today(List<String> holes, List<Leg> trench) {
    Today {
      holes = List.copyOf(holes);
      trench = List.copyOf(trench);
    }

    /** An extent, and the trench in it. */
    Extent with(Extent extent) {
      return trench.stream()
          .map(leg -> Extent.of(List.of(leg.start(), leg.end())))
          .reduce(extent, Extent::with);
    }
  }

  /** Room for the figure itself. */
  private static Spot room(Spot size) {
    return new Spot(size.x() - 2 * MARGIN_MM - NORTH_MM, size.y() - 2 * MARGIN_ABOVE_MM - TITLE_MM);
  }

  /**
   * What is shown of the figure: all of it, or where its holes would lie on one another, only
   * today's holes and their neighbours, when that makes them larger.
   */
  private record View(Extent extent, DrawingScale scale, boolean part) {
    static View of(Writing writing, Placement placement, List<Hole> holes, Today today, Spot room) {
      List<Hole> worked =
          holes.stream().filter(hole -> today.holes().contains(hole.mark())).toList();
      Extent figure = Extent.of(placement.outline().corners()).with(around(holes, 0));
      Extent all = worked.isEmpty() ? today.with(figure) : figure;
      View whole = fitted(writing, all, room, false);
      double apart = apart(holes);
      if (worked.isEmpty() || whole.scale().millimetres(metres(apart)) >= LEAST_APART_MM) {
        return whole;
      }
      View part = fitted(writing, around(worked, NEIGHBOURS * apart), room, true);
      return part.scale().isLargerThan(whole.scale()) ? part : whole;
    }

    /**
     * What of the ground there is room for: as wide as the paper, a little higher than the view.
     */
    Extent window(Spot room) {
      double perMetre = scale.millimetres(metres(1));
      double across = Math.max(extent.widthMetres(), room.x() / perMetre) / 2;
      double up = extent.heightMetres() / 2 + BESIDE_MM / perMetre;
      Point centre = extent.centre();
      return new Extent(
          centre.east() - across, centre.north() - up, centre.east() + across, centre.north() + up);
    }

    private static View fitted(Writing writing, Extent extent, Spot room, boolean part) {
      return DrawingScale.largestThatFits(writing.formats().units(), extent, room.x(), room.y())
          .map(scale -> new View(extent, scale, part))
          .orElseThrow(() -> new IllegalStateException("no scale for " + extent));
    }

    private static Extent around(List<Hole> holes, double metres) {
      return holes.stream()
          .map(
              hole ->
                  Extent.of(List.of(hole.centre())).grown(hole.diameter().metres() / 2 + metres))
          .reduce(Extent::with)
          .orElseThrow();
    }

    /** The least distance between two holes, metres. */
    private static double apart(List<Hole> holes) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < holes.size(); i++) {
        for (Hole other : holes.subList(i + 1, holes.size())) {
          least = Math.min(least, holes.get(i).centre().distanceTo(other.centre()).metres());
        }
      }
      return least;
    }
  }

  private static Length metres(double metres) {
    return new Length(metres);
  }

  /**
   * The picture of a day.
   *
   * @param holes every hole of the job
   * @param today what is worked on
   * @param id of the drawing
   * @param size width on paper, and the greatest height
   */
  static Drawing of(
      Writing writing, Placement placement, List<Hole> holes, Today today, String id, Spot size) {
    DayPicture picture = new DayPicture(writing, placement, holes, today, size);
    picture.draw();
    return picture.canvas.drawing(
        id, writing.texts().say("day-plan.picture.description", Map.of("holes", picture.worked())));
  }

  /** Today's holes, and the ends of the trench. */
  private String worked() {
    List<String> worked = new ArrayList<>(today);
    trench.stream().limit(1).map(Leg::from).forEach(worked::add);
    trench.stream().skip(Math.max(0, trench.size() - 1)).map(Leg::to).forEach(worked::add);
    return writing.formats().names(worked.stream().distinct().toList());
  }

  private void draw() {
    NorthArrow.draw(
        canvas,
        new Spot(canvas.widthMm() - 6, canvas.heightMm() - NorthArrow.HEIGHT_MM - 1),
        writing.texts().say("day-plan.picture.north"));
    canvas.writeFixed(
        new Element.Label(new Spot(2, 2), title(), TYPE, Element.Anchor.LEFT, 0, false, false));
    List<Hole> shown =
        holes.stream()
            .filter(hole -> !view.part() || view.extent().contains(hole.centre()))
            .toList();
    outline();
    DayTrench line = new DayTrench(canvas, frame, window, holes, trench);
    line.draw();
    shown.forEach(this::hole);
    LabelPlacer placer = new LabelPlacer(canvas);
    shown.stream()
        .filter(hole -> shown.size() <= MOST_NAMED || today.contains(hole.mark()))
        .sorted(Comparator.comparing(hole -> today.contains(hole.mark()) ? 0 : 1))
        .forEach(hole -> name(placer, hole));
    line.name(placer);
  }

  private String title() {
    return writing.texts().say(key(), Map.of("scale", frame.scale().text()));
  }

  private String key() {
    if (!trench.isEmpty()) {
      return "day-plan.picture.trench";
    }
    return view.part() ? "day-plan.picture.part" : "day-plan.picture.title";
  }

  private void outline() {
    if (!view.part()) {
      canvas.path(frame.spots(placement.outline()), true, Pen.THIN);
      return;
    }
    List<Point> corners = placement.outline().corners();
    for (int i = 0; i < corners.size(); i++) {
      view.extent()
          .part(new Segment(corners.get(i), corners.get((i + 1) % corners.size())))
          .ifPresent(line -> canvas.line(frame.spot(line.from()), frame.spot(line.to()), Pen.THIN));
    }
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
