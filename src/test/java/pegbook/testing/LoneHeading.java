package pegbook.testing;

import static pegbook.testing.Problem.Kind.LONE_HEADING;
import static pegbook.testing.Problem.Kind.LONE_TABLE_HEAD;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A heading, or a table's head, is not the last thing on a page. */
final class LoneHeading implements PageRule {
  /** Texts on one line have base lines no further apart, mm. */
  private static final double SAME_LINE = 0.6;

  @Override
  public List<Problem> problems(PrintedDocument document, PrintedPage page, Rules rules) {
    double lowest =
        page.body().stream().mapToDouble(run -> run.start().y()).min().orElse(Double.NaN);
    List<TextRun> lastLine =
        page.body().stream().filter(run -> run.start().y() < lowest + SAME_LINE).toList();
    if (lastLine.isEmpty() || goesOnBelow(page, lowest)) {
      return List.of();
    }
    return Stream.concat(
            when(page, lastLine, LONE_HEADING, TextRun::isHeading),
            when(page, lastLine, LONE_TABLE_HEAD, run -> run.isUnder("THead")))
        .toList();
  }

  private static boolean goesOnBelow(PrintedPage page, double lowest) {
    return DoubleStream.concat(
            page.drawings().stream().mapToDouble(drawing -> drawing.box().centre().y()),
            page.fields().stream().mapToDouble(field -> field.box().centre().y()))
        .anyMatch(middle -> middle < lowest);
  }

  private static Stream<Problem> when(
      PrintedPage page, List<TextRun> line, Problem.Kind kind, Predicate<TextRun> is) {
    return line.stream().allMatch(is)
        ? Stream.of(new Problem(page.number(), kind, PageRule.quoted(line.get(0))))
        : Stream.empty();
  }
}
