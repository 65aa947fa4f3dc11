package pegbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import pegbook.lettering.Faces;
import pegbook.packet.Packet;
import pegbook.render.FilledMarkup;
import pegbook.render.PacketDocument;
import pegbook.render.Renderer;
import pegbook.render.TemplateFolder;
import pegbook.testing.JobMaker;

/**
 * What {@code src/bench/bench.sh} runs: the binder of a job, and nothing else of its packet.
 *
 * <ul>
 *   <li>{@code binder JOB FILE}: from the job file to the PDF of its binder, once.
 *   <li>{@code html JOB FILE}: the binder as a browser can print it, without its drawings.
 *   <li>{@code jobs COUNT FOLDER}: that many made-up job files.
 *   <li>{@code marks COUNT FILE}: a job of that many marks in a grid.
 * </ul>
 */
public final class BinderBench {
  private BinderBench() {}

  public static void main(String[] arguments) throws Exception {
    switch (arguments[0]) {
      case "binder" ->
          Files.write(Path.of(arguments[2]), new BinderPrinter().print(Path.of(arguments[1])));
      case "html" ->
          Files.writeString(
              Path.of(arguments[2]), FilledMarkup.of(document(Path.of(arguments[1]))));
      case "jobs" -> jobs(Integer.parseInt(arguments[1]), Path.of(arguments[2]));
      case "marks" ->
          Files.writeString(Path.of(arguments[2]), marks(Integer.parseInt(arguments[1])));
      default -> throw new IllegalArgumentException(arguments[0]);
    }
  }

  static PacketDocument document(Path job) throws IOException {
    Packet packet = BinderPrinter.packet(job);
    return Documents.of(Pegbook.of(Optional.empty()).booklets(packet).get(0), packet);
  }

  static Renderer renderer() {
    TemplateFolder folder = FilledMarkup.folder();
    return new Renderer(folder, new Faces(folder::bytes));
  }

  private static void jobs(int count, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (int number = 0; number < count; number++) {
      String name = String.format(Locale.ROOT, "made-%04d.json", number);
      Files.writeString(folder.resolve(name), JobMaker.text(number));
    }
  }

  /** The nearest grid to a square, 2.4 m apart. */
  private static String marks(int count) {
    int rows = (int) Math.sqrt(count);
    while (count % rows != 0) {
      rows--;
    }
    int columns = count / rows;
    return String.format(
        Locale.ROOT,
        """
        {"title": "%d marks", "units": "metric", "paper": "A4", "ground": {"soil": "sand"},
        "layout": {"outline": {"rectangle": {"length": "%.1f m", "width": "%.1f m",
        "columns": %d, "rows": %d}}, "centreToFirstMark": "10 deg"}}
        """,
        count,
        2.4 * (columns - 1) + 0.4,
        2.4 * (rows - 1) + 0.4,
        columns,
        rows);
  }
}
