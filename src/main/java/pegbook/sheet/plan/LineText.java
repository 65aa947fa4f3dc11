package pegbook.sheet.plan;

import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * Text that stands on a line and runs along it.
 *
 * @param canvas where it is written
 * @param from the line's beginning
 * @param to its end
 * @param size height of type in points
 */
record LineText(Canvas canvas, Spot from, Spot to, double size) {
  private static final double OVER_LINE_MM = 0.8;
  private static final double END_MM = 2;

  /**
   * Writes a text at a part of the line, over it or else under it.
   *
   * @param part from 0 at its beginning to 1 at its end
   * @return whether there was room
   */
  boolean write(String text, double part) {
    double length = Spots.distanceMm(from, to);
    double half = canvas.lettering().widthMm(text, size, false) / 2 + END_MM;
    double at = length * part;
    if (at < half || at > length - half) {
      return false;
    }
    double degrees = Spots.directionDegrees(from, to);
    double turn = Spots.readable(degrees);
    Spot on = Spots.towards(from, degrees, at);
    return write(text, Spots.towards(on, turn + 90, OVER_LINE_MM), turn)
        || write(text, Spots.towards(on, turn - 90, OVER_LINE_MM + size * 0.25), turn);
  }

  private boolean write(String text, Spot at, double turn) {
    return canvas.write(
        new Element.Label(at, text, size, Element.Anchor.CENTRE, turn, false, true));
  }
}
