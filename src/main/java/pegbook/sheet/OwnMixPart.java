package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.ownmix.OwnMixPlan;
import pegbook.calc.ownmix.OwnMixPlan.Weights;
import pegbook.job.OwnMix;
import pegbook.measure.Mass;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.MixTables;

/**
 * What goes into a mix of cement, sand and stone.
 *
 * @param lead strength, water to cement, stone
 * @param heads of the columns of weights
 * @param rows one for each material
 * @param rules how to weigh, mix and mend it
 */
public record OwnMixPart(String lead, List<String> heads, List<Row> rows, List<String> rules) {
  /** A material's weights, in the order of the columns, and the working behind the first. */
  public record Row(String what, List<String> weights, String working) {}

  /** The part, where the job asks for such a mix. */
  static Optional<OwnMixPart> of(Packet packet, Writing writing) {
    return packet.ownMix().mix().map(mix -> new Words(packet, writing, mix).part());
  }

  /** What goes into a load, for the crew at the mixer. */
  static Optional<String> load(Packet packet, Writing writing) {
    return packet.ownMix().mix().map(mix -> new Words(packet, writing, mix).load());
  }

  /** Makes its strings. */
  private record Words(Packet packet, Writing writing, OwnMixPlan.Mix mix) {
    private OwnMixPart part() {
      return new OwnMixPart(lead(), heads(), rows(), rules());
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say("own-mix." + key, values);
    }

    private String say(String key) {
      return say(key, Map.of());
    }

    private Formats formats() {
      return writing.formats();
    }

    private OwnMix own() {
      return packet.job().concrete().ownMix().orElseThrow();
    }

    private String lead() {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("aim", formats().strength(mix.aim()));
      values.put("strength", formats().strength(packet.job().concrete().strength()));
      values.put("ratio", formats().number(mix.waterCement(), 2));
      values.put("stone", formats().size(own().stone()));
      values.put("source", new Sources(writing.texts()).write(MixTables.SOURCE));
      return say("lead", values);
    }

    private List<String> heads() {
      boolean imperial = formats().units() == UnitSystem.IMPERIAL;
      return List.of(
          say(imperial ? "column.yard" : "column.metre"),
          say("column.bag", Map.of("bag", formats().mass(own().cementBag()))),
          say("column.load", Map.of("volume", formats().volume(mix.loadVolume()))),
          say("column.all"));
    }

    private String load() {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("cement", weight(mix.load().cement(), true));
      values.put("sand", weight(mix.load().sand(), true));
      values.put("stone", weight(mix.load().stone(), true));
      values.put("water", weight(mix.load().water(), true));
      return say("load", values);
    }

    private String weight(Mass mass, boolean fine) {
      boolean imperial = formats().units() == UnitSystem.IMPERIAL;
      return formats().in(mass, imperial ? Unit.POUND : Unit.KILOGRAM, fine ? 1 : 0);
    }

    private List<Row> rows() {
      List<Weights> columns = List.of(mix.unit(), mix.bag(), mix.load(), mix.all());
      return List.of(
          row("cement", columns.stream().map(Weights::cement).toList(), "cement"),
          row("sand", columns.stream().map(Weights::sand).toList(), "sand"),
          row("stone", columns.stream().map(Weights::stone).toList(), "stone"),
          row("water", columns.stream().map(Weights::water).toList(), "water"));
    }

    private Row row(String what, List<Mass> masses, String formula) {
      List<String> weights = new ArrayList<>();
      for (int i = 0; i < masses.size(); i++) {
        boolean small = i == 1 || i == 2;
        weights.add(weight(masses.get(i), small));
      }
      return new Row(
          say("row." + what), weights, packet.workings().numberOf("own-mix." + formula).orElse(""));
    }

    private List<String> rules() {
      List<String> rules = new ArrayList<>();
      rules.add(say("rule.scale"));
      rules.add(
          say(
              "rule.damp",
              Map.of(
                  "sand", formats().quantity(own().sandWater()),
                  "stone", formats().quantity(own().stoneWater()))));
      rules.add(say("rule.trial", Map.of("slump", formats().size(own().slump()))));
      if (packet.job().concrete().air().filter(air -> air.isMoreThan(Ratio.ZERO)).isPresent()) {
        rules.add(say("rule.air"));
      }
      rules.add(say("rule.basis"));
      return rules;
    }
  }
}
