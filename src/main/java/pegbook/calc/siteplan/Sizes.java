package pegbook.calc.siteplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.siteplan.SitePlan.Size;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Outline;
import pegbook.measure.Length;

/** Which sizes of an outline the plan shows: a side, and how far it is across. */
final class Sizes {
  /** A free outline with more sides than this shows only how far it reaches. */
  private static final int MOST_SIDES = 12;

  private final List<Point> corners;

  private Sizes(List<Point> corners) {
    this.corners = corners;
  }

  /**
   * The sizes of an outline.
   *
   * @param corners its corners on the ground, clockwise, in the order of {@link
   *     pegbook.geometry.Outlines}
   */
  static List<Size> of(Outline outline, List<Point> corners) {
    Sizes sizes = new Sizes(corners);
    if (outline instanceof Outline.Rectangle) {
      return List.of(sizes.side(0), sizes.side(1));
    }
    if (outline instanceof Outline.ChamferedRectangle) {
      return List.of(
          sizes.across(7, 2), sizes.across(1, 4), sizes.side(0), sizes.side(1), sizes.side(2));
    }
    if (outline instanceof Outline.Regular) {
      return sizes.regular();
    }
    if (outline instanceof Outline.Circle circle) {
      Length radius = circle.diameter().times(0.5);
      return List.of(new Size(new Point(-radius.metres(), 0), new Point(radius.metres(), 0), true));
    }
    return sizes.free();
  }

  private Size side(int from) {
    return new Size(corners.get(from), corners.get((from + 1) % corners.size()), false);
  }

  private Size across(int from, int to) {
    return new Size(corners.get(from), corners.get(to), true);
  }

  /** A side; across corners and flats, or from a corner to the flat opposite. */
  private List<Size> regular() {
    int half = corners.size() / 2;
    Point flat = middle(0);
    if (corners.size() % 2 == 0) {
      return List.of(side(0), across(0, half), new Size(flat, middle(half), true));
    }
    return List.of(side(0), new Size(corners.get(0), middle(half), true));
  }

  private Point middle(int side) {
    Size size = side(side);
    return new Segment(size.from(), size.to()).middle();
  }

  private List<Size> free() {
    List<Size> sizes = new ArrayList<>();
    if (corners.size() <= MOST_SIDES) {
      for (int i = 0; i < corners.size(); i++) {
        sizes.add(side(i));
      }
      return sizes;
    }
    double west = corners.stream().mapToDouble(Point::east).min().orElseThrow();
    double east = corners.stream().mapToDouble(Point::east).max().orElseThrow();
    double south = corners.stream().mapToDouble(Point::north).min().orElseThrow();
    double north = corners.stream().mapToDouble(Point::north).max().orElseThrow();
    return List.of(
        new Size(new Point(west, north), new Point(east, north), true),
        new Size(new Point(east, north), new Point(east, south), true));
  }
}
