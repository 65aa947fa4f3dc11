package pegbook.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * The strokes of a hatch, cut exactly at the polygon's edges. All hatches of one angle and spacing
 * lie on one grid through the drawing's origin, so that neighbouring areas match.
 */
final class Hatching {
  private Hatching() {}

  /** One stroke. */
  record Stroke(Spot from, Spot to) {}

  static List<Stroke> strokes(Element.Hatch hatch) {
    if (!(hatch.spacingMm() >= 0.2)) {
      throw new IllegalArgumentException("hatch lines " + hatch.spacingMm() + " mm apart");
    }
    double angle = StrictMath.toRadians(hatch.angleDegrees());
    List<Spot> level = hatch.polygon().stream().map(spot -> turned(spot, -angle)).toList();
    double low = level.stream().mapToDouble(Spot::y).min().orElse(0);
    double high = level.stream().mapToDouble(Spot::y).max().orElse(0);
    List<Stroke> strokes = new ArrayList<>();
    long last = (long) Math.floor(high / hatch.spacingMm());
    for (long at = (long) Math.ceil(low / hatch.spacingMm()); at <= last; at++) {
      double height = at * hatch.spacingMm();
      double[] crossings = crossings(level, height);
      for (int pair = 0; pair + 1 < crossings.length; pair += 2) {
        strokes.add(
            new Stroke(
                turned(new Spot(crossings[pair], height), angle),
                turned(new Spot(crossings[pair + 1], height), angle)));
      }
    }
    return strokes;
  }

  /** Where a level line enters and leaves the polygon, from left to right. */
  private static double[] crossings(List<Spot> polygon, double height) {
    List<Double> crossings = new ArrayList<>();
    Spot before = polygon.get(polygon.size() - 1);
    for (Spot spot : polygon) {
      // A corner on the line belongs to the edge below it only, so that it counts once.
      if ((before.y() <= height) != (spot.y() <= height)) {
        double share = (height - before.y()) / (spot.y() - before.y());
        crossings.add(before.x() + share * (spot.x() - before.x()));
      }
      before = spot;
    }
    double[] sorted = crossings.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted;
  }

  private static Spot turned(Spot spot, double angle) {
    double cosine = StrictMath.cos(angle);
    double sine = StrictMath.sin(angle);
    return new Spot(spot.x() * cosine - spot.y() * sine, spot.x() * sine + spot.y() * cosine);
  }
}
