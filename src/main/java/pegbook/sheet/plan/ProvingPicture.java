package pegbook.sheet.plan;

import pegbook.calc.provingmarks.ProvingMarks;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
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
 * The marks and the distances that prove them. North is up. It is made to be looked at, not to be
 * measured.
 */
public final class ProvingPicture {
  private static final double MARGIN_MM = 11;
  private static final double LEAST_HEIGHT_MM = 48;
  private static final double MOST_HEIGHT_MM = 80;
  private static final double DOT_MM = 0.9;
  private static final double CLEAR_MM = 2.2;
  private static final double SIZE = 8;

  private ProvingPicture() {}

  /** Draws the picture across the page. */
  public static Drawing draw(
      Placement placement,
      ProvingMarks proving,
      String north,
      Lettering lettering,
      double widthMm,
      String description) {
    Extent extent = Extent.of(placement.marks().stream().map(PlacedMark::at).toList());
    double width = widthMm - 2 * MARGIN_MM;
    double height = MOST_HEIGHT_MM - 2 * MARGIN_MM;
    double ratio =
        Math.max(extent.widthMetres() * 1000 / width, extent.heightMetres() * 1000 / height);
    DrawingScale scale =
        new DrawingScale(UnitSystem.METRIC, Length.ofMillimetres(1), Length.ofMillimetres(ratio));
    double shown = scale.millimetres(new Length(extent.heightMetres()));
    Canvas canvas =
        new Canvas(widthMm, Math.max(LEAST_HEIGHT_MM, shown + 2 * MARGIN_MM), lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, canvas.heightMm() / 2);
    PlanFrame frame = new PlanFrame(extent.centre(), middle, scale);
    NorthArrow.draw(canvas, new Spot(NorthArrow.WIDTH_MM / 2, 2), north);
    proving
        .checks()
        .forEach(
            check ->
                canvas.line(
                    frame.spot(placement.mark(check.pair().first()).at()),
                    frame.spot(placement.mark(check.pair().second()).at()),
                    Pen.THIN));
    for (PlacedMark mark : placement.marks()) {
      Spot at = frame.spot(mark.at());
      canvas.dot(at, DOT_MM);
      canvas.keepFree(new Plate(at, DOT_MM + 0.3, DOT_MM + 0.3, 0));
    }
    LabelPlacer placer = new LabelPlacer(canvas);
    for (PlacedMark mark : placement.marks()) {
      Spot at = frame.spot(mark.at());
      double outwards =
          Spots.distanceMm(at, middle) < 0.5 ? 45 : Spots.directionDegrees(middle, at);
      placer.place(Wording.bold(mark.id(), SIZE), at, CLEAR_MM, outwards);
    }
    return canvas.drawing("proving-picture", description);
  }
}
