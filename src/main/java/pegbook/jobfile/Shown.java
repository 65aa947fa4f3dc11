package pegbook.jobfile;

import java.util.Locale;

/** What was found, as a message shows it: short, on one line, nothing invisible left invisible. */
final class Shown {
  private static final int LONGEST = 60;

  private Shown() {}

  static String of(Node node) {
    if (node instanceof Node.Text text) {
      return quoted(text.value());
    } else if (node instanceof Node.Digits number) {
      return shortened(number.digits());
    } else if (node instanceof Node.Word word) {
      return word.word();
    } else if (node instanceof Node.Row row) {
      return row.items().isEmpty() ? "an empty list" : "a list";
    }
    return "an object";
  }

  static String quoted(String text) {
    return "\"" + plain(shortened(text)) + "\"";
  }

  /** A piece of the file without quotation marks. */
  static String bare(String text) {
    return plain(shortened(text));
  }

  private static String shortened(String text) {
    if (text.length() <= LONGEST) {
      return text;
    }
    boolean splits = Character.isHighSurrogate(text.charAt(LONGEST - 1));
    return text.substring(0, splits ? LONGEST - 1 : LONGEST) + "…";
  }

  /** Control and direction characters by number, as JSON writes them. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              if (isInvisible(letter)) {
                plain.append(String.format(Locale.ROOT, "\\u%04x", letter));
              } else {
                plain.appendCodePoint(letter);
              }
            });
    return plain.toString();
  }

  /** Control characters, halves of characters, and marks that only steer how others are shown. */
  static boolean isInvisible(int letter) {
    return switch (Character.getType(letter)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
