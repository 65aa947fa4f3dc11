package pegbook.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * How cut soil, concrete and gravel are shown: trade habit, and told apart without colour. Text
 * does not avoid them; clear the ground under it.
 */
public final class Fills {
  private static final double SOIL_SPACING_MM = 2.5;
  private static final double PEBBLE_GRID_MM = 2.2;
  private static final double AGGREGATE_GRID_MM = 3;

  /** Steps of a low-discrepancy row: they scatter without chance. */
  private static final double SCATTER_X = 0.7548776662466927;

  private static final double SCATTER_Y = 0.5698402909980532;

  private Fills() {}

  /** Soil: slanting hair lines. */
  public static void soil(Canvas canvas, List<Spot> polygon) {
    canvas.under(new Element.Hatch(polygon, 45, SOIL_SPACING_MM, Pen.HAIR));
  }

  /** The surface of the ground: a line with short strokes under it. */
  public static void groundLine(Canvas canvas, Spot from, Spot to) {
    canvas.line(from, to, Pen.THICK);
    double degrees = Spots.directionDegrees(from, to);
    double length = Spots.distanceMm(from, to);
    for (double along = 1; along < length - 1; along += 4) {
      for (int stroke = 0; stroke < 3 && along + stroke * 0.9 < length; stroke++) {
        Spot top = Spots.towards(from, degrees, along + stroke * 0.9);
        canvas.under(new Element.Line(top, Spots.towards(top, degrees - 135, 1.6), Pen.HAIR));
      }
    }
  }

  /** Concrete: dots and small triangles, scattered. */
  public static void concrete(Canvas canvas, List<Spot> polygon) {
    int number = 0;
    for (Spot spot : scattered(polygon, AGGREGATE_GRID_MM, 0.6)) {
      if (number++ % 3 == 0) {
        double turn = 37.0 * number;
        canvas.under(
            new Element.Path(
                List.of(
                    Spots.towards(spot, turn, 0.6),
                    Spots.towards(spot, turn + 120, 0.6),
                    Spots.towards(spot, turn + 240, 0.6)),
                true,
                Optional.of(Pen.HAIR),
                Optional.empty()));
      } else {
        canvas.under(new Element.Circle(spot, 0.15, Optional.empty(), Optional.of(Ink.BLACK)));
      }
    }
  }

  /** Gravel: small rings. */
  public static void gravel(Canvas canvas, List<Spot> polygon) {
    int number = 0;
    for (Spot spot : scattered(polygon, PEBBLE_GRID_MM, 0.9)) {
      double radius = 0.55 + 0.15 * (number++ % 3);
      canvas.under(new Element.Circle(spot, radius, Optional.of(Pen.HAIR), Optional.empty()));
    }
  }

  /** Places of a loose grid inside a polygon, none nearer to its edge than a margin. */
  private static List<Spot> scattered(List<Spot> polygon, double gridMm, double marginMm) {
    double left = polygon.stream().mapToDouble(Spot::x).min().orElse(0);
    double right = polygon.stream().mapToDouble(Spot::x).max().orElse(0);
    double low = polygon.stream().mapToDouble(Spot::y).min().orElse(0);
    double high = polygon.stream().mapToDouble(Spot::y).max().orElse(0);
    List<Spot> spots = new ArrayList<>();
    int number = 0;
    for (double y = low; y < high; y += gridMm) {
      for (double x = left; x < right; x += gridMm) {
        number++;
        Spot spot =
            new Spot(
                x + gridMm * ((number * SCATTER_X) % 1), y + gridMm * ((number * SCATTER_Y) % 1));
        if (isInside(spot, polygon) && edgeMm(spot, polygon) >= marginMm) {
          spots.add(spot);
        }
      }
    }
    return spots;
  }

  private static boolean isInside(Spot spot, List<Spot> polygon) {
    boolean inside = false;
    for (int i = 0; i < polygon.size(); i++) {
      Spot one = polygon.get(i);
      Spot next = polygon.get((i + 1) % polygon.size());
      boolean spans = (one.y() > spot.y()) != (next.y() > spot.y());
      if (spans
          && spot.x()
              < one.x() + (spot.y() - one.y()) / (next.y() - one.y()) * (next.x() - one.x())) {
        inside = !inside;
      }
    }
    return inside;
  }

  private static double edgeMm(Spot spot, List<Spot> polygon) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < polygon.size(); i++) {
      Spot one = polygon.get(i);
      Spot next = polygon.get((i + 1) % polygon.size());
      double length = Spots.distanceMm(one, next);
      double share =
          length == 0
              ? 0
              : ((spot.x() - one.x()) * (next.x() - one.x())
                      + (spot.y() - one.y()) * (next.y() - one.y()))
                  / (length * length);
      double clamped = Math.max(0, Math.min(1, share));
      Spot foot =
          new Spot(
              one.x() + clamped * (next.x() - one.x()), one.y() + clamped * (next.y() - one.y()));
      least = Math.min(least, Spots.distanceMm(spot, foot));
    }
    return least;
  }
}
