package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.depthtargets.DepthChoice;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.calc.digschedule.DugSoil;
import pegbook.calc.digschedule.HeapSpot;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.figures.AlikeHoles;
import pegbook.figures.DatumLine;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Frost;
import pegbook.job.Tool;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.measure.WorkRate;
import pegbook.packet.Packet;
import pegbook.published.Citation;
import pegbook.published.FootingDepth;
import pegbook.published.HandDigRate;
import pegbook.published.HaulRate;
import pegbook.published.WorkRange;

/** The sentences of the dig schedule. */
record DigWords(Packet packet, Writing writing) {
  private Texts texts() {
    return writing.texts();
  }

  private Formats formats() {
    return writing.formats();
  }

  private DigSchedule schedule() {
    return packet.digSchedule();
  }

  private String say(String key, Map<String, String> values) {
    return texts().say("dig-schedule." + key, values);
  }

  private List<String> sentences(String prefix, Stream<String> keys) {
    return keys.map(key -> texts().say("dig-schedule." + prefix + "." + key)).toList();
  }

  /** How many holes, how deep, how long. */
  String lead() {
    String depths =
        AlikeHoles.of(schedule().rows().stream().map(Row::hole).toList()).stream()
            .map(
                kind ->
                    say(
                        "lead.kind",
                        Map.of(
                            "holes",
                            formats().names(kind.marks()),
                            "dug",
                            formats().tape(kind.first().dug()))))
            .distinct()
            .collect(Collectors.joining("; "));
    Map<String, String> values = new LinkedHashMap<>();
    values.put("count", formats().count(schedule().rows().size()));
    values.put("depths", depths);
    DigTables tables = new DigTables(packet, writing);
    values.put(
        "hours", tables.hours(packet.workEstimate().digLeast(), packet.workEstimate().digMost()));
    List<String> dug = packet.workEstimate().dug();
    values.put("dug", formats().names(dug));
    return say(
        dug.isEmpty() ? "lead" : dug.size() == schedule().rows().size() ? "lead-done" : "lead-left",
        values);
  }

  /** Where the datum line stands; empty without one. */
  String line() {
    return packet.depthTargets().datum().map(this::line).orElse("");
  }

  private String line(DatumLine datum) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("height", formats().tape(datum.height().abs()));
    values.put("clearance", formats().tape(datum.clearance()));
    values.put("highest", datum.highest());
    values.put("working", packet.workings().numberOf("depth-targets.datum").orElse(""));
    boolean below = datum.height().isLessThan(Length.ZERO);
    return say(below ? "line.below" : "line.above", values);
  }

  List<String> measuring() {
    boolean levels = packet.depthTargets().datum().isPresent();
    List<String> rules =
        new ArrayList<>(
            sentences(
                "measuring",
                levels ? Stream.of("rim", "gravel", "line") : Stream.of("rim", "gravel")));
    List<Hole> holes = packet.depthTargets().holes();
    rules.addAll(new WideningWords(writing).dig(holes));
    rules.addAll(new WideningWords(writing).pads(holes));
    return rules;
  }

  /** Where the depths come from. */
  List<String> choiceNotes() {
    List<String> notes = new ArrayList<>();
    FootingDepth least = FootingDepth.find("code-minimum");
    boolean code = packet.job().place().isUnitedStates();
    notes.add(
        texts()
            .say(
                code ? "depth-targets.note.code" : "depth-targets.note.least",
                Map.of(
                    "least",
                    formats().tape(least.least()),
                    "source",
                    new Sources(texts()).write(least.citation()))));
    packet.job().ground().frost().ifPresent(frost -> notes.add(frost(frost)));
    packet.depthTargets().choices().stream()
        .filter(choice -> choice.exemption().isPresent())
        .forEach(choice -> notes.add(exemption(choice)));
    return notes;
  }

  private String frost(Frost frost) {
    return texts()
        .say(
            "depth-targets.note.frost",
            Map.of("frost", formats().tape(frost.depth()), "from", frost.from()));
  }

  private String exemption(DepthChoice choice) {
    Frost.Exemption exemption = choice.exemption().orElseThrow();
    return texts()
        .say(
            "depth-targets.note.exemption",
            Map.of(
                "holes",
                formats().names(choice.marks()),
                "who",
                exemption.who(),
                "when",
                formats().date(exemption.when())));
  }

  /** What to do when the ground is not as expected. */
  List<String> asDug() {
    List<String> rules =
        new ArrayList<>(
            sentences("as-dug", Stream.of("line", "rock", "water", "soft", "too-deep")));
    rules.add(
        say(
            "as-dug.moved",
            Map.of("tolerance", formats().size(packet.job().layout().tolerance()))));
    rules.addAll(sentences("as-dug", Stream.of("walls", "write")));
    return rules;
  }

  /** How long carrying takes, and what a cart weighs. */
  String carry() {
    DugSoil soil = schedule().soil();
    Map<String, String> values = new LinkedHashMap<>();
    DigTables tables = new DigTables(packet, writing);
    values.put(
        "hours",
        tables.hours(
            packet.workEstimate().least(Task.Kind.CARRY_SPOIL),
            packet.workEstimate().most(Task.Kind.CARRY_SPOIL)));
    values.put("cart", formats().volume(soil.cart()));
    values.put("load", formats().mass(soil.cartLoad()));
    return say("carry", values);
  }

  /** What of the soil goes back round tubes, and what is left; empty where no tube asks. */
  String left() {
    List<String> inGravel =
        packet.concretePlan().fills().stream()
            .filter(fill -> fill.sideGravel().isPresent())
            .map(ConcretePlan.Fill::mark)
            .toList();
    boolean kept = schedule().totals().kept().isMoreThan(Volume.ZERO);
    if (!kept && inGravel.isEmpty()) {
      return "";
    }
    DigTables tables = new DigTables(packet, writing);
    Map<String, String> values = new LinkedHashMap<>();
    values.put("kept", tables.room(schedule().totals().kept()));
    values.put("left", tables.room(schedule().totals().left()));
    values.put("holes", formats().names(inGravel));
    values.put("working", packet.workings().numberOf("dig-schedule.kept-volume").orElse(""));
    return say(!kept ? "left-all" : inGravel.isEmpty() ? "left" : "left-both", values);
  }

  String heapLead() {
    boolean tip =
        schedule().heapSpots().stream().anyMatch(spot -> spot.kind() == HeapSpot.Kind.TIP);
    boolean none = schedule().heapSpots().isEmpty();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("cart", formats().volume(schedule().soil().cart()));
    values.put("edge", formats().tape(schedule().edge().distance()));
    values.put("source", new Sources(texts()).write(schedule().edge().source()));
    return say(none ? "heaps.none" : tip ? "heaps.tip" : "heaps.beside", values);
  }

  /** What the numbers rest on. */
  List<String> basis() {
    List<String> basis = new ArrayList<>();
    basis.add(texts().say("dig-schedule.basis.drawn"));
    basis.add(swell());
    basis.add(
        say(
            "basis.loads",
            Map.of("working", packet.workings().numberOf("dig-schedule.total-loads").orElse(""))));
    DugSoil soil = schedule().soil();
    basis.addAll(weight(soil));
    basis.addAll(times());
    basis.add(
        sourced("repose", formats().roundAngle(soil.angle()), "angle", soil.repose().citation()));
    basis.add(texts().say("dig-schedule.basis.tools"));
    return basis;
  }

  /** What soil weighs; how much more it weighs when wet counts on a dry weight only. */
  private List<String> weight(DugSoil soil) {
    String weight = formats().density(soil.bank());
    return soil.weightFrom()
        .map(from -> List.of(say("basis.weight-job", Map.of("weight", weight, "from", from))))
        .orElseGet(
            () ->
                List.of(
                    sourced("weight", weight, "weight", soil.weight().citation()),
                    texts().say("dig-schedule.basis.wet")));
  }

  private String swell() {
    DugSoil soil = schedule().soil();
    String swell = formats().quantity(soil.swell());
    return soil.swellFromJob()
        ? say("basis.swell-job", Map.of("swell", swell))
        : sourced("swell", swell, "swell", soil.swellSource());
  }

  private String sourced(String key, String value, String name, Citation source) {
    return say("basis." + key, Map.of(name, value, "source", new Sources(texts()).write(source)));
  }

  /** How fast people dig and carry. */
  private List<String> times() {
    List<String> times = new ArrayList<>();
    HandDigRate dig = packet.workEstimate().rate();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("rate", rate(dig.upper()));
    values.put("band", formats().distance(HandDigRate.BAND));
    values.put("source", new Sources(texts()).write(dig.citation()));
    times.add(say("basis.rate", values));
    Stream.concat(
            packet.workEstimate().holes().stream().map(HoleWork::range),
            powerAuger() ? Stream.of(WorkRange.find("power-auger")) : Stream.of())
        .distinct()
        .forEach(range -> times.add(say("basis.range." + range.work(), factors(range))));
    HaulRate near = HaulRate.all().get(0);
    values.put("rate", rate(near.rate()));
    values.put("distance", formats().distance(near.upTo()));
    values.put("source", new Sources(texts()).write(near.citation()));
    values.putAll(factors(WorkRange.find("carry")));
    times.add(say("basis.haul", values));
    return times;
  }

  private boolean powerAuger() {
    return schedule().rows().stream()
        .flatMap(row -> row.tools().stream())
        .anyMatch(step -> step.tool().kind() == Tool.Kind.POWER_AUGER);
  }

  private String rate(WorkRate rate) {
    return formats().units() == UnitSystem.IMPERIAL
        ? formats().in(rate, Unit.CUBIC_FOOT_PER_HOUR, 1)
        : formats().in(rate, Unit.CUBIC_METRE_PER_HOUR, 2);
  }

  private Map<String, String> factors(WorkRange range) {
    return Map.of(
        "least",
        formats().quantity(new Count(range.least())),
        "most",
        formats().quantity(new Count(range.most())));
  }
}
