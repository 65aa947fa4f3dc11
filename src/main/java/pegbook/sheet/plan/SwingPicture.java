package pegbook.sheet.plan;

import java.util.List;
import java.util.Optional;
import pegbook.calc.tapetable.TapeTable;
import pegbook.calc.tapetable.TapeTable.Row;
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
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * How the tapes swing: the baseline, its two sides, and at every mark the two arcs that cross
 * there, with the mark's name and its place in the order of work. North is up. It is drawn to
 * scale, but made to be looked at, not to be measured.
 */
public final class SwingPicture {
  private static final double MARGIN_MM = 14;
  private static final double LEAST_HEIGHT_MM = 60;

  /** Half the length of an arc. */
  private static final double ARC_MM = 4;

  private static final double DOT_MM = 0.9;
  private static final double CLEAR_MM = 2;
  private static final double SIZE = 8;
  private static final double SIDE_WIDTH_MM = 40;

  private final Placement placement;
  private final TapeTable table;
  private final Canvas canvas;
  private final PlanFrame frame;
  private final LabelPlacer placer;
  private boolean whole = true;

  /** The words on the picture; left and right name the sides of the baseline. */
  public record Words(String north, String left, String right) {}

  private SwingPicture(Placement placement, TapeTable table, Canvas canvas, PlanFrame frame) {
    this.placement = placement;
    this.table = table;
    this.canvas = canvas;
    this.frame = frame;
    this.placer = new LabelPlacer(canvas);
  }

  /**
   * Draws the picture as low as the names have room in; where not even the highest has room for
   * all, the marks go without their place in the order, which the table gives.
   *
   * @param widthMm its width
   * @param heightsMm the most it may be high, tried in turn; the last is taken in any case
   */
  public static Drawing draw(
      Placement placement,
      TapeTable table,
      Words words,
      Lettering lettering,
      double widthMm,
      List<Double> heightsMm,
      String id,
      String description) {
    for (boolean ordered : List.of(true, false)) {
      for (double height : heightsMm) {
        SwingPicture picture = of(placement, table, lettering, widthMm, height);
        picture.draw(words, ordered);
        boolean last = !ordered && height == heightsMm.get(heightsMm.size() - 1);
        if (picture.whole || last) {
          return picture.canvas.drawing(id, description);
        }
      }
    }
    throw new IllegalArgumentException("no heights to try");
  }

  private static SwingPicture of(
      Placement placement, TapeTable table, Lettering lettering, double widthMm, double most) {
    Extent extent = Extent.of(placement.marks().stream().map(PlacedMark::at).toList());
    DrawingScale scale = sketchScale(extent, widthMm - 2 * MARGIN_MM, most - 2 * MARGIN_MM);
    double shown = scale.millimetres(new Length(extent.heightMetres()));
    double height = Math.max(LEAST_HEIGHT_MM, Math.min(most, shown + 2 * MARGIN_MM));
    Canvas canvas = new Canvas(widthMm, height, lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, canvas.heightMm() / 2);
    return new SwingPicture(
        placement, table, canvas, new PlanFrame(extent.centre(), middle, scale));
  }

  /** As large as fits: a sketch needs no scale of the series. */
  private static DrawingScale sketchScale(Extent extent, double widthMm, double heightMm) {
    double ratio =
        Math.max(extent.widthMetres() * 1000 / widthMm, extent.heightMetres() * 1000 / heightMm);
    return new DrawingScale(
        UnitSystem.METRIC, Length.ofMillimetres(1), Length.ofMillimetres(ratio));
  }

  private Spot spot(String mark) {
    return frame.spot(placement.mark(mark).at());
  }

  private void draw(Words words, boolean ordered) {
    NorthArrow.draw(canvas, new Spot(NorthArrow.WIDTH_MM / 2, 2), words.north());
    Spot first = spot(table.baseline().first());
    Spot second = spot(table.baseline().second());
    canvas.line(first, second, Pen.HEAVY);
    canvas.dot(first, DOT_MM);
    canvas.dot(second, DOT_MM);
    keep(first);
    keep(second);
    walk();
    table.rows().forEach(row -> swing(row, first, second));
    name(table.baseline().first(), ordered ? " · 1" : "");
    name(table.baseline().second(), ordered ? " · 2" : "");
    table.rows().forEach(row -> name(row.mark(), ordered ? " · " + row.order() : ""));
    side(words.left(), first, second, 90);
    side(words.right(), first, second, -90);
  }

  private void keep(Spot spot) {
    canvas.keepFree(new Plate(spot, DOT_MM + 0.5, DOT_MM + 0.5, 0));
  }

  /** The way from mark to mark, on one side of the baseline and then on the other. */
  private void walk() {
    Optional<Row> before = Optional.empty();
    for (Row row : table.rows()) {
      boolean sameSide =
          before.filter(last -> !last.weak() && last.stand() == row.stand()).isPresent();
      if (sameSide && !row.weak() && !row.stand().isOnLine()) {
        canvas.line(spot(before.orElseThrow().mark()), spot(row.mark()), Pen.HAIR.dotted());
      }
      before = Optional.of(row);
    }
  }

  /** Two arcs that cross at a mark; a mark on the string line gets a stroke across it. */
  private void swing(Row row, Spot first, Spot second) {
    Spot mark = spot(row.mark());
    if (row.stand().isOnLine()) {
      double across = Spots.directionDegrees(first, second) + 90;
      canvas.line(
          Spots.towards(mark, across, -ARC_MM / 2),
          Spots.towards(mark, across, ARC_MM / 2),
          Pen.MEDIUM);
    } else {
      arc(first, mark);
      arc(second, mark);
    }
    keep(mark);
  }

  private void arc(Spot centre, Spot mark) {
    double radius = Spots.distanceMm(centre, mark);
    double half = Math.min(60, StrictMath.toDegrees(ARC_MM / radius));
    double towards = Spots.directionDegrees(centre, mark);
    canvas.under(new Element.Arc(centre, radius, towards - half, 2 * half, Pen.MEDIUM));
  }

  private void name(String mark, String order) {
    Spot at = spot(mark);
    Spot centre = frame.spot(centre());
    double outwards = Spots.distanceMm(at, centre) < 0.5 ? 45 : Spots.directionDegrees(centre, at);
    whole &= placer.place(Wording.bold(mark + order, SIZE), at, CLEAR_MM, outwards);
  }

  private Point centre() {
    return frame.ground();
  }

  /** Names a side of the baseline, out from its middle. */
  private void side(String words, Spot first, Spot second, double turn) {
    double degrees = Spots.directionDegrees(first, second) + turn;
    Spot at =
        Spots.towards(Spots.middle(first, second), degrees, Spots.distanceMm(first, second) / 5);
    whole &=
        placer.placeOver(
            Wording.wrapped(words, SIZE, SIDE_WIDTH_MM, canvas.lettering()), at, 0, degrees);
  }
}
