package pegbook.figures;

import java.util.List;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.measure.Volume;

/**
 * A heap of dug soil, as the cone it makes.
 *
 * @param holes the holes it comes from
 * @param centre where it stands
 * @param radius of its foot
 * @param height of its top
 * @param loose volume
 */
public record SpoilHeap(
    List<String> holes, Point centre, Length radius, Length height, Volume loose) {
  public SpoilHeap {
    holes = List.copyOf(holes);
  }
}
