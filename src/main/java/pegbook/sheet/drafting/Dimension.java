package pegbook.sheet.drafting;

import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * A dimension line after ISO 129-1: extension lines that begin off the feature and run past the
 * dimension line, oblique strokes at its ends, the value over the line and parallel to it, read
 * from below or from the right. A value too long for its line stands past the line's end.
 */
public final class Dimension {
  private static final double GAP_MM = 1;
  private static final double OVERSHOOT_MM = 1.5;
  private static final double STROKE_MM = 1.4;
  private static final double TEXT_OVER_LINE_MM = 0.9;

  /** How far a dimension line steps on when its value has no room, and how often. */
  private static final double STEP_MM = 6;

  private static final int STEPS = 5;

  /** Where along a line a value is tried. */
  private static final double[] PARTS = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  private Dimension() {}

  /**
   * Draws a dimension.
   *
   * @param from where it begins, on the feature
   * @param to where it ends
   * @param offsetMm how far the dimension line lies to the left of the line from beginning to end;
   *     negative: to the right; steps further out while the value has no room
   * @param value as printed
   * @param size height of type in points
   * @return whether there was room; when not, nothing is drawn
   */
  public static boolean draw(
      Canvas canvas, Spot from, Spot to, double offsetMm, String value, double size) {
    for (int i = 0; i < STEPS; i++) {
      double offset = offsetMm + Math.signum(offsetMm) * i * STEP_MM;
      Line line = Line.of(from, to, offset);
      if (line.isInside(canvas) && line.write(canvas, value, size)) {
        line.draw(canvas, from, to);
        return true;
      }
    }
    return false;
  }

  /**
   * Draws a dimension on the straight way between two places, without extension lines; the value
   * stands at its middle or, where that is taken, nearer to one end.
   *
   * @return whether there was room; when not, nothing is drawn
   */
  public static boolean between(Canvas canvas, Spot from, Spot to, String value, double size) {
    Line line = Line.of(from, to, 0);
    if (line.isInside(canvas) && line.writeAnywhere(canvas, value, size)) {
      line.draw(canvas, from, to);
      return true;
    }
    return false;
  }

  /** The dimension line itself. */
  private record Line(Spot from, Spot to, double degrees, double offsetMm) {
    static Line of(Spot from, Spot to, double offsetMm) {
      double degrees = Spots.directionDegrees(from, to);
      return new Line(
          Spots.towards(from, degrees + 90, offsetMm),
          Spots.towards(to, degrees + 90, offsetMm),
          degrees,
          offsetMm);
    }

    boolean isInside(Canvas canvas) {
      Plate ends =
          Plate.between(
              Math.min(from.x(), to.x()) - STROKE_MM,
              Math.min(from.y(), to.y()) - STROKE_MM,
              Math.max(from.x(), to.x()) + STROKE_MM,
              Math.max(from.y(), to.y()) + STROKE_MM);
      return ends.isInside(canvas.area()) && canvas.isClear(from, to);
    }

    /** The value over the middle of the line, else past either end. */
    boolean write(Canvas canvas, String value, double size) {
      double width = canvas.lettering().widthMm(value, size, false);
      double length = Spots.distanceMm(from, to);
      if (width + 2 * STROKE_MM <= length) {
        return canvas.write(label(Spots.middle(from, to), value, size, Element.Anchor.CENTRE));
      }
      double past = width / 2 + 2 * STROKE_MM;
      return canvas.write(
              label(Spots.towards(to, degrees, past), value, size, Element.Anchor.CENTRE))
          || canvas.write(
              label(Spots.towards(from, degrees, -past), value, size, Element.Anchor.CENTRE));
    }

    /** The value over a part of the line, else past either end. */
    boolean writeAnywhere(Canvas canvas, String value, double size) {
      double room = canvas.lettering().widthMm(value, size, false) / 2 + 2 * STROKE_MM;
      double length = Spots.distanceMm(from, to);
      for (double part : PARTS) {
        double at = length * part;
        if (at >= room
            && length - at >= room
            && canvas.write(
                label(Spots.towards(from, degrees, at), value, size, Element.Anchor.CENTRE))) {
          return true;
        }
      }
      return 2 * room > length && write(canvas, value, size);
    }

    private Element.Label label(Spot on, String value, double size, Element.Anchor anchor) {
      double turn = Spots.readable(degrees);
      Spot over = Spots.towards(on, turn + 90, TEXT_OVER_LINE_MM);
      return new Element.Label(over, value, size, anchor, turn, false, true);
    }

    void draw(Canvas canvas, Spot featureFrom, Spot featureTo) {
      canvas.line(from, to, Pen.HAIR);
      extension(canvas, featureFrom, from);
      extension(canvas, featureTo, to);
      stroke(canvas, from);
      stroke(canvas, to);
    }

    private void extension(Canvas canvas, Spot feature, Spot end) {
      double out = degrees + 90;
      double sign = Math.signum(offsetMm);
      if (Math.abs(offsetMm) > GAP_MM) {
        canvas.line(
            Spots.towards(feature, out, sign * GAP_MM),
            Spots.towards(end, out, sign * OVERSHOOT_MM),
            Pen.HAIR);
      }
    }

    private void stroke(Canvas canvas, Spot end) {
      canvas.line(
          Spots.towards(end, degrees + 45, -STROKE_MM),
          Spots.towards(end, degrees + 45, STROKE_MM),
          Pen.MEDIUM);
    }
  }
}
