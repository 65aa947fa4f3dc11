package pegbook.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.calc.powerline.PowerLine.Route;
import pegbook.calc.powerline.PowerLine.Trench;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.published.ExcavationRule;
import pegbook.sheet.DaySheet.Step;
import pegbook.sheet.DaySheet.Tick;

/**
 * What day sheets say of the power line's trench.
 *
 * @param packet whose days
 * @param writing words and formats
 */
record TrenchDay(Packet packet, Writing writing) {
  /** A part of the day's work, with boxes for what is looked at. */
  Step step(Task.Kind kind, String id) {
    Trench trench = packet.powerLine().line().orElseThrow().trench();
    boolean parts = trench.deepest().isMoreThan(trench.main().depth());
    String key = DayWords.word(kind) + (parts && kind == Task.Kind.TRENCH ? "-parts" : "");
    return new Step(
        writing.texts().say("day-plan.work." + key, values()),
        kind == Task.Kind.TRENCH ? List.of() : List.of(tick(kind, id)));
  }

  private Tick tick(Task.Kind kind, String id) {
    String word = DayWords.word(kind);
    return new Tick(id + ".job." + word, writing.texts().say("day-plan.task." + word));
  }

  private Map<String, String> values() {
    Line line = packet.powerLine().line().orElseThrow();
    Route route = line.route();
    Trench trench = line.trench();
    Formats formats = writing.formats();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("from", route.legs().get(0).from());
    values.put("end", route.legs().get(route.legs().size() - 1).to());
    values.put("length", formats.distance(route.length()));
    values.put("width", formats.size(trench.width()));
    values.put("depth", formats.size(trench.main().depth()));
    values.put("deepest", formats.size(trench.deepest()));
    values.put("bedding", formats.size(trench.bedding()));
    values.put("cover", formats.size(trench.main().cover()));
    values.put("back", formats.distance(ExcavationRule.find("spoil-edge").threshold()));
    values.put("tape", formats.size(trench.tapeDepth()));
    return values;
  }
}
