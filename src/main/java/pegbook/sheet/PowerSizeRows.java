package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Conductors;
import pegbook.calc.powerline.PowerLine.Drop;
import pegbook.calc.powerline.PowerLine.Metal;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.calc.powerline.PowerLine.Size;
import pegbook.calc.powerline.PowerLine.Supplied;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.DropLimit;
import pegbook.sheet.PowerLineSheet.SizeRow;
import pegbook.sheet.PowerLineSheet.SupplyRow;

/**
 * What the power line's sheet says of conductors.
 *
 * @param packet the packet's figures
 * @param writing words and formats
 */
record PowerSizeRows(Packet packet, Writing writing) {
  /** So many sizes beyond the chosen one are shown. */
  private static final int BEYOND = 2;

  private static final int LEAST_ROWS = 6;

  private String say(String key) {
    return say(key, Map.of());
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("power-line." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  private Power power() {
    return packet.job().power().orElseThrow();
  }

  private Conductors conductors() {
    return packet.powerLine().line().orElseThrow().conductors();
  }

  private boolean imperial() {
    return formats().units() == UnitSystem.IMPERIAL;
  }

  private String percent(Drop drop) {
    return formats().number(drop.share().fraction() * 100, 1) + "%";
  }

  private String drop(Drop drop) {
    return formats().number(drop.lost().volts(), 2) + " V, " + percent(drop);
  }

  List<String> chosen() {
    List<String> chosen = new ArrayList<>();
    if (conductors().chosen().isEmpty()) {
      chosen.add(say("chosen.none"));
      return chosen;
    }
    Chosen taken = conductors().chosen().get();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("count", formats().count(taken.loaded()));
    values.put("size", taken.size());
    values.put("metal", say("metal." + PowerLineWords.word(power().wiring().metal())));
    values.put("strands", say("strands." + PowerLineWords.word(power().wiring().strands())));
    values.put("earth", taken.earth());
    values.put("drop", drop(taken.running()));
    values.put("full", drop(taken.full()));
    values.put("running", formats().quantity(power().supply().running()));
    values.put("breaker", formats().quantity(power().supply().breaker()));
    values.put("allowed", formats().quantity(conductors().allowed()));
    values.put("bearing", taken.bearing());
    boolean cable = !imperial() || power().wiring().method() == Power.Method.DIRECT_BURIAL;
    chosen.add(say(cable ? "chosen.cable" : "chosen.wires", values));
    chosen.add(say("chosen.drop", values));
    if (!taken.bearing().equals(taken.size())) {
      chosen.add(say("chosen.larger", values));
    }
    pipe().ifPresent(chosen::add);
    return chosen;
  }

  private Optional<String> pipe() {
    Pipe pipe = packet.powerLine().line().orElseThrow().trench().pipe();
    if (pipe.name().isEmpty()) {
      return Optional.empty();
    }
    Map<String, String> values = new LinkedHashMap<>();
    values.put("size", pipe.name());
    values.put("kind", say("method." + PowerLineWords.word(power().wiring().method())));
    values.put("most", formats().quantity(pipe.mayFill()));
    pipe.filled()
        .ifPresent(
            filled -> values.put("filled", formats().number(filled.fraction() * 100, 0) + "%"));
    return Optional.of(say(pipe.filled().isPresent() ? "chosen.fill" : "chosen.duct", values));
  }

  /** From the smallest size to a few beyond the chosen one. */
  List<SizeRow> rows() {
    List<Size> sizes = conductors().sizes();
    int taken = sizes.size() - 1;
    for (int i = 0; i < sizes.size(); i++) {
      if (isTaken(sizes.get(i))) {
        taken = i;
      }
    }
    int last = Math.min(sizes.size(), Math.max(LEAST_ROWS, taken + 1 + BEYOND));
    return sizes.subList(0, last).stream().map(this::row).toList();
  }

  private boolean isTaken(Size size) {
    return conductors().chosen().filter(taken -> taken.size().equals(size.name())).isPresent();
  }

  private SizeRow row(Size size) {
    return new SizeRow(
        size.name(),
        amperes(size.copper()),
        share(size.copper().flatMap(Metal::stranded)),
        imperial() ? share(size.copper().flatMap(Metal::solid)) : "",
        amperes(size.aluminium()),
        share(size.aluminium().flatMap(Metal::stranded)),
        imperial() ? share(size.aluminium().flatMap(Metal::solid)) : "",
        say("verdict." + verdict(size)),
        isTaken(size) ? "strong" : "");
  }

  private String verdict(Size size) {
    Optional<Metal> metal = size.of(power().wiring().metal());
    if (isTaken(size)) {
      return "taken";
    }
    if (metal.isEmpty()) {
      return "not-made";
    }
    if (!metal.get().bears()) {
      return "breaker";
    }
    Optional<Drop> drop = metal.get().of(power().wiring().strands());
    if (drop.isEmpty()) {
      return "not-made";
    }
    if (!drop.get().kept()) {
      return "drop";
    }
    return size.allowed() ? "more" : "not-allowed";
  }

  /** Ampacity, and the breaker that a small size may lie behind. */
  private String amperes(Optional<Metal> metal) {
    return metal
        .map(
            made -> {
              String amperes = formats().number(made.amperes(), 0);
              return made.breaker()
                  .map(limit -> amperes + " (" + formats().number(limit, 0) + ")")
                  .orElse(amperes);
            })
        .orElse("");
  }

  private String share(Optional<Drop> drop) {
    return drop.map(this::percent).orElse("");
  }

  String rule() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("allowed", formats().quantity(conductors().allowed()));
    values.put("celsius", formats().count(conductors().celsius()));
    values.put("factor", formats().quantity(power().supply().powerFactor()));
    return say(imperial() ? "sizes.rule.gauge" : "sizes.rule.metric", values);
  }

  List<SupplyRow> supplies() {
    return conductors().supplies().stream().map(this::supply).toList();
  }

  private SupplyRow supply(Supplied supplied) {
    String voltage = formats().quantity(supplied.voltage());
    return new SupplyRow(
        supplied.threePhase() ? say("three-phase", Map.of("voltage", voltage)) : voltage,
        formats().number(supplied.current().amperes(), 1) + "\u00a0A",
        supplied.drop().map(this::drop).orElse(say("none")),
        supplied.smallest().orElse(say("none")));
  }

  private Length run() {
    return packet.powerLine().line().orElseThrow().route().oneWay();
  }

  List<String> wires() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("lighting", formats().quantity(DropLimit.find("public-lighting").over(run())));
    values.put("other", formats().quantity(DropLimit.find("public-other").over(run())));
    values.put("branch", formats().quantity(DropLimit.find("us-branch").share()));
    values.put("both", formats().quantity(DropLimit.find("us-both").share()));
    List<String> wires = new ArrayList<>();
    wires.add(say(imperial() ? "wires.limit.gauge" : "wires.limit.metric", values));
    wires.add(say("wires.inrush"));
    wires.add(say("wires.pier"));
    if (power().wiring().metal() == Power.Metal.ALUMINIUM) {
      wires.add(say("wires.aluminium"));
    }
    wires.add(say("wires.electrician"));
    return wires;
  }
}
