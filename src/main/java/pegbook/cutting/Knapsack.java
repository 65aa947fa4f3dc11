package pegbook.cutting;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.LongStream;

/**
 * The most valuable pieces within a length, each kind no oftener than it is wanted.
 *
 * <p>It works on the sums that pieces can make. Where these are too many, lengths are set to a
 * coarser step: upwards for pieces that are to fit, downwards for a bound that is to hold.
 */
final class Knapsack {
  private static final int MOST_SUMS = 20_000;
  private static final int COARSE_STEPS = 8_000;

  private final long[] lengths;
  private final long step;
  private final long[] sums;

  /** For each kind and sum the place of the sum with one more piece; -1: beyond every stock. */
  private final int[][] next;

  private long[] best = {};
  private BitSet[] taken = {};
  private int[] kindOf = {};

  private Knapsack(long[] lengths, long step, long[] sums) {
    this.lengths = lengths;
    this.step = step;
    this.sums = sums;
    this.next = new int[lengths.length][sums.length];
    for (int kind = 0; kind < lengths.length; kind++) {
      for (int i = 0; i < sums.length; i++) {
        next[kind][i] = Math.max(-1, Arrays.binarySearch(sums, sums[i] + lengths[kind]));
      }
    }
  }

  /** For patterns: whatever it finds fits. */
  static Knapsack within(Instance instance) {
    return of(instance, true);
  }

  /** For bounds: nothing that fits is worth more. */
  static Knapsack beyond(Instance instance) {
    return of(instance, false);
  }

  private static Knapsack of(Instance instance, boolean up) {
    long capacity = Arrays.stream(instance.size).max().orElse(0);
    long[] exact = sums(instance.length, instance.count, capacity);
    if (exact.length > 0) {
      return new Knapsack(instance.length, 1, exact);
    }
    long step = capacity / COARSE_STEPS + 1;
    long[] coarse =
        Arrays.stream(instance.length).map(l -> up ? (l + step - 1) / step : l / step).toArray();
    long[] all = new long[(int) (capacity / step) + 1];
    Arrays.setAll(all, i -> i);
    return new Knapsack(coarse, step, all);
  }

  /** Sums that pieces can make; none where these are too many. */
  private static long[] sums(long[] lengths, int[] counts, long capacity) {
    long[] sums = {0};
    for (int kind = 0; kind < lengths.length; kind++) {
      for (int i = 0; i < counts[kind]; i++) {
        long length = lengths[kind];
        long[] more =
            LongStream.concat(Arrays.stream(sums), Arrays.stream(sums).map(sum -> sum + length))
                .filter(sum -> sum <= capacity)
                .sorted()
                .distinct()
                .toArray();
        if (more.length > MOST_SUMS) {
          return new long[0];
        }
        if (more.length == sums.length) {
          break;
        }
        sums = more;
      }
    }
    return sums;
  }

  /**
   * Works it out for all lengths at once; then ask for each.
   *
   * @param value of a piece of each kind, not below zero
   * @param wanted pieces of each kind
   */
  void solve(long[] value, int[] wanted) {
    kindOf = copies(value, wanted);
    taken = new BitSet[kindOf.length];
    best = new long[sums.length];
    Arrays.fill(best, -1);
    best[0] = 0;
    for (int copy = 0; copy < kindOf.length; copy++) {
      taken[copy] = take(next[kindOf[copy]], value[kindOf[copy]]);
    }
  }

  private BitSet take(int[] further, long value) {
    BitSet took = new BitSet(sums.length);
    for (int from = sums.length - 1; from >= 0; from--) {
      int to = further[from];
      if (best[from] >= 0 && to >= 0 && best[from] + value > best[to]) {
        best[to] = best[from] + value;
        took.set(to);
      }
    }
    return took;
  }

  private int[] copies(long[] value, int[] wanted) {
    long capacity = sums[sums.length - 1];
    int[] copies = new int[Arrays.stream(wanted).sum()];
    int used = 0;
    for (int kind = 0; kind < lengths.length; kind++) {
      long most = lengths[kind] == 0 ? wanted[kind] : capacity / lengths[kind];
      for (int i = 0; value[kind] > 0 && i < Math.min(most, wanted[kind]); i++) {
        copies[used++] = kind;
      }
    }
    return Arrays.copyOf(copies, used);
  }

  /** The place of the most valuable sum within a length. */
  private int place(long capacity) {
    int place = 0;
    for (int i = 0; i < sums.length && sums[i] <= capacity / step; i++) {
      place = best[i] > best[place] ? i : place;
    }
    return place;
  }

  /** The greatest value within a length. */
  long value(long capacity) {
    return best[place(capacity)];
  }

  /** How many pieces of each kind make it. */
  int[] counts(long capacity) {
    int[] counts = new int[lengths.length];
    int place = place(capacity);
    for (int copy = kindOf.length - 1; copy >= 0; copy--) {
      if (taken[copy].get(place)) {
        counts[kindOf[copy]]++;
        place = Arrays.binarySearch(sums, sums[place] - lengths[kindOf[copy]]);
      }
    }
    return counts;
  }
}
