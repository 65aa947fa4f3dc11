package pegbook.testing;

import static pegbook.testing.Problem.Kind.SMALL_TYPE;

import java.util.List;
import java.util.Locale;

/** Type is large enough to be read where the paper is read. */
final class TypeSize implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    return page.runs().stream()
        .filter(run -> run.size() < rules.leastType() - Rules.TYPE)
        .map(
            run ->
                new Problem(
                    page.number(),
                    SMALL_TYPE,
                    String.format(Locale.ROOT, "%.2f pt: ", run.size()) + PageRule.quoted(run)))
        .toList();
  }
}
