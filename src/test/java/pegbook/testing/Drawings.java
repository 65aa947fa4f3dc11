package pegbook.testing;

import static pegbook.testing.Problem.Kind.DRAWINGS_OVERLAP;
import static pegbook.testing.Problem.Kind.TEXT_ON_DRAWING;

import java.util.ArrayList;
import java.util.List;

/** Drawings lie on no other drawing, and no text of the page lies on a drawing. */
final class Drawings implements PageRule {
  /** Boxes may share a border, mm. */
  private static final double BORDER = 0.2;

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    List<Box> boxes = page.drawings().stream().map(PrintedPage.PlacedDrawing::box).toList();
    for (int i = 0; i < boxes.size(); i++) {
      Box box = boxes.get(i);
      for (Box other : boxes.subList(i + 1, boxes.size())) {
        if (box.overlap(other) > BORDER) {
          problems.add(new Problem(page.number(), DRAWINGS_OVERLAP, box + " and " + other));
        }
      }
      page.runs().stream()
          .filter(run -> !run.isInDrawing() && run.box().overlap(box) > BORDER)
          .map(run -> new Problem(page.number(), TEXT_ON_DRAWING, PageRule.quoted(run)))
          .forEach(problems::add);
    }
    return problems;
  }
}
