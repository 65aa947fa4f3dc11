package pegbook.calc.floorframe;

import pegbook.geometry.Segment;

/**
 * A beam from one post to the next.
 *
 * @param from its first post
 * @param to its other post
 * @param isInner crosses the floor; else it goes round it
 */
record Bay(Post from, Post to, boolean isInner) {
  String name() {
    return from.id() + "–" + to.id();
  }

  Segment line() {
    return new Segment(from.at(), to.at());
  }

  double length() {
    return line().length().metres();
  }

  /** Whether it lies along the joists. */
  boolean isAlong() {
    return Math.abs(from.at().north() - to.at().north()) < Post.SAME;
  }
}
