package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.bearing.Allowable;
import pegbook.calc.footingloads.BasisLine;
import pegbook.calc.footingloads.BasisLine.Known;
import pegbook.packet.Packet;
import pegbook.published.ExposureClass;

/**
 * What the design rests on, once for the packet.
 *
 * @param rows one for each item
 */
public record BasisPart(List<Row> rows) {

  /**
   * One item.
   *
   * @param item what it is about
   * @param value what is known; empty where nobody said
   * @param from how it is known
   * @param open true where somebody must be asked
   */
  public record Row(String item, String value, String from, boolean open) {}

  static BasisPart of(Packet packet, Writing writing) {
    List<Row> rows = new ArrayList<>();
    packet.footingLoads().basis().forEach(line -> rows.add(row(line, writing)));
    rows.add(frostClass(packet.concreteExposure().needed(), writing));
    rows.add(bearing(packet.bearing().allowable(), writing));
    return new BasisPart(List.copyOf(rows));
  }

  private static Row row(BasisLine line, Writing writing) {
    Texts texts = writing.texts();
    String item = texts.say("footings.basis." + line.item());
    String value = line.value().map(writing.formats()::argument).orElse("");
    boolean open = line.known() == Known.NOT_GIVEN;
    return new Row(item, value, from(line, texts), open);
  }

  private static String from(BasisLine line, Texts texts) {
    Sources sources = new Sources(texts);
    return switch (line.known()) {
      case NOT_GIVEN -> texts.say("footings.basis.ask");
      case JOB -> line.from().orElse(texts.say("footings.basis.job"));
      case ASSUMED ->
          texts.say("footings.basis.assumed", Map.of("source", sources.write(line.sources())));
      case TABLE ->
          texts.say("footings.basis.table", Map.of("source", sources.write(line.sources())));
    };
  }

  private static Row frostClass(ExposureClass needed, Writing writing) {
    Texts texts = writing.texts();
    String source = new Sources(texts).write(ExposureClass.SOURCE);
    return new Row(
        texts.say("footings.basis.frost-class"),
        needed.name(),
        texts.say("footings.basis.worked", Map.of("source", source)),
        false);
  }

  private static Row bearing(Optional<Allowable> allowable, Writing writing) {
    Texts texts = writing.texts();
    String item = texts.say("footings.basis.bearing");
    if (allowable.isEmpty()) {
      return new Row(item, "", texts.say("footings.basis.ask"), true);
    }
    String kind =
        texts.say(allowable.get().gross() ? "footings.ground.gross" : "footings.ground.net");
    String source = new Sources(texts).write(allowable.get().sources());
    return new Row(
        item,
        texts.say(
            "footings.basis.bearing-value",
            Map.of("pressure", writing.formats().pressure(allowable.get().value()), "kind", kind)),
        allowable
            .get()
            .from()
            .orElse(texts.say("footings.basis.assumed", Map.of("source", source))),
        false);
  }
}
