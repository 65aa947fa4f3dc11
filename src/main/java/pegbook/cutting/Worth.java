package pegbook.cutting;

import java.util.Arrays;

/**
 * What pieces from one kind to the shortest can at most be worth within a length. Exact where a
 * table of all lengths is small enough, otherwise from the worth of a unit of length.
 */
final class Worth {
  private static final long LARGEST_TABLE = 1_000_000;

  /** For each kind and length; empty: too large. */
  private final long[][] table;

  /** The most a unit of length is worth, from each kind on. */
  private final long[] density;

  Worth(Instance instance, long[] prices) {
    int kinds = instance.kinds();
    density = new long[kinds + 1];
    for (int kind = kinds - 1; kind >= 0; kind--) {
      density[kind] = Math.max(density[kind + 1], prices[kind] / instance.length[kind] + 1);
    }
    long longest = Arrays.stream(instance.size).max().orElse(0);
    boolean isSmall = (longest + 1) * (kinds + 1) <= LARGEST_TABLE;
    table = new long[isSmall ? kinds + 1 : 0][(int) (isSmall ? longest + 1 : 0)];
    for (int kind = kinds - 1; isSmall && kind >= 0; kind--) {
      fill(kind, (int) instance.length[kind], instance.count[kind], prices[kind]);
    }
  }

  private void fill(int kind, int length, int count, long price) {
    table[kind] = table[kind + 1].clone();
    long[] values = table[kind];
    for (int copy = 0; copy < Math.min(count, (values.length - 1) / length); copy++) {
      for (int within = values.length - 1; within >= length; within--) {
        values[within] = Math.max(values[within], values[within - length] + price);
      }
    }
  }

  long most(int kind, long length) {
    return table.length > 0 ? table[kind][(int) length] : density[kind] * length;
  }
}
