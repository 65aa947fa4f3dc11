package pegbook;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import pegbook.export.PacketFolder;
import pegbook.figures.Finding;
import pegbook.jobfile.Problem;
import pegbook.packet.Packet;

/** Many jobs side by side; one bad job never stops the others. */
final class Batch {
  private final List<Path> places;
  private final Pegbook pegbook;
  private final PrintWriter out;
  private final PrintWriter err;

  Batch(List<Path> places, Pegbook pegbook, PrintWriter out, PrintWriter err) {
    this.places = places;
    this.pegbook = pegbook;
    this.out = out;
    this.err = err;
  }

  /** Prints every job into its own folder under the one named. */
  int print(Path output) {
    return run(
        file -> {
          Outcome outcome = pegbook.print(file);
          if (outcome instanceof Outcome.Done done) {
            Path folder = output.resolve(JobFiles.name(file));
            try {
              PacketFolder.write(folder, done.files());
            } catch (IOException e) {
              return new Outcome.Unusable(
                  folder + " cannot be written: " + e + "; choose another with --output");
            }
          }
          return outcome;
        },
        file -> output.resolve(JobFiles.name(file)).toString());
  }

  /** Reads and calculates every job; writes nothing. */
  int check() {
    return run(pegbook::check, Path::toString);
  }

  private int run(Function<Path, Outcome> work, Function<Path, String> name) {
    List<Path> files;
    try {
      files = JobFiles.find(places);
    } catch (JobFiles.Unusable e) {
      err.println(e.getMessage());
      return ExitCode.WRONG_USE;
    }
    int threads = Math.max(1, Math.min(files.size(), Runtime.getRuntime().availableProcessors()));
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Outcome>> outcomes = new ArrayList<>();
      for (Path file : files) {
        Callable<Outcome> job = () -> work.apply(file);
        outcomes.add(workers.submit(job));
      }
      int worst = ExitCode.DONE;
      for (int i = 0; i < files.size(); i++) {
        worst = Math.max(worst, report(files.get(i), outcomes.get(i), name));
      }
      return worst;
    } finally {
      workers.shutdownNow();
    }
  }

  private int report(Path file, Future<Outcome> future, Function<Path, String> name) {
    try {
      Outcome outcome = future.get();
      if (outcome instanceof Outcome.Done done) {
        out.println(name.apply(file) + ": " + summary(done));
        return ExitCode.DONE;
      }
      if (outcome instanceof Outcome.Refused refused) {
        refused.problems().stream().map(Problem::text).forEach(err::println);
        return ExitCode.PROBLEMS;
      }
      err.println(((Outcome.Unusable) outcome).reason());
      return ExitCode.WRONG_USE;
    } catch (ExecutionException e) {
      err.println(file + ": this is our fault, not the job's; nothing was written for it.");
      java.util.Objects.requireNonNullElse(e.getCause(), e).printStackTrace(err);
      return ExitCode.OUR_FAULT;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.OUR_FAULT;
    }
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
