package pegbook.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import pegbook.BinderPrinter;
import pegbook.Main;

/**
 * The page check over made-up jobs, as many as are asked for: {@code CheckJobs COUNT [EVERY [FIRST
 * [THREADS]]]}, from the project's folder. Every page of each job's binder is checked, which holds
 * nearly all that the other documents show; of one job in so many (10 when not said) all documents
 * are, and the long ones of these are held against PDF/UA-1 and PDF/A-2a. Jobs with faults and what
 * was printed of them stay in {@code target/check-jobs}, all others are removed. Ends with 1 when
 * anything is wrong.
 */
public final class CheckJobs {
  private static final Path KEPT = Path.of("target", "check-jobs");
  private static final int TELL_EVERY = 50;
  private static final String BINDER = "binder.pdf";

  /** Day sheets are alike, so one a packet. */
  private static final Set<String> STANDARDS = Set.of(BINDER, "review.pdf", "day-1.pdf");

  private final int every;
  private final BinderPrinter binders = new BinderPrinter();
  private final AtomicInteger faults = new AtomicInteger();
  private final AtomicInteger jobs = new AtomicInteger();
  private final AtomicInteger documents = new AtomicInteger();
  private final AtomicInteger pages = new AtomicInteger();
  private final AtomicInteger validated = new AtomicInteger();

  private CheckJobs(int every) {
    this.every = every;
  }

  public static void main(String[] arguments) throws InterruptedException {
    int count = number(arguments, 0, 1000);
    int first = number(arguments, 2, 0);
    int threads = number(arguments, 3, Runtime.getRuntime().availableProcessors());
    CheckJobs run = new CheckJobs(number(arguments, 1, 10));
    ExecutorService workers = Executors.newFixedThreadPool(threads, BinderPrinter::thread);
    for (int number = first; number < first + count; number++) {
      int job = number;
      workers.execute(() -> run.check(job));
    }
    workers.shutdown();
    boolean done = workers.awaitTermination(7, TimeUnit.DAYS);
    System.out.println(run.summary());
    System.exit(done && run.faults.get() == 0 && run.jobs.get() == count ? 0 : 1);
  }

  private static int number(String[] arguments, int at, int usual) {
    return arguments.length > at ? Integer.parseInt(arguments[at]) : usual;
  }

  private String summary() {
    return jobs
        + " jobs, "
        + documents
        + " documents, "
        + pages
        + " pages; "
        + validated
        + " documents held against PDF/UA-1 and PDF/A-2a; "
        + faults
        + " faults";
  }

  private void check(int number) {
    String name = String.format(Locale.ROOT, "job-%04d", number);
    List<String> found = new ArrayList<>();
    try {
      Path folder = Files.createDirectories(KEPT.resolve(name));
      Path job = Files.writeString(folder.resolve(name + ".json"), JobMaker.text(number));
      boolean isWhole = number % every == 0;
      Path packet = Files.createDirectories(folder.resolve(name));
      if (isWhole) {
        print(job, folder, found);
      } else {
        Files.write(packet.resolve(BINDER), binders.print(job));
      }
      for (Path document : found.isEmpty() ? documents(packet) : List.<Path>of()) {
        check(document, isWhole && STANDARDS.contains(name(document)), found);
      }
      if (found.isEmpty()) {
        remove(folder);
      }
    } catch (IOException | RuntimeException failed) {
      found.add(name + ": " + failed);
    }
    found.forEach(System.out::println);
    faults.addAndGet(found.size());
    if (jobs.incrementAndGet() % TELL_EVERY == 0) {
      System.out.println(summary());
    }
  }

  private static void print(Path job, Path folder, List<String> found) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] command = {"print", job.toString(), "--output", folder.toString(), "--threads", "1"};
    int code = Main.run(command, stream, stream);
    if (code != 0) {
      found.add(job + ": exit code " + code + ": " + said.toString(StandardCharsets.UTF_8));
    }
  }

  private void check(Path document, boolean isHeldAgainstStandards, List<String> found)
      throws IOException {
    byte[] bytes = Files.readAllBytes(document);
    documents.incrementAndGet();
    PrintedDocument printed = PdfReader.read(bytes);
    pages.addAndGet(printed.pages().size());
    for (Problem problem : PageCheck.problems(printed, Rules.of(document))) {
      found.add(document + " " + problem);
    }
    if (isHeldAgainstStandards) {
      validated.incrementAndGet();
      for (PDFAFlavour standard : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
        for (String breach : PdfChecks.breaches(bytes, standard)) {
          found.add(document + " " + standard + " " + breach);
        }
      }
    }
  }

  private static String name(Path document) {
    return document.getFileName().toString();
  }

  private static List<Path> documents(Path packet) throws IOException {
    try (Stream<Path> files = Files.list(packet)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path entry : walk.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(entry);
      }
    } catch (IOException unremovable) {
      throw new UncheckedIOException(unremovable);
    }
  }
}
