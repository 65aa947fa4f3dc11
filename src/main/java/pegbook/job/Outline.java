package pegbook.job;

import java.util.List;
import java.util.Optional;
import pegbook.geometry.Figure;
import pegbook.geometry.Grid;
import pegbook.geometry.Outlines;
import pegbook.geometry.Point;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/** The floor's edge, and where along it the supports stand. */
public sealed interface Outline {

  /** How many supports it has. */
  int supportCount();

  /**
   * The outline on the ground with the places of its supports; see {@link Outlines}.
   *
   * @param inset distance from the edge, square to it, to a support's centre
   * @param centreToFirstMark azimuth of the line from the centre to S1; only a free outline may go
   *     without
   * @return nothing when the inset leaves no room for the supports
   * @throws IllegalArgumentException when an azimuth is needed and missing
   */
  Optional<Figure> figure(Length inset, Optional<Angle> centreToFirstMark);

  private static Angle needed(Optional<Angle> azimuth) {
    return azimuth.orElseThrow(() -> new IllegalArgumentException("no azimuth of S1"));
  }

  /**
   * A regular polygon, a support at every corner.
   *
   * @param sides 3 to 24
   * @param acrossCorners diameter of the circle through the corners
   */
  record Regular(int sides, Length acrossCorners) implements Outline {
    @Override
    public int supportCount() {
      return sides;
    }

    @Override
    public Optional<Figure> figure(Length inset, Optional<Angle> azimuth) {
      return Outlines.regular(sides, acrossCorners, inset, needed(azimuth));
    }
  }

  /**
   * A rectangle with a grid of supports. S1 is a corner; the length runs from it to the next corner
   * clockwise. Supports at the edge are numbered clockwise from S1, then the inner ones row by row,
   * each row in the direction from S1 to the next corner.
   *
   * @param length the side from S1's corner to the next corner clockwise
   * @param width the other side
   * @param columns supports along the length, at least 2
   * @param rows supports along the width, at least 2
   */
  record Rectangle(Length length, Length width, int columns, int rows) implements Outline {
    @Override
    public int supportCount() {
      return columns * rows;
    }

    @Override
    public Optional<Figure> figure(Length inset, Optional<Angle> azimuth) {
      Grid grid = new Grid(columns, rows);
      return Outlines.rectangle(length, width, grid, inset, needed(azimuth));
    }
  }

  /**
   * A rectangle with its four corners cut off at 45 degrees, a support at each of the eight
   * corners. S1 is the first corner of a length side, S2 its other end, clockwise.
   *
   * @param length overall, along the side S1 to S2
   * @param width overall, across it
   * @param cut how much of each side the cut takes, from the corner that is no more
   */
  record ChamferedRectangle(Length length, Length width, Length cut) implements Outline {
    @Override
    public int supportCount() {
      return 8;
    }

    @Override
    public Optional<Figure> figure(Length inset, Optional<Angle> azimuth) {
      return Outlines.chamferedRectangle(length, width, cut, inset, needed(azimuth));
    }
  }

  /**
   * A circle of posts.
   *
   * @param diameter of the floor's edge
   * @param posts 3 to 60, evenly spaced
   */
  record Circle(Length diameter, int posts) implements Outline {
    @Override
    public int supportCount() {
      return posts;
    }

    @Override
    public Optional<Figure> figure(Length inset, Optional<Angle> azimuth) {
      return Outlines.circle(diameter, posts, inset, needed(azimuth));
    }
  }

  /**
   * Free corners in the drawing's own frame (x to the right, y up, metres). The figure is shifted
   * so that its centroid is the origin, and turned so that S1 lies on the azimuth given; without an
   * azimuth y is true north.
   *
   * @param corners in order round the figure
   * @param supports where the supports stand, in the same frame; absent: at every corner, inset
   */
  record Free(List<Point> corners, Optional<List<Point>> supports) implements Outline {
    public Free {
      corners = List.copyOf(corners);
      supports = supports.map(List::copyOf);
    }

    @Override
    public int supportCount() {
      return supports.orElse(corners).size();
    }

    @Override
    public Optional<Figure> figure(Length inset, Optional<Angle> azimuth) {
      return Outlines.free(corners, supports, inset, azimuth);
    }
  }
}
