package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfChecks;
import pegbook.testing.PdfReader;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedPage;
import pegbook.testing.Rules;

/** Every example's packet, read back as a person and a reader for the blind would. */
class ExamplesTest {
  static List<String> examples() {
    return Printing.examples();
  }

  static Stream<Path> documents() {
    return examples().stream().flatMap(name -> Printing.documents(Printing.packet(name)).stream());
  }

  /** Every binder, and one of each other kind and language: they are made of the same parts. */
  static Stream<Path> everyBinderAndOneOfEachKind() {
    Set<String> seen = new TreeSet<>();
    return documents()
        .filter(
            document -> {
              String name = document.getFileName().toString();
              return name.equals("binder.pdf") || seen.add(name.replaceAll("\\d+", ""));
            });
  }

  @Test
  void thereAreExamplesInBothUnitSystems() {
    assertThat(examples()).contains("sky-deck", "forest-hut", "hillside-deck", "smallest");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aPacketHasABinderAReviewPacketDaySheetsAndFigures(String example) {
    assertThat(Printing.packet(example))
        .isDirectoryContaining("glob:**/binder.pdf")
        .isDirectoryContaining("glob:**/review.pdf")
        .isDirectoryContaining("glob:**/day-1.pdf")
        .isDirectoryContaining("glob:**/results.json")
        .isDirectoryContaining("glob:**/tapes.csv")
        .isDirectoryContaining("glob:**/buying.csv");
  }

  @ParameterizedTest
  @MethodSource("everyBinderAndOneOfEachKind")
  void documentsAreArchivalAndAccessible(Path document) {
    PdfChecks.assertArchivalAndAccessible(Printing.bytes(document));
  }

  @ParameterizedTest
  @MethodSource("documents")
  void noPageHasAFault(Path document) {
    assertThat(PageCheck.problems(Printing.bytes(document), Rules.of(document))).isEmpty();
  }

  @Test
  void fractionsAndPrimesExtractAsPrinted() {
    String text =
        spaced(
            PdfReader.read(Printing.bytes(Printing.packet("sky-deck").resolve("binder.pdf")))
                .text());
    // Two marks of a hexagon 12 ft across its flats, inset 8 in, are 2 * (6 ft - 8 in) = 10' 8"
    // apart;
    // the radius, 73.901 in, is read as 6' 1 7/8" on a tape of sixteenths.
    assertThat(text).contains("10′ 8″").contains("6′ 1 ⁷⁄₈″");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyDayHasFieldsOfItsOwnAndNoTwoShareAName(String example) {
    for (Path document : Printing.documents(Printing.packet(example))) {
      String name = String.valueOf(document.getFileName());
      List<String> fields =
          PdfReader.read(Printing.bytes(document)).fields().stream()
              .map(PrintedPage.Field::name)
              .toList();
      assertThat(fields).doesNotHaveDuplicates();
      if (name.startsWith("day-") || name.startsWith("pour-")) {
        // A day's fields have the same names in every language.
        String day = name.replaceAll("(-[a-z]{2})?\\.pdf$", "");
        assertThat(fields).as(name).isNotEmpty().allMatch(field -> field.startsWith(day + "."));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void noPageClaimsSafetyOrApproval(String example) {
    for (Path document : Printing.documents(Printing.packet(example))) {
      PrintedDocument printed = PdfReader.read(Printing.bytes(document));
      // The safety notes deny it in so many words; nothing else may use them.
      assertThat(plain(printed).replace("do not say that anything is safe", ""))
          .doesNotContain("is safe")
          .doesNotContain("are safe")
          .doesNotContain("approved by")
          .doesNotContain("is approved");
    }
  }

  private static String plain(PrintedDocument printed) {
    return spaced(printed.text()).toLowerCase(Locale.ROOT);
  }

  /** Every run of spaces, no-break spaces and line ends as one space. */
  private static String spaced(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }
}
