package pegbook.measure;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An unsigned number as it stands at some place of a plain text: {@code 12}, {@code 3 894}, {@code
 * 12.75}, {@code .5}, {@code 3/8}, {@code 9 3/8}, {@code 9-3/8}.
 *
 * @param value its value
 * @param whole whether it was written without point or fraction
 * @param end where the text goes on
 */
record NumberText(double value, boolean whole, int end) {
  private static final String DIGITS = "\\d{1,3}(?: \\d{3})+(?!\\d)|\\d+";
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?:(?<mixed>%s)[ -])?(?<over>\\d+)/(?<under>\\d+)|(?<point>(?:%s)?\\.\\d+)|(?<whole>%s)"
              .replace("%s", DIGITS));
  private static final int LARGEST_DENOMINATOR = 1000;

  /** A fraction that cannot be meant. */
  static final class FractionException extends Exception {
    private static final long serialVersionUID = 1;
  }

  /**
   * The number that starts at a place.
   *
   * @throws FractionException when it is a fraction with an impossible denominator, or a whole
   *     number before a fraction of one or more
   */
  static Optional<NumberText> at(String plain, int start) throws FractionException {
    Matcher matcher = NUMBER.matcher(plain).region(start, plain.length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    if (matcher.group("over") != null) {
      return Optional.of(new NumberText(fraction(matcher), false, matcher.end()));
    }
    boolean whole = matcher.group("whole") != null;
    return Optional.of(new NumberText(decimal(matcher.group()), whole, matcher.end()));
  }

  private static double fraction(Matcher matcher) throws FractionException {
    double over = decimal(matcher.group("over"));
    double under = decimal(matcher.group("under"));
    boolean mixed = matcher.group("mixed") != null;
    if (under == 0 || under > LARGEST_DENOMINATOR || (mixed && over >= under)) {
      throw new FractionException();
    }
    return (mixed ? decimal(matcher.group("mixed")) : 0) + over / under;
  }

  private static double decimal(String digits) {
    return Double.parseDouble(digits.replace(" ", ""));
  }
}
