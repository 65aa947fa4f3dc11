package pegbook.geometry.network;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which column of the equations belongs to which coordinate of which point. */
final class Unknowns {
  /** Column of a coordinate that is not sought. */
  static final int NONE = -1;

  private final Map<String, int[]> columns = new LinkedHashMap<>();
  private final int count;

  Unknowns(List<NetworkPoint> points) {
    int next = 0;
    for (NetworkPoint point : points) {
      int east = point.freedom().east() ? next++ : NONE;
      int north = point.freedom().north() ? next++ : NONE;
      columns.put(point.name(), new int[] {east, north});
    }
    count = next;
  }

  int count() {
    return count;
  }

  int east(String name) {
    return of(name)[0];
  }

  int north(String name) {
    return of(name)[1];
  }

  private int[] of(String name) {
    int[] pair = columns.get(name);
    if (pair == null) {
      throw new IllegalArgumentException("no point " + name);
    }
    return pair;
  }
}
