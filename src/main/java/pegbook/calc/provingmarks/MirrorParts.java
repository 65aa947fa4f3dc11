package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;

/**
 * Whether some marks could lie on the wrong side of the baseline and others not. A distance between
 * two marks beside the baseline that changes when one of them is mirrored joins them; a set shows
 * every mirrored part when it joins all of them.
 */
final class MirrorParts {
  private final CheckLines lines;
  private final List<Integer> beside;

  /** One more than the last of the marks beside the baseline. */
  private final int places;

  private final List<CheckLine> joining = new ArrayList<>();
  private final BitSet joins = new BitSet();
  private final int least;

  MirrorParts(CheckLines lines, Mistakes mistakes) {
    this.lines = lines;
    this.beside = mistakes.beside();
    this.places = beside.stream().mapToInt(mark -> mark + 1).max().orElse(0);
    for (CheckLine line : lines.all()) {
      if (beside.contains(line.from())
          && beside.contains(line.to())
          && mistakes.mirrored(List.of(line.from())).isShownBy(line, lines)) {
        joining.add(line);
      }
    }
    joining.forEach(line -> joins.set(line.number()));
    this.least = count(joins);
  }

  /** Distances that join two marks. */
  List<CheckLine> joining() {
    return joining;
  }

  /** True when a distance is one of those. */
  boolean isJoining(CheckLine line) {
    return joins.get(line.number());
  }

  /** The fewest parts that all distances together leave; one where they show every mistake. */
  int least() {
    return least;
  }

  /** True when a set joins all that can be joined. */
  boolean isJoined(BitSet chosen) {
    return count(chosen) == least;
  }

  /** How many parts a set leaves. */
  int count(BitSet chosen) {
    int[] root = roots(chosen);
    int count = 0;
    for (int mark : beside) {
      count += find(root, mark) == mark ? 1 : 0;
    }
    return count;
  }

  /** The parts that a set leaves, by their first marks. */
  List<List<Integer>> parts(BitSet chosen) {
    int[] root = roots(chosen);
    TreeMap<Integer, List<Integer>> parts = new TreeMap<>();
    for (int mark : beside) {
      parts.computeIfAbsent(find(root, mark), none -> new ArrayList<>()).add(mark);
    }
    return List.copyOf(parts.values());
  }

  private int[] roots(BitSet chosen) {
    int[] root = new int[places];
    Arrays.setAll(root, mark -> mark);
    for (int at = chosen.nextSetBit(0); at >= 0; at = chosen.nextSetBit(at + 1)) {
      if (joins.get(at)) {
        CheckLine line = lines.all().get(at);
        root[find(root, line.from())] = find(root, line.to());
      }
    }
    return root;
  }

  private static int find(int[] root, int mark) {
    int at = mark;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }
}
