package pegbook.sheet.plan;

import java.util.Optional;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarked.Doubled;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Row;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The marks as planned, the distances taped between them, and the mark that moved, drawn further
 * off than it is. North is up. It is made to be looked at, not to be measured.
 */
public final class AsMarkedPicture {
  private static final double MARGIN_MM = 16;
  private static final double LEAST_HEIGHT_MM = 60;
  private static final double MOST_HEIGHT_MM = 112;
  private static final double DOT_MM = 0.9;
  private static final double RING_MM = 1.3;
  private static final double CLEAR_MM = 2.2;
  private static final double SIZE = 8;

  /** A move is drawn at most this long. */
  private static final double MOVE_MM = 14;

  private static final double ARROW_MM = 2;
  private static final long[] FACTORS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private final Placement placement;
  private final AsMarked found;
  private final Canvas canvas;
  private final PlanFrame frame;
  private final LabelPlacer placer;

  private AsMarkedPicture(Placement placement, AsMarked found, Canvas canvas, PlanFrame frame) {
    this.placement = placement;
    this.found = found;
    this.canvas = canvas;
    this.frame = frame;
    this.placer = new LabelPlacer(canvas);
  }

  /** Draws the picture across the page. */
  public static Drawing draw(
      Placement placement,
      AsMarked found,
      String north,
      Lettering lettering,
      double widthMm,
      String description) {
    Extent extent = extent(placement);
    DrawingScale scale = scale(placement, widthMm);
    double shown = scale.millimetres(new Length(extent.heightMetres()));
    double height = Math.max(LEAST_HEIGHT_MM, shown + 2 * MARGIN_MM);
    Canvas canvas = new Canvas(widthMm, height, lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, canvas.heightMm() / 2);
    AsMarkedPicture picture =
        new AsMarkedPicture(
            placement, found, canvas, new PlanFrame(extent.centre(), middle, scale));
    picture.draw(north, exaggeration(placement, found, widthMm));
    return canvas.drawing("as-marked-picture", description);
  }

  private static Extent extent(Placement placement) {
    return Extent.of(placement.marks().stream().map(PlacedMark::at).toList());
  }

  private static DrawingScale scale(Placement placement, double widthMm) {
    Extent extent = extent(placement);
    double width = widthMm - 2 * (NorthArrow.WIDTH_MM + MARGIN_MM);
    double height = MOST_HEIGHT_MM - 2 * MARGIN_MM;
    double ratio =
        Math.max(extent.widthMetres() * 1000 / width, extent.heightMetres() * 1000 / height);
    return new DrawingScale(
        UnitSystem.METRIC, Length.ofMillimetres(1), Length.ofMillimetres(ratio));
  }

  /** How many times as long as it is the move is drawn; 1 when nothing moved. */
  public static long exaggeration(Placement placement, AsMarked found, double widthMm) {
    double shown =
        found
            .move()
            .map(move -> scale(placement, widthMm).millimetres(move.distance()))
            .orElse(0.0);
    long factor = 1;
    for (long next : FACTORS) {
      factor = shown * next <= MOVE_MM ? next : factor;
    }
    return shown > 0 ? factor : 1;
  }

  private void draw(String north, long factor) {
    NorthArrow.draw(canvas, new Spot(NorthArrow.WIDTH_MM / 2, 2), north);
    found.doubled().stream().map(Doubled::pair).forEach(pair -> line(pair, Pen.MEDIUM.dotted()));
    found.rows().stream().filter(row -> !row.isBeyond()).forEach(row -> line(row.pair(), Pen.HAIR));
    found.rows().stream().filter(Row::isBeyond).forEach(row -> line(row.pair(), Pen.HEAVY));
    placement.marks().forEach(this::mark);
    found.move().ifPresent(move -> moved(move.mark(), factor));
    placement.marks().forEach(this::name);
  }

  private void line(Pair pair, Pen pen) {
    canvas.line(spot(pair.from()), spot(pair.to()), pen);
  }

  private Spot spot(String mark) {
    return frame.spot(placement.mark(mark).at());
  }

  private void mark(PlacedMark mark) {
    Spot at = frame.spot(mark.at());
    canvas.circle(at, RING_MM, Pen.THIN);
    keep(at);
  }

  private void keep(Spot spot) {
    canvas.keepFree(new Plate(spot, RING_MM + 0.3, RING_MM + 0.3, 0));
  }

  private void moved(String mark, long factor) {
    Optional<Suspect> suspect =
        found.suspects().stream()
            .filter(some -> found.verdict() == Verdict.MARK_MOVED)
            .filter(some -> some.mark().equals(Optional.of(mark)))
            .findFirst();
    if (suspect.isEmpty()) {
      return;
    }
    Point meant = placement.mark(mark).at();
    Spot painted =
        frame.spot(
            meant.plus(suspect.get().eastMetres() * factor, suspect.get().northMetres() * factor));
    Spot at = frame.spot(meant);
    double back = Spots.directionDegrees(painted, at);
    canvas.line(painted, at, Pen.THICK);
    canvas.line(at, Spots.towards(at, back + 155, ARROW_MM), Pen.THICK);
    canvas.line(at, Spots.towards(at, back - 155, ARROW_MM), Pen.THICK);
    canvas.dot(painted, DOT_MM);
    keep(painted);
  }

  private void name(PlacedMark mark) {
    Spot at = frame.spot(mark.at());
    Spot centre = frame.spot(frame.ground());
    double outwards = Spots.distanceMm(at, centre) < 0.5 ? 45 : Spots.directionDegrees(centre, at);
    placer.place(Wording.bold(mark.id(), SIZE), at, CLEAR_MM, outwards);
  }
}
