package pegbook.calc.floorframe;

import pegbook.geometry.Point;

/** A support that beams rest on, seen from above. */
record Post(String id, Point at) {
  /** Nearer than this, metres, counts as the same place. */
  static final double SAME = 1e-3;

  Post in(Axes axes) {
    return new Post(id, axes.local(at));
  }
}
