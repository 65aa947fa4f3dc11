package pegbook.jobfile;

import java.util.Comparator;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
public record Location(int line, int column) implements Comparable<Location> {
  static final Location START = new Location(1, 1);

  private static final Comparator<Location> IN_FILE_ORDER =
      Comparator.comparingInt(Location::line).thenComparingInt(Location::column);

  /** Of a character of a text. */
  static Location in(String text, int offset) {
    int line = 1;
    int lineStart = 0;
    for (int at = 0; at < Math.min(offset, text.length()); at++) {
      if (text.charAt(at) == '\n') {
        line++;
        lineStart = at + 1;
      }
    }
    return new Location(line, offset - lineStart + 1);
  }

  @Override
  public int compareTo(Location other) {
    return IN_FILE_ORDER.compare(this, other);
  }
}
