package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pegbook.calc.tapecorrections.TapeCorrections;
import pegbook.calc.tapecorrections.TapeCorrections.Heat;
import pegbook.calc.tapecorrections.TapeCorrections.Slope;
import pegbook.figures.MarkPair;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;

/** The words of taping on a slope and in the heat. */
record SlopeWords(Packet packet, TapeCorrections corrections, Writing writing) {
  /** Rows of the table; the rest are milder. */
  private static final int MOST_ROWS = 24;

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("tape-corrections." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  private boolean imperial() {
    return formats().units() == UnitSystem.IMPERIAL;
  }

  private String name(MarkPair pair) {
    return say("pair", Map.of("first", pair.first(), "second", pair.second()));
  }

  private String small(Length length) {
    return formats().in(length, imperial() ? Unit.INCH : Unit.MILLIMETRE, imperial() ? 2 : 1);
  }

  /** What the slope does, for the sheet of levels; empty without known slopes. */
  List<String> sentences() {
    if (corrections.slopes().isEmpty()) {
      return List.of();
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        corrections
            .worst()
            .map(worst -> say("slope.worst", values(worst)))
            .orElse(say("slope.none", Map.of("half", half()))));
    if (changed().size() > MOST_ROWS) {
      sentences.add(
          say(
              "slope.many",
              Map.of(
                  "count", formats().count(changed().size()),
                  "shown", formats().count(MOST_ROWS))));
    }
    if (!corrections.unknown().isEmpty()) {
      sentences.add(
          say("slope.unknown", Map.of("count", formats().count(corrections.unknown().size()))));
    }
    return sentences;
  }

  private String half() {
    return small(packet.job().layout().tape().division().times(0.5));
  }

  private Map<String, String> values(Slope slope) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("pair", name(slope.pair()));
    values.put("excess", small(slope.excess()));
    values.put("half", half());
    values.put("working", packet.workings().numberOf("tape-corrections.excess").orElse(""));
    return values;
  }

  /** The distances that the slope changes most, in the order of work. */
  List<LevelsSheet.SlopeRow> rows() {
    List<Slope> changed = changed();
    Set<Slope> worst =
        changed.stream()
            .sorted(Comparator.comparing(Slope::excess).reversed())
            .limit(MOST_ROWS)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return changed.stream().filter(worst::contains).map(this::row).toList();
  }

  private List<Slope> changed() {
    return corrections.slopes().stream().filter(Slope::matters).toList();
  }

  private LevelsSheet.SlopeRow row(Slope slope) {
    return new LevelsSheet.SlopeRow(
        name(slope.pair()),
        formats().tape(slope.level()),
        LevelsTables.upOrDown(slope.rise(), writing),
        formats().tape(slope.alongGround()),
        small(slope.excess()));
  }

  /** What the tape table says of slope and heat. */
  List<String> forTheTapeTable() {
    List<String> sentences = new ArrayList<>();
    corrections.worst().ifPresent(worst -> sentences.add(say("slope.tapes", values(worst))));
    sentences.add(heat(corrections.heat()));
    return sentences;
  }

  private String heat(Heat heat) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("longest", formats().tape(heat.longest()));
    values.put("half", half());
    values.put("degrees", degrees(heat.halfDivisionKelvins()));
    values.put("season", degrees(heat.seasonKelvins()));
    values.put("reference", imperial() ? "68 °F" : "20 °C");
    values.put("correction", small(heat.season()));
    values.put("warm", formats().tape(heat.warm()));
    values.put("cold", formats().tape(heat.cold()));
    values.put("working", packet.workings().numberOf("tape-corrections.half-division").orElse(""));
    return say(heat.matters() ? "heat.matters" : "heat.none", values);
  }

  private String degrees(double kelvins) {
    double step = imperial() ? kelvins * 1.8 : kelvins;
    return formats().number(Math.rint(step), 0) + (imperial() ? " °F" : " °C");
  }
}
