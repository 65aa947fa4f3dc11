package pegbook.export;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A packet's revision as a number that grows from one to the next, as a calendar wants it (RFC
 * 5545, 3.8.7.4): A, B, C; 1, 2, 3; A1, A2, B; P01, P02. Words that have no order have no number.
 */
final class RevisionSequence {
  private static final Pattern RUN = Pattern.compile("[A-Z]{1,3}|[0-9]{1,3}");
  private static final Pattern ORDERED = Pattern.compile("(?:[A-Z]{1,3})?[ .-]?(?:[0-9]{1,3})?");
  private static final int SECOND = 1000;

  private RevisionSequence() {}

  /** The number of a revision, where it has one. */
  static OptionalInt of(String revision) {
    String text = revision.strip().toUpperCase(java.util.Locale.ROOT);
    if (text.isEmpty() || !ORDERED.matcher(text).matches()) {
      return OptionalInt.empty();
    }
    List<Integer> runs = new ArrayList<>();
    Matcher matcher = RUN.matcher(text);
    while (matcher.find()) {
      runs.add(value(matcher.group()));
    }
    if (runs.isEmpty()) {
      return OptionalInt.empty();
    }
    boolean digits = Character.isDigit(text.charAt(0));
    return OptionalInt.of(
        digits ? runs.get(0) : runs.get(0) * SECOND + (runs.size() > 1 ? runs.get(1) : 0));
  }

  /** A is 0, Z 25, AA 26; figures are themselves. */
  private static int value(String run) {
    if (Character.isDigit(run.charAt(0))) {
      return Integer.parseInt(run);
    }
    int value = 0;
    for (int i = 0; i < run.length(); i++) {
      value = value * 26 + (run.charAt(i) - 'A' + 1);
    }
    return value - 1;
  }
}
