package pegbook.testing;

import static pegbook.testing.Problem.Kind.TEXT_OVER_TEXT;

import java.util.ArrayList;
import java.util.List;

/** No letter lies on a letter of another text; boxes are those of the letters' own shapes. */
final class TextOverText implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    List<TextRun> runs = page.runs();
    Bands<Integer> before = new Bands<>();
    for (int k = 0; k < runs.size(); k++) {
      TextRun two = runs.get(k);
      before
          .beside(two.box())
          .distinct()
          .map(runs::get)
          .filter(one -> one.box().overlap(two.box()) > Rules.TOUCH && lettersTouch(one, two))
          .map(one -> PageRule.quoted(one) + " and " + PageRule.quoted(two))
          .forEach(texts -> problems.add(new Problem(page.number(), TEXT_OVER_TEXT, texts)));
      before.add(k, two.box());
    }
    return problems;
  }

  private static boolean lettersTouch(TextRun one, TextRun two) {
    return !follows(one, two)
        && !follows(two, one)
        && one.ink().overlap(two.ink()) > Rules.TOUCH
        && one.glyphs().stream()
            .filter(letter -> !letter.blank())
            .anyMatch(
                letter ->
                    two.glyphs().stream()
                        .filter(other -> !other.blank())
                        .anyMatch(other -> letter.ink().overlap(other.ink()) > Rules.TOUCH));
  }

  /** A slanted letter may lean over the upright one that goes on from it. */
  private static boolean follows(TextRun one, TextRun two) {
    return one.end().distanceTo(two.start()) < 0.05;
  }
}
