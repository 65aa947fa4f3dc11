package pegbook.render;

import java.util.ArrayList;
import java.util.List;
import pegbook.sheet.drawing.Spot;

/** Circles as cubic curves, which is all that a PDF knows. */
final class Curves {
  /** One cubic needs at most this much of the circle to stay within 0.00001 of its radius. */
  private static final double MOST_DEGREES = 45;

  private Curves() {}

  /** A cubic: from, the handle it leaves by, the handle it arrives by, to. */
  record Piece(Spot from, Spot leaving, Spot arriving, Spot to) {}

  /**
   * Part of a circle.
   *
   * @param from angle at which it starts, degrees anticlockwise from x
   * @param sweep angle it covers, signed
   */
  static List<Piece> arc(Spot centre, double radius, double from, double sweep) {
    int count = Math.max(1, (int) Math.ceil(Math.abs(sweep) / MOST_DEGREES));
    double step = StrictMath.toRadians(sweep / count);
    // The handle that puts the middle of the cubic on the circle.
    double handle = 4.0 / 3 * StrictMath.tan(step / 4) * radius;
    List<Piece> pieces = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      double start = StrictMath.toRadians(from) + at * step;
      pieces.add(
          new Piece(
              spot(centre, radius, 0, start),
              spot(centre, radius, handle, start),
              spot(centre, radius, -handle, start + step),
              spot(centre, radius, 0, start + step)));
    }
    return pieces;
  }

  private static Spot spot(Spot centre, double radius, double ahead, double angle) {
    double cosine = StrictMath.cos(angle);
    double sine = StrictMath.sin(angle);
    return new Spot(
        centre.x() + radius * cosine - ahead * sine, centre.y() + radius * sine + ahead * cosine);
  }
}
