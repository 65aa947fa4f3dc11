package pegbook;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;

/**
 * Says what has become of each job, and how far a batch has come. On a terminal its last line says
 * so at any moment; elsewhere there are plain lines only, the same at every run but for the seconds
 * at the end.
 */
final class Progress {
  private static final String CLEAR = "\r\u001b[K";

  /** A time that is left is worth saying from here on. */
  private static final double LEAST_SECONDS = 1;

  private final PrintWriter out;
  private final PrintWriter err;
  private final int jobs;
  private final boolean isOnTerminal;
  private final long start = System.nanoTime();
  private int finished;

  /**
   * Nothing is said before the first job is done.
   *
   * @param isOnTerminal whether {@code err} can take back what it showed
   */
  Progress(PrintWriter out, PrintWriter err, int jobs, boolean isOnTerminal) {
    this.out = out;
    this.err = err;
    this.jobs = jobs;
    this.isOnTerminal = isOnTerminal && jobs > 1;
  }

  /** Notes that one job more is done. */
  synchronized void finishOne() {
    finished++;
    show();
  }

  synchronized void say(String line) {
    print(out, line);
  }

  synchronized void complain(String line) {
    print(err, line);
  }

  private void print(PrintWriter to, String line) {
    if (isOnTerminal) {
      err.print(CLEAR);
      err.flush();
    }
    to.println(line);
    to.flush();
    show();
  }

  private void show() {
    if (isOnTerminal && finished < jobs) {
      err.print(CLEAR + line(finished, jobs, seconds()));
      err.flush();
    }
  }

  /** Takes the last line back. */
  synchronized void end() {
    if (isOnTerminal) {
      err.print(CLEAR);
      err.flush();
    }
  }

  double seconds() {
    return (System.nanoTime() - start) / 1e9;
  }

  /** How far a batch has come after a time. */
  static String line(int finished, int jobs, double seconds) {
    String count = finished + " of " + jobs + " jobs";
    if (finished == 0 || seconds < LEAST_SECONDS) {
      return count;
    }
    double rate = finished / seconds;
    Duration left = Duration.ofSeconds((long) Math.ceil((jobs - finished) / rate));
    return String.format(Locale.ROOT, "%s, %.1f a second, %s left", count, rate, words(left));
  }

  private static String words(Duration left) {
    if (left.toMinutes() == 0) {
      return left.toSeconds() + " s";
    }
    return left.toHours() == 0
        ? left.toMinutes() + " min " + left.toSecondsPart() + " s"
        : left.toHours() + " h " + left.toMinutesPart() + " min";
  }
}
