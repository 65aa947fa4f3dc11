package pegbook.sheet.drafting;

import java.util.List;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;

/**
 * A rectangle on paper, turned or upright: the room that a text takes.
 *
 * @param centre its middle
 * @param halfWidthMm half its width before the turn
 * @param halfHeightMm half its height before the turn
 * @param turnDegrees anticlockwise
 */
public record Plate(Spot centre, double halfWidthMm, double halfHeightMm, double turnDegrees) {
  /** What comes no nearer than this only touches. */
  private static final double TOUCHING_MM = 1e-9;

  /** An upright rectangle from its lower left and upper right corners. */
  public static Plate between(double leftMm, double bottomMm, double rightMm, double topMm) {
    return new Plate(
        new Spot((leftMm + rightMm) / 2, (bottomMm + topMm) / 2),
        (rightMm - leftMm) / 2,
        (topMm - bottomMm) / 2,
        0);
  }

  /** The room that a label takes, from its lowest to its tallest letters. */
  public static Plate of(Element.Label label, Lettering lettering) {
    double widthMm = lettering.widthMm(label.text(), label.size(), label.bold());
    double sizeMm = label.size() / Lettering.POINTS_PER_MM;
    double along =
        switch (label.anchor()) {
          case LEFT, LEFT_MIDDLE -> widthMm / 2;
          case CENTRE, CENTRE_MIDDLE -> 0;
          case RIGHT, RIGHT_MIDDLE -> -widthMm / 2;
        };
    double baseMm =
        switch (label.anchor()) {
          case LEFT, CENTRE, RIGHT -> 0;
          case LEFT_MIDDLE, CENTRE_MIDDLE, RIGHT_MIDDLE -> -Lettering.CAPITAL_HEIGHT / 2 * sizeMm;
        };
    double across = baseMm + (Lettering.ASCENT - Lettering.DESCENT) / 2 * sizeMm;
    double halfHeightMm = (Lettering.ASCENT + Lettering.DESCENT) / 2 * sizeMm;
    Spot middle = new Plate(label.at(), 0, 0, label.turnDegrees()).corner(along, across);
    return new Plate(middle, widthMm / 2, halfHeightMm, label.turnDegrees());
  }

  /** The same with a margin all round; a negative margin shrinks it. */
  public Plate grown(double marginMm) {
    return new Plate(
        centre,
        Math.max(0, halfWidthMm + marginMm),
        Math.max(0, halfHeightMm + marginMm),
        turnDegrees);
  }

  /** The four corners, anticlockwise. */
  public List<Spot> corners() {
    return List.of(
        corner(-halfWidthMm, -halfHeightMm),
        corner(halfWidthMm, -halfHeightMm),
        corner(halfWidthMm, halfHeightMm),
        corner(-halfWidthMm, halfHeightMm));
  }

  /** The lower left corner of the upright rectangle round it. */
  Spot low() {
    Axes own = Axes.of(turnDegrees);
    return Spots.shifted(centre, -halfShadow(own, 1, 0), -halfShadow(own, 0, 1));
  }

  /** The upper right corner of the upright rectangle round it. */
  Spot high() {
    Axes own = Axes.of(turnDegrees);
    return Spots.shifted(centre, halfShadow(own, 1, 0), halfShadow(own, 0, 1));
  }

  private Spot corner(double alongMm, double acrossMm) {
    double radians = StrictMath.toRadians(turnDegrees);
    double cosine = StrictMath.cos(radians);
    double sine = StrictMath.sin(radians);
    return Spots.shifted(
        centre, alongMm * cosine - acrossMm * sine, alongMm * sine + acrossMm * cosine);
  }

  /** How far a place is from its edge; zero inside. */
  double distanceMm(Spot spot) {
    double radians = StrictMath.toRadians(turnDegrees);
    double cosine = StrictMath.cos(radians);
    double sine = StrictMath.sin(radians);
    double right = spot.x() - centre.x();
    double up = spot.y() - centre.y();
    double along = Math.max(0, Math.abs(right * cosine + up * sine) - halfWidthMm);
    double across = Math.max(0, Math.abs(up * cosine - right * sine) - halfHeightMm);
    return Math.sqrt(along * along + across * across);
  }

  /** True when the two share more than an edge. */
  public boolean overlaps(Plate other) {
    return Spots.distanceMm(centre, other.centre) < reachMm() + other.reachMm()
        && !isApart(other, turnDegrees)
        && (turnDegrees == other.turnDegrees || !isApart(other, other.turnDegrees));
  }

  /** True when a stretch of line runs through it. */
  public boolean isCrossedBy(Spot from, Spot to) {
    if (isBeside(from, to)) {
      return false;
    }
    Axes own = Axes.of(turnDegrees);
    if (isApart(own, from, to, own.east, own.north)
        || isApart(own, from, to, -own.north, own.east)) {
      return false;
    }
    double length = Spots.distanceMm(from, to);
    double east = length == 0 ? 1 : (to.x() - from.x()) / length;
    double north = length == 0 ? 0 : (to.y() - from.y()) / length;
    return !isApart(own, from, to, east, north) && !isApart(own, from, to, -north, east);
  }

  /** How far a corner is from the middle. */
  private double reachMm() {
    return Math.sqrt(halfWidthMm * halfWidthMm + halfHeightMm * halfHeightMm);
  }

  /** True for a line that keeps wholly to one side of the circle through the corners. */
  private boolean isBeside(Spot from, Spot to) {
    double reach = reachMm();
    return Math.max(from.x(), to.x()) < centre.x() - reach
        || Math.min(from.x(), to.x()) > centre.x() + reach
        || Math.max(from.y(), to.y()) < centre.y() - reach
        || Math.min(from.y(), to.y()) > centre.y() + reach;
  }

  /** True when it lies wholly inside another, upright one. */
  public boolean isInside(Plate upright) {
    return corners().stream()
        .allMatch(
            corner ->
                Math.abs(corner.x() - upright.centre.x()) <= upright.halfWidthMm + 1e-9
                    && Math.abs(corner.y() - upright.centre.y()) <= upright.halfHeightMm + 1e-9);
  }

  /**
   * The direction of a rectangle's width; its height stands across. Most are upright, and pages of
   * labels are held against one another: so their directions are not worked out.
   */
  private record Axes(double east, double north) {
    private static final Axes UPRIGHT = new Axes(1, 0);

    static Axes of(double degrees) {
      if (degrees == 0) {
        return UPRIGHT;
      }
      double radians = StrictMath.toRadians(degrees);
      return new Axes(StrictMath.cos(radians), StrictMath.sin(radians));
    }
  }

  /** Two rectangles are apart when their shadows are, on one of the axes at right angles. */
  private boolean isApart(Plate other, double degrees) {
    Axes own = Axes.of(turnDegrees);
    Axes others = Axes.of(other.turnDegrees);
    Axes axes = Axes.of(degrees);
    return isApart(other, own, others, axes.east, axes.north)
        || isApart(other, own, others, -axes.north, axes.east);
  }

  private boolean isApart(Plate other, Axes own, Axes others, double east, double north) {
    double between =
        (other.centre.x() - centre.x()) * east + (other.centre.y() - centre.y()) * north;
    double both = halfShadow(own, east, north) + other.halfShadow(others, east, north);
    return Math.abs(between) >= both - TOUCHING_MM;
  }

  /** Whether a stretch of line and the rectangle have shadows apart on an axis. */
  private boolean isApart(Axes own, Spot from, Spot to, double east, double north) {
    double begin = (from.x() - centre.x()) * east + (from.y() - centre.y()) * north;
    double end = (to.x() - centre.x()) * east + (to.y() - centre.y()) * north;
    double half = halfShadow(own, east, north) - TOUCHING_MM;
    return Math.min(begin, end) >= half || Math.max(begin, end) <= -half;
  }

  /** Half the length of the rectangle's shadow on an axis. */
  private double halfShadow(Axes own, double east, double north) {
    return halfWidthMm * Math.abs(own.east * east + own.north * north)
        + halfHeightMm * Math.abs(own.east * north - own.north * east);
  }
}
