package pegbook;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
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
  private final PrintWriter out;
  private final PrintWriter err;

  @CommandLine.Spec
  @SuppressWarnings("NullAway.Init") // set by picocli before any command runs
  private CommandLine.Model.CommandSpec spec;

  Commands(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "Say what to do: print, check or new.");
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
      @Option(
              names = "--templates",
              paramLabel = "FOLDER",
              description = "your own copy of the templates, or of some of them")
          Optional<Path> templates) {
    return batch(places, templates).print(output);
  }

  @Command(
      name = "check",
      description = "Reads job files and reports their problems and findings; writes nothing.",
      mixinStandardHelpOptions = true)
  int check(
      @Parameters(paramLabel = "FILE|FOLDER", description = "default: input") List<Path> places,
      @Option(
              names = "--templates",
              paramLabel = "FOLDER",
              description = "your own copy of the templates, or of some of them")
          Optional<Path> templates) {
    return batch(places, templates).check();
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

  private Batch batch(List<Path> places, Optional<Path> templates) {
    List<Path> asked = places == null || places.isEmpty() ? List.of(Path.of("input")) : places;
    return new Batch(asked, Pegbook.of(templates), out, err);
  }
}
