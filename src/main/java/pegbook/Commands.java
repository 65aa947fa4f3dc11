package pegbook;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import pegbook.render.RenderException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** The command line: what may be asked, and with which words. */
@Command(
    name = "pegbook",
    description = "Prints the build packet of a small structure on dug footings from a job file.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "(print | check | new)",
    exitCodeListHeading = "Exit codes:%n",
    exitCodeList = {
      "0:done",
      "1:a job has problems; the others were printed",
      "2:wrong use, or a file or folder cannot be used",
      "3:a fault of the program"
    })
final class Commands implements Runnable {
  private static final int MOST_THREADS = 256;

  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean isOnTerminal;

  @CommandLine.Spec
  @SuppressWarnings("NullAway.Init") // set by picocli before any command runs
  private CommandLine.Model.CommandSpec spec;

  /**
   * Commands that write to streams.
   *
   * @param isOnTerminal whether a person watches {@code err} on a terminal
   */
  Commands(PrintWriter out, PrintWriter err, boolean isOnTerminal) {
    this.out = out;
    this.err = err;
    this.isOnTerminal = isOnTerminal;
  }

  /** What may be said of every run over jobs. */
  static final class Running {
    @Option(
        names = "--templates",
        paramLabel = "FOLDER",
        description = "your own copy of the templates, or of some of them")
    private Optional<Path> templates = Optional.empty();

    @Option(
        names = "--time-limit",
        paramLabel = "SECONDS",
        defaultValue = "600",
        description = "the longest that one job may take; default: ${DEFAULT-VALUE}")
    private int timeLimit;

    @Option(
        names = "--threads",
        paramLabel = "COUNT",
        defaultValue = "0",
        description = "how many jobs at a time; default: one for each processor")
    private int threads;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do: print, check or new.");
  }

  @Command(
      name = "print",
      description = "Prints the packet of every job file named, or of every one in a folder.",
      mixinStandardHelpOptions = true)
  int print(
      @Parameters(paramLabel = "FILE|FOLDER", description = "default: input") List<Path> places,
      @Option(
              names = "--output",
              paramLabel = "FOLDER",
              defaultValue = "output",
              description = "where the packets go; default: ${DEFAULT-VALUE}")
          Path output,
      @Mixin Running running) {
    return run(places, running, batch -> batch.print(output));
  }

  @Command(
      name = "check",
      description = "Reads job files and reports their problems and findings; writes nothing.",
      mixinStandardHelpOptions = true)
  int check(
      @Parameters(paramLabel = "FILE|FOLDER", description = "default: input") List<Path> places,
      @Mixin Running running) {
    return run(places, running, batch -> batch.check());
  }

  @Command(
      name = "new",
      description = "Writes a small valid job file to start from.",
      mixinStandardHelpOptions = true)
  int begin(
      @Parameters(paramLabel = "NAME", description = "its name; the file is NAME.json") String name,
      @Option(
              names = "--input",
              paramLabel = "FOLDER",
              defaultValue = "input",
              description = "where it goes; default: ${DEFAULT-VALUE}")
          Path folder) {
    return StartJob.write(folder, name, out, err);
  }

  private int run(List<Path> places, Running running, ToIntFunction<Batch> what) {
    int timeLimit = running.timeLimit;
    int threads = running.threads;
    if (timeLimit < 1 || threads < 0 || threads > MOST_THREADS) {
      throw new ParameterException(
          spec.commandLine(), "--time-limit: 1 second or more; --threads: up to " + MOST_THREADS);
    }
    Pegbook pegbook;
    try {
      pegbook = Pegbook.of(running.templates);
    } catch (RenderException | UncheckedIOException | IllegalArgumentException broken) {
      err.println(broken.getMessage() + "; nothing was printed");
      return ExitCode.WRONG_USE;
    }
    List<Path> asked = places == null || places.isEmpty() ? List.of(Path.of("input")) : places;
    int atATime = threads == 0 ? Runtime.getRuntime().availableProcessors() : threads;
    Batch.Setting setting = new Batch.Setting(Duration.ofSeconds(timeLimit), atATime, isOnTerminal);
    return what.applyAsInt(new Batch(asked, pegbook, setting, out, err));
  }
}
