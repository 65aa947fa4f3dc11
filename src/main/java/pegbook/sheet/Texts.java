package pegbook.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbook.job.Language;

/**
 * The packet's words: one file of {@code key=value} lines for each subject, with named placeholders
 * such as {@code {tape}}. Apostrophes and quotation marks are plain characters.
 */
public final class Texts {
  /** The files under {@code templates/texts/LANGUAGE/}, without their ending. */
  public static final List<String> FILES =
      List.of(
          "common",
          "cover",
          "findings",
          "start-conditions",
          "site-plan",
          "placement",
          "tape-table",
          "as-dug",
          "as-marked",
          "tape-corrections",
          "swing-sketches",
          "mark-accuracy",
          "safe-pegs",
          "true-north",
          "proving-marks",
          "depth-targets",
          "levels",
          "dig-schedule",
          "widening",
          "day-plan",
          "pour-day",
          "footings",
          "frost-depth",
          "frost-grip",
          "pier",
          "concrete-plan",
          "concrete-exposure",
          "anchorage",
          "steel-plan",
          "cut-plan",
          "own-mix",
          "truck-loads",
          "power-line",
          "supplies",
          "buying-list",
          "safety-notes",
          "work-estimate",
          "calendar",
          "floor-frame",
          "workings",
          "sources",
          "revision",
          "remarks");

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)\\}");

  private final Language language;
  private final Map<String, String> byKey;

  private Texts(Language language, Map<String, String> byKey) {
    this.language = language;
    this.byKey = byKey;
  }

  /**
   * Reads the files of the language in which whole packets print.
   *
   * @param files gives a file's text by its name, one of {@link #FILES}
   * @throws IllegalArgumentException when a key stands twice
   */
  public static Texts read(Function<String, String> files) {
    return read(Language.ENGLISH, file -> Optional.of(files.apply(file)));
  }

  /**
   * Reads a language's files. Other languages than English have the words of day sheets alone.
   *
   * @param files gives a file's text by its name, one of {@link #FILES}, where there is one
   * @throws IllegalArgumentException when a key stands twice
   */
  public static Texts read(Language language, Function<String, Optional<String>> files) {
    Map<String, String> byKey = new TreeMap<>();
    for (String file : FILES) {
      Properties properties = parse(file, files.apply(file).orElse(""));
      for (String key : new TreeSet<>(properties.stringPropertyNames())) {
        if (byKey.put(key, properties.getProperty(key)) != null) {
          throw new IllegalArgumentException("texts: \"" + key + "\" stands in two files");
        }
      }
    }
    return new Texts(language, byKey);
  }

  private static Properties parse(String file, String text) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException | IllegalArgumentException e) {
      throw new IllegalArgumentException("texts: " + file + ".properties: " + e.getMessage(), e);
    }
    return properties;
  }

  /** Whose words they are. */
  public Language language() {
    return language;
  }

  /** All keys. */
  public Set<String> keys() {
    return Collections.unmodifiableSet(byKey.keySet());
  }

  /** The words under a key, placeholders and all. */
  String raw(String key) {
    String words = byKey.get(key);
    if (words == null) {
      throw new IllegalArgumentException("texts: nothing stands under \"" + key + "\"");
    }
    return words;
  }

  public boolean has(String key) {
    return byKey.containsKey(key);
  }

  /**
   * The words under a key.
   *
   * @throws IllegalArgumentException when there are none
   */
  public String say(String key) {
    return say(key, Map.of());
  }

  /**
   * The words under a key with their placeholders filled in.
   *
   * @throws IllegalArgumentException when there are none, or a placeholder has no value
   */
  public String say(String key, Map<String, String> values) {
    String words = raw(key);
    Matcher matcher = PLACEHOLDER.matcher(words);
    StringBuilder said = new StringBuilder();
    while (matcher.find()) {
      String value = values.get(matcher.group(1));
      if (value == null) {
        throw new IllegalArgumentException(
            "texts: \"" + key + "\" names {" + matcher.group(1) + "}, which has no value");
      }
      matcher.appendReplacement(said, Matcher.quoteReplacement(value));
    }
    return matcher.appendTail(said).toString();
  }
}
