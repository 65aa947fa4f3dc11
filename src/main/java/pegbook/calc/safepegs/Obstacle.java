package pegbook.calc.safepegs;

import java.util.List;

/**
 * What stands between a peg and a mark.
 *
 * @param heap true for a spoil heap
 * @param names the holes of the heap, or the name of the feature
 */
record Obstacle(boolean heap, List<String> names) {
  Obstacle {
    names = List.copyOf(names);
  }
}
