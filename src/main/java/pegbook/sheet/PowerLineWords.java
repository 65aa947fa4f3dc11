package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.calc.powerline.PowerLine.PipeRun;
import pegbook.calc.powerline.PowerLine.Stretch;
import pegbook.calc.powerline.PowerLine.Trench;
import pegbook.figures.Task;
import pegbook.job.Power;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.ExcavationRule;
import pegbook.published.SafetyLimit;
import pegbook.sheet.PowerLineSheet.Fact;
import pegbook.sheet.PowerLineSheet.LegRow;
import pegbook.sheet.PowerLineSheet.StretchRow;
import pegbook.sheet.section.HoleSection;
import pegbook.sheet.section.TrenchSection;

/**
 * The strings of the power line's sheet.
 *
 * @param packet the packet's figures
 * @param writing words and formats
 */
record PowerLineWords(Packet packet, Writing writing) {
  private static final double SECTION_SHARE = 0.66;
  private static final double SECTION_MM = 78;
  private static final double GAP_MM = 4;

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

  private Line line() {
    return packet.powerLine().line().orElseThrow();
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  PowerLineSheet sheet() {
    TrenchSection.Sizes sizes = sizes();
    double width = Math.floor(writing.page().widthMm() * SECTION_SHARE) - GAP_MM;
    HoleSection.Picture picture =
        TrenchSection.draw(
            formats().units(),
            sizes,
            sectionWords(),
            writing.lettering(),
            width,
            SECTION_MM,
            say("section.description"));
    PowerSizeRows conductors = new PowerSizeRows(packet, writing);
    return new PowerLineSheet(
        say("title"),
        lead(),
        line().route().legs().stream().map(this::leg).toList(),
        lengths(),
        picture.drawing(),
        caption(TrenchSection.scale(formats().units(), sizes, width, SECTION_MM), picture),
        line().trench().stretches().stream().map(this::stretch).toList(),
        pick(),
        facts(),
        conductors.chosen(),
        conductors.rows(),
        formats().units() == UnitSystem.IMPERIAL,
        conductors.rule(),
        conductors.supplies(),
        rules(),
        conductors.wires());
  }

  private String lead() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("voltage", formats().quantity(power().supply().voltage()));
    values.put("running", formats().quantity(power().supply().running()));
    values.put("breaker", formats().quantity(power().supply().breaker()));
    values.put("method", say("method." + word(power().wiring().method())));
    values.put("length", formats().distance(line().route().length()));
    return say("lead", values);
  }

  private LegRow leg(Leg leg) {
    return new LegRow(
        leg.from() + "–" + leg.to(),
        leg.fromName().map(name -> leg.from() + " " + name).orElse(leg.from()),
        leg.toPier()
            ? say("to-pier", Map.of("pier", leg.to()))
            : leg.toName().map(name -> leg.to() + " " + name).orElse(leg.to()),
        writing.texts().say("compass." + word(leg.towards())),
        formats().distance(leg.length()));
  }

  private List<String> lengths() {
    List<String> lengths = new ArrayList<>();
    lengths.add(
        say("length.trench", Map.of("length", formats().distance(line().route().length()))));
    lengths.add(
        say(
            "length.one-way",
            Map.of(
                "length", formats().distance(line().route().oneWay()),
                "slack", formats().length(power().wiring().slack()))));
    line().pipes().forEach(run -> lengths.add(say("length.pipe", pipe(run))));
    if (!line().pipes().isEmpty()) {
      PipeRun run = line().pipes().get(0);
      String lays =
          formats()
              .names(
                  line().pipes().stream()
                      .map(each -> formats().length(each.lay()))
                      .distinct()
                      .toList());
      lengths.add(say("length.lay", Map.of("lay", lays)));
      lengths.add(
          say(
              "length.riser",
              Map.of(
                  "ends", formats().names(run.ends()),
                  "riser", formats().length(run.riser()),
                  "over", formats().length(run.over()))));
    }
    return lengths;
  }

  private Map<String, String> pipe(PipeRun run) {
    return Map.of(
        "size", run.size(),
        "pieces", formats().count(run.count()),
        "bends", formats().count(run.bends()),
        "couplings", formats().count(run.couplings()));
  }

  private TrenchSection.Sizes sizes() {
    Trench trench = line().trench();
    Stretch main = trench.main();
    return new TrenchSection.Sizes(
        trench.width(),
        main.cover(),
        main.depth(),
        trench.pipe().outside(),
        trench.data().map(Pipe::outside),
        trench.apart(),
        trench.bedding(),
        trench.tapeDepth());
  }

  private TrenchSection.Words sectionWords() {
    Trench trench = line().trench();
    return new TrenchSection.Words(
        formats().size(trench.width()),
        say("section.cover", Map.of("cover", formats().size(trench.main().cover()))),
        say("section.depth", Map.of("depth", formats().size(trench.main().depth()))),
        pipe(trench.pipe()),
        say("section.data", Map.of("apart", formats().size(trench.apart()))),
        say("section.sand", Map.of("bedding", formats().size(trench.bedding()))),
        say("section.tape", Map.of("tape", formats().size(trench.tapeDepth()))),
        say("section.fill"));
  }

  private String pipe(Pipe pipe) {
    return pipe.name().isEmpty()
        ? say("section.cable", Map.of("outside", formats().size(pipe.outside())))
        : say("section.pipe", Map.of("size", pipe.name()));
  }

  private String caption(String scale, HoleSection.Picture picture) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("label", line().trench().main().label());
    values.put("scale", scale);
    String caption = say("section.caption", values);
    return picture.leftOver().isEmpty()
        ? caption
        : caption + " " + String.join("; ", picture.leftOver());
  }

  private StretchRow stretch(Stretch stretch) {
    return new StretchRow(
        stretch.label(),
        stretch.under().map(cover -> say("over." + cover.id())).orElse(say("over.open")),
        formats().distance(stretch.length()),
        formats().size(stretch.cover()),
        formats().size(stretch.depth()),
        say("rule." + word(stretch.rule())));
  }

  /** Why the cover is what it is; in the United States with the four conditions for 12 in. */
  private List<String> pick() {
    List<String> pick = new ArrayList<>();
    if (!packet.job().place().isUnitedStates()) {
      pick.add(say("pick.habit"));
      return pick;
    }
    Power.Supply supply = power().supply();
    List<String> met = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    sort(supply.voltage().volts() <= 120 + 1e-9, "volts", met, missing);
    sort(supply.groundFault(), "ground-fault", met, missing);
    sort(supply.breaker().amperes() <= 20 + 1e-9, "amperes", met, missing);
    sort(supply.circuit() == Power.Circuit.RESIDENTIAL_BRANCH, "branch", met, missing);
    Map<String, String> values = new LinkedHashMap<>();
    values.put("met", met.isEmpty() ? say("none") : String.join("; ", met));
    values.put("missing", missing.isEmpty() ? say("none") : String.join("; ", missing));
    pick.add(say(missing.isEmpty() ? "pick.all-four" : "pick.not-four", values));
    power()
        .depth()
        .ifPresent(
            depth ->
                pick.add(
                    say(
                        "pick.authority",
                        Map.of(
                            "cover", formats().size(depth.cover()),
                            "from", depth.from()))));
    return pick;
  }

  private void sort(boolean holds, String condition, List<String> met, List<String> missing) {
    (holds ? met : missing).add(say("condition." + condition));
  }

  private Fact fact(String what, String value, String formula) {
    String number = packet.workings().numberOf("power-line." + formula).orElse("");
    return new Fact(say("fact." + what, Map.of("working", number)), value);
  }

  private List<Fact> facts() {
    Trench trench = line().trench();
    return List.of(
        fact("bank", formats().volume(trench.bank()), "trench-volume"),
        fact("loose", formats().volume(trench.loose()), "trench-loose"),
        fact("sand", formats().volume(trench.sand()), "sand"),
        fact("over", formats().volume(trench.over()), "left-over"),
        fact("dig", hours(Task.Kind.TRENCH), digFormula()),
        fact("lay", hours(Task.Kind.LAY_PIPE), "lay-least"),
        fact("fill", hours(Task.Kind.BACKFILL), "fill-least"));
  }

  private String digFormula() {
    return power().trench().dug() == Power.Dug.TRENCHER ? "trencher-least" : "dig-least";
  }

  private String hours(Task.Kind kind) {
    return packet.powerLine().tasks().stream()
        .filter(task -> task.kind() == kind)
        .map(
            task ->
                say(
                    "hours",
                    Map.of(
                        "least", formats().hours(task.least()),
                        "most", formats().hours(task.most()))))
        .findFirst()
        .orElse("");
  }

  private List<String> rules() {
    Trench trench = line().trench();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("back", formats().distance(ExcavationRule.find("spoil-edge").threshold()));
    values.put("ladder", formats().distance(SafetyLimit.find("way-out").length()));
    values.put("travel", formats().distance(SafetyLimit.find("way-out-travel").length()));
    values.put("shore", formats().distance(ExcavationRule.find("unshored-depth").threshold()));
    values.put("apart", formats().size(trench.apart()));
    values.put("tape", formats().size(trench.tapeDepth()));
    values.put("layer", formats().size(layer()));
    return Stream.of(
            Optional.of("marked"),
            Optional.of("spoil"),
            Optional.of("deep"),
            Optional.of("stones"),
            Optional.of("hold"),
            Optional.of("layers"),
            trench.data().map(data -> "data"))
        .flatMap(Optional::stream)
        .map(rule -> say("keep." + rule, values))
        .toList();
  }

  private Length layer() {
    return formats().units() == UnitSystem.IMPERIAL
        ? Length.ofInches(6)
        : Length.ofMillimetres(150);
  }
}
