package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.packet.Packet;
import pegbook.testing.TrialPacket;

/**
 * Whatever a day sheet can say, it can say in Spanish: held against the keys that the templates and
 * the sheet's code name, every stop of every calculator, every safety note, and the sheets of
 * made-up jobs.
 */
class SpanishWordsTest {
  private static final Texts ENGLISH = TrialPacket.TEXTS;
  private static final Texts SPANISH = TrialPacket.SPANISH;
  private static final Pattern MESSAGE = Pattern.compile("#\\{([a-zA-Z0-9.-]+)");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z0-9]+)\\}");
  private static final Pattern STOP = Pattern.compile("Kind\\.STOP\\b");
  private static final Pattern ID = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");

  /** Keys of the day plan that the binder alone prints. */
  private static final Pattern BINDER_ONLY =
      Pattern.compile(
          "day-plan\\.(title|lead|done|basis|caution|hours-range|choice|taken|orders"
              + "|column\\.(day|dig|fill|pour|hours|open)|order\\..*)");

  private static String read(Path folder, String ending) {
    try (Stream<Path> files = Files.walk(folder)) {
      StringBuilder all = new StringBuilder();
      for (Path file : files.filter(each -> each.toString().endsWith(ending)).sorted().toList()) {
        all.append(Files.readString(file)).append('\n');
      }
      return all.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> found(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  private static List<String> missing(Stream<String> keys) {
    return keys.filter(key -> !SPANISH.has(key)).sorted().toList();
  }

  private static Stream<String> english(String pattern) {
    return ENGLISH.keys().stream().filter(key -> key.matches(pattern));
  }

  @Test
  void whatTheDaySheetsTemplateNamesIsThere() {
    String sheet = read(Path.of("templates/sheets/day-sheet.html"), ".html");
    String pour = read(Path.of("templates/sheets/pour-day.html"), ".html");
    String page = read(Path.of("templates/parts/page.html"), ".html");
    String strip = page.substring(page.indexOf("day-strip(sheet)"));
    Set<String> keys = found(MESSAGE, sheet + pour + strip);
    assertThat(keys).hasSizeGreaterThan(30);
    assertThat(missing(keys.stream())).isEmpty();
  }

  @Test
  void allWordsOfTheDayPlanThatTheBinderDoesNotKeepToItselfAreThere() {
    Stream<String> keys =
        english("day-plan\\..*").filter(key -> !BINDER_ONLY.matcher(key).matches());
    assertThat(missing(keys)).isEmpty();
    assertThat(missing(english("pour-day\\..*"))).isEmpty();
  }

  @Test
  void everySafetyNoteToolWeekdayAndTitleIsThere() {
    assertThat(missing(english("note\\..*\\.do"))).isEmpty();
    assertThat(missing(english("tool-kind\\..*|weekday\\..*|unit\\..*"))).isEmpty();
    // What stops and notes take as values.
    assertThat(
            missing(
                english(
                    "(soil|use|concrete-plan\\.mixing|note\\.catch|note\\.heat-(class|measure))\\..*")))
        .isEmpty();
    assertThat(missing(english("booklet\\.(day|pour)\\..*|strip\\.day\\..*"))).isEmpty();
    assertThat(
            missing(
                Stream.of(
                    "common.to",
                    "strip.maker",
                    "strip.notIssued",
                    "strip.noOwner",
                    "strip.issued")))
        .isEmpty();
  }

  /**
   * A stop forbids work, so a day sheet names it. Its id stands behind its kind in the code, or is
   * chosen beside it.
   */
  @Test
  void everyStopOfTheCalculatorsIsThere() {
    String code = read(Path.of("src/main/java/pegbook/calc"), ".java");
    List<String> missing = new ArrayList<>();
    int stops = 0;
    Matcher stop = STOP.matcher(code);
    while (stop.find()) {
      Set<String> ids =
          found(ID, code.substring(stop.end(), Math.min(code.length(), stop.end() + 160)));
      Set<String> findings = new TreeSet<>(ids);
      findings.removeIf(id -> !ENGLISH.has("finding." + id + ".title"));
      stops++;
      if (findings.isEmpty() && !code.substring(stop.end()).stripLeading().startsWith(": Kind")) {
        missing.add("no id behind a stop: " + code.substring(stop.start(), stop.end() + 80));
      }
      // The first is the stop's; where two are chosen between, both may be.
      findings.stream()
          .filter(id -> !SPANISH.has("finding." + id + ".title"))
          .filter(id -> isStop(code, id))
          .forEach(missing::add);
    }
    assertThat(stops).isGreaterThan(18);
    assertThat(missing).isEmpty();
    assertThat(
            missing(
                english("finding\\..*\\.title")
                    .filter(SPANISH::has)
                    .map(key -> key.replaceAll("title$", "way"))))
        .isEmpty();
    // Chosen by a variable: the pour that does not fit into a day.
    assertThat(SPANISH.has("finding.pour-longer-than-day.title")).isTrue();
  }

  /** Whether the nearest kind before an id is a stop. */
  private static boolean isStop(String code, String id) {
    int at = code.indexOf('"' + id + '"');
    String before = code.substring(Math.max(0, at - 160), at);
    return before.lastIndexOf("Kind.STOP")
        > Math.max(before.lastIndexOf("Kind.ASK"), before.lastIndexOf("Kind.NOTE,"));
  }

  @Test
  void spanishSaysNothingThatEnglishDoesNotAndWithTheSameValues() {
    assertThat(SPANISH.keys()).isSubsetOf(ENGLISH.keys());
    List<String> odd =
        SPANISH.keys().stream()
            .filter(
                key ->
                    !found(PLACEHOLDER, SPANISH.raw(key))
                        .equals(found(PLACEHOLDER, ENGLISH.raw(key))))
            .toList();
    assertThat(odd).isEmpty();
  }

  /** Nothing printed claims that something is safe, approved or complete. */
  @Test
  void nothingIsPromised() {
    Pattern promise =
        Pattern.compile(
            "\\b(es|está|son|están|queda) (segur|aprobad|complet|garantizad)[oa]s?\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    assertThat(SPANISH.keys()).noneMatch(key -> promise.matcher(SPANISH.raw(key)).find());
  }

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyDayOfEveryJobIsSaidInSpanish(TrialPacket trial) {
    Packet packet = trial.packet();
    packet
        .dayPlan()
        .days()
        .forEach(
            day -> {
              DaySheet spanish = DaySheet.of(packet, trial.spanish(), day);
              DaySheet english = DaySheet.of(packet, trial.writing(), day);
              assertThat(spanish.title()).isNotEqualTo(english.title());
              assertThat(spanish.steps()).hasSameSizeAs(english.steps());
              assertThat(spanish.dangers()).hasSameSizeAs(english.dangers());
              assertThat(spanish.stops()).hasSameSizeAs(english.stops());
              assertThat(spanish.toString()).doesNotContain("{");
            });
  }
}
