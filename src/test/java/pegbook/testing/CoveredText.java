package pegbook.testing;

import static pegbook.testing.Problem.Kind.TEXT_COVERED;

import java.util.List;

/** Nothing filled is painted over a text, such as the white under a later label. */
final class CoveredText implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<DrawnPath> filled = page.paths().stream().filter(path -> path.fill().isPresent()).toList();
    List<Box> boxes = filled.stream().map(DrawnPath::box).toList();
    return page.runs().stream()
        .filter(run -> isCovered(run, filled, boxes))
        .map(run -> new Problem(page.number(), TEXT_COVERED, PageRule.quoted(run)))
        .toList();
  }

  private static boolean isCovered(TextRun run, List<DrawnPath> filled, List<Box> boxes) {
    for (int i = 0; i < filled.size(); i++) {
      DrawnPath path = filled.get(i);
      if (path.order() > run.order()
          && boxes.get(i).overlap(run.box()) > Rules.TOUCH
          && run.glyphs().stream()
              .filter(letter -> !letter.blank())
              .anyMatch(letter -> path.covers(letter.ink().bounds().centre()))) {
        return true;
      }
    }
    return false;
  }
}
