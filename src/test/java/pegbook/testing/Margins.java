package pegbook.testing;

import static pegbook.testing.Problem.Kind.OUTSIDE_MARGIN;

import java.util.List;
import java.util.stream.Stream;

/** Content stays inside the margins, the frame's texts inside what a printer can print. */
final class Margins implements PageRule {
  /** A place in the PDF is rounded to its unit, mm. */
  private static final double TOLERANCE = 0.1;

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    Box room = rules.room(page.paper());
    Box printable =
        new Box(
            page.paper().left() + rules.edge(),
            page.paper().bottom() + rules.edge(),
            page.paper().right() - rules.edge(),
            page.paper().top() - rules.edge());
    Stream<String> texts =
        page.runs().stream()
            .filter(run -> (run.isArtifact() ? printable : room).excess(run.box()) > TOLERANCE)
            .map(PageRule::quoted);
    Stream<String> drawings =
        page.drawings().stream()
            .filter(drawing -> room.excess(drawing.box()) > TOLERANCE)
            .map(drawing -> "a drawing at " + drawing.box());
    Stream<String> fields =
        page.fields().stream()
            .filter(field -> room.excess(field.box()) > TOLERANCE)
            .map(field -> "the field " + field.name() + " at " + field.box());
    return Stream.of(texts, drawings, fields)
        .flatMap(some -> some)
        .map(detail -> new Problem(page.number(), OUTSIDE_MARGIN, detail))
        .toList();
  }
}
