package pegbook.testing;

import static pegbook.testing.Problem.Kind.NEARLY_EMPTY;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * No page is blank or nearly so: content flows from the top of the room, and it reaches down at
 * least a part of it. A document of one page may be as short as it is.
 */
final class EmptyPage implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    Box room = rules.room(page.paper());
    double lowest =
        DoubleStream.of(
                page.body().stream()
                    .mapToDouble(run -> run.box().bottom())
                    .min()
                    .orElse(room.top()),
                page.drawings().stream().mapToDouble(one -> one.box().bottom()).min().orElse(1e6),
                page.fields().stream().mapToDouble(one -> one.box().bottom()).min().orElse(1e6))
            .min()
            .orElseThrow();
    double reach = (room.top() - lowest) / room.height();
    if (reach >= Rules.LEAST_REACH || document.pages().size() == 1) {
      return List.of();
    }
    String detail =
        String.format(Locale.ROOT, "content reaches down %.0f %% of the room", 100 * reach);
    return List.of(new Problem(page.number(), NEARLY_EMPTY, detail));
  }
}
