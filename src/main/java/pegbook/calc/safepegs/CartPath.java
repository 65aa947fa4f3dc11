package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.Hole;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * The strip on which spoil goes from a hole to where it lies. Nobody drives in a straight line, but
 * a peg beside the straight line is in nobody's way either: common practice, no source.
 *
 * @param hole the hole it comes from
 * @param along from the hole's centre to the heap's
 * @param width of the strip
 */
public record CartPath(String hole, Segment along, Length width) {
  /** Of every hole to every heap that takes its soil. */
  static List<CartPath> of(List<Hole> holes, List<SpoilHeap> heaps, Length width) {
    List<CartPath> paths = new ArrayList<>();
    for (Hole hole : holes) {
      heaps.stream()
          .filter(heap -> heap.holes().contains(hole.mark()))
          .filter(heap -> hole.centre().distanceTo(heap.centre()).metres() > 1e-6)
          .forEach(
              heap ->
                  paths.add(
                      new CartPath(hole.mark(), new Segment(hole.centre(), heap.centre()), width)));
    }
    return paths;
  }
}
