package pegbook.testing;

import static pegbook.testing.Problem.Kind.FIELD_OVERLAP;

import java.util.ArrayList;
import java.util.List;

/** A form field lies on no other field and on no text. */
final class Fields implements PageRule {
  /** Boxes may share a border, mm. */
  private static final double BORDER = 0.2;

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    List<Problem> problems = new ArrayList<>();
    List<PrintedPage.Field> fields = page.fields();
    for (int i = 0; i < fields.size(); i++) {
      PrintedPage.Field field = fields.get(i);
      fields.subList(i + 1, fields.size()).stream()
          .filter(other -> other.box().overlap(field.box()) > BORDER)
          .map(other -> field.name() + " and " + other.name() + " at " + other.box())
          .map(detail -> new Problem(page.number(), FIELD_OVERLAP, detail))
          .forEach(problems::add);
      page.runs().stream()
          .filter(run -> run.box().overlap(field.box()) > BORDER)
          .map(run -> field.name() + " over " + PageRule.quoted(run))
          .map(detail -> new Problem(page.number(), FIELD_OVERLAP, detail))
          .forEach(problems::add);
    }
    return problems;
  }
}
