package pegbook.sheet.drafting;

import java.util.List;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.measure.Length;
import pegbook.sheet.drawing.Spot;

/**
 * From the ground to paper and back, at a true scale: east to the right, north up, nothing turned.
 *
 * @param ground the place on the ground that lies at the place on paper
 * @param paper that place on paper
 * @param scale the scale
 */
public record PlanFrame(Point ground, Spot paper, DrawingScale scale) {
  /** A place on the ground as a place on paper. */
  public Spot spot(Point place) {
    double millimetresPerMetre = 1000 / scale.ratio();
    return new Spot(
        paper.x() + (place.east() - ground.east()) * millimetresPerMetre,
        paper.y() + (place.north() - ground.north()) * millimetresPerMetre);
  }

  /** A place on paper as a place on the ground. */
  public Point place(Spot spot) {
    double metresPerMillimetre = scale.ratio() / 1000;
    return new Point(
        ground.east() + (spot.x() - paper.x()) * metresPerMillimetre,
        ground.north() + (spot.y() - paper.y()) * metresPerMillimetre);
  }

  public double millimetres(Length onGround) {
    return scale.millimetres(onGround);
  }

  public List<Spot> spots(Polygon polygon) {
    return polygon.corners().stream().map(this::spot).toList();
  }
}
