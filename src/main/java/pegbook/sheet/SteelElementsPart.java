package pegbook.sheet;

import java.util.List;
import java.util.Map;
import pegbook.calc.steelplan.Element;
import pegbook.calc.steelplan.Element.Verdict;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.packet.Packet;
import pegbook.published.Citation;

/**
 * What each footing counts as, with its own rule for upright steel.
 *
 * @param rows one for each kind of footing
 * @param shapeWorking number of the working of whole heights
 * @param freeWorking number of the working of free heights
 */
public record SteelElementsPart(List<Row> rows, String shapeWorking, String freeWorking) {

  /** One kind of footing. */
  public record Row(
      String marks, String kind, String shape, String rule, String given, String verdict) {}

  static SteelElementsPart of(Packet packet, Writing writing) {
    return new SteelElementsPart(
        packet.steelPlan().elements().stream()
            .map(element -> row(packet, element, writing))
            .toList(),
        packet.workings().numberOf("steel-plan.slenderness").orElse(""),
        packet.workings().numberOf("steel-plan.free-slenderness").orElse(""));
  }

  private static Row row(Packet packet, Element element, Writing writing) {
    Texts texts = writing.texts();
    Formats formats = writing.formats();
    String kind = "steel-plan.element." + Written.id(element.kind());
    Citation source = element.kind().source();
    return new Row(
        formats.names(element.marks()),
        texts.say(kind),
        texts.say(
            "steel-plan.elements.shape",
            Map.of(
                "whole", formats.number(element.slenderness(), 1),
                "free", formats.number(element.freeSlenderness(), 1))),
        texts.say(kind + ".rule", Map.of("source", new Sources(texts).write(source))),
        element
            .given()
            .map(given -> given(given, formats))
            .orElse(texts.say("steel-plan.elements.none")),
        verdict(packet, element, writing));
  }

  private static String given(Ratio given, Formats formats) {
    return formats.in(given, Unit.PERCENT, 2);
  }

  private static String verdict(Packet packet, Element element, Writing writing) {
    if (element.verdict() == Verdict.LESS && element.given().isEmpty()) {
      return writing.texts().say("steel-plan.verdict.bare");
    }
    return writing
        .texts()
        .say(
            "steel-plan.verdict." + Written.id(element.verdict()),
            Map.of(
                "bars", writing.formats().count(element.barsWanted().orElse(0)),
                "size", size(packet, element)));
  }

  private static String size(Packet packet, Element element) {
    return packet.steelPlan().cages().stream()
        .filter(cage -> cage.marks().equals(element.marks()))
        .map(cage -> cage.size())
        .findFirst()
        .orElse("");
  }
}
