package pegbook;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbook.bench.Floor;
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
 *   <li>{@code warm JOB}: the binder again and again in one process, and beside it the floor: the
 *       PDF library alone writing as many lines, glyphs and strokes on as many pages.
 *   <li>{@code jobs COUNT FOLDER}: that many made-up job files.
 *   <li>{@code marks COUNT FILE}: a job of that many marks in a grid.
 * </ul>
 */
public final class BinderBench {
  private static final int RUNS = 15;

  private BinderBench() {}

  public static void main(String[] arguments) throws Exception {
    switch (arguments[0]) {
      case "binder" ->
          Files.write(Path.of(arguments[2]), new BinderPrinter().print(Path.of(arguments[1])));
      case "html" ->
          Files.writeString(
              Path.of(arguments[2]), FilledMarkup.of(document(Path.of(arguments[1]))));
      case "warm" -> warm(Path.of(arguments[1]));
      case "jobs" -> jobs(Integer.parseInt(arguments[1]), Path.of(arguments[2]));
      case "marks" ->
          Files.writeString(Path.of(arguments[2]), marks(Integer.parseInt(arguments[1])));
      default -> throw new IllegalArgumentException(arguments[0]);
    }
  }

  private static PacketDocument document(Path job) throws IOException {
    Packet packet = BinderPrinter.packet(job);
    return Documents.of(Pegbook.of(Optional.empty()).booklets(packet).get(0), packet);
  }

  private static Renderer renderer() {
    TemplateFolder folder = FilledMarkup.folder();
    return new Renderer(folder, new Faces(folder::bytes));
  }

  /** Median processor time of this thread alone. */
  private static double milliseconds(Callable<byte[]> work) throws Exception {
    double[] times = new double[RUNS];
    for (int run = -10; run < RUNS; run++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      work.call();
      if (run >= 0) {
        times[run] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
      }
    }
    Arrays.sort(times);
    return times[RUNS / 2];
  }

  private static void warm(Path job) throws Exception {
    PacketDocument document = document(job);
    Renderer renderer = renderer();
    Floor floor = Floor.of(renderer.render(document));
    double figures =
        milliseconds(() -> BinderPrinter.packet(job).jobHash().getBytes(StandardCharsets.UTF_8));
    double printing = milliseconds(() -> renderer.render(document));
    double least = milliseconds(floor::write);
    System.out.printf(
        Locale.ROOT,
        "warm: figures %.0f ms, binder %.0f ms, floor %.0f ms (%s); binder/floor %.1f%n",
        figures,
        printing,
        least,
        floor,
        printing / least);
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
