package pegbook.export;

import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarked.Pair;

/** The figures of the distances between painted marks. */
final class AsMarkedResults {
  private AsMarkedResults() {}

  static void write(JsonFigures json, AsMarked asMarked) {
    json.text("verdict", asMarked.verdict().name())
        .text("reason", asMarked.reason().map(Enum::name))
        .list("distances", asMarked.rows(), AsMarkedResults::row);
    asMarked.test().ifPresent(test -> json.object("test", content -> test(content, test)));
    json.list("suspects", asMarked.suspects(), AsMarkedResults::suspect);
    asMarked.move().ifPresent(move -> json.object("move", content -> move(content, move)));
    asMarked
        .together()
        .ifPresent(
            two ->
                json.object(
                    "together",
                    content ->
                        content
                            .text("kind", two.kind().name())
                            .list("suspects", two.suspects(), AsMarkedResults::suspect)
                            .number("left", two.left())
                            .number("leftLimit", two.leftLimit())
                            .number("lead", two.lead())
                            .list("moves", two.moves(), AsMarkedResults::move)));
    json.list("further", asMarked.further(), AsMarkedResults::further)
        .list("again", asMarked.again(), AsMarkedResults::pair)
        .list("missing", asMarked.gaps().missing(), AsMarkedResults::pair);
  }

  private static void pair(JsonFigures json, Pair pair) {
    json.text("from", pair.from()).text("to", pair.to());
  }

  private static void row(JsonFigures json, AsMarked.Row row) {
    pair(json, row.pair());
    json.quantity("plannedMetres", row.planned())
        .quantity("tapedMetres", row.taped())
        .whole("readings", row.readings())
        .quantity("limitMetres", row.limit())
        .number("standardisedResidual", row.standardised())
        .number("redundancy", row.redundancy())
        .flag("beyond", row.isBeyond());
  }

  private static void test(JsonFigures json, AsMarked.Test test) {
    json.number("squares", test.squares())
        .whole("degreesOfFreedom", test.distances())
        .number("limit", test.limit())
        .number("chance", test.chance())
        .whole("suppositions", test.suppositions())
        .number("explained", test.explained())
        .number("explainedLimit", test.explainedLimit())
        .number("level", test.level())
        .flag("alarm", test.alarm());
  }

  private static void suspect(JsonFigures json, AsMarked.Suspect suspect) {
    json.text("name", suspect.name())
        .text("kind", suspect.mark().isPresent() ? "MARK" : "READING")
        .whole("quantities", suspect.quantities())
        .number("eastMetres", suspect.eastMetres())
        .number("northMetres", suspect.northMetres())
        .quantity("sizeMetres", suspect.size())
        .quantity("deviationMetres", suspect.deviation())
        .number("fall", suspect.fall())
        .number("left", suspect.left())
        .number("lead", suspect.lead());
  }

  private static void move(JsonFigures json, AsMarked.Move move) {
    json.text("mark", move.mark())
        .quantity("distanceMetres", move.distance())
        .quantity("deviationMetres", move.deviation())
        .flag("beyondTolerance", move.isBeyond())
        .list(
            "steps",
            move.steps(),
            (item, step) ->
                item.quantity("amountMetres", step.amount())
                    .text("way", step.way().name())
                    .text("first", step.first())
                    .text("second", step.second()))
        .list(
            "tapes",
            move.tapes(),
            (item, tape) -> item.text("from", tape.from()).quantity("tapeMetres", tape.tape()));
  }

  private static void further(JsonFigures json, AsMarked.Further further) {
    pair(json, further.pair());
    json.quantity("expectedMetres", further.expected())
        .quantity("otherwiseMetres", further.otherwise());
  }
}
