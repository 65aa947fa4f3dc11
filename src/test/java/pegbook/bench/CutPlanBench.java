package pegbook.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pegbook.calc.cutplan.CutPlan;
import pegbook.calc.cutplan.CutPlanCalculator;
import pegbook.figures.CutPiece;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.packet.Packet;
import pegbook.packet.Packets;
import pegbook.testing.JobMaker;

/**
 * The cut plans of the example jobs and of made-up ones, each worked several times in a warm
 * machine. Run it with the test class path: {@code java -cp … pegbook.bench.CutPlanBench}; names,
 * such as {@code sky-deck.json made-7.json}, take these alone.
 */
public final class CutPlanBench {
  private static final int RUNS = 5;

  /** The search has one thread; its own time does not count what else the machine does. */
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private CutPlanBench() {}

  /** What is worked. */
  private record Case(String name, Job job, List<CutPiece> pieces) {
    int count() {
      return pieces.stream().mapToInt(CutPiece::count).sum();
    }
  }

  /** A case and its median, in milliseconds. */
  private record Timed(Case of, double milliseconds, boolean isProved) {}

  /** Prints the median of each, slowest first, in milliseconds. */
  public static void main(String[] arguments) throws Exception {
    List<Timed> timed = new ArrayList<>();
    for (Case one : cases()) {
      if (arguments.length == 0 || Arrays.asList(arguments).contains(one.name())) {
        timed.add(timed(one));
      }
    }
    timed.sort(Comparator.comparingDouble(Timed::milliseconds).reversed());
    for (Timed one : timed) {
      System.out.printf(
          Locale.ROOT,
          "%9.2f ms  %-20s %4d pieces, %s%n",
          one.milliseconds(),
          one.of().name(),
          one.of().count(),
          one.isProved() ? "proved" : "not proved the best");
    }
  }

  /** The first runs warm the machine. */
  private static Timed timed(Case one) {
    double[] times = new double[RUNS];
    boolean isProved = false;
    for (int run = -2; run < RUNS; run++) {
      long start = THREADS.getCurrentThreadCpuTime();
      CutPlan plan = CutPlanCalculator.calculate(one.job(), one.pieces());
      if (run >= 0) {
        times[run] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
        isProved = plan.sizes().stream().allMatch(size -> size.proof().isBest());
      }
    }
    Arrays.sort(times);
    return new Timed(one, times[RUNS / 2], isProved);
  }

  private static List<Case> cases() throws Exception {
    List<Case> cases = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("input"))) {
      for (Path file : files.filter(each -> !each.endsWith("job.schema.json")).sorted().toList()) {
        cases.add(of(file.getFileName().toString(), Files.readAllBytes(file)));
      }
    }
    for (int number = 0; number < JobMaker.ROUND; number++) {
      byte[] text = JobMaker.text(number).getBytes(StandardCharsets.UTF_8);
      cases.add(of("made-" + number + ".json", text));
    }
    return cases;
  }

  /** Bars, timber, boards and pipe, as the packet has them. */
  private static Case of(String name, byte[] text) {
    if (JobFileReader.read(name, text) instanceof JobFile.Read read) {
      Packet packet = Packets.calculate(read.job(), "");
      List<CutPiece> pieces = new ArrayList<>(packet.steelPlan().pieces());
      pieces.addAll(packet.floorFrame().pieces());
      pieces.addAll(packet.levels().postPieces(packet.floorFrame().postSize()));
      pieces.addAll(packet.powerLine().pieces());
      return new Case(name, read.job(), pieces);
    }
    throw new IllegalArgumentException(name + " is refused");
  }
}
