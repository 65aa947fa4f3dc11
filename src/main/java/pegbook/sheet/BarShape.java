package pegbook.sheet;

import java.util.Map;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** The shape of a bar with the lengths that its bender needs; not to scale. */
final class BarShape {
  /** Width of the drawing on paper. */
  static final double WIDTH_MM = 64;

  private static final double STRAIGHT_HEIGHT_MM = 9;
  private static final double RING_HEIGHT_MM = 23;
  private static final double RING_RADIUS_MM = 8;
  private static final double LINE_MM = 4.2;
  private static final double TYPE = 9;

  private BarShape() {}

  /** A line of the bar list; rings where it is bent. */
  static Drawing of(Writing writing, BarLine line, Optional<Rings> rings, String id) {
    return rings
        .map(ring -> ring(writing, line, ring, id))
        .orElseGet(() -> straight(writing, line, id));
  }

  private static Drawing straight(Writing writing, BarLine line, String id) {
    Canvas canvas = new Canvas(WIDTH_MM, STRAIGHT_HEIGHT_MM, writing.lettering());
    canvas.line(new Spot(3, 2.5), new Spot(WIDTH_MM - 3, 2.5), Pen.HEAVY);
    write(canvas, new Spot(WIDTH_MM / 2, 4.2), writing.formats().length(line.cut()), true);
    return canvas.drawing(id, description(writing, line, "straight"));
  }

  private static Drawing ring(Writing writing, BarLine line, Rings rings, String id) {
    Canvas canvas = new Canvas(WIDTH_MM, RING_HEIGHT_MM, writing.lettering());
    Spot centre = new Spot(RING_RADIUS_MM + 2, RING_HEIGHT_MM / 2);
    canvas.under(new Element.Arc(centre, RING_RADIUS_MM, 100, 350, Pen.HEAVY));
    canvas.under(new Element.Arc(centre, RING_RADIUS_MM - 1, 55, 45, Pen.HEAVY));
    hook(canvas, Spots.towards(centre, 100, RING_RADIUS_MM), -60);
    hook(canvas, Spots.towards(centre, 55, RING_RADIUS_MM - 1), 190);
    double left = 2 * RING_RADIUS_MM + 8;
    double top = RING_HEIGHT_MM - 5;
    String[] keys = {"outside", "overlap", "hook", "pin", "stock"};
    String[] values = {
      writing.formats().size(rings.outside()),
      writing.formats().size(rings.overlap()),
      writing.formats().size(rings.hookExtension()),
      writing.formats().size(rings.insideBend()),
      writing.formats().length(line.cut())
    };
    for (int i = 0; i < keys.length; i++) {
      String words = writing.texts().say("steel-plan.shape." + keys[i], Map.of("value", values[i]));
      write(canvas, new Spot(left, top - i * LINE_MM), words, false);
    }
    return canvas.drawing(id, description(writing, line, "ring"));
  }

  private static void hook(Canvas canvas, Spot from, double degrees) {
    canvas.under(new Element.Line(from, Spots.towards(from, degrees, 4), Pen.HEAVY));
  }

  private static void write(Canvas canvas, Spot at, String text, boolean centred) {
    canvas.writeFixed(
        new Element.Label(
            at,
            text,
            TYPE,
            centred ? Element.Anchor.CENTRE : Element.Anchor.LEFT,
            0,
            false,
            false));
  }

  private static String description(Writing writing, BarLine line, String shape) {
    return writing
        .texts()
        .say(
            "steel-plan.shape." + shape + "-description",
            Map.of("mark", line.barMark(), "cut", writing.formats().length(line.cut())));
  }
}
