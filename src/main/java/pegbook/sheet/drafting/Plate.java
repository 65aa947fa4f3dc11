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
        && !isApart(corners(), other.corners(), turnDegrees)
        && !isApart(corners(), other.corners(), other.turnDegrees);
  }

  /** True when a stretch of line runs through it. */
  public boolean isCrossedBy(Spot from, Spot to) {
    if (isBeside(from, to)) {
      return false;
    }
    double degrees = Spots.distanceMm(from, to) == 0 ? 0 : Spots.directionDegrees(from, to);
    List<Spot> ends = List.of(from, to);
    return !isApart(corners(), ends, turnDegrees) && !isApart(corners(), ends, degrees);
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

  /** Two figures are apart when their shadows are, on one of the axes at right angles. */
  private static boolean isApart(List<Spot> one, List<Spot> other, double degrees) {
    return isApartAlong(one, other, degrees) || isApartAlong(one, other, degrees + 90);
  }

  private static boolean isApartAlong(List<Spot> one, List<Spot> other, double degrees) {
    double cosine = StrictMath.cos(StrictMath.toRadians(degrees));
    double sine = StrictMath.sin(StrictMath.toRadians(degrees));
    double oneLow = Double.POSITIVE_INFINITY;
    double oneHigh = Double.NEGATIVE_INFINITY;
    for (Spot spot : one) {
      double shadow = spot.x() * cosine + spot.y() * sine;
      oneLow = Math.min(oneLow, shadow);
      oneHigh = Math.max(oneHigh, shadow);
    }
    double otherLow = Double.POSITIVE_INFINITY;
    double otherHigh = Double.NEGATIVE_INFINITY;
    for (Spot spot : other) {
      double shadow = spot.x() * cosine + spot.y() * sine;
      otherLow = Math.min(otherLow, shadow);
      otherHigh = Math.max(otherHigh, shadow);
    }
    return oneHigh <= otherLow + 1e-9 || otherHigh <= oneLow + 1e-9;
  }
}
