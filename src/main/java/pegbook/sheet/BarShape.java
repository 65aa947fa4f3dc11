package pegbook.sheet;

import java.util.Map;
import java.util.stream.Stream;
import pegbook.calc.steelplan.SteelPlan;
import pegbook.calc.steelplan.SteelPlan.BarLine;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.calc.steelplan.SteelPlan.Uprights;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
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
  private static final double HOOKED_HEIGHT_MM = 21;
  private static final double BEND_MM = 2;
  private static final double RING_HEIGHT_MM = 23;
  private static final double RING_RADIUS_MM = 8;
  private static final double LINE_MM = 4.2;
  private static final double TYPE = 9;

  private BarShape() {}

  /** A bar with a hook at one end: from the back of the hook to the other end. */
  private record Hooked(Length rise, Hook hook) {}

  /** A line of the bar list. */
  static Drawing of(Writing writing, SteelPlan plan, BarLine line, String id) {
    return switch (line.shape()) {
      case STRAIGHT -> straight(writing, line, id);
      case HOOKED_ONE_END -> hooked(writing, line, hooked(plan, line), id);
      case RING -> ring(writing, line, rings(plan, line), id);
    };
  }

  private static Stream<Cage> cages(SteelPlan plan, BarLine line) {
    return plan.cages().stream()
        .filter(
            cage ->
                cage.pieces().stream().anyMatch(piece -> piece.barMark().equals(line.barMark())));
  }

  private static Rings rings(SteelPlan plan, BarLine line) {
    return cages(plan, line).flatMap(cage -> cage.rings().stream()).findFirst().orElseThrow();
  }

  private static Hooked hooked(SteelPlan plan, BarLine line) {
    Uprights uprights = cages(plan, line).map(Cage::uprights).findFirst().orElseThrow();
    return uprights
        .starters()
        .flatMap(starters -> starters.hook().map(hook -> new Hooked(starters.rise(), hook)))
        .or(() -> uprights.hook().map(hook -> new Hooked(uprights.rise(), hook)))
        .orElseThrow();
  }

  /** Lying on its side: the leg at the left. */
  private static Drawing hooked(Writing writing, BarLine line, Hooked hooked, String id) {
    Canvas canvas = new Canvas(WIDTH_MM, HOOKED_HEIGHT_MM, writing.lettering());
    double left = 3;
    double low = 6.5;
    canvas.line(new Spot(left, HOOKED_HEIGHT_MM - 1), new Spot(left, low + BEND_MM), Pen.HEAVY);
    canvas.under(
        new Element.Arc(new Spot(left + BEND_MM, low + BEND_MM), BEND_MM, 180, 90, Pen.HEAVY));
    canvas.line(new Spot(left + BEND_MM, low), new Spot(WIDTH_MM - 3, low), Pen.HEAVY);
    Dimension.draw(
        canvas,
        new Spot(left, low),
        new Spot(WIDTH_MM - 3, low),
        -4,
        writing.formats().length(hooked.rise()),
        TYPE);
    String[] keys = {"leg", "pin", "stock"};
    String[] values = {
      writing.formats().size(hooked.hook().leg()),
      writing.formats().size(hooked.hook().insideBend()),
      writing.formats().length(line.cut())
    };
    for (int i = 0; i < keys.length; i++) {
      String words = writing.texts().say("steel-plan.shape." + keys[i], Map.of("value", values[i]));
      write(canvas, new Spot(left + 4, HOOKED_HEIGHT_MM - 4 - i * LINE_MM), words, false);
    }
    return canvas.drawing(id, description(writing, line, "hooked"));
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
