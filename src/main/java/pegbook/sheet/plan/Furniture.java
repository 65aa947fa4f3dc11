package pegbook.sheet.plan;

import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.CheckBar;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.ScaleBar;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** What stands under every plan: north arrow, scale with its bar, check bar. */
final class Furniture {
  /** Height of the strip that holds it. */
  static final double HEIGHT_MM = 23;

  private static final double GAP_MM = 4;
  private static final double SIZE = 9;

  private Furniture() {}

  /** Draws the strip along the lower edge. */
  static void draw(Canvas canvas, DrawingScale scale, PlanWords words) {
    double checkMm = CheckBar.length(scale.units()).millimetres();
    double barFrom = NorthArrow.WIDTH_MM + GAP_MM;
    double checkFrom = canvas.widthMm() - checkMm - 1;
    canvas.line(new Spot(0, HEIGHT_MM), new Spot(canvas.widthMm(), HEIGHT_MM), Pen.THIN);
    NorthArrow.draw(canvas, new Spot(NorthArrow.WIDTH_MM / 2, 2), words.north());
    ScaleBar.draw(
        canvas, new Spot(barFrom, 3), scale, checkFrom - barFrom - 4 * GAP_MM, words.round());
    canvas.writeFixed(
        new Element.Label(
            new Spot(barFrom, 3 + ScaleBar.HEIGHT_MM + GAP_MM / 2),
            scale.text(),
            SIZE,
            Element.Anchor.LEFT,
            0,
            true,
            false));
    CheckBar.draw(canvas, new Spot(checkFrom, 3), scale.units(), words.checkBar());
  }
}
