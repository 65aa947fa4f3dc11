package pegbook.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pegbook.sheet.drawing.Spot;

/**
 * Things on a paper by the squares that they reach into, so that a label is held only against what
 * is near it: on a plan of hundreds of marks each is tried in hundreds of places. What lies outside
 * the paper belongs to its outermost squares.
 */
final class Grid<T> {
  private static final double SQUARE_MM = 5;

  private final int columns;
  private final int rows;
  private final List<List<Entry<T>>> squares = new ArrayList<>();

  /** The number of the last count, by which a thing in several squares counts once. */
  private int counts;

  private static final class Entry<T> {
    private final T thing;
    private int counted;

    private Entry(T thing) {
      this.thing = thing;
    }
  }

  Grid(double widthMm, double heightMm) {
    this.columns = (int) Math.ceil(widthMm / SQUARE_MM) + 2;
    this.rows = (int) Math.ceil(heightMm / SQUARE_MM) + 2;
    for (int i = 0; i < columns * rows; i++) {
      squares.add(new ArrayList<>(0));
    }
  }

  /** Puts a thing where it reaches: between two corners, whichever. */
  void add(T thing, Spot one, Spot other) {
    Entry<T> entry = new Entry<>(thing);
    for (int row = row(Math.min(one.y(), other.y()));
        row <= row(Math.max(one.y(), other.y()));
        row++) {
      for (int column = column(Math.min(one.x(), other.x()));
          column <= column(Math.max(one.x(), other.x()));
          column++) {
        squares.get(row * columns + column).add(entry);
      }
    }
  }

  /** Whether any thing near a place passes a test; things elsewhere are not asked. */
  boolean any(Spot low, Spot high, Predicate<T> test) {
    for (int row = row(low.y()); row <= row(high.y()); row++) {
      for (int column = column(low.x()); column <= column(high.x()); column++) {
        for (Entry<T> entry : squares.get(row * columns + column)) {
          if (test.test(entry.thing)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** How many things near a place pass a test; things elsewhere are not asked. */
  int count(Spot low, Spot high, Predicate<T> test) {
    counts++;
    int found = 0;
    for (int row = row(low.y()); row <= row(high.y()); row++) {
      for (int column = column(low.x()); column <= column(high.x()); column++) {
        for (Entry<T> entry : squares.get(row * columns + column)) {
          if (entry.counted != counts) {
            entry.counted = counts;
            found += test.test(entry.thing) ? 1 : 0;
          }
        }
      }
    }
    return found;
  }

  private int column(double x) {
    return square(x, columns);
  }

  private int row(double y) {
    return square(y, rows);
  }

  private static int square(double millimetres, int last) {
    return Math.max(0, Math.min(last - 1, (int) Math.floor(millimetres / SQUARE_MM) + 1));
  }
}
