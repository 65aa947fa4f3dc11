package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.frostdepth.FrostDepth;
import pegbook.calc.frostdepth.FrostDepth.Estimate;
import pegbook.figures.Hole;
import pegbook.job.AirFreezingIndex;
import pegbook.job.Frost;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.Citation;
import pegbook.published.FrostExemption;
import pegbook.published.FrostSoil;
import pegbook.published.FrostSoil.Susceptibility;

/**
 * How deep frost goes, and what the soil makes of it.
 *
 * @param lead how rule, estimate and footings stand, in a sentence
 * @param rows depths to be read against each other
 * @param rests what the estimates take; none where there are none
 * @param soil what frost makes of the soil
 * @param advice what to do about it
 * @param questions exemptions to ask about
 */
public record FrostDepthPart(
    String lead,
    List<Row> rows,
    List<String> rests,
    String soil,
    List<String> advice,
    List<String> questions) {
  private static final Citation GRADING = new Citation("irc", "R401.3");

  /** A depth, where it is from, and the working behind it. */
  public record Row(String what, String depth, String from, String working) {}

  static FrostDepthPart of(Packet packet, Writing writing) {
    return new Maker(packet, writing).part();
  }

  private record Maker(Packet packet, Writing writing) {
    FrostDepthPart part() {
      return new FrostDepthPart(
          lead(),
          rows(),
          frost().estimate().map(this::rests).stream().toList(),
          soil(),
          advice(),
          questions());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private String say(String key, Map<String, String> words) {
      return writing.texts().say(key, words);
    }

    private String depth(Length depth) {
      return writing.formats().length(depth);
    }

    private String source(Citation citation) {
      return new Sources(writing.texts()).write(citation);
    }

    private FrostDepth frost() {
      return packet.frostDepth();
    }

    private String lead() {
      Map<String, String> words = new LinkedHashMap<>();
      frost().rule().ifPresent(rule -> words.put("rule", depth(rule)));
      frost()
          .estimate()
          .ifPresent(
              estimate -> {
                words.put("winter", winter(estimate.index()));
                words.put("estimate", depth(estimate.decided()));
              });
      words.put("marks", writing.formats().names(frost().above()));
      return say("frost.lead." + leadKey(), words);
    }

    private String leadKey() {
      boolean above = !frost().above().isEmpty();
      Optional<Length> rule = frost().rule();
      if (rule.isEmpty()) {
        return above ? "no-rule-deeper" : "no-rule";
      }
      if (frost().estimate().isEmpty()) {
        if (packet.job().ground().freezing().isPresent()) {
          return "no-estimate";
        }
        return rule.get().isMoreThan(Length.ZERO) ? "rule" : "none";
      }
      boolean deeper =
          frost()
              .estimate()
              .get()
              .decided()
              .minus(rule.get())
              .isMoreThan(Length.ofMillimetres(0.1));
      if (!deeper) {
        return "within";
      }
      return above ? "deeper" : "reached";
    }

    private String winter(AirFreezingIndex index) {
      return say("frost.winter." + index.winter().id());
    }

    private List<Row> rows() {
      List<Row> rows = new ArrayList<>();
      Optional<Frost> rule = packet.job().ground().frost();
      rows.add(
          new Row(
              say("frost.row.rule"),
              rule.map(Frost::depth).map(this::depth).orElse(say("frost.row.rule-unknown")),
              rule.map(Frost::from).orElse(say("frost.row.rule-ask")),
              ""));
      frost()
          .estimate()
          .ifPresent(
              estimate -> {
                estimate.berggren().ifPresent(depth -> rows.add(estimate("berggren", depth)));
                rows.add(estimate("stefan", estimate.stefan()));
              });
      Map<String, List<String>> alike = new LinkedHashMap<>();
      for (Hole hole : packet.depthTargets().holes()) {
        alike.computeIfAbsent(depth(hole.depth()), key -> new ArrayList<>()).add(hole.mark());
      }
      alike.forEach(
          (depth, marks) ->
              rows.add(
                  new Row(
                      say("frost.row.footings", Map.of("marks", writing.formats().names(marks))),
                      depth,
                      say("frost.row.footings-from"),
                      "")));
      return List.copyOf(rows);
    }

    private Row estimate(String by, Length depth) {
      return new Row(
          say("frost.row." + by),
          depth(depth),
          say("frost.row." + by + "-from"),
          packet.workings().numberOf("frost-depth." + by).orElse(""));
    }

    private String rests(Estimate estimate) {
      AirFreezingIndex index = estimate.index();
      Formats formats = writing.formats();
      Map<String, String> words = new LinkedHashMap<>();
      words.put("index", formats.freezingIndex(index.value()));
      words.put("winter", winter(index));
      words.put("from", index.from().orElse(say("frost.rests.not-said")));
      words.put("surface", say("frost.surface." + index.surface().id()));
      words.put("factor", formats.number(estimate.ground().surface().n().fraction(), 2));
      words.put("source", source(estimate.ground().surface().citation()));
      words.put(
          "dry",
          formats.units() == UnitSystem.IMPERIAL
              ? formats.in(estimate.ground().dry(), Unit.POUND_PER_CUBIC_FOOT, 0)
              : formats.in(estimate.ground().dry(), Unit.KILOGRAM_PER_CUBIC_METRE, 0));
      words.put("dryFrom", given(index.dryDensity().isPresent()));
      words.put("moisture", formats.quantity(estimate.ground().moisture()));
      words.put("moistureFrom", given(index.moisture().isPresent()));
      return say("frost.rests", words);
    }

    private String given(boolean given) {
      return say(given ? "frost.rests.given" : "frost.rests.assumed");
    }

    private String soil() {
      FrostSoil soil = frost().soil();
      String named = say("soil." + soil.soil());
      return say(
          "frost.soil." + soil.susceptibility().id(),
          Map.of(
              "soil", named.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + named.substring(1),
              "groups", soil.groups(),
              "source", source(soil.citation()),
              "rule", source(FrostDepth.SUSCEPTIBLE)));
    }

    private List<String> advice() {
      Susceptibility susceptibility = frost().soil().susceptibility();
      List<String> keys =
          switch (susceptibility) {
            case ROCK -> List.of("joints");
            case LOW -> List.of("clean", "fall");
            case MEDIUM, HIGH, UNKNOWN -> List.of("three", "fall", "gravel", "fines");
          };
      Map<String, String> words =
          Map.of(
              "fall", writing.formats().quantity(Ratio.ofPercent(5)),
              "reach", writing.formats().distance(Length.ofFeet(10)),
              "source", source(GRADING),
              "rule", source(FrostDepth.SUSCEPTIBLE));
      return keys.stream().map(key -> say("frost.advice." + key, words)).toList();
    }

    private List<String> questions() {
      boolean answered = packet.job().ground().frost().flatMap(Frost::exemption).isPresent();
      if (answered) {
        return List.of(say("frost.questions.answered"));
      }
      List<String> questions = new ArrayList<>();
      frost().questions().forEach(question -> questions.add(question(question)));
      if (questions.isEmpty()) {
        questions.add(say("frost.questions.general"));
      }
      questions.add(say("frost.questions.close"));
      return List.copyOf(questions);
    }

    private String question(FrostExemption exemption) {
      Formats formats = writing.formats();
      Unit unit = formats.units() == UnitSystem.IMPERIAL ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
      Map<String, String> words = new LinkedHashMap<>();
      exemption.area().ifPresent(area -> words.put("area", formats.in(area, unit, 0)));
      exemption.eave().ifPresent(eave -> words.put("eave", formats.distance(eave)));
      words.put("floor", formats.in(packet.footingLoads().outline(), unit, 0));
      words.put("source", source(exemption.citation()));
      return say("frost.questions." + exemption.id(), words);
    }
  }
}
