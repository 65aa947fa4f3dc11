package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.figures.BarPiece;
import pegbook.measure.Unit;
import pegbook.packet.Packet;

/**
 * A line about a cage.
 *
 * @param label what
 * @param value how much, with the rule it is held to
 * @param working number of the working behind it; empty: none
 */
public record SteelFact(String label, String value, String working) {

  /** Everything about a cage. */
  static List<SteelFact> of(Packet packet, Writing writing, Cage cage) {
    Lines lines = new Lines(packet, writing);
    Formats formats = writing.formats();
    BarPiece vertical = cage.pieces().get(0);
    packet.steelPlan().elements().stream()
        .filter(element -> element.marks().equals(cage.marks()))
        .forEach(
            element ->
                lines.add(
                    "counts",
                    "slenderness",
                    lines.values(
                        "kind",
                        writing.texts().say("steel-plan.element." + Written.id(element.kind())))));
    lines.add(
        "vertical",
        "vertical",
        lines.values(
            "count", formats.count(cage.bars()),
            "size", cage.size(),
            "mark", vertical.barMark(),
            "cut", formats.length(cage.cut())));
    cage.rings().ifPresent(rings -> rings(lines, formats, cage, rings));
    lines.add(
        "cover",
        "",
        lines.values(
            "cover", formats.size(cage.cover()), "bottom", formats.size(cage.bottomCover())));
    lines.add("outside", "bar-circle", lines.values("outside", formats.size(cage.outside())));
    if (cage.bars() > 1) {
      lines.add(
          "clear",
          "clear",
          lines.values(
              "clear", formats.size(cage.clear()), "least", formats.size(cage.leastClear())));
    }
    lines.add("ratio", "ratio", lines.values("ratio", formats.in(cage.ratio(), Unit.PERCENT, 2)));
    return lines.facts;
  }

  private static void rings(Lines lines, Formats formats, Cage cage, Rings rings) {
    lines.add(
        "rings",
        "rings",
        lines.values(
            "count", formats.count(rings.count()),
            "size", rings.size(),
            "mark", cage.pieces().get(1).barMark(),
            "cut", formats.length(rings.cut())));
    lines.add(
        "spacing",
        "greatest-spacing",
        lines.values(
            "spacing", formats.size(rings.spacing()),
            "first", formats.size(rings.fromEnd()),
            "greatest", formats.size(rings.greatestSpacing())));
  }

  /** Gathers lines. */
  private static final class Lines {
    private final Packet packet;
    private final Writing writing;
    private final List<SteelFact> facts = new ArrayList<>();

    private Lines(Packet packet, Writing writing) {
      this.packet = packet;
      this.writing = writing;
    }

    private Map<String, String> values(String... namesAndValues) {
      Map<String, String> values = new LinkedHashMap<>();
      for (int i = 0; i < namesAndValues.length; i += 2) {
        values.put(namesAndValues[i], namesAndValues[i + 1]);
      }
      return values;
    }

    private void add(String key, String formula, Map<String, String> values) {
      facts.add(
          new SteelFact(
              writing.texts().say("steel-plan.fact." + key),
              writing.texts().say("steel-plan.fact." + key + "-value", values),
              packet.workings().numberOf("steel-plan." + formula).orElse("")));
    }
  }
}
