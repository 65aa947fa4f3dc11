package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;

/**
 * Whether some marks could lie on the wrong side of the baseline and others not. A distance between
 * two marks beside the baseline that changes when one of them is mirrored joins them; a set shows
 * every mirrored part when it joins all of them.
 */
final class MirrorParts {
  private final List<Integer> beside;
  private final List<CheckLine> joining = new ArrayList<>();
  private final int least;

  MirrorParts(CheckLines lines, Mistakes mistakes) {
    this.beside = mistakes.beside();
    for (CheckLine line : lines.all()) {
      if (beside.contains(line.from())
          && beside.contains(line.to())
          && mistakes.mirrored(List.of(line.from())).isShownBy(line, lines)) {
        joining.add(line);
      }
    }
    BitSet all = new BitSet();
    joining.forEach(line -> all.set(line.number()));
    this.least = parts(all).size();
  }

  /** Distances that join two marks. */
  List<CheckLine> joining() {
    return joining;
  }

  /** The fewest parts that all distances together leave; one where they show every mistake. */
  int least() {
    return least;
  }

  /** True when a set joins all that can be joined. */
  boolean isJoined(BitSet chosen) {
    return parts(chosen).size() == least;
  }

  /** The parts that a set leaves, by their first marks. */
  List<List<Integer>> parts(BitSet chosen) {
    int size = beside.stream().mapToInt(mark -> mark + 1).max().orElse(0);
    List<Integer> root = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      root.add(i);
    }
    for (CheckLine line : joining) {
      if (chosen.get(line.number())) {
        root.set(find(root, line.from()), find(root, line.to()));
      }
    }
    TreeMap<Integer, List<Integer>> parts = new TreeMap<>();
    for (int mark : beside) {
      parts.computeIfAbsent(find(root, mark), none -> new ArrayList<>()).add(mark);
    }
    return List.copyOf(parts.values());
  }

  private static int find(List<Integer> root, int mark) {
    int at = mark;
    while (root.get(at) != at) {
      root.set(at, root.get(root.get(at)));
      at = root.get(at);
    }
    return at;
  }
}
