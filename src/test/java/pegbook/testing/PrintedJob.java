package pegbook.testing;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import pegbook.Main;

/**
 * A job printed as the command line prints it, and read back.
 *
 * @param packet folder of what was printed
 */
public record PrintedJob(Path packet) {
  private static final Path FOLDER = WorkFolder.of("printed-jobs");
  private static final Map<Path, PrintedDocument> READ = new ConcurrentHashMap<>();
  private static final Map<String, PrintedJob> PRINTED = new ConcurrentHashMap<>();

  /** An example, as it is. */
  public static PrintedJob example(String example) {
    try {
      return text(example, Files.readString(Path.of("input", example + ".json")));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * An example with changes.
   *
   * @param name of the changed job
   * @param change what is changed in its JSON
   */
  public static PrintedJob example(String example, String name, Consumer<ObjectNode> change) {
    try {
      ObjectMapper json = new ObjectMapper();
      Path file = Path.of("input", example + ".json");
      ObjectNode job = (ObjectNode) json.readTree(file.toFile());
      change.accept(job);
      return text(name, job.toPrettyString());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** A job by the text of its file; printed once, however often it is asked for. */
  private static PrintedJob text(String name, String text) {
    return PRINTED.computeIfAbsent(name + text, any -> print(name, text));
  }

  private static PrintedJob print(String name, String text) {
    try {
      Files.createDirectories(FOLDER);
      Path file = FOLDER.resolve(name + ".json");
      Files.writeString(file, text);
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
      String[] arguments = {"print", file.toString(), "--output", FOLDER.toString()};
      if (Main.run(arguments, out, out) != 0) {
        throw new IllegalStateException(said.toString(StandardCharsets.UTF_8));
      }
      return new PrintedJob(FOLDER.resolve(name));
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  /** A document of the packet, such as "binder". */
  public PrintedDocument document(String name) {
    return READ.computeIfAbsent(packet.resolve(name + ".pdf"), PrintedJob::read);
  }

  private static PrintedDocument read(Path file) {
    try {
      return PdfReader.read(Files.readAllBytes(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The day sheets in their order. */
  public List<PrintedDocument> days() {
    return IntStream.iterate(1, number -> number + 1)
        .takeWhile(number -> Files.exists(packet.resolve("day-" + number + ".pdf")))
        .mapToObj(number -> document("day-" + number))
        .toList();
  }

  /** The tables of a sheet of the binder. */
  public List<PrintedTable> tables(String sheet) {
    return PrintedTable.of(document("binder"), sheet);
  }
}
