package pegbook.testing;

import java.util.List;
import java.util.Optional;

/**
 * A parallelogram on a page, such as the box round a turned letter.
 *
 * @param origin lower left corner as the text reads
 * @param along lower right corner
 * @param up upper left corner
 */
public record Quad(Position origin, Position along, Position up) {
  /** The part of a segment inside a shape, as fractions of its length. */
  public record Part(double from, double to) {}

  public List<Position> corners() {
    Position far = new Position(along.x() + up.x() - origin.x(), along.y() + up.y() - origin.y());
    return List.of(origin, along, far, up);
  }

  public Box bounds() {
    return Box.around(corners());
  }

  public double height() {
    return origin.distanceTo(up);
  }

  /**
   * How deep two quads lie in one another: the least shift that parts them; negative when apart.
   */
  public double overlap(Quad other) {
    double least = Math.min(alongNormals(this, other), alongNormals(other, this));
    return least;
  }

  private static double alongNormals(Quad axes, Quad other) {
    return Math.min(
        overlapOn(axes.along.x() - axes.origin.x(), axes.along.y() - axes.origin.y(), axes, other),
        overlapOn(axes.up.x() - axes.origin.x(), axes.up.y() - axes.origin.y(), axes, other));
  }

  /** Overlap of the shadows on the line square to an edge. */
  private static double overlapOn(double edgeX, double edgeY, Quad one, Quad two) {
    double length = Math.hypot(edgeX, edgeY);
    if (length < 1e-9) {
      return Double.POSITIVE_INFINITY;
    }
    double x = -edgeY / length;
    double y = edgeX / length;
    double[] first = shadow(one, x, y);
    double[] second = shadow(two, x, y);
    return Math.min(first[1], second[1]) - Math.max(first[0], second[0]);
  }

  private static double[] shadow(Quad quad, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Position corner : quad.corners()) {
      double value = corner.x() * x + corner.y() * y;
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return new double[] {least, most};
  }

  /** The band of this quad between two fractions of its height. */
  public Quad band(double from, double to) {
    Position far = corners().get(2);
    return new Quad(origin.towards(up, from), along.towards(far, from), origin.towards(up, to));
  }

  /** The part of a segment that runs inside this quad. */
  public Optional<Part> inside(Position start, Position end) {
    double[] first = local(start);
    double[] last = local(end);
    double from = 0;
    double to = 1;
    for (int axis = 0; axis < 2; axis++) {
      double step = last[axis] - first[axis];
      if (Math.abs(step) < 1e-12) {
        if (first[axis] < 0 || first[axis] > 1) {
          return Optional.empty();
        }
        continue;
      }
      double enter = (0 - first[axis]) / step;
      double leave = (1 - first[axis]) / step;
      from = Math.max(from, Math.min(enter, leave));
      to = Math.min(to, Math.max(enter, leave));
    }
    return from < to ? Optional.of(new Part(from, to)) : Optional.empty();
  }

  /** A place in fractions along this quad's two edges. */
  private double[] local(Position place) {
    double ux = along.x() - origin.x();
    double uy = along.y() - origin.y();
    double vx = up.x() - origin.x();
    double vy = up.y() - origin.y();
    double dx = place.x() - origin.x();
    double dy = place.y() - origin.y();
    double determinant = ux * vy - uy * vx;
    return new double[] {(dx * vy - dy * vx) / determinant, (ux * dy - uy * dx) / determinant};
  }
}
