package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The smallest set of distances that meets all demands, and of several the one with the least to
 * tape; for figures of few marks. Branch and bound: each distance is once taken and once left out.
 * A branch ends when even the fewest further distances that its marks still need, each counted for
 * two marks, make it no better than the best set found.
 */
final class SmallestSet {
  /** Up to so many marks. */
  static final int MOST_MARKS = 9;

  /** So many steps are taken at most; with more, nothing is claimed. */
  private static final int MOST_STEPS = 300_000;

  private static final int NEVER = 1000;

  private final Demands demands;
  private final CheckLines lines;
  private final List<Long> shownBy = new ArrayList<>();
  private final byte[][] needs;
  private long best;
  private int bestCount;
  private long bestLength;
  private int steps;

  private SmallestSet(Demands demands, BitSet start) {
    this.demands = demands;
    this.lines = demands.lines();
    this.needs = new byte[lines.marks()][];
    for (int i = 0; i < lines.marks(); i++) {
      int width = lines.linesAt(i).size();
      needs[i] = new byte[1 << (2 * width)];
      Arrays.fill(needs[i], (byte) -1);
    }
    demands.shownBy().forEach(shown -> shownBy.add(bits(shown)));
    best = bits(start);
    bestCount = start.cardinality();
    bestLength = length(best);
  }

  /**
   * What was found.
   *
   * @param chosen the set
   * @param proved true when no set has fewer distances
   */
  record Found(BitSet chosen, boolean proved) {}

  /**
   * Searches.
   *
   * @param start a set that meets all demands
   */
  static Found from(Demands demands, BitSet start) {
    SmallestSet search = new SmallestSet(demands, start);
    search.branch(0, (1L << search.lines.all().size()) - 1);
    return new Found(BitSet.valueOf(new long[] {search.best}), search.steps < MOST_STEPS);
  }

  private static long bits(BitSet set) {
    long[] words = set.toLongArray();
    return words.length == 0 ? 0 : words[0];
  }

  private long length(long chosen) {
    long sum = 0;
    for (CheckLine line : lines.all()) {
      sum += (chosen >> line.number() & 1) * line.nanometres();
    }
    return sum;
  }

  /**
   * Looks at all sets that hold what is chosen and nothing that is not allowed.
   *
   * @param allowed holds what is chosen as well
   */
  private void branch(long chosen, long allowed) {
    if (++steps >= MOST_STEPS) {
      return;
    }
    int needed = 0;
    long neededLength = 0;
    int tightest = -1;
    int fewest = NEVER;
    for (int i = 0; i < lines.marks(); i++) {
      int own = at(i, chosen);
      int may = at(i, allowed);
      int need = need(i, own, may);
      if (need >= NEVER) {
        return;
      }
      needed += need;
      neededLength += shortest(i, may & ~own, need);
      int spare = Integer.bitCount(may & ~own) - need;
      if (need > 0 && spare < fewest) {
        fewest = spare;
        tightest = i;
      }
    }
    long open = unmet(chosen, allowed);
    if (open == 0) {
      return;
    }
    int further = Math.max((needed + 1) / 2, open > 0 ? 1 : 0);
    int count = Long.bitCount(chosen) + further;
    long length = length(chosen) + neededLength / 2;
    if (count > bestCount || (count == bestCount && length >= bestLength)) {
      return;
    }
    if (needed == 0 && open < 0) {
      best = chosen;
      bestCount = count;
      bestLength = length(chosen);
      return;
    }
    long line = tightest >= 0 ? next(tightest, chosen, allowed) : Long.lowestOneBit(open);
    branch(chosen | line, allowed);
    branch(chosen, allowed & ~line);
  }

  /**
   * Distances that may still be taken for the mistake that fewest of them show; -1 when every
   * mistake is shown, 0 when one cannot be any more.
   */
  private long unmet(long chosen, long allowed) {
    long fewest = -1;
    for (long shown : shownBy) {
      if ((shown & chosen) == 0) {
        long open = shown & allowed;
        if (fewest < 0 || Long.bitCount(open) < Long.bitCount(fewest)) {
          fewest = open;
        }
      }
    }
    return fewest;
  }

  /** The distances of a set that end at a mark, as bits at the mark. */
  private int at(int mark, long set) {
    int bits = 0;
    List<CheckLine> own = lines.linesAt(mark);
    for (int i = 0; i < own.size(); i++) {
      bits |= (int) (set >> own.get(i).number() & 1) << i;
    }
    return bits;
  }

  /** The shortest distance of a mark that may still be taken. */
  private long next(int mark, long chosen, long allowed) {
    return lines.linesAt(mark).stream()
        .filter(line -> (allowed & ~chosen & 1L << line.number()) != 0)
        .min(Comparator.comparingLong(CheckLine::nanometres).thenComparingInt(CheckLine::number))
        .map(line -> 1L << line.number())
        .orElseThrow();
  }

  /** What the shortest so many of a mark's distances are long together. */
  private long shortest(int mark, int open, int count) {
    List<CheckLine> own = lines.linesAt(mark);
    long[] lengths = new long[own.size()];
    int found = 0;
    for (int i = 0; i < own.size(); i++) {
      if ((open & 1 << i) != 0) {
        lengths[found++] = own.get(i).nanometres();
      }
    }
    Arrays.sort(lengths, 0, found);
    return Arrays.stream(lengths, 0, Math.min(found, count)).sum();
  }

  /** How many further distances a mark needs at least, of those allowed. */
  private int need(int mark, int chosen, int allowed) {
    int width = lines.linesAt(mark).size();
    int key = chosen << width | allowed;
    if (needs[mark][key] < 0) {
      needs[mark][key] = (byte) Math.min(Byte.MAX_VALUE, fewest(mark, chosen, allowed));
    }
    return needs[mark][key] == Byte.MAX_VALUE ? NEVER : needs[mark][key];
  }

  private int fewest(int mark, int chosen, int allowed) {
    if (demands.isMet(mark, chosen)) {
      return 0;
    }
    int open = allowed & ~chosen;
    int fewest = NEVER;
    for (int more = open; more != 0; more = (more - 1) & open) {
      if (Integer.bitCount(more) < fewest && demands.isMet(mark, chosen | more)) {
        fewest = Integer.bitCount(more);
      }
    }
    return fewest;
  }
}
