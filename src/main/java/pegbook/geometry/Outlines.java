package pegbook.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * Outlines to corners and supports.
 *
 * <p>Every figure is drawn with its area's centroid at the origin, corners clockwise, then turned
 * so that the line from the centre to the mark S1 (not to the corner beside it: an inset moves a
 * corner of a rectangle off that line) has the azimuth asked for. The inset is the distance from
 * the edge, square to it; at a corner the support stands on the bisector.
 *
 * <p>No figure comes back when the inset leaves no room for the supports inside the outline.
 */
public final class Outlines {
  /** Corners of the polygon that stands for a circle; it is 0.004 % of the radius off at most. */
  private static final int CIRCLE_CORNERS = 360;

  private Outlines() {}

  /**
   * A regular polygon, a support at every corner.
   *
   * @param sides 3 to 24
   * @param acrossCorners diameter of the circle through the corners
   * @throws IllegalArgumentException for another number of sides
   */
  public static Optional<Figure> regular(
      int sides, Length acrossCorners, Length inset, Angle centreToFirstMark) {
    if (sides < 3 || sides > 24) {
      throw new IllegalArgumentException(sides + " sides");
    }
    Polygon outline = new Polygon(ring(sides, acrossCorners.times(0.5)));
    return atCorners(outline, inset).map(figure -> turned(figure, centreToFirstMark));
  }

  /**
   * A rectangle with a grid of supports: S1 at a corner, then clockwise along the edge, then the
   * inner ones row by row, each row in the direction from S1 to the next corner.
   *
   * @param length the side from S1's corner to the next corner clockwise
   * @param width the other side
   * @param grid how many supports along each
   */
  public static Optional<Figure> rectangle(
      Length length, Length width, Grid grid, Length inset, Angle centreToFirstMark) {
    double east = length.metres() / 2;
    double north = width.metres() / 2;
    if (inset.metres() >= Math.min(east, north)) {
      return Optional.empty();
    }
    Polygon outline =
        new Polygon(
            List.of(
                new Point(-east, north),
                new Point(east, north),
                new Point(east, -north),
                new Point(-east, -north)));
    List<Point> supports = grid.places(east - inset.metres(), north - inset.metres());
    return Optional.of(turned(new Figure(outline, false, supports, Angle.ZERO), centreToFirstMark));
  }

  /**
   * A rectangle with its four corners cut off at 45 degrees, a support at each of the eight
   * corners. S1 is the first corner of a length side, S2 its other end, clockwise.
   *
   * @param length overall, along the side S1 to S2
   * @param width overall, across it
   * @param cut how much of each side the cut takes, from the corner that is no more
   * @throws IllegalArgumentException when the cuts take a whole side or nothing
   */
  public static Optional<Figure> chamferedRectangle(
      Length length, Length width, Length cut, Length inset, Angle centreToFirstMark) {
    double east = length.metres() / 2;
    double north = width.metres() / 2;
    double off = cut.metres();
    if (!(off > 0 && off < Math.min(east, north))) {
      throw new IllegalArgumentException("cut of " + off + " m");
    }
    Polygon outline =
        new Polygon(
            List.of(
                new Point(-east + off, north),
                new Point(east - off, north),
                new Point(east, north - off),
                new Point(east, -north + off),
                new Point(east - off, -north),
                new Point(-east + off, -north),
                new Point(-east, -north + off),
                new Point(-east, north - off)));
    return atCorners(outline, inset).map(figure -> turned(figure, centreToFirstMark));
  }

  /**
   * A circle of posts.
   *
   * @param diameter of the floor's edge
   * @param posts 3 to 60, evenly spaced
   * @throws IllegalArgumentException for another number of posts
   */
  public static Optional<Figure> circle(
      Length diameter, int posts, Length inset, Angle centreToFirstMark) {
    if (posts < 3 || posts > 60) {
      throw new IllegalArgumentException(posts + " posts");
    }
    Length radius = diameter.times(0.5);
    Length ofPosts = radius.minus(inset);
    if (!ofPosts.isMoreThan(Length.ZERO)) {
      return Optional.empty();
    }
    Figure figure =
        new Figure(
            new Polygon(ring(CIRCLE_CORNERS, radius)), true, ring(posts, ofPosts), Angle.ZERO);
    return Optional.of(turned(figure, centreToFirstMark));
  }

  /**
   * Free corners in a drawing's own frame, x to the right, y up, metres: shifted so that the
   * centroid is the origin, corners put clockwise with the first kept, then turned where an azimuth
   * is given; without one, y is true north. Supports that are given keep their order.
   *
   * @param corners in order round the figure
   * @param supports where the supports stand, in the same frame; absent: at every corner, inset
   * @return nothing also when an azimuth is asked for and S1 is the centre
   * @throws IllegalArgumentException when sides cross or touch
   */
  public static Optional<Figure> free(
      List<Point> corners,
      Optional<List<Point>> supports,
      Length inset,
      Optional<Angle> centreToFirstMark) {
    Polygon drawn = new Polygon(corners).clockwise();
    if (!drawn.isSimple()) {
      throw new IllegalArgumentException("sides of the outline cross or touch");
    }
    Point centre = drawn.centroid();
    Polygon outline = drawn.map(corner -> corner.plus(-centre.east(), -centre.north()));
    Optional<Figure> figure =
        supports
            .map(
                given ->
                    given.stream().map(at -> at.plus(-centre.east(), -centre.north())).toList())
            .map(given -> new Figure(outline, false, given, Angle.ZERO))
            .or(() -> atCorners(outline, inset));
    if (centreToFirstMark.isEmpty()) {
      return figure;
    }
    return figure
        .filter(some -> Point.ORIGIN.distanceTo(first(some)).metres() > Segment.ON_LINE_METRES)
        .map(some -> turned(some, centreToFirstMark.get()));
  }

  /** Places evenly spaced on a circle round the origin, clockwise, the first to the north. */
  private static List<Point> ring(int count, Length radius) {
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(Point.ORIGIN.moved(Angle.ofDegrees(360.0 * i / count), radius));
    }
    return places;
  }

  private static Optional<Figure> atCorners(Polygon outline, Length inset) {
    return Inset.of(outline, inset.metres())
        .map(supports -> new Figure(outline, false, supports, Angle.ZERO));
  }

  private static Figure turned(Figure figure, Angle centreToFirstMark) {
    Angle turn = centreToFirstMark.minus(Point.ORIGIN.azimuthTo(first(figure)));
    return new Figure(
        figure.outline().map(corner -> corner.turned(turn)),
        figure.round(),
        figure.supports().stream().map(at -> at.turned(turn)).toList(),
        turn);
  }

  private static Point first(Figure figure) {
    return figure.supports().get(0);
  }
}
