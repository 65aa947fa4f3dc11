package pegbook.measure;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A comma between digits. It stands for the point in one half of the world and for thousands in the
 * other, so it is never taken, only mended in both ways where both are possible.
 */
final class DecimalComma {
  private static final Pattern BETWEEN_DIGITS = Pattern.compile("\\d,\\d");
  private static final Pattern GROUPS = Pattern.compile("\\d{1,3}(?:,\\d{3})+(?!\\d)");

  private DecimalComma() {}

  static boolean in(String plain) {
    return BETWEEN_DIGITS.matcher(plain).find();
  }

  static List<String> mended(String plain) {
    Matcher groups = GROUPS.matcher(plain);
    String asPoint = plain.replace(',', '.');
    return groups.find() ? List.of(plain.replace(",", ""), asPoint) : List.of(asPoint);
  }
}
