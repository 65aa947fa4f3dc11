package pegbook.testing;

import java.util.List;
import java.util.Locale;

/** An upright box on a page, millimetres from the page's lower left corner. */
public record Box(double left, double bottom, double right, double top) {

  /** The smallest box round some places; a loop, because whole pages of lines pass here. */
  public static Box around(List<Position> places) {
    if (places.isEmpty()) {
      throw new IllegalArgumentException("no places");
    }
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Position place : places) {
      left = Math.min(left, place.x());
      bottom = Math.min(bottom, place.y());
      right = Math.max(right, place.x());
      top = Math.max(top, place.y());
    }
    return new Box(left, bottom, right, top);
  }

  /** The smallest box round some boxes. */
  public static Box aroundAll(List<Box> boxes) {
    return around(
        boxes.stream()
            .flatMap(
                box ->
                    List.of(new Position(box.left, box.bottom), new Position(box.right, box.top))
                        .stream())
            .toList());
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public Position centre() {
    return new Position((left + right) / 2, (bottom + top) / 2);
  }

  /** How deep two boxes lie in one another; negative when they stand apart. */
  public double overlap(Box other) {
    return Math.min(
        Math.min(right, other.right) - Math.max(left, other.left),
        Math.min(top, other.top) - Math.max(bottom, other.bottom));
  }

  /** How far another box sticks out of this one; zero or less when it is inside. */
  public double excess(Box other) {
    return Math.max(
        Math.max(left - other.left, other.right - right),
        Math.max(bottom - other.bottom, other.top - top));
  }

  /** The part that two boxes share; empty boxes have no width or height. */
  public Box shared(Box other) {
    double newLeft = Math.max(left, other.left);
    double newBottom = Math.max(bottom, other.bottom);
    return new Box(
        newLeft,
        newBottom,
        Math.max(newLeft, Math.min(right, other.right)),
        Math.max(newBottom, Math.min(top, other.top)));
  }

  public boolean contains(Position place) {
    return place.x() >= left && place.x() <= right && place.y() >= bottom && place.y() <= top;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "(%.1f, %.1f) to (%.1f, %.1f) mm", left, bottom, right, top);
  }
}
