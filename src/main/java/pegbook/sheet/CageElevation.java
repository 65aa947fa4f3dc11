package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.BarPiece;
import pegbook.figures.Hole;
import pegbook.geometry.Point;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A footing cut upright, to scale: soil, gravel, concrete, and the steel seen from the side. */
final class CageElevation {
  /** Where along the steel the mark of the upright bars may stand, the best first. */
  private static final List<Double> PARTS = List.of(0.5, 0.62, 0.38, 0.75, 0.25, 0.9, 0.1);

  private static final double TYPE = 9;

  /** Room for the dimension lines on the left, and for marks on the right. */
  private static final double LEFT_MM = 18;

  private static final double RIGHT_MM = 9;
  private static final double SOIL_MM = 4;
  private static final double ABOVE_MM = 6;
  private static final double BELOW_MM = 18;

  private final Writing writing;
  private final Hole hole;
  private final Cage cage;
  private final DrawingScale scale;
  private final Canvas canvas;
  private final CageBars steel;

  /** Middle of the footing, and the heights of its levels on paper. */
  private final double middle;

  private final double bottom;
  private final double underside;
  private final double ground;
  private final double top;

  private CageElevation(Writing writing, Hole hole, Cage cage, Spot size) {
    this.writing = writing;
    this.hole = hole;
    this.cage = cage;
    Length height = hole.dug().plus(hole.top());
    Length width = widest(hole);
    this.scale =
        DrawingScale.largestThatFits(
                writing.formats().units(),
                Extent.of(List.of(Point.ORIGIN, new Point(width.metres(), height.metres()))),
                size.x() - LEFT_MM - RIGHT_MM - 2 * SOIL_MM,
                size.y() - ABOVE_MM - BELOW_MM)
            .orElseThrow(() -> new IllegalStateException("no scale for " + height));
    this.canvas =
        new Canvas(size.x(), scale.millimetres(height) + ABOVE_MM + BELOW_MM, writing.lettering());
    this.middle = LEFT_MM + SOIL_MM + scale.millimetres(width) / 2;
    this.bottom = BELOW_MM;
    this.underside = bottom + scale.millimetres(hole.gravel());
    this.ground = underside + scale.millimetres(hole.depth());
    this.top = ground + scale.millimetres(hole.top());
    this.steel = new CageBars(canvas, scale, cage, middle, underside);
  }

  private static Length widest(Hole hole) {
    return hole.widest().max(hole.tube().map(Tube::inside).orElse(Length.ZERO));
  }

  /**
   * The elevation of a cage in its hole.
   *
   * @param size width on paper, and the greatest height
   */
  static Drawing of(Writing writing, Hole hole, Cage cage, String id, Spot size) {
    CageElevation elevation = new CageElevation(writing, hole, cage, size);
    elevation.draw();
    return elevation.canvas.drawing(id, elevation.description());
  }

  private double half(Length diameter) {
    return scale.millimetres(diameter) / 2;
  }

  private FootingOutline outline() {
    return new FootingOutline(hole, scale, middle, ground);
  }

  private void draw() {
    canvas.writeFixed(
        text(
            new Spot(2, 2),
            writing.texts().say("steel-plan.drawing.elevation", Map.of("scale", scale.text()))));
    soil();
    if (underside > bottom) {
      Fills.gravel(canvas, box(half(hole.bottomWidth()), bottom, underside));
    }
    concrete();
    steel.draw(Pen.THICK, Pen.MEDIUM, 2 * half(cage.concrete()));
    dimensions();
    label();
  }

  private List<Spot> box(double half, double low, double high) {
    return List.of(
        new Spot(middle - half, low),
        new Spot(middle + half, low),
        new Spot(middle + half, high),
        new Spot(middle - half, high));
  }

  private void soil() {
    double edge = half(hole.diameter());
    double far = half(widest(hole)) + SOIL_MM;
    for (int side = -1; side <= 1; side += 2) {
      Fills.soil(canvas, outline().soil(side, far));
    }
    Fills.groundLine(canvas, new Spot(middle - far, ground), new Spot(middle - edge, ground));
    Fills.groundLine(canvas, new Spot(middle + edge, ground), new Spot(middle + far, ground));
    canvas.path(outline().wall(), false, Pen.THIN);
  }

  private void concrete() {
    canvas.path(outline().concrete(), true, Pen.THICK);
  }

  private void dimensions() {
    double left = middle - half(widest(hole)) - SOIL_MM;
    dimension(left, underside, ground, 4, hole.depth());
    dimension(left, ground, top, 4, hole.top());
    dimension(left, bottom, underside, 4, hole.gravel());
    cage.uprights()
        .starters()
        .ifPresentOrElse(
            starters -> {
              Length reach = starters.joint().minus(cage.bottomCover());
              dimension(left, steel.foot(), steel.uprightFoot(), 12, reach);
              dimension(left, steel.uprightFoot(), steel.head(starters), 12, starters.lap());
            },
            () -> dimension(left, steel.foot(), steel.head(), 12, cage.uprights().rise()));
    Dimension.draw(
        canvas,
        new Spot(middle - half(hole.bottomWidth()), bottom),
        new Spot(middle + half(hole.bottomWidth()), bottom),
        -5,
        writing.formats().size(hole.bottomWidth()),
        TYPE);
  }

  /** An upright dimension to the left; a height of nothing has none. */
  private void dimension(double x, double from, double to, double offset, Length value) {
    if (to > from) {
      Dimension.draw(
          canvas,
          new Spot(x, from),
          new Spot(x, to),
          offset,
          writing.formats().length(value),
          TYPE);
    }
  }

  /**
   * The marks of the bar list, each with a line to its bar. A mark steps along its bar, or to the
   * next ring, until it stands clear; in a cage too small for it the cut across names the bar.
   */
  private void label() {
    mark(cage.pieces().get(0), along(steel.radius(), steel.uprightFoot(), steel.head()));
    cage.rings()
        .ifPresent(
            rings ->
                mark(
                    cage.pieces().get(1),
                    IntStream.range(0, rings.count())
                        .map(ring -> (ring + 1) % rings.count())
                        .mapToObj(
                            ring ->
                                new Spot(
                                    middle + half(rings.outside()), steel.ringHeight(rings, ring)))
                        .toList()));
    cage.uprights()
        .starters()
        .ifPresent(
            starters ->
                mark(
                    cage.pieces().get(cage.pieces().size() - 1),
                    along(steel.starterRadius(), steel.foot(), steel.uprightFoot())));
  }

  private List<Spot> along(double x, double low, double high) {
    return PARTS.stream().map(part -> new Spot(middle + x, low + part * (high - low))).toList();
  }

  /** Writes a mark at the first place where there is room for it. */
  private void mark(BarPiece piece, List<Spot> targets) {
    for (Spot target : targets) {
      if (mark(piece, target)) {
        return;
      }
    }
  }

  /** Whether there was room for it. */
  private boolean mark(BarPiece piece, Spot target) {
    Spot end = new Spot(middle + half(widest(hole)) + SOIL_MM + 1, target.y());
    boolean written =
        canvas.write(
            new Element.Label(
                Spots.shifted(end, 0.8, 0),
                piece.barMark(),
                TYPE + 1,
                Element.Anchor.LEFT_MIDDLE,
                0,
                true,
                true));
    if (written) {
      canvas.line(target, end, Pen.HAIR);
    }
    return written;
  }

  private static Element.Label text(Spot at, String text) {
    return new Element.Label(at, text, TYPE, Element.Anchor.LEFT, 0, false, false);
  }

  private String description() {
    return writing
        .texts()
        .say(
            "steel-plan.drawing.elevation-description",
            Map.of(
                "marks", writing.formats().names(cage.marks()),
                "height", writing.formats().length(cage.height()),
                "cut", writing.formats().length(cage.cut())));
  }
}
