package pegbook.sheet.plan;

import java.util.List;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** What stands on the left of a swing sketch: the large name, north, and the notes. */
final class SwingBlock {
  /** Its width, which the drawing beside it keeps free. */
  static final double WIDTH_MM = 29;

  /** Of its type and the drawing's. */
  static final double SIZE = 9;

  private static final double NAME_SIZE = 17;
  private static final double LEADING_MM = 3.9;

  /** Between two notes, in parts of a line. */
  private static final double GAP = 1 / 3.0;

  /** Notes that are too many are set a little smaller. */
  private static final double LEAST_SIZE = 8.1;

  private static final double EDGE_MM = 2;
  private static final double NORTH_MM = 8;
  private static final double NORTH_LETTER_MM = 4;

  /** Height of the large name, and of all that stands beside it. */
  private static final double NAME_HEIGHT_MM = 4.6;

  private static final double HEAD_MM = 13.5;

  private final SwingSketch.Content content;
  private final Canvas canvas;

  SwingBlock(SwingSketch.Content content, Canvas canvas) {
    this.content = content;
    this.canvas = canvas;
  }

  /**
   * Draws it.
   *
   * @param azimuth of the line that runs to the right in the drawing, degrees
   */
  void draw(double azimuth) {
    block();
    north(azimuth);
  }

  /** North as the turned drawing has it, beside the large name. */
  private void north(double degrees) {
    Spot middle = new Spot(WIDTH_MM - NORTH_MM, canvas.heightMm() - HEAD_MM / 2);
    Spot tip = Spots.towards(middle, degrees, NORTH_MM / 2 - 1);
    Spot tail = Spots.towards(middle, degrees, -NORTH_MM / 2);
    canvas.line(tail, tip, Pen.THIN);
    canvas.line(tip, Spots.towards(tip, degrees + 155, 2), Pen.THIN);
    canvas.line(tip, Spots.towards(tip, degrees - 155, 2), Pen.THIN);
    fixed(
        Spots.towards(tip, degrees, 2),
        content.north(),
        SIZE - 1,
        Element.Anchor.CENTRE_MIDDLE,
        false);
  }

  private void fixed(Spot at, String text, double size, Element.Anchor anchor, boolean bold) {
    canvas.writeFixed(new Element.Label(at, text, size, anchor, 0, bold, false));
  }

  /** As large as leaves room for north beside it, wherever that points. */
  private double nameSize() {
    double north = NORTH_MM + NORTH_MM / 2 + 1 + NORTH_LETTER_MM / 2;
    double room = WIDTH_MM - EDGE_MM - north;
    double width = canvas.lettering().widthMm(content.title(), NAME_SIZE, true);
    return NAME_SIZE * Math.min(1, room / width);
  }

  /** The large name and what stands under it. */
  private void block() {
    Spot name = new Spot(EDGE_MM, canvas.heightMm() - EDGE_MM - NAME_HEIGHT_MM);
    fixed(name, content.title(), nameSize(), Element.Anchor.LEFT, true);
    List<List<String>> notes = content.notes().stream().map(note -> wrapped(note)).toList();
    double wanted = notes.stream().mapToDouble(lines -> lines.size() + GAP).sum() * LEADING_MM;
    double share = Math.max(LEAST_SIZE / SIZE, Math.min(1, (top() - EDGE_MM / 2) / wanted));
    double y = top() - LEADING_MM * share;
    for (List<String> lines : notes) {
      for (String line : lines) {
        fixed(new Spot(EDGE_MM, y), line, SIZE * share, Element.Anchor.LEFT, false);
        y -= LEADING_MM * share;
      }
      y -= LEADING_MM * share * GAP;
    }
  }

  /** Where the notes begin. */
  private double top() {
    return canvas.heightMm() - HEAD_MM;
  }

  private List<String> wrapped(String note) {
    return Wording.wrapped(note, SIZE, WIDTH_MM - EDGE_MM - 1, canvas.lettering()).lines();
  }
}
