package pegbook.jobfile;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.Map;

/**
 * Says in plain words where JSON is broken and what was probably meant: by the character at which
 * the parser stopped and what stands before it, and where that cannot tell, by what the parser
 * missed.
 */
final class SyntaxHint {
  private final String text;
  private final int stop;
  private final String parserSays;

  private SyntaxHint(String text, int stop, String parserSays) {
    this.text = text;
    this.stop = stop;
    this.parserSays = parserSays;
  }

  static void complain(String text, JsonParseException wrong, Report report) {
    long offset = wrong.getLocation() == null ? 0 : wrong.getLocation().getCharOffset();
    int stop = (int) Math.max(0, Math.min(offset, text.length()));
    SyntaxHint hint = new SyntaxHint(text, stop, wrong.getOriginalMessage());
    Complaint complaint =
        wrong instanceof JsonEOFException ? Complaint.ENDS_EARLY : hint.complaint();
    int place = complaint == Complaint.TRAILING_COMMA ? hint.before() : stop;
    report.complain(Location.in(text, place), "", hint.found(complaint), complaint, Map.of());
  }

  private Complaint complaint() {
    char at = charAt(stop);
    char before = charAt(before());
    if (wordAtStop().matches("-?(NaN|Infinity|INF)")) {
      return Complaint.NOT_A_NUMBER;
    } else if (at == '\n' || at == '\r') {
      return Complaint.QUOTE_MISSING;
    } else if (before == ',' && (at == '}' || at == ']')) {
      return Complaint.TRAILING_COMMA;
    } else if (at == '"' && charAt(stop - 1) == '"') {
      return Complaint.INCH_MARK;
    } else if ("'‘’“”„«»".indexOf(at) >= 0) {
      return Complaint.SINGLE_QUOTES;
    } else if (at == '/' || at == '#') {
      return Complaint.COMMENT;
    }
    return byWhatTheParserMissed(at, before);
  }

  private Complaint byWhatTheParserMissed(char at, char before) {
    if (says("character escape") || says("CTRL-CHAR")) {
      return Complaint.ESCAPE;
    } else if (says("field name") && says("double-quote")) {
      return Complaint.KEY_UNQUOTED;
    } else if (says("numeric") || at == '.' || at == '+') {
      return Complaint.NUMBER_FORM;
    } else if (says("colon")) {
      return Complaint.COLON_MISSING;
    } else if (says("comma to separate") && Character.isLetter(at)) {
      return Complaint.VALUE_UNQUOTED;
    } else if (says("comma to separate")) {
      return Complaint.COMMA_MISSING;
    } else if (says("Unrecognized token")) {
      return before == '}' || before == ']' ? Complaint.GOES_ON : Complaint.VALUE_UNQUOTED;
    }
    return Complaint.OTHER_SYNTAX;
  }

  private String found(Complaint complaint) {
    if (complaint == Complaint.ENDS_EARLY || stop >= text.length()) {
      return "the end of the file";
    } else if (complaint == Complaint.QUOTE_MISSING) {
      return "the end of the line";
    } else if (complaint == Complaint.ESCAPE) {
      String letter = Shown.bare(letterAt(stop));
      return charAt(stop) < ' ' ? letter : "\\" + letter;
    } else if (complaint == Complaint.VALUE_UNQUOTED || complaint == Complaint.NUMBER_FORM) {
      return bareValue();
    }
    String word = wordAtStop();
    return word.isEmpty() ? Shown.bare(letterAt(stop)) : word;
  }

  /** The unquoted value that the parser stopped in, up to what ends a value. */
  private String bareValue() {
    int start = stop;
    while (start > 0 && ":,[{\n".indexOf(charAt(start - 1)) < 0) {
      start--;
    }
    int end = stop;
    while (end < text.length() && ",]}\n".indexOf(charAt(end)) < 0) {
      end++;
    }
    return Shown.bare(text.substring(start, end).strip());
  }

  private String letterAt(int at) {
    return text.substring(at, text.offsetByCodePoints(at, 1));
  }

  /** The word that the parser stopped in or just behind; empty where there is none. */
  private String wordAtStop() {
    int start = stop;
    while (start > 0 && isWord(charAt(start - 1))) {
      start--;
    }
    int end = stop;
    while (end < text.length() && isWord(charAt(end))) {
      end++;
    }
    String word = text.substring(start, end);
    return word.chars().anyMatch(Character::isLetter) ? Shown.bare(word) : "";
  }

  private static boolean isWord(char letter) {
    return Character.isLetterOrDigit(letter) || letter == '-' || letter == '_';
  }

  /** Where the last visible character before the stop stands. */
  private int before() {
    int at = stop - 1;
    while (at > 0 && Character.isWhitespace(text.charAt(at))) {
      at--;
    }
    return Math.max(0, at);
  }

  private char charAt(int at) {
    return at >= 0 && at < text.length() ? text.charAt(at) : ' ';
  }

  private boolean says(String words) {
    return parserSays.contains(words);
  }
}
