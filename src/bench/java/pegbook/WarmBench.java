package pegbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import pegbook.bench.Floor;
import pegbook.packet.Packet;
import pegbook.render.PacketDocument;
import pegbook.render.Renderer;

/**
 * The binder again and again in one process, and beside it the floor: the PDF library alone writing
 * as many lines, glyphs and strokes on as many pages. Each of three has a process of its own, by
 * JMH; {@code src/bench/bench.sh} compiles and runs it. The job is the property {@code job}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 12)
@Measurement(iterations = 15)
@Fork(1)
public class WarmBench {
  private final Path job = Path.of(System.getProperty("job"));
  private PacketDocument document;
  private Renderer renderer;
  private Floor floor;

  /** What is read, calculated and counted once. */
  @Setup(Level.Trial)
  public void read() throws IOException {
    document = BinderBench.document(job);
    renderer = BinderBench.renderer();
    floor = Floor.of(renderer.render(document));
  }

  /** From the job file to all figures. */
  @Benchmark
  public Packet figures() throws IOException {
    return BinderPrinter.packet(job);
  }

  /** From the figures' words to the bytes of the PDF. */
  @Benchmark
  public byte[] binder() throws IOException {
    return renderer.render(document);
  }

  /** The PDF library alone. */
  @Benchmark
  public byte[] floor() throws IOException {
    return floor.write();
  }

  /** Runs the three and prints medians and the ratio. */
  public static void main(String[] arguments) throws Exception {
    Map<String, Double> medians = new TreeMap<>();
    for (RunResult run :
        new Runner(new OptionsBuilder().include(WarmBench.class.getName()).build()).run()) {
      String name = run.getPrimaryResult().getLabel();
      medians.put(name, run.getPrimaryResult().getStatistics().getPercentile(50));
    }
    System.out.printf(
        Locale.ROOT,
        "warm: figures %.0f ms, binder %.0f ms, floor %.0f ms; binder/floor %.1f%n",
        medians.get("figures"),
        medians.get("binder"),
        medians.get("floor"),
        medians.get("binder") / medians.get("floor"));
  }
}
