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
    List<Box> boxes = runs.stream().map(TextRun::box).toList();
    for (int i = 0; i < runs.size(); i++) {
      for (int k = i + 1; k < runs.size(); k++) {
        if (boxes.get(i).overlap(boxes.get(k)) > Rules.TOUCH
            && lettersTouch(runs.get(i), runs.get(k))) {
          problems.add(
              new Problem(
                  page.number(),
                  TEXT_OVER_TEXT,
                  PageRule.quoted(runs.get(i)) + " and " + PageRule.quoted(runs.get(k))));
        }
      }
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
