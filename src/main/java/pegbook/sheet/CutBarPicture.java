package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.cutplan.CutPlan.CutBar;
import pegbook.calc.cutplan.CutPlan.Run;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A bar to scale: its pieces from the left in the order of cutting, what is left hatched. */
final class CutBarPicture {
  private static final double HEIGHT_MM = 6.5;
  private static final double EDGE_MM = 0.5;
  private static final double LOW_MM = 0.5;
  private static final double HIGH_MM = 6;
  private static final double TYPE = 9;
  private static final double HATCH_MM = 1.6;

  private final Writing writing;
  private final DrawingScale scale;
  private final Canvas canvas;

  private CutBarPicture(Writing writing, DrawingScale scale, double widthMm) {
    this.writing = writing;
    this.scale = scale;
    this.canvas = new Canvas(widthMm, HEIGHT_MM, writing.lettering());
  }

  /** The width that a drawing of a bar takes. */
  static double widthMm(Length bar, DrawingScale scale) {
    return scale.millimetres(bar) + 2 * EDGE_MM;
  }

  static Drawing of(Writing writing, CutBar bar, DrawingScale scale, String id, String words) {
    return new CutBarPicture(writing, scale, widthMm(bar.length(), scale)).draw(bar, id, words);
  }

  private Drawing draw(CutBar bar, String id, String words) {
    double from = EDGE_MM;
    for (Run run : bar.runs()) {
      for (int i = 0; i < run.count(); i++) {
        double to = from + scale.millimetres(run.piece().length());
        box(from, to, Pen.MEDIUM);
        piece(run, from, to);
        from = to;
      }
    }
    double end = EDGE_MM + scale.millimetres(bar.length());
    double left = end - scale.millimetres(bar.left());
    if (end - left > 0.2) {
      left(bar, left, end);
    }
    return canvas.drawing(id, words);
  }

  private void piece(Run run, double from, double to) {
    String length = writing.formats().length(run.piece().length());
    Spot middle = new Spot((from + to) / 2, HEIGHT_MM / 2);
    Element.Label both = label(middle, run.piece().name() + "  " + length, false);
    if (fits(both, from, to)) {
      canvas.write(both);
    } else {
      Element.Label name = label(middle, run.piece().name(), true);
      if (fits(name, from, to)) {
        canvas.write(name);
      }
    }
  }

  private void left(CutBar bar, double from, double to) {
    canvas.under(new Element.Hatch(corners(from, to), 45, HATCH_MM, Pen.HAIR));
    box(from, to, bar.isKept() ? Pen.MEDIUM : Pen.HAIR.dashed());
    String words =
        writing
            .texts()
            .say(
                bar.isKept() ? "cut-plan.picture.keep" : "cut-plan.picture.left",
                Map.of("left", writing.formats().length(bar.left())));
    Element.Label label =
        new Element.Label(
            new Spot((from + to) / 2, HEIGHT_MM / 2),
            words,
            TYPE,
            Element.Anchor.CENTRE_MIDDLE,
            0,
            false,
            true);
    if (fits(label, from, to)) {
      canvas.write(label);
    }
  }

  private static Element.Label label(Spot middle, String text, boolean bold) {
    return new Element.Label(middle, text, TYPE, Element.Anchor.CENTRE_MIDDLE, 0, bold, false);
  }

  private boolean fits(Element.Label label, double from, double to) {
    Lettering lettering = writing.lettering();
    return 2 * Plate.of(label, lettering).halfWidthMm() < to - from - 1.6;
  }

  private void box(double from, double to, Pen pen) {
    canvas.under(new Element.Path(corners(from, to), true, Optional.of(pen), Optional.empty()));
  }

  private static List<Spot> corners(double from, double to) {
    return List.of(
        new Spot(from, LOW_MM),
        new Spot(to, LOW_MM),
        new Spot(to, HIGH_MM),
        new Spot(from, HIGH_MM));
  }
}
