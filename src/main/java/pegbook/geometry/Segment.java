package pegbook.geometry;

import pegbook.measure.Length;

/** A straight line between two different places, with a direction. */
public record Segment(Point from, Point to) {

  /** On which hand of the line a place lies, facing from its beginning to its end. */
  public enum Side {
    LEFT,
    RIGHT,
    ON
  }

  /** Closer to the line than this, metres, counts as on it. */
  public static final double ON_LINE_METRES = 1e-6;

  public Length length() {
    return from.distanceTo(to);
  }

  public Point middle() {
    return new Point((from.east() + to.east()) / 2, (from.north() + to.north()) / 2);
  }

  /** Signed square distance from the endless line, metres: positive to the left. */
  public double offsetMetres(Point point) {
    double east = to.east() - from.east();
    double north = to.north() - from.north();
    double cross = east * (point.north() - from.north()) - north * (point.east() - from.east());
    return cross / length().metres();
  }

  /** Distance along the line from its beginning to the foot of the perpendicular, metres. */
  public double alongMetres(Point point) {
    double east = to.east() - from.east();
    double north = to.north() - from.north();
    double dot = east * (point.east() - from.east()) + north * (point.north() - from.north());
    return dot / length().metres();
  }

  /** The place at a distance along the line and a signed offset from it, positive to the left. */
  public Point at(double alongMetres, double offsetMetres) {
    double east = (to.east() - from.east()) / length().metres();
    double north = (to.north() - from.north()) / length().metres();
    return from.plus(
        alongMetres * east - offsetMetres * north, alongMetres * north + offsetMetres * east);
  }

  public Side sideOf(Point point) {
    double offset = offsetMetres(point);
    if (Math.abs(offset) <= ON_LINE_METRES) {
      return Side.ON;
    }
    return offset > 0 ? Side.LEFT : Side.RIGHT;
  }

  /** The place on this stretch of line that is nearest to another. */
  public Point nearest(Point point) {
    double along = Math.max(0, Math.min(length().metres(), alongMetres(point)));
    double part = along / length().metres();
    return new Point(
        from.east() + part * (to.east() - from.east()),
        from.north() + part * (to.north() - from.north()));
  }

  /** Shortest distance from a place to this stretch of line. */
  public Length distanceTo(Point point) {
    return nearest(point).distanceTo(point);
  }
}
