package pegbook.calc.safepegs;

import pegbook.geometry.Point;
import pegbook.geometry.Segment;

/**
 * All places nearer to a stretch of line than a distance; a disc where the stretch has no length.
 * Asked millions of times for a large figure, so it takes no root.
 *
 * @param east of the stretch's beginning, metres
 * @param north of its beginning
 * @param eastward from its beginning to its end
 * @param northward from its beginning to its end
 * @param radiusMetres the distance
 */
record Strip(double east, double north, double eastward, double northward, double radiusMetres) {
  static Strip round(Point centre, double radiusMetres) {
    return new Strip(centre.east(), centre.north(), 0, 0, radiusMetres);
  }

  static Strip along(Segment line, double radiusMetres) {
    return new Strip(
        line.from().east(),
        line.from().north(),
        line.to().east() - line.from().east(),
        line.to().north() - line.from().north(),
        radiusMetres);
  }

  boolean covers(Point place) {
    return isNearer(place, radiusMetres);
  }

  /** True for a place nearer to the stretch than another distance. */
  boolean isNearer(Point place, double metres) {
    double right = place.east() - east;
    double up = place.north() - north;
    double square = eastward * eastward + northward * northward;
    double part =
        square == 0 ? 0 : Math.max(0, Math.min(1, (right * eastward + up * northward) / square));
    double offEast = right - part * eastward;
    double offNorth = up - part * northward;
    return offEast * offEast + offNorth * offNorth < metres * metres;
  }
}
