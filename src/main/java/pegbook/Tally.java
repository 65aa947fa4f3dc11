package pegbook;

import java.util.Locale;
import java.util.StringJoiner;

/** What a run did, for its last line. */
final class Tally {
  private int done;
  private int refused;
  private int failed;
  private int pages;

  /** Counts a job by what it ended with. */
  void add(int code, int pagesOfIt) {
    done += code == ExitCode.DONE ? 1 : 0;
    refused += code == ExitCode.PROBLEMS ? 1 : 0;
    failed += code > ExitCode.PROBLEMS ? 1 : 0;
    pages += pagesOfIt;
  }

  /**
   * The line.
   *
   * @param did what was done to a job that was not refused
   */
  String line(String did, double seconds) {
    StringJoiner line = new StringJoiner(", ");
    line.add((done + refused + failed) + " jobs: " + done + " " + did);
    if (refused > 0) {
      line.add(refused + " refused");
    }
    if (failed > 0) {
      line.add(failed + " failed");
    }
    String end = String.format(Locale.ROOT, "%.1f s", seconds);
    return line + (pages > 0 ? "; " + pages + " pages in " + end : "; " + end);
  }
}
