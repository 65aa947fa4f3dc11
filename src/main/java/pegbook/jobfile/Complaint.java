package pegbook.jobfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The kinds of problem a job file may have; their words stand in {@code problems.properties}, as
 * what was expected and what to do, with placeholders such as {@code {least}}.
 */
enum Complaint {
  // The file.
  FILE_EMPTY,
  FILE_TOO_LARGE,
  FILE_NAME,
  NOT_UTF8,
  NOT_AN_OBJECT,
  TOO_DEEP,
  TOO_LONG,
  DUPLICATE_KEY,
  MANY,
  // Its syntax.
  TRAILING_COMMA,
  COMMA_MISSING,
  COLON_MISSING,
  QUOTE_MISSING,
  INCH_MARK,
  KEY_UNQUOTED,
  VALUE_UNQUOTED,
  SINGLE_QUOTES,
  COMMENT,
  NOT_A_NUMBER,
  NUMBER_FORM,
  ESCAPE,
  ENDS_EARLY,
  GOES_ON,
  OTHER_SYNTAX,
  // Keys and types.
  KEY_UNKNOWN,
  KEY_MISSING,
  KEY_NOT_ONE,
  TYPE,
  CHOICE,
  LIST_LENGTH,
  // Quantities.
  UNIT_MISSING,
  UNIT_UNKNOWN,
  KIND_OTHER,
  DECIMAL_COMMA,
  FRACTION,
  PARTS,
  STRAY,
  QUANTITY,
  RANGE,
  PLACE,
  DIVISION,
  ERROR_PER_LENGTH,
  // Texts and dates.
  TEXT_EMPTY,
  TEXT_LONG,
  TEXT_INVISIBLE,
  DATE,
  TIME_ZONE,
  COUNTRY,
  DAY_SPAN,
  PRICE_OF_BAR,
  NAME_OF_MARK,
  NAME_OF_PIER,
  CURRENCY,
  PRICE,
  // Between values.
  ID_TWICE,
  MARKS_TOO_MANY,
  MARK_UNKNOWN,
  MARK_TWICE,
  TAPE_SHORT,
  MARKS_COINCIDE,
  HOLES_OVERLAP,
  PIER_FAR,
  OUTLINE_CROSSES,
  INSET_SWALLOWS,
  CUT_SWALLOWS,
  FLATS_ODD,
  SUPPORT_OUTSIDE,
  TUBE_WIDE,
  COVER_SWALLOWS,
  TWO_CURRENCIES,
  PRICE_MISSING,
  STOCK_TWICE,
  STOCK_COUNT,
  LINE_SHORT,
  HIGH_BELOW_LOW,
  STIFFNESS_TWICE,
  SEASON_HALF,
  BACKFILL_NO_ROOM,
  BELL_AND_PAD,
  BELL_ROUND_TUBE,
  BELL_NARROW,
  PAD_WITHOUT_TUBE,
  PAD_NO_WIDER,
  BOTTOM_THICK,
  CAP_NARROW,
  CAP_THICK,
  LIFT_IN_BOTTOM,
  ANCHORS_WIDE,
  SLEEVE_OUTSIDE,
  MOST_BELOW_LEAST,
  HOLE_TWICE,
  PLAN_WITHOUT_START,
  MACHINE_WITHOUT_AUGER,
  PRICE_CURRENCY,
  PRICE_TWICE,
  MIX_AND_TRUCK,
  ROUTE_PLACE,
  ROUTE_STANDS,
  BREAKER_SMALL,
  UNDER_LONG,
  SIZE_OF_OTHER_UNITS,
  PIER_UNKNOWN,
  GRADE_NOT_LISTED,
  SPECIES_OF_INCHES,
  NOT_A_SUPPORT;

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)\\}");
  private static final Properties WORDS = read();

  /** What should stand there. */
  String expected(Map<String, String> words) {
    return word("expected", words);
  }

  /** What to write instead; empty when there is no plain answer. */
  String wayOut(Map<String, String> words) {
    return word("wayOut", words);
  }

  /** One of the texts of this complaint, filled in; empty where it has none. */
  String word(String part, Map<String, String> words) {
    return fill(WORDS.getProperty(name() + "." + part, ""), words);
  }

  /** A phrase that complaints share, such as what a value's kind is called. */
  static String phrase(String key, Map<String, String> words) {
    String phrase = WORDS.getProperty(key);
    if (phrase == null) {
      throw new IllegalArgumentException("no words for " + key);
    }
    return fill(phrase, words);
  }

  private static String fill(String text, Map<String, String> words) {
    return PLACEHOLDER
        .matcher(text)
        .replaceAll(
            found -> {
              String word = words.get(found.group(1));
              if (word == null) {
                throw new IllegalArgumentException("no word for " + found.group() + " in " + text);
              }
              return Matcher.quoteReplacement(word);
            });
  }

  private static Properties read() {
    Properties words = new Properties();
    try (InputStream in = Complaint.class.getResourceAsStream("problems.properties")) {
      if (in == null) {
        throw new IllegalStateException("problems.properties is not in the jar");
      }
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
