package pegbook.whole;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import pegbook.Main;
import pegbook.testing.WorkFolder;

/** Prints jobs as the command line does, and keeps what was printed. */
final class Printing {
  static final Path INPUT = Path.of("input");

  private static final Path EXAMPLES = printExamples();

  private Printing() {}

  /** What a run of the program said and ended with. */
  record Said(int code, String out, String err) {}

  static Said run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            arguments,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Said(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** Names of the examples: found, not listed. */
  static List<String> examples() {
    try (Stream<Path> files = Files.list(INPUT)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".json") && !name.endsWith(".schema.json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The folder of an example's packet. */
  static Path packet(String example) {
    return EXAMPLES.resolve(example);
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The PDFs of a packet, in the order of their names. */
  static List<Path> documents(Path packet) {
    try (Stream<Path> files = Files.list(packet)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Path printExamples() {
    try {
      Path folder = Files.createDirectories(WorkFolder.of("examples"));
      Said said = run("print", INPUT.toString(), "--output", folder.toString());
      if (said.code() != 0) {
        throw new IllegalStateException(said.err());
      }
      return folder;
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
