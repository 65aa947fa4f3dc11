package pegbook.testing;

import static pegbook.testing.Problem.Kind.SPLIT_ROW;
import static pegbook.testing.Problem.Kind.TABLE_WITHOUT_HEAD;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A table that goes on from the page before repeats its head, and none of its rows is split. */
final class Tables implements PageRule {
  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    if (page.number() == 1) {
      return List.of();
    }
    PrintedPage before = document.pages().get(page.number() - 2);
    Set<Integer> open = elements(before, "Table");
    open.retainAll(elements(page, "Table"));
    open.removeIf(table -> headed(before, table).isEmpty() || !headed(page, table).isEmpty());
    Set<Integer> rows = elements(before, "TR");
    rows.retainAll(elements(page, "TR"));
    return Stream.concat(
            open.stream().map(table -> problem(page, TABLE_WITHOUT_HEAD, "Table", table)),
            rows.stream().map(row -> problem(page, SPLIT_ROW, "TR", row)))
        .toList();
  }

  private static Set<Integer> elements(PrintedPage page, String tag) {
    return page.runs().stream()
        .filter(run -> !tag.equals("TR") || !run.isUnder("THead"))
        .map(run -> run.element(tag))
        .flatMapToInt(OptionalInt::stream)
        .boxed()
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<TextRun> headed(PrintedPage page, int table) {
    return page.runs().stream()
        .filter(run -> run.isUnder("THead") && run.element("Table").orElse(0) == table)
        .toList();
  }

  private static Problem problem(PrintedPage page, Problem.Kind kind, String tag, int element) {
    return page.runs().stream()
        .filter(run -> run.element(tag).orElse(0) == element)
        .findFirst()
        .map(run -> new Problem(page.number(), kind, PageRule.quoted(run)))
        .orElseThrow();
  }
}
