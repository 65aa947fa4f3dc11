package pegbook.testing;

import static pegbook.testing.Problem.Kind.DRAWING_CUT;
import static pegbook.testing.Problem.Kind.TEXT_CUT;

import java.util.List;
import java.util.stream.Stream;

/**
 * No text is cut by the paper's edge or by the cell or drawing it stands in, nor any drawn line.
 */
final class CutText implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    Stream<Problem> texts =
        page.runs().stream()
            .filter(run -> run.clip().shared(page.paper()).excess(run.box()) > Rules.CUT)
            .map(
                run ->
                    new Problem(
                        page.number(),
                        TEXT_CUT,
                        PageRule.quoted(run) + " by " + run.clip().shared(page.paper())));
    Stream<Problem> lines =
        page.paths().stream()
            .filter(path -> path.drawing().isPresent() && isCutByItsDrawing(path, page))
            .map(
                path ->
                    new Problem(
                        page.number(),
                        DRAWING_CUT,
                        "a line at " + path.box() + " by its drawing's edge " + path.clip()));
    return Stream.concat(texts, lines).toList();
  }

  /** A hatch is cut by its own outline, which is smaller than the drawing: that is its purpose. */
  private static boolean isCutByItsDrawing(DrawnPath path, PrintedPage page) {
    Box drawing = page.drawings().get(path.drawing().orElseThrow()).box();
    boolean clippedByDrawingOnly = path.clip().excess(drawing) < Rules.CUT;
    return clippedByDrawingOnly && drawing.excess(path.box()) > Rules.CUT;
  }
}
