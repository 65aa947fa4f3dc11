package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Embedment;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.figures.BarPiece;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
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
    cage.uprights().starters().ifPresent(starters -> starters(lines, formats, cage, starters));
    cage.uprights().lowestHook().ifPresent(hook -> hook(lines, writing, hook));
    cage.uprights().embedment().ifPresent(reach -> embedment(lines, writing, reach));
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

  private static void starters(Lines lines, Formats formats, Cage cage, Starters starters) {
    BarPiece piece = cage.pieces().get(cage.pieces().size() - 1);
    lines.add(
        "starters",
        "anchorage.lap",
        lines.values(
            "count", formats.count(piece.count()),
            "size", piece.size(),
            "mark", piece.barMark(),
            "cut", formats.length(piece.cut()),
            "joint", formats.length(starters.joint()),
            "lap", formats.length(starters.lap())));
  }

  private static void hook(Lines lines, Writing writing, Hook hook) {
    lines.add(
        "hook",
        "hook-leg",
        lines.values(
            "leg",
            writing.formats().size(hook.leg()),
            "turn",
            writing.texts().say("steel-plan.turn." + Written.id(hook.turn()))));
  }

  private static void embedment(Lines lines, Writing writing, Embedment embedment) {
    lines.add(
        embedment.atJoint() ? "below-joint" : "below-ground",
        embedment.isHooked() ? "anchorage.hook" : "anchorage.development",
        lines.values(
            "reach", writing.formats().length(embedment.reach()),
            "needed", writing.formats().size(needed(embedment, writing))));
  }

  /** What is wanted is printed up, to what a tape reads. */
  private static Length needed(Embedment embedment, Writing writing) {
    boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
    Length step = imperial ? Length.ofInches(0.25) : Length.ofMillimetres(5);
    return embedment.needed().setTo(step, Rounding.UP);
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
              packet.workings().numberOf(id(formula)).orElse("")));
    }

    private static String id(String formula) {
      return formula.contains(".") ? formula : "steel-plan." + formula;
    }
  }
}
