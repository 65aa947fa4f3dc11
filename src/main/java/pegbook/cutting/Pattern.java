package pegbook.cutting;

import java.util.Arrays;

/** Pieces on one bar. */
final class Pattern {
  private final int stock;
  private final int[] counts;

  Pattern(int stock, int[] counts) {
    this.stock = stock;
    this.counts = counts.clone();
  }

  int stock() {
    return stock;
  }

  int count(int kind) {
    return counts[kind];
  }

  /** What remains of it where no more than so many of each kind are wanted. */
  Pattern trimmedTo(int[] wanted) {
    int[] trimmed = counts.clone();
    for (int i = 0; i < trimmed.length; i++) {
      trimmed[i] = Math.min(trimmed[i], wanted[i]);
    }
    return new Pattern(stock, trimmed);
  }

  /** The same pieces on another stock. */
  Pattern on(int otherStock) {
    return new Pattern(otherStock, counts);
  }

  /** Takes its pieces off those wanted. */
  void takeFrom(int[] wanted) {
    for (int i = 0; i < counts.length; i++) {
      wanted[i] -= counts[i];
    }
  }

  boolean isWithin(int[] wanted) {
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > wanted[i]) {
        return false;
      }
    }
    return true;
  }

  boolean isEmpty() {
    return Arrays.stream(counts).allMatch(count -> count == 0);
  }

  int[] counts() {
    return counts.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern that
        && stock == that.stock
        && Arrays.equals(counts, that.counts);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(counts) + stock;
  }
}
