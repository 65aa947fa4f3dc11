package pegbook.calc.floorframe;

import pegbook.geometry.Point;

/**
 * The frame of the joists: x along them, y across to the left, from the outline's centre, metres.
 *
 * @param east of a step along the joists
 * @param north of a step along the joists
 */
record Axes(double east, double north) {
  /** Joists along a line. */
  static Axes along(Point from, Point to) {
    double length = from.distanceTo(to).metres();
    return new Axes((to.east() - from.east()) / length, (to.north() - from.north()) / length);
  }

  /** Joists square to these. */
  Axes square() {
    return new Axes(-north, east);
  }

  Point local(Point ground) {
    return new Point(
        ground.east() * east + ground.north() * north,
        ground.north() * east - ground.east() * north);
  }

  Point ground(Point local) {
    return new Point(
        local.east() * east - local.north() * north, local.east() * north + local.north() * east);
  }

  /** Whether joists by these axes lie like those by others, whichever end comes first. */
  boolean isLike(Axes other) {
    return Math.abs(east * other.north - north * other.east) < 1e-6;
  }
}
