package pegbook.measure;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A unit of one kind of quantity with its spellings; capitals do not matter.
 *
 * @param symbol how the unit is proposed in a mended text; one of the spellings
 * @param of the quantity for a number of this unit
 * @param spellings every way it may be written
 */
record SpelledUnit<Q>(String symbol, DoubleFunction<Q> of, List<String> spellings) {
  /** Two units that may stand one behind the other, and how many of the smaller make the larger. */
  record Joint(String larger, String smaller, int ratio) {}

  /** The longest spelling that stands at a place and is not the beginning of a longer word. */
  int lengthAt(String plain, int at) {
    return spellings.stream()
        .filter(spelling -> plain.regionMatches(true, at, spelling, 0, spelling.length()))
        .mapToInt(String::length)
        .filter(length -> endsWord(plain, at + length))
        .max()
        .orElse(0);
  }

  private static boolean endsWord(String plain, int end) {
    if (end >= plain.length()) {
      return true;
    }
    char next = plain.charAt(end);
    boolean power = Character.isLetter(plain.charAt(end - 1)) && Character.isDigit(next);
    return !Character.isLetter(next) && next != '/' && next != '^' && !power;
  }
}
