package pegbook.testing;

import static pegbook.testing.Problem.Kind.MISSING_LETTER;
import static pegbook.testing.Problem.Kind.UNREADABLE_TEXT;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Every letter is in its font and extracts as text. The renderer prints '#' for a letter that no
 * font has; as our own text it only begins the name of a bar, such as #4.
 */
final class Letters implements PageRule {
  private static final Pattern STAND_IN = Pattern.compile("#(?![0-9])|(?<=[^\\s(/])#");

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    Stream<Problem> missing =
        page.runs().stream()
            .filter(
                run ->
                    STAND_IN.matcher(run.text()).find()
                        || run.glyphs().stream().anyMatch(TextRun.Glyph::missing))
            .map(run -> new Problem(page.number(), MISSING_LETTER, PageRule.quoted(run)));
    Stream<Problem> unreadable =
        page.runs().stream()
            .filter(run -> run.glyphs().stream().anyMatch(letter -> !isReadable(letter.text())))
            .map(run -> new Problem(page.number(), UNREADABLE_TEXT, PageRule.quoted(run)));
    return Stream.concat(missing, unreadable).toList();
  }

  private static boolean isReadable(String letter) {
    return !letter.isEmpty() && letter.codePoints().allMatch(Letters::isReadable);
  }

  private static boolean isReadable(int point) {
    return point != 0xFFFD
        && switch (Character.getType(point)) {
          case Character.CONTROL,
              Character.PRIVATE_USE,
              Character.SURROGATE,
              Character.UNASSIGNED ->
              false;
          default -> true;
        };
  }
}
