package pegbook.figures;

import java.util.List;
import pegbook.geometry.Polygon;

/**
 * The figure on the ground.
 *
 * @param outline the floor's edge, clockwise; for a circle of posts a polygon close to the circle
 * @param round true when the outline is a circle
 * @param marks supports first, then piers, each in order
 */
public record Placement(
    Polygon outline,
    boolean round,
    List<PlacedMark> marks,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public Placement {
    marks = List.copyOf(marks);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * The mark with an id.
   *
   * @throws IllegalArgumentException when there is none
   */
  public PlacedMark mark(String id) {
    return marks.stream()
        .filter(mark -> mark.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no mark " + id));
  }
}
