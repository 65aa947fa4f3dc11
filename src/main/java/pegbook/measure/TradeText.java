package pegbook.measure;

/** Brings the many ways to type a fraction, a prime or a space to one plain way. */
final class TradeText {
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
  private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒⅟";
  private static final String[] VULGAR_PLAIN = {
    "1/2", "1/3", "2/3", "1/4", "3/4", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6", "1/7", "1/8",
    "3/8", "5/8", "7/8", "1/9", "1/10", "1/"
  };

  private TradeText() {}

  /** A number in raised digits, for the upper part of a fraction. */
  static String raised(long number) {
    return digits(number, SUPERSCRIPTS);
  }

  /** A number in lowered digits, for the lower part of a fraction. */
  static String lowered(long number) {
    return digits(number, SUBSCRIPTS);
  }

  private static String digits(long number, String shapes) {
    StringBuilder digits = new StringBuilder();
    Long.toString(number).chars().forEach(digit -> digits.append(shapes.charAt(digit - '0')));
    return digits.toString();
  }

  /** The text with plain digits, spaces, hyphens, quotes and slashes; other letters untouched. */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length() + 8);
    for (int at = 0; at < text.length(); at++) {
      append(plain, text, at);
    }
    return plain.toString().replace("''", "\"").strip().replaceAll(" +", " ");
  }

  private static void append(StringBuilder plain, String text, int at) {
    char letter = text.charAt(at);
    int vulgar = VULGAR.indexOf(letter);
    int raised = SUPERSCRIPTS.indexOf(letter);
    int lowered = SUBSCRIPTS.indexOf(letter);
    if (vulgar >= 0) {
      plain.append(endsInDigit(plain) ? " " : "").append(VULGAR_PLAIN[vulgar]);
    } else if (raised >= 0) {
      // A raised digit right after a plain one begins a fraction; after a letter it is a power.
      boolean beginsFraction = endsInDigit(plain) && SUPERSCRIPTS.indexOf(text.charAt(at - 1)) < 0;
      plain.append(beginsFraction ? " " : "").append(raised);
    } else if (lowered >= 0) {
      plain.append(lowered);
    } else {
      plain.append(plainLetter(letter));
    }
  }

  private static boolean endsInDigit(StringBuilder plain) {
    return plain.length() > 0 && Character.isDigit(plain.charAt(plain.length() - 1));
  }

  private static String plainLetter(char letter) {
    return switch (letter) {
      case '\t' -> " ";
      case '′', '’', '‘', 'ʹ', 'ʼ', '´', '`' -> "'";
      case '″', '”', '“', 'ʺ' -> "\"";
      case '−', '–', '‐', '‑' -> "-";
      case '⁄', '∕' -> "/";
      case 'º', '˚' -> "°";
      case '℉' -> "°F";
      case '℃' -> "°C";
      default ->
          Character.getType(letter) == Character.SPACE_SEPARATOR ? " " : String.valueOf(letter);
    };
  }
}
