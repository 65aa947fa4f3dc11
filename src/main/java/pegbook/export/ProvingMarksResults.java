package pegbook.export;

import pegbook.calc.provingmarks.ProvingMarks;

/** The figures of the distances that prove the marks. */
final class ProvingMarksResults {
  private ProvingMarksResults() {}

  static void write(JsonFigures json, ProvingMarks proving) {
    json.list("distances", proving.checks(), ProvingMarksResults::check)
        .list("ties", proving.ties(), ProvingMarksResults::tie)
        .list(
            "marks",
            proving.hidden(),
            (item, hidden) ->
                item.text("mark", hidden.mark())
                    .whole("distances", hidden.distances())
                    .quantity("hiddenMetres", hidden.radius())
                    .flag("withinTolerance", hidden.within()))
        .flag("smallest", proving.size().smallest())
        .whole("least", proving.size().least())
        .whole("possible", proving.size().possible())
        .list(
            "tried",
            proving.tried(),
            (item, tried) ->
                item.text("kind", tried.kind().name())
                    .whole("count", tried.count())
                    .whole("shownByDistances", tried.byDistances())
                    .whole("shownByTies", tried.byTies()))
        .list(
            "unseen",
            proving.unseen(),
            (item, unseen) ->
                item.text("kind", unseen.kind().name()).texts("marks", unseen.marks()));
  }

  private static void check(JsonFigures json, ProvingMarks.Check check) {
    json.text("from", check.pair().first())
        .text("to", check.pair().second())
        .quantity("plannedMetres", check.planned())
        .quantity("expectedMetres", check.expected())
        .quantity("limitMetres", check.limit())
        .flag("held", check.held())
        .number("alarmChance", check.alarm());
  }

  private static void tie(JsonFigures json, ProvingMarks.Tie tie) {
    json.whole("station", tie.station())
        .text("mark", tie.mark())
        .quantity("expectedMetres", tie.expected())
        .quantity("limitMetres", tie.limit())
        .quantity("mirroredMetres", tie.mirrored());
  }
}
