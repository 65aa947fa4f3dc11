package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import pegbook.BinderPrinter;
import pegbook.testing.JobMaker;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfChecks;
import pegbook.testing.PdfReader;
import pegbook.testing.Rules;

/**
 * Fifty made-up jobs print, and every page keeps the rules, at any number of marks: half of them
 * with all their documents, the others with their binders. Jobs and packets stay in {@code
 * target/whole/made-up}, so that a page with a fault can be looked at. {@link
 * pegbook.testing.CheckJobs} does the same with any number of them.
 */
class GeneratedJobsTest {
  /** One packet in so many is also held against the standards, which takes longer. */
  private static final int EVERY = 10;

  /** The documents that are held against them: day sheets are alike, so one a packet. */
  private static final Set<String> KINDS = Set.of("binder.pdf", "review.pdf", "day-1.pdf");

  private static final Path INPUT = Path.of("target", "whole", "made-up", "input");

  /** Jobs of which only the binder is printed. */
  private static final Path BINDERS = Path.of("target", "whole", "made-up", "binders");

  private static final Path OUTPUT = Path.of("target", "whole", "made-up", "output");

  @BeforeAll
  static void print() throws IOException {
    Files.createDirectories(INPUT);
    for (int number = 0; number < JobMaker.ROUND; number++) {
      Path folder = Files.createDirectories(isWhole(number) ? INPUT : BINDERS);
      Files.writeString(folder.resolve(name(number) + ".json"), JobMaker.text(number));
    }
    Printing.Said said = Printing.run("print", INPUT.toString(), "--output", OUTPUT.toString());
    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isZero();
    BinderPrinter printer = new BinderPrinter();
    for (int number = 0; number < JobMaker.ROUND; number++) {
      if (!isWhole(number)) {
        Path packet = Files.createDirectories(OUTPUT.resolve(name(number)));
        Files.write(
            packet.resolve("binder.pdf"), printer.print(BINDERS.resolve(name(number) + ".json")));
      }
    }
  }

  /** Seven has no factor in common with what decides the kinds of jobs. */
  private static boolean isWhole(int number) {
    return number % 7 < 3 || number % EVERY == 0;
  }

  @Test
  void everyPageKeepsTheRules() {
    assertNothing(
        ofEveryDocument(
            IntStream.range(0, JobMaker.ROUND),
            document -> PageCheck.problems(Printing.bytes(document), Rules.of(document)).stream()));
  }

  @Test
  void aSampleIsArchivalAndAccessible() {
    assertNothing(
        ofEveryDocument(
            IntStream.range(0, JobMaker.ROUND).filter(number -> number % EVERY == 0),
            document ->
                Stream.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)
                    .filter(standard -> KINDS.contains(document.getFileName().toString()))
                    .flatMap(
                        standard ->
                            PdfChecks.breaches(Printing.bytes(document), standard).stream()
                                .map(breach -> standard + " " + breach))));
  }

  @Test
  void theContentsLeadToTheTableOfDaysNotToEachDay() {
    List<String> covers =
        IntStream.range(0, EVERY)
            .mapToObj(number -> OUTPUT.resolve(name(number)).resolve("binder.pdf"))
            .map(binder -> PdfReader.read(Printing.bytes(binder)).pages().get(0))
            .map(cover -> String.join("\n", cover.lines()))
            .toList();
    assertThat(covers)
        .allSatisfy(cover -> assertThat(cover).contains("Days and day sheets"))
        .noneSatisfy(cover -> assertThat(cover).contains("Day 1"));
  }

  private interface Check {
    /** What is wrong with a document: page, rule, text and place. */
    Stream<?> of(Path document);
  }

  /** What is wrong with the jobs of some numbers, each with the job's and the document's name. */
  private static List<String> ofEveryDocument(IntStream numbers, Check check) {
    return numbers
        .mapToObj(number -> OUTPUT.resolve(name(number)))
        .flatMap(packet -> Printing.documents(packet).stream())
        .toList()
        .parallelStream()
        .flatMap(document -> check.of(document).map(fault -> document + " " + fault))
        .toList();
  }

  private static void assertNothing(List<String> faults) {
    assertThat(faults)
        .withFailMessage(
            () ->
                faults.size()
                    + " faults; the job NN is JobMaker.text(NN), in "
                    + INPUT
                    + ":\n"
                    + String.join("\n", faults))
        .isEmpty();
  }

  private static String name(int number) {
    return String.format(Locale.ROOT, "job-%02d", number);
  }
}
