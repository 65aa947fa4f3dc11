package pegbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** What is said while a batch runs, and at its end. */
class ProgressTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private Progress progress(int jobs, boolean isOnTerminal) {
    return new Progress(new PrintWriter(out), new PrintWriter(err), jobs, isOnTerminal);
  }

  @Test
  void aLineCountsAndSaysWhatIsLeft() {
    assertThat(Progress.line(0, 1000, 5)).isEqualTo("0 of 1000 jobs");
    assertThat(Progress.line(3, 1000, 0.5)).isEqualTo("3 of 1000 jobs");
    assertThat(Progress.line(10, 1000, 4))
        .isEqualTo("10 of 1000 jobs, 2.5 a second, 6 min 36 s left");
    assertThat(Progress.line(990, 1000, 400)).isEqualTo("990 of 1000 jobs, 2.5 a second, 5 s left");
    assertThat(Progress.line(1, 1000, 36))
        .isEqualTo("1 of 1000 jobs, 0.0 a second, 9 h 59 min left");
  }

  @Test
  void aPipeGetsPlainLines() {
    Progress progress = progress(2, false);
    progress.finishOne();
    progress.say("out/a: 8 files");
    progress.finishOne();
    progress.complain("b.json is bad");
    progress.end();
    assertThat(out.toString()).isEqualTo("out/a: 8 files" + System.lineSeparator());
    assertThat(err.toString()).isEqualTo("b.json is bad" + System.lineSeparator());
  }

  @Test
  void aTerminalGetsOneLineThatIsTakenBack() {
    Progress progress = progress(2, true);
    progress.finishOne();
    assertThat(err.toString()).isEqualTo("\r\u001b[K1 of 2 jobs");
    progress.say("out/a: 8 files");
    progress.finishOne();
    progress.end();
    assertThat(out.toString()).isEqualTo("out/a: 8 files" + System.lineSeparator());
    assertThat(err.toString()).endsWith("\r\u001b[K");
  }

  @Test
  void oneJobAloneHasNoProgress() {
    Progress progress = progress(1, true);
    progress.finishOne();
    progress.end();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void theLastLineCountsJobsAndPages() {
    Tally tally = new Tally();
    tally.add(ExitCode.DONE, 40);
    tally.add(ExitCode.DONE, 30);
    tally.add(ExitCode.PROBLEMS, 0);
    tally.add(ExitCode.WRONG_USE, 0);
    assertThat(tally.line("printed", 2.04))
        .isEqualTo("4 jobs: 2 printed, 1 refused, 1 failed; 70 pages in 2.0 s");
    assertThat(new Tally().line("checked", 1)).isEqualTo("0 jobs: 0 checked; 1.0 s");
  }
}
