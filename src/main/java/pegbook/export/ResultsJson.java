package pegbook.export;

import pegbook.figures.Argument;
import pegbook.figures.BarPiece;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.PlacedMark;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Widenings;
import pegbook.packet.NumberedWorkings;
import pegbook.packet.Packet;
import pegbook.published.Citation;

/**
 * The packet's figures for other programs: {@code results.json}.
 *
 * <p>Written key by key, not by reflection, so that renaming a record breaks no reader. Every
 * figure is in SI and its key names the unit. Keys are only ever added; what would change their
 * meaning raises {@link #FORMAT}.
 */
public final class ResultsJson {
  /** Number of the format. */
  static final int FORMAT = 1;

  private ResultsJson() {}

  /** The document, in UTF-8. */
  public static byte[] of(Packet packet) {
    return JsonFigures.document(
        json -> {
          json.whole("format", FORMAT);
          json.object("job", content -> job(content, packet));
          json.list("marks", packet.placement().marks(), ResultsJson::mark);
          SubjectResults.write(json, packet);
          json.list("findings", packet.findings(), ResultsJson::finding);
          json.list("workings", packet.workings().groups(), ResultsJson::group);
        });
  }

  private static void job(JsonFigures json, Packet packet) {
    json.text("name", packet.job().name())
        .text("title", packet.job().heading().title())
        .text("revision", packet.job().heading().revision())
        .text("issued", packet.job().heading().issued().map(Object::toString))
        .text("sha256", packet.jobHash())
        .list(
            "defaults",
            packet.job().defaults(),
            (item, used) ->
                item.text("path", used.path())
                    .text("written", used.written())
                    .text("basis", used.basis().name()));
  }

  static void point(JsonFigures json, Point point) {
    json.number("eastMetres", point.east()).number("northMetres", point.north());
  }

  private static void mark(JsonFigures json, PlacedMark mark) {
    json.text("id", mark.id()).text("kind", mark.kind().name());
    point(json, mark.at());
    json.quantity("levelMetres", mark.level());
  }

  static void hole(JsonFigures json, Hole hole) {
    json.text("mark", hole.mark())
        .quantity("diameterMetres", hole.diameter())
        .quantity("depthTargetMetres", hole.depth())
        .quantity("gravelMetres", hole.gravel())
        .quantity("dugDepthMetres", hole.dug())
        .quantity("topMetres", hole.top())
        .text("rule", hole.rule().name())
        .quantity("levelMetres", hole.level())
        .quantity("datumToUndersideMetres", hole.datumToUnderside())
        .quantity("datumToBottomMetres", hole.datumToBottom());
    widenings(json, hole.widenings());
  }

  /** Only where there are any: most footings are shafts and nothing else. */
  private static void widenings(JsonFigures json, Widenings wide) {
    wide.bell()
        .ifPresent(
            bell ->
                json.quantity("bellDiameterMetres", bell.diameter())
                    .quantity("bellFlareMetres", bell.flare())
                    .quantity("bellToeMetres", bell.toe()));
    wide.pad().ifPresent(pad -> json.quantity("padThicknessMetres", pad.thickness()));
    wide.cap()
        .ifPresent(
            cap ->
                json.text("capShape", cap.shape().name())
                    .quantity("capWidthMetres", cap.width())
                    .quantity("capThicknessMetres", cap.thickness()));
  }

  static void heap(JsonFigures json, SpoilHeap heap) {
    json.texts("holes", heap.holes());
    point(json, heap.centre());
    json.quantity("radiusMetres", heap.radius())
        .quantity("heightMetres", heap.height())
        .quantity("looseCubicMetres", heap.loose());
  }

  static void bar(JsonFigures json, BarPiece bar) {
    json.text("mark", bar.mark())
        .text("barMark", bar.barMark())
        .text("size", bar.size())
        .text("shape", bar.shape().name())
        .whole("count", bar.count())
        .quantity("cutMetres", bar.cut())
        .quantity("eachKilograms", bar.each());
  }

  static void need(JsonFigures json, Need need) {
    json.text("id", need.id())
        .text("mark", need.mark())
        .number("amount", need.amount())
        .number("order", need.order())
        .text("unit", need.unit().symbol());
  }

  static void task(JsonFigures json, Task task) {
    json.text("kind", task.kind().name())
        .text("mark", task.mark())
        .number("leastPersonHours", task.least().hours())
        .number("mostPersonHours", task.most().hours());
  }

  private static void finding(JsonFigures json, Finding finding) {
    json.text("kind", finding.kind().name())
        .text("id", finding.id())
        .texts("subjects", finding.subjects())
        .text("place", finding.place())
        .text("decides", finding.decides().name())
        .object(
            "arguments",
            content ->
                finding.arguments().forEach((name, argument) -> argument(content, name, argument)))
        .list("sources", finding.citations(), ResultsJson::source);
  }

  static void argument(JsonFigures json, String name, Argument argument) {
    if (argument instanceof Argument.Measured measured) {
      json.quantity(name, measured.quantity());
    } else if (argument instanceof Argument.Whole whole) {
      json.whole(name, whole.number());
    } else if (argument instanceof Argument.Names names) {
      json.texts(name, names.names());
    } else if (argument instanceof Argument.Words words) {
      json.text(name, words.words());
    } else if (argument instanceof Argument.Entry entry) {
      json.text(name, entry.key());
    } else {
      json.text(name, String.valueOf(argument));
    }
  }

  private static void source(JsonFigures json, Citation citation) {
    json.text("publication", citation.publication()).text("locator", citation.locator());
  }

  private static void group(JsonFigures json, NumberedWorkings.Group group) {
    json.text("subject", group.subject())
        .text("number", group.number())
        .list("formulas", group.entries(), ResultsJson::entry);
  }

  private static void entry(JsonFigures json, NumberedWorkings.Entry entry) {
    json.text("number", entry.number())
        .text("id", entry.formula().id())
        .text("expression", entry.formula().expression())
        .text("resultUnit", entry.formula().result().unit().symbol())
        .list("worked", entry.workings(), ResultsJson::worked);
  }

  private static void worked(JsonFigures json, Working working) {
    json.text("subject", working.subject())
        .numbers("inputs", working.inputs())
        .number("result", working.result());
  }
}
