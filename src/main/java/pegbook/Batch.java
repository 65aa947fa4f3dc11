package pegbook;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import pegbook.export.PacketFolder;
import pegbook.figures.Finding;
import pegbook.jobfile.Problem;
import pegbook.packet.Packet;

/** Many jobs side by side; one bad job never stops the others. */
final class Batch {
  private final List<Path> places;
  private final Pegbook pegbook;
  private final Setting setting;
  private final PrintWriter out;
  private final PrintWriter err;

  /**
   * How jobs are run.
   *
   * @param limit the longest that one job may take
   * @param threads how many at a time
   * @param isOnTerminal whether progress may be shown on a line that is taken back
   */
  record Setting(Duration limit, int threads, boolean isOnTerminal) {}

  /** What is said of a job; its files are not kept, for a batch has thousands. */
  private record Report(int code, List<String> lines, int pages) {}

  private interface Work {
    /** The outcome of a job file; {@code threads} may share one job. */
    Outcome of(Path file, int threads, BooleanSupplier mayWrite);
  }

  Batch(List<Path> places, Pegbook pegbook, Setting setting, PrintWriter out, PrintWriter err) {
    this.places = places;
    this.pegbook = pegbook;
    this.setting = setting;
    this.out = out;
    this.err = err;
  }

  /** Prints every job into its own folder under the one named. */
  int print(Path output) {
    return run(
        "printed",
        (file, threads, mayWrite) -> {
          Outcome outcome = pegbook.print(file, threads);
          return outcome instanceof Outcome.Done done && mayWrite.getAsBoolean()
              ? written(output.resolve(JobFiles.name(file)), done)
              : outcome;
        },
        file -> output.resolve(JobFiles.name(file)).toString());
  }

  private static Outcome written(Path folder, Outcome.Done done) {
    try {
      PacketFolder.write(folder, done.files());
      return done;
    } catch (IOException e) {
      return new Outcome.Unusable(
          folder + " cannot be written: " + e + "; choose another with --output");
    }
  }

  /** Reads and calculates every job; writes nothing. */
  int check() {
    return run("checked", (file, threads, mayWrite) -> pegbook.check(file), Path::toString);
  }

  private interface Naming {
    String of(Path file);
  }

  private int run(String did, Work work, Naming naming) {
    List<Path> files;
    try {
      files = JobFiles.find(places);
    } catch (JobFiles.Unusable e) {
      err.println(e.getMessage());
      return ExitCode.WRONG_USE;
    }
    int threads = Math.max(1, Math.min(files.size(), setting.threads()));
    int threadsForOne = Math.max(1, setting.threads() / threads);
    Progress progress = new Progress(out, err, files.size(), setting.isOnTerminal());
    Tally tally = new Tally();
    int worst = ExitCode.DONE;
    try (Workers workers = new Workers(threads, setting.limit())) {
      List<Workers.Task<Report>> reports = new ArrayList<>();
      for (Path file : files) {
        reports.add(
            workers.add(
                mayWrite -> {
                  Outcome outcome = work.of(file, threadsForOne, mayWrite);
                  progress.finishOne();
                  return report(outcome, naming.of(file));
                }));
      }
      workers.start();
      for (int i = 0; i < files.size(); i++) {
        Report report = report(files.get(i), reports.get(i));
        report.lines().forEach(report.code() == 0 ? progress::say : progress::complain);
        tally.add(report.code(), report.pages());
        worst = Math.max(worst, report.code());
      }
    }
    progress.end();
    if (files.size() > 1) {
      out.println(tally.line(did, progress.seconds()));
    }
    return worst;
  }

  private static Report report(Outcome outcome, String name) {
    if (outcome instanceof Outcome.Done done) {
      return new Report(ExitCode.DONE, List.of(name + ": " + summary(done)), done.pages());
    }
    if (outcome instanceof Outcome.Refused refused) {
      List<String> problems = refused.problems().stream().map(Problem::text).toList();
      return new Report(ExitCode.PROBLEMS, problems, 0);
    }
    String reason = ((Outcome.Unusable) outcome).reason();
    return new Report(ExitCode.WRONG_USE, List.of(reason), 0);
  }

  private Report report(Path file, Workers.Task<Report> task) {
    try {
      return task.get().orElseGet(() -> tooLong(file));
    } catch (ExecutionException e) {
      return e.getCause() instanceof OutOfMemoryError ? tooLarge(file) : ourFault(file, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Report(ExitCode.OUR_FAULT, List.of(file + ": stopped"), 0);
    }
  }

  private Report tooLong(Path file) {
    return new Report(
        ExitCode.WRONG_USE,
        List.of(
            file
                + ": not done after "
                + setting.limit().toSeconds()
                + " s, so it was given up and nothing was written for it; allow more with"
                + " --time-limit, or look for what repeats itself in your own templates"),
        0);
  }

  private static Report tooLarge(Path file) {
    return new Report(
        ExitCode.WRONG_USE,
        List.of(
            file
                + ": does not fit into memory, and nothing was written for it; allow more with"
                + " PEGBOOK_JAVA_OPTIONS=-Xmx4g, or print fewer jobs at a time with --threads 1"),
        0);
  }

  private static Report ourFault(Path file, ExecutionException failed) {
    StringWriter trace = new StringWriter();
    Throwable fault = failed.getCause() == null ? failed : failed.getCause();
    fault.printStackTrace(new PrintWriter(trace, true));
    return new Report(
        ExitCode.OUR_FAULT,
        List.of(
            file + ": this is our fault, not the job's; nothing was written for it.",
            trace.toString().stripTrailing()),
        0);
  }

  private static String summary(Outcome.Done done) {
    Packet packet = done.packet();
    String findings =
        count(packet, Finding.Kind.STOP)
            + " stop, "
            + count(packet, Finding.Kind.ASK)
            + " ask, "
            + count(packet, Finding.Kind.NOTE)
            + " note";
    return done.files().isEmpty() ? findings : done.files().size() + " files; " + findings;
  }

  private static long count(Packet packet, Finding.Kind kind) {
    return packet.findings().stream().filter(finding -> finding.kind() == kind).count();
  }
}
