package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.job.Tool;
import pegbook.packet.Packet;
import pegbook.testing.PageCheck;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedPage;
import pegbook.testing.PrintedTable;
import pegbook.testing.Rules;
import pegbook.testing.TrialPacket;

/** The examples' day sheets in Spanish, printed and read back beside the English ones. */
class SpanishDaySheetTest {
  /** Words that are right in both languages. */
  private static final Set<String> SAME = Set.of("Rev.", "N", "Pegbook");

  /** Fewer letters than this are found by chance inside Spanish words or marks. */
  private static final int LEAST_LETTERS = 3;

  private record Pair(String name, PrintedDocument english, PrintedDocument spanish, Path file) {}

  private static PrintedJob printed(String example) {
    return PrintedJob.example(
        example,
        example + "-in-both",
        job ->
            job.withObjectProperty("crew")
                .set("daySheets", job.arrayNode().add("english").add("spanish")));
  }

  private static List<Pair> days(String example) {
    PrintedJob job = printed(example);
    List<Pair> pairs = new ArrayList<>();
    for (int number = 1; number <= job.days().size(); number++) {
      String name = "day-" + number + "-es";
      Path file = job.packet().resolve(name + ".pdf");
      pairs.add(new Pair(name, job.days().get(number - 1), job.document(name), file));
    }
    assertThat(pairs).isNotEmpty();
    return pairs;
  }

  /** What the job itself names, in the language of its writer. */
  private static String withoutTheJobsWords(String example, String text) {
    Packet packet = TrialPacket.example(Path.of("input", example + ".json")).packet();
    List<String> own = new ArrayList<>(List.of(packet.job().heading().title()));
    packet.job().place().authority().ifPresent(own::add);
    packet.job().place().calls().forEach(call -> call.name().ifPresent(own::add));
    packet.job().tools().stream()
        .filter(tool -> !tool.isNamedByKind())
        .map(Tool::name)
        .forEach(own::add);
    packet.job().site().features().forEach(feature -> own.add(feature.name()));
    packet.job().plan().machine().ifPresent(machine -> own.add(machine.what()));
    String left = text;
    for (String words : own) {
      left = left.replace(words, "");
    }
    return left;
  }

  /** Pieces of an English text between its placeholders. */
  private static Stream<String> pieces(String raw) {
    return Stream.of(raw.split("\\{[a-zA-Z0-9]+\\}", -1))
        .map(piece -> piece.replaceAll("^[\\s.,;:()/·_-]+|[\\s,;:()/·_-]+$", ""))
        .filter(piece -> piece.replaceAll("[^a-zA-Z]", "").length() >= LEAST_LETTERS)
        .filter(piece -> !SAME.contains(piece));
  }

  private static boolean isOfADaySheet(String key) {
    return TrialPacket.SPANISH.has(key);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "hillside-deck", "forest-hut", "smallest"})
  void noEnglishFallsThrough(String example) {
    List<String> english =
        TrialPacket.TEXTS.keys().stream()
            .filter(SpanishDaySheetTest::isOfADaySheet)
            .flatMap(key -> pieces(TrialPacket.TEXTS.raw(key)))
            .distinct()
            .toList();
    assertThat(english).hasSizeGreaterThan(150);
    for (Pair day : days(example)) {
      String text =
          withoutTheJobsWords(
              example,
              (String.join(" ", day.spanish().lines()) + descriptions(day.file()))
                  .replaceAll("\\s+", " "));
      List<String> fallen =
          english.stream()
              .filter(
                  words ->
                      Pattern.compile("(?<![\\p{L}])" + Pattern.quote(words) + "(?![\\p{L}])")
                          .matcher(text)
                          .find())
              .toList();
      assertThat(fallen).as(day.name()).isEmpty();
    }
  }

  /** The check itself finds English: it does on the English sheets. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck"})
  void theCheckWouldFindEnglish(String example) {
    String text = String.join(" ", days(example).get(0).english().lines()).replaceAll("\\s+", " ");
    long found =
        TrialPacket.TEXTS.keys().stream()
            .filter(SpanishDaySheetTest::isOfADaySheet)
            .flatMap(key -> pieces(TrialPacket.TEXTS.raw(key)))
            .distinct()
            .filter(text::contains)
            .count();
    assertThat(found).isGreaterThan(30);
  }

  /** Title, subject and what a reader for the blind is told of fields. */
  private static String descriptions(Path file) {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      StringBuilder told = new StringBuilder(" ");
      told.append(pdf.getDocumentInformation().getTitle()).append(' ');
      told.append(pdf.getDocumentInformation().getSubject()).append(' ');
      for (PDField field : pdf.getDocumentCatalog().getAcroForm().getFieldTree()) {
        told.append(field.getAlternateFieldName()).append(' ');
      }
      return told.toString();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "smallest"})
  void theDocumentSaysThatItIsSpanish(String example) throws IOException {
    for (Pair day : days(example)) {
      try (PDDocument pdf = Loader.loadPDF(day.file().toFile())) {
        assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("es");
        assertThat(pdf.getDocumentInformation().getTitle()).contains(": día ");
      }
    }
  }

  /** Filled sheets of either language are read back by the same names. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "hillside-deck", "forest-hut", "smallest"})
  void fieldsHaveTheSameNamesInBothLanguages(String example) {
    for (Pair day : days(example)) {
      assertThat(names(day.spanish())).as(day.name()).isEqualTo(names(day.english()));
    }
  }

  private static List<String> names(PrintedDocument day) {
    return day.fields().stream().map(PrintedPage.Field::name).sorted().toList();
  }

  /** One side where English is one side, 11 pt and more, no text in another's way. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "hillside-deck", "forest-hut", "smallest"})
  void aPageIsAsGoodInSpanish(String example) {
    for (Pair day : days(example)) {
      assertThat(day.spanish().pages()).as(day.name()).hasSameSizeAs(day.english().pages());
      assertThat(PageCheck.problems(day.spanish(), Rules.daySheet())).as(day.name()).isEmpty();
    }
  }

  /** The figures in the rows of a hole are those of the English sheet, unit words apart. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "hillside-deck", "forest-hut", "smallest"})
  void figuresAreTheSameInBothLanguages(String example) {
    int held = 0;
    for (Pair day : days(example)) {
      Map<String, List<String>> english = figures(day.english());
      assertThat(figures(day.spanish())).as(day.name()).isEqualTo(english);
      held += english.size();
    }
    assertThat(held).isGreaterThan(3);
  }

  private static Map<String, List<String>> figures(PrintedDocument day) {
    Map<String, List<String>> figures = new TreeMap<>();
    for (PrintedTable table : PrintedTable.of(day)) {
      for (List<String> row : table.rows()) {
        String mark = row.isEmpty() ? "" : row.get(0).split(" ", -1)[0];
        if (mark.matches("[SP]\\d+")) {
          row.stream()
              .skip(1)
              .filter(cell -> cell.matches(".*\\d.*"))
              .map(cell -> cell.replace("pie³", "ft³"))
              .forEach(cell -> figures.computeIfAbsent(mark, any -> new ArrayList<>()).add(cell));
        }
      }
    }
    return figures;
  }
}
