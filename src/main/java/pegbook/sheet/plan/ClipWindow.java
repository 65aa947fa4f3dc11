package pegbook.sheet.plan;

import java.util.List;
import java.util.Optional;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drawing.Spot;

/** Cuts lines off at an upright window. */
record ClipWindow(double left, double bottom, double right, double top) {

  /** The part of a line that lies in the window: its two ends. */
  record Part(Spot from, Spot to) {}

  Plate plate() {
    return Plate.between(left, bottom, right, top);
  }

  /** Its corners, anticlockwise. */
  List<Spot> corners() {
    return List.of(
        new Spot(left, bottom), new Spot(right, bottom), new Spot(right, top), new Spot(left, top));
  }

  boolean contains(Spot spot) {
    return spot.x() >= left && spot.x() <= right && spot.y() >= bottom && spot.y() <= top;
  }

  /** True for a circle wholly inside. */
  boolean contains(Spot centre, double radius) {
    return centre.x() - radius >= left
        && centre.x() + radius <= right
        && centre.y() - radius >= bottom
        && centre.y() + radius <= top;
  }

  /** The part of a line inside; nothing when it passes by. */
  Optional<Part> cut(Spot from, Spot to) {
    double[] span = {0, 1};
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    boolean seen =
        narrow(span, -dx, from.x() - left)
            && narrow(span, dx, right - from.x())
            && narrow(span, -dy, from.y() - bottom)
            && narrow(span, dy, top - from.y());
    if (!seen || span[1] - span[0] < 1e-9) {
      return Optional.empty();
    }
    return Optional.of(
        new Part(
            new Spot(from.x() + span[0] * dx, from.y() + span[0] * dy),
            new Spot(from.x() + span[1] * dx, from.y() + span[1] * dy)));
  }

  /** Narrows a stretch of the line's parameter by one edge: keeps where {@code t · way <= room}. */
  private static boolean narrow(double[] span, double way, double room) {
    if (way == 0) {
      return room >= 0;
    }
    double at = room / way;
    if (way > 0) {
      span[1] = Math.min(span[1], at);
    } else {
      span[0] = Math.max(span[0], at);
    }
    return span[0] <= span[1];
  }
}
