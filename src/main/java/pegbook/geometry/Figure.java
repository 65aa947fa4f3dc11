package pegbook.geometry;

import java.util.List;
import pegbook.measure.Angle;

/**
 * An outline with the places of its supports, in the ground's frame.
 *
 * @param outline the floor's edge, corners clockwise
 * @param round true when the edge is a circle, for which the outline is a polygon with its corners
 *     on the circle
 * @param supports where the supports stand, S1 first
 * @param turn by how much it was turned clockwise from how it is drawn
 */
public record Figure(Polygon outline, boolean round, List<Point> supports, Angle turn) {
  public Figure {
    supports = List.copyOf(supports);
  }
}
