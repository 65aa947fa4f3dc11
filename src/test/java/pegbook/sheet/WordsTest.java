package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pegbook.testing.TrialPacket;

/**
 * Holds the packet's words against the code: what the code names has words, and no words stand
 * there for nothing. Reads the sources, because ids and keys are plain strings in them.
 */
class WordsTest {
  private static final Texts TEXTS = TrialPacket.TEXTS;
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
  private static final Pattern CONSTANT = Pattern.compile("\\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)*\\b");
  private static final Pattern MESSAGE = Pattern.compile("#\\{([a-zA-Z0-9.-]+)");
  private static final Pattern FINDING_ID =
      Pattern.compile(
          "(?:Kind\\.(?:STOP|ASK|NOTE)|Finding\\.(?:stop|ask|note)\\()\\s*,?\\s*\"([a-z0-9-]+)\"");

  private static final String SOURCES = read(Path.of("src/main/java"), ".java");
  private static final String CALCULATORS = read(Path.of("src/main/java/pegbook/calc"), ".java");
  private static final String TEMPLATES = read(Path.of("templates"), ".html");

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

  private static Set<String> found(Pattern pattern, String text, int group) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(group));
    }
    return found;
  }

  private static Set<String> findingsWithWords() {
    Set<String> ids = new TreeSet<>();
    for (String key : TEXTS.keys()) {
      if (key.startsWith("finding.")) {
        ids.add(key.substring("finding.".length(), key.lastIndexOf('.')));
      }
    }
    return ids;
  }

  @Test
  void everyFindingOfTheCodeHasItsThreeTexts() {
    Set<String> ids = found(FINDING_ID, CALCULATORS, 1);
    assertThat(ids).hasSizeGreaterThan(20);
    List<String> missing = new ArrayList<>();
    for (String id : ids) {
      for (String tail : List.of(".title", ".text", ".way")) {
        if (!TEXTS.has("finding." + id + tail)) {
          missing.add("finding." + id + tail);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void everyFindingWithWordsIsInTheCode() {
    assertThat(findingsWithWords()).isSubsetOf(found(LITERAL, CALCULATORS, 1));
  }

  @Test
  void aFindingHasAllThreeTextsAndNoOther() {
    List<String> odd = new ArrayList<>();
    for (String id : findingsWithWords()) {
      for (String tail : List.of(".title", ".text", ".way")) {
        if (!TEXTS.has("finding." + id + tail)) {
          odd.add("finding." + id + tail + " is missing");
        }
      }
    }
    TEXTS.keys().stream()
        .filter(key -> key.startsWith("finding."))
        .filter(key -> !key.matches("finding\\.[a-z0-9-]+\\.(title|text|way)"))
        .forEach(key -> odd.add(key + " is of no use"));
    assertThat(odd).isEmpty();
  }

  @Test
  void whatTemplatesNameHasWords() {
    assertThat(found(MESSAGE, TEMPLATES, 1)).filteredOn(key -> !TEXTS.has(key)).isEmpty();
  }

  /**
   * A key is used where it stands in the code or a template as a whole, or where every part of it
   * does: "finding", "crew-of-one" and "title" may be joined to a key, "crew-of-two" may not.
   */
  @Test
  void noWordsStandForNothing() {
    Set<String> messages = found(MESSAGE, TEMPLATES, 1);
    Set<String> parts = parts();
    List<String> unused =
        TEXTS.keys().stream()
            .filter(key -> !messages.contains(key))
            .filter(key -> !List.of(key.split("\\.")).stream().allMatch(part -> known(part, parts)))
            .toList();
    assertThat(unused).isEmpty();
  }

  private static Set<String> parts() {
    Set<String> parts = new TreeSet<>();
    for (String literal : found(LITERAL, SOURCES, 1)) {
      parts.addAll(List.of(literal.split("\\.")));
    }
    for (String constant : found(CONSTANT, SOURCES, 0)) {
      parts.add(constant.toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    for (String cell : read(Path.of("src/main/resources"), ".csv").split("[,\n]", -1)) {
      parts.add(cell.strip());
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      parts.add(day.name().toLowerCase(Locale.ROOT));
    }
    parts.addAll(Texts.FILES);
    return parts;
  }

  /** Known as a whole, or with an ending that the code adds. */
  private static boolean known(String part, Set<String> parts) {
    int dash = part.lastIndexOf('-');
    return parts.contains(part)
        || (dash > 0
            && parts.contains(part.substring(0, dash))
            && parts.contains(part.substring(dash)));
  }

  /** Placeholders are spelled as the code spells the names of arguments. */
  @Test
  void placeholdersAreNamesThatTheCodeKnows() {
    Pattern placeholder = Pattern.compile("\\{([^}]*)\\}");
    Set<String> literals = found(LITERAL, SOURCES, 1);
    List<String> unknown = new ArrayList<>();
    for (String key : TEXTS.keys()) {
      for (String name : found(placeholder, TEXTS.raw(key), 1)) {
        if (!literals.contains(name)) {
          unknown.add(key + ": {" + name + "}");
        }
      }
    }
    assertThat(unknown).isEmpty();
  }

  /** Nothing printed claims that something is safe, approved or complete. */
  @Test
  void nothingIsPromised() {
    Pattern promise =
        Pattern.compile(
            "\\b(is|are|be) (safe|approved|complete|guaranteed)\\b|\\bapproved by\\b",
            Pattern.CASE_INSENSITIVE);
    // These say what is not so.
    Set<String> denials = Set.of("safety-notes.limits");
    List<String> promises =
        TEXTS.keys().stream()
            .filter(key -> !denials.contains(key))
            .filter(key -> promise.matcher(TEXTS.raw(key)).find())
            .toList();
    assertThat(promises).isEmpty();
  }

  /** One spelling: the British one. */
  @Test
  void wordsAreSpelledTheBritishWay() {
    Pattern american =
        Pattern.compile(
            "\\b(center\\w*|color\\w*|meters?|labor(s|ed|er|ers)?|mold\\w*|plow\\w*|gray|fiber\\w*|liters?"
                + "|aluminum|leveled|leveling|authoriz\\w*|organiz\\w*|license)\\b",
            Pattern.CASE_INSENSITIVE);
    List<String> spelled =
        TEXTS.keys().stream().filter(key -> american.matcher(TEXTS.raw(key)).find()).toList();
    // The meter that a service stops at, or that shows the air in concrete, is no length.
    assertThat(spelled)
        .isSubsetOf("note.private-lines.why", "own-mix.rule.air", "concrete-exposure.label.own");
  }
}
