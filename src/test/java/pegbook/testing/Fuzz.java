package pegbook.testing;

import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pegbook.Main;
import pegbook.export.ResultsJson;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.packet.Packets;

/**
 * Mutated jobs on the whole path: read, calculated and exported; every so many is also printed as
 * the command line does. What must not happen: an exception, more than ten seconds of processor
 * time, exit code 3, a file left by a job that was not printed.
 *
 * <p>The long run: {@code java -cp … pegbook.testing.Fuzz 20000 40}, from the project's folder: so
 * many jobs, and every fortieth printed. A third number is the first job's. Jobs that went wrong
 * stay in {@code target/fuzz}.
 */
public final class Fuzz {
  private static final long MOST_SECONDS = 10;

  /** Two dozen documents, of all threads, the compiler's among them. */
  private static final long MOST_SECONDS_PRINTING = 30;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final Path KEPT = Path.of("target", "fuzz");

  private final JobMutator mutator;
  private final int printEvery;
  private final List<String> faults = new ArrayList<>();
  private int refused;
  private int calculated;
  private int printed;

  /**
   * Begins a run.
   *
   * @param printEvery one job in so many is printed
   */
  public Fuzz(int printEvery) throws IOException {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("input"))) {
      for (Path file : files.filter(each -> !each.endsWith("job.schema.json")).sorted().toList()) {
        texts.add(Files.readString(file));
      }
    }
    for (int number = 0; number < 12; number++) {
      texts.add(JobMaker.text(number));
    }
    this.mutator = new JobMutator(texts);
    this.printEvery = printEvery;
  }

  /** Runs so many jobs and says what went wrong; nothing that should not. */
  public static void main(String[] arguments) throws IOException {
    int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 20_000;
    Fuzz fuzz = new Fuzz(arguments.length > 1 ? Integer.parseInt(arguments[1]) : 40);
    int first = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 0;
    for (int number = first; number < first + count; number++) {
      fuzz.run(number);
      if ((number + 1) % 1000 == 0) {
        System.out.println(fuzz.summary());
      }
    }
    fuzz.faults().forEach(System.out::println);
    System.out.println(fuzz.summary());
    System.exit(fuzz.faults().isEmpty() ? 0 : 1);
  }

  public List<String> faults() {
    return faults;
  }

  public int refused() {
    return refused;
  }

  public int calculated() {
    return calculated;
  }

  /** What became of the jobs. */
  public String summary() {
    return (refused + calculated)
        + " jobs: "
        + refused
        + " refused, "
        + calculated
        + " calculated, of which "
        + printed
        + " printed; "
        + faults.size()
        + " faults";
  }

  /** Tries one job. */
  public void run(int number) throws IOException {
    byte[] job = mutator.job(number);
    long start = THREADS.getCurrentThreadCpuTime();
    boolean isRead = false;
    try {
      if (JobFileReader.read("fuzz.json", job) instanceof JobFile.Read read) {
        isRead = true;
        calculated++;
        ResultsJson.of(Packets.calculate(read.job(), read.sha256()));
      } else {
        refused++;
      }
    } catch (RuntimeException | StackOverflowError failed) {
      fault(number, job, failed + " at " + failed.getStackTrace()[0]);
    }
    long seconds = (THREADS.getCurrentThreadCpuTime() - start) / 1_000_000_000;
    if (seconds >= MOST_SECONDS) {
      fault(number, job, "calculated in " + seconds + " s");
    }
    if (number % printEvery == 0 || (isRead && calculated % printEvery == 0)) {
      start = processorNanoseconds();
      print(number, job, isRead);
      seconds = (processorNanoseconds() - start) / 1_000_000_000;
      if (seconds >= MOST_SECONDS_PRINTING) {
        fault(number, job, "printed in " + seconds + " s");
      }
    }
  }

  /** Of all threads: what else the machine does makes no job slow. */
  private static long processorNanoseconds() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }

  private void print(int number, byte[] job, boolean isRead) throws IOException {
    Path folder = Files.createTempDirectory("fuzz");
    try {
      Path file = Files.write(folder.resolve("fuzz.json"), job);
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
      String output = folder.resolve("out").toString();
      int code =
          Main.run(new String[] {"print", file.toString(), "--output", output}, stream, stream);
      if (code != (isRead ? 0 : 1)) {
        fault(number, job, "exit code " + code + ": " + said.toString(StandardCharsets.UTF_8));
      }
      if (code != 0 && Files.exists(folder.resolve("out"))) {
        fault(number, job, "left something");
      }
      printed += code == 0 ? 1 : 0;
    } finally {
      remove(folder);
    }
  }

  private void fault(int number, byte[] job, String what) throws IOException {
    faults.add("job " + number + ": " + what);
    Files.createDirectories(KEPT);
    Files.write(KEPT.resolve("fuzz-" + number + ".json"), job);
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path entry : walk.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(entry);
      }
    }
  }
}
