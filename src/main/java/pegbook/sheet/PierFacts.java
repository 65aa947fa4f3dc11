package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.PierSheet.Fact;

/** What is built of a pier, and what holds it, in lines. */
final class PierFacts {
  private final Packet packet;
  private final Writing writing;
  private final AlikePiers piers;
  private final FloorGap gap;
  private final List<Fact> facts = new ArrayList<>();

  PierFacts(Packet packet, Writing writing, AlikePiers piers, FloorGap gap) {
    this.packet = packet;
    this.writing = writing;
    this.piers = piers;
    this.gap = gap;
  }

  List<Fact> all() {
    Formats formats = writing.formats();
    add(
        "instrument",
        "",
        piers
            .pier()
            .instrument()
            .map(formats::mass)
            .orElse(writing.texts().say("pier.fact.not-given")));
    add("overturning", "overturning", times(piers.overturning()));
    piers
        .windOverturning()
        .ifPresent(factor -> add("wind-overturning", "overturning", times(factor)));
    gap();
    piers.pier().anchors().ifPresent(this::anchors);
    piers.pier().sleeve().ifPresent(this::sleeve);
    return List.copyOf(facts);
  }

  /** Set down: it stands for a capacity. */
  private String times(double factor) {
    double tenths = Math.floor(factor * 10 + 1e-9) / 10;
    return writing.texts().say("pier.fact.times", Map.of("factor", number(tenths)));
  }

  private String number(double tenths) {
    return writing.formats().number(tenths, tenths < 20 ? 1 : 0);
  }

  private void gap() {
    Formats formats = writing.formats();
    String key = gap.inside() ? "pier.fact.gap-inside" : "pier.fact.gap-outside";
    facts.add(
        new Fact(
            writing.texts().say("pier.fact.gap"),
            writing
                .texts()
                .say(
                    key,
                    Map.of(
                        "gap", formats.size(gap.wanted()),
                        "opening", formats.size(gap.opening()),
                        "distance", formats.length(gap.toEdge().max(Length.ZERO)))),
            ""));
  }

  private void anchors(Anchors anchors) {
    Formats formats = writing.formats();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("count", formats.count(anchors.count()));
    values.put("size", formats.size(anchors.size()));
    values.put("circle", formats.size(anchors.circle()));
    values.put("above", formats.size(anchors.above()));
    values.put("embedded", formats.size(anchors.embedded()));
    values.put("first", formats.angle(anchors.first()));
    facts.add(
        new Fact(
            writing.texts().say("pier.fact.anchors"),
            writing.texts().say("pier.fact.anchors-value", values),
            ""));
  }

  private void sleeve(Sleeve sleeve) {
    Formats formats = writing.formats();
    facts.add(
        new Fact(
            writing.texts().say("pier.fact.sleeve"),
            writing
                .texts()
                .say(
                    "pier.fact.sleeve-value",
                    Map.of(
                        "size", formats.size(sleeve.outside()),
                        "offset", formats.size(sleeve.offset()),
                        "towards", formats.angle(sleeve.towards()),
                        "depth", formats.size(sleeve.depth()))),
            ""));
  }

  private void add(String key, String formula, String value) {
    facts.add(
        new Fact(
            writing.texts().say("pier.fact." + key),
            value,
            packet.workings().numberOf("pier-stiffness." + formula).orElse("")));
  }
}
