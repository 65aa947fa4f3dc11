package pegbook.figures;

import java.util.List;

/**
 * What the work does to the ground.
 *
 * @param holes the holes
 * @param heaps the spoil
 */
public record Diggings(List<Hole> holes, List<SpoilHeap> heaps) {
  public Diggings {
    holes = List.copyOf(holes);
    heaps = List.copyOf(heaps);
  }
}
