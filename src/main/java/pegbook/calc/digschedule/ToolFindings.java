package pegbook.calc.digschedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.ToolStep;
import pegbook.figures.ToolStep.Use;
import pegbook.job.Digging;
import pegbook.job.Job;
import pegbook.job.Tool;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** Where the tools on the list do not do. */
final class ToolFindings {
  private ToolFindings() {}

  static List<Finding> of(Job job, List<Row> rows) {
    List<Finding> findings = new ArrayList<>();
    tooShort(rows).ifPresent(findings::add);
    notOpened(job, rows).ifPresent(findings::add);
    noBar(job, rows).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> tooShort(List<Row> rows) {
    List<Row> some =
        rows.stream()
            .filter(row -> isShort(ToolPlan.reached(row.tools()), row.hole().dug()))
            .toList();
    return some.stream()
        .min(Comparator.comparing(row -> ToolPlan.reached(row.tools())))
        .map(
            row ->
                about(some, Kind.ASK, "tool-reach", "tools")
                    .with("reach", Argument.of(ToolPlan.reached(row.tools())))
                    .with("deepest", Argument.of(deepest(some))));
  }

  /** Pilot holes that go deeper than any hand tool that could open them. */
  private static Optional<Finding> notOpened(Job job, List<Row> rows) {
    Length opened =
        job.tools().stream()
            .filter(tool -> opens(tool.kind()))
            .map(Tool::reach)
            .max(Length::compareTo)
            .orElse(Length.ZERO);
    List<Row> some = rows.stream().filter(row -> isShort(opened, pilot(row))).toList();
    return some.isEmpty()
        ? Optional.empty()
        : Optional.of(
            about(some, Kind.ASK, "pilot-not-opened", "tools")
                .with("reach", Argument.of(opened))
                .with("deepest", Argument.of(deepest(some))));
  }

  private static boolean opens(Tool.Kind kind) {
    return kind == Tool.Kind.SPADE || kind == Tool.Kind.CLAMSHELL || kind == Tool.Kind.DIGGING_BAR;
  }

  private static Length pilot(Row row) {
    return row.tools().stream()
        .filter(step -> step.use() == Use.PILOT)
        .map(ToolStep::to)
        .max(Length::compareTo)
        .orElse(Length.ZERO);
  }

  private static Optional<Finding> noBar(Job job, List<Row> rows) {
    boolean stony = job.ground().digging() == Digging.STONY;
    boolean bar = job.tools().stream().anyMatch(tool -> tool.kind() == Tool.Kind.DIGGING_BAR);
    return stony && !bar && !rows.isEmpty()
        ? Optional.of(about(List.of(), Kind.NOTE, "bar-missing", "tools"))
        : Optional.empty();
  }

  private static boolean isShort(Length reach, Length depth) {
    return reach.plus(ToolPlan.TOLERANCE).isLessThan(depth);
  }

  private static Length deepest(List<Row> rows) {
    return rows.stream().map(row -> row.hole().dug()).max(Length::compareTo).orElseThrow();
  }

  private static Finding about(List<Row> rows, Kind kind, String id, String place) {
    return new Finding(
        kind,
        id,
        rows.stream().map(row -> row.hole().mark()).toList(),
        place,
        Map.of(),
        Decider.CREW,
        List.of(Citation.COMMON_PRACTICE));
  }
}
