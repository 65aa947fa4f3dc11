package pegbook.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Things on a page by their height, so that a text is held only against what is beside it. */
final class Bands<T> {
  private static final double HEIGHT_MM = 5;

  private final TreeMap<Integer, List<T>> bands = new TreeMap<>();

  void add(T thing, Box box) {
    for (int band = band(box.bottom()); band <= band(box.top()); band++) {
      bands.computeIfAbsent(band, any -> new ArrayList<>()).add(thing);
    }
  }

  /** What shares a band with a box; a tall thing may come more than once. */
  Stream<T> beside(Box box) {
    return bands.subMap(band(box.bottom()), true, band(box.top()), true).values().stream()
        .flatMap(List::stream);
  }

  private static int band(double height) {
    return (int) Math.floor(height / HEIGHT_MM);
  }
}
