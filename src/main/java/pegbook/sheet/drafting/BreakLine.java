package pegbook.sheet.drafting;

import java.util.List;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A line with a zigzag in its middle: here a part is left out (ISO 128). */
public final class BreakLine {
  private static final double HALF_WIDTH_MM = 1.2;
  private static final double HEIGHT_MM = 3;

  private BreakLine() {}

  /** Draws it between two places at least 4 mm apart. */
  public static void draw(Canvas canvas, Spot from, Spot to) {
    double degrees = Spots.directionDegrees(from, to);
    Spot middle = Spots.middle(from, to);
    Spot before = Spots.towards(middle, degrees, -HALF_WIDTH_MM);
    Spot after = Spots.towards(middle, degrees, HALF_WIDTH_MM);
    canvas.path(
        List.of(
            from,
            before,
            Spots.towards(
                Spots.towards(before, degrees, HALF_WIDTH_MM / 2), degrees + 90, HEIGHT_MM),
            Spots.towards(
                Spots.towards(after, degrees, -HALF_WIDTH_MM / 2), degrees + 90, -HEIGHT_MM),
            after,
            to),
        false,
        Pen.THIN);
  }
}
