package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.levels.Levels;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.Levels.PierTop;
import pegbook.calc.levels.LineSag;
import pegbook.figures.DatumLine;
import pegbook.figures.MarkKind;
import pegbook.job.Benchmark;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.section.GroundProfile;

/** The sentences of the levels. */
record LevelsWords(Packet packet, Levels levels, Writing writing) {
  private String say(String key, Map<String, String> values) {
    return writing.texts().say("levels." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  private boolean imperial() {
    return formats().units() == UnitSystem.IMPERIAL;
  }

  private DatumLine line() {
    return levels.line().orElseThrow();
  }

  private static boolean isUp(Length height) {
    return !height.isLessThan(Length.ZERO);
  }

  private Map<String, String> values() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("height", formats().tape(line().height().abs()));
    values.put("clearance", formats().tape(line().clearance()));
    values.put("highest", line().highest());
    values.put(
        "on",
        packet
            .job()
            .ground()
            .benchmark()
            .map(Benchmark::on)
            .orElse(writing.texts().say("levels.benchmark.unnamed")));
    values.put("beyond", formats().distance(LineSag.stakeBeyond(formats().units())));
    values.put("working", packet.workings().numberOf("depth-targets.datum").orElse(""));
    return values;
  }

  String lead() {
    return say(isUp(line().height()) ? "lead.above" : "lead.below", values());
  }

  List<String> steps() {
    List<String> steps = new ArrayList<>();
    steps.add(say("step.stakes", values()));
    steps.add(say(isUp(line().height()) ? "step.up" : "step.down", values()));
    steps.addAll(
        List.of(
            say("step.carry", values()),
            say("step.string", values()),
            say("step.read", values()),
            say("step.again", values())));
    return steps;
  }

  String caption(GroundProfile.Pictures pictures) {
    String key = pictures.readings() ? "picture.caption" : "picture.caption.narrow";
    return say(key, Map.of("scale", pictures.scale().text()));
  }

  String unknown() {
    return levels.unknown().isEmpty()
        ? ""
        : say("unknown", Map.of("marks", formats().names(levels.unknown())));
  }

  String floor() {
    return levels.floor().map(this::floor).orElse("");
  }

  private String floor(LevelFloor floor) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("top", formats().tape(packet.job().floor().orElseThrow().top().orElseThrow()));
    values.put("highest", floor.highest());
    values.put("height", LevelsTables.upOrDown(floor.height(), writing));
    values.put("overLine", LevelsTables.upOrDown(floor.overLine(), writing));
    return say("floor", values);
  }

  String buildUp() {
    return levels
        .floor()
        .map(
            floor ->
                floor
                    .buildUp()
                    .map(depth -> say("build-up.known", Map.of("buildUp", formats().tape(depth))))
                    .orElse(say("build-up.unknown", Map.of())))
        .orElse("");
  }

  List<String> piers() {
    return levels
        .floor()
        .map(floor -> floor.piers().stream().map(this::pier).toList())
        .orElse(List.of());
  }

  private String pier(PierTop pier) {
    String key = isUp(pier.overFloor()) ? "pier.over" : "pier.under";
    return say(key, Map.of("mark", pier.mark(), "height", formats().tape(pier.overFloor().abs())));
  }

  /** How the posts are cut by what stands, not by what was planned. */
  List<String> cutting() {
    return levels.floor().map(this::cutting).orElse(List.of());
  }

  private List<String> cutting(LevelFloor floor) {
    Length add = floor.addToReading();
    String rule = floor.buildUp().isPresent() ? "cutting.known" : "cutting.unknown";
    String sign = isUp(add) ? ".add" : ".take";
    List<String> rules = new ArrayList<>();
    rules.add(say(rule + sign, Map.of("height", formats().tape(add.abs()))));
    rules.add(say("cutting.dry", Map.of()));
    if (levels.rows().stream()
        .anyMatch(row -> row.kind() == MarkKind.SUPPORT && !isUp(row.toTop()))) {
      rules.add(say("cutting.over", Map.of()));
    }
    return rules;
  }

  /** How far the line sags and where to prop it; empty without a line to run. */
  String sag() {
    return levels.sag().map(this::sag).orElse("");
  }

  private String sag(LineSag sag) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("span", formats().distance(sag.span()));
    values.put("sag", small(sag.sag()));
    values.put("allowed", small(sag.allowed()));
    values.put("free", formats().distance(sag.longestSpan()));
    values.put("every", formats().distance(sag.propEvery()));
    values.put("props", formats().count(sag.spans() - 1L));
    values.put("beyond", formats().distance(LineSag.stakeBeyond(formats().units())));
    values.put("weight", weight());
    values.put("pull", pull());
    values.put("working", packet.workings().numberOf("levels.sag").orElse(""));
    String props = sag.spans() == 1 ? "sag.none" : sag.spans() == 2 ? "sag.one" : "sag.more";
    return String.join(" ", say("sag", values), say(props, values), say("sag.basis", values));
  }

  private String small(Length length) {
    return formats().in(length, imperial() ? Unit.INCH : Unit.MILLIMETRE, imperial() ? 2 : 1);
  }

  private String weight() {
    return imperial()
        ? formats().number(LineSag.POUNDS_PER_FOOT * 1000, 0) + " lb/1000 ft"
        : formats().number(LineSag.KILOGRAMS_PER_METRE * 1000, 1) + " g/m";
  }

  private String pull() {
    return imperial()
        ? formats().number(LineSag.PULL_POUNDS, 0) + " lbf"
        : formats().number(LineSag.PULL_NEWTONS, 0) + " N";
  }
}
