package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;

/**
 * What each line would give, worked again only where a string was taken over one of its marks: a
 * large figure has tens of thousands of lines, and one string touches few of them.
 */
final class LineGains {
  private final StringCover cover;
  private final List<MarkLine> lines;
  private final List<List<Integer>> over;
  private final double[] gains;
  private final boolean[] known;

  /**
   * Nothing is worked yet.
   *
   * @param over the lines over each mark, by {@link #over}
   */
  LineGains(StringCover cover, List<MarkLine> lines, List<List<Integer>> over) {
    this.cover = cover;
    this.lines = lines;
    this.over = over;
    this.gains = new double[lines.size()];
    this.known = new boolean[lines.size()];
  }

  /** The lines over each mark, by their places in the list. */
  static List<List<Integer>> over(List<MarkLine> lines, int marks) {
    List<List<Integer>> over = new ArrayList<>();
    for (int mark = 0; mark < marks; mark++) {
      over.add(new ArrayList<>());
    }
    for (int line = 0; line < lines.size(); line++) {
      for (int mark : lines.get(line).marks()) {
        over.get(mark).add(line);
      }
    }
    return over;
  }

  /** As {@link StringCover#gain} of the line. */
  double of(int line) {
    if (!known[line]) {
      gains[line] = cover.gain(lines.get(line));
      known[line] = true;
    }
    return gains[line];
  }

  void take(Strung string) {
    cover.take(string);
    for (int mark : string.line().marks()) {
      for (int line : over.get(mark)) {
        known[line] = false;
      }
    }
  }
}
