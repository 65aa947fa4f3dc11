package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.calc.concreteplan.ConcretePlan.Mix;
import pegbook.calc.concreteplan.ConcretePlan.WaterRange;
import pegbook.calc.truckloads.TruckLoads;
import pegbook.figures.Hole;
import pegbook.job.Concrete;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.published.ConcreteBag;

/**
 * The sentences of the concrete sheet.
 *
 * @param packet whose concrete
 * @param writing words and formats
 */
record ConcreteWords(Packet packet, Writing writing) {

  private ConcretePlan plan() {
    return packet.concretePlan();
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("concrete-plan." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  String lead() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("holes", formats().count(plan().fills().size()));
    values.put("poured", formats().volume(plan().totals().poured()));
    values.put("bags", formats().count(plan().totals().bags()));
    values.put("bag", formats().mass(plan().mix().bag()));
    boolean trucks = ConcretePlanSheet.isReadyMix(packet);
    values.put(
        "truck",
        formats().truckVolume(trucks ? packet.truckLoads().order() : plan().totals().readyMix()));
    values.put("loads", formats().count(packet.truckLoads().loads().size()));
    return say(lead(values), values);
  }

  /** Which lead it is; takes what the lead of an own mix says. */
  private String lead(Map<String, String> values) {
    packet
        .ownMix()
        .mix()
        .ifPresent(
            mix -> {
              values.put("cement", formats().count(mix.cementBags()));
              values.put(
                  "cementBag",
                  formats().mass(packet.job().concrete().ownMix().orElseThrow().cementBag()));
            });
    if (ConcretePlanSheet.isOwnMix(packet)) {
      return "lead-own-mix";
    }
    return ConcretePlanSheet.isReadyMix(packet) ? "lead-ready-mix" : "lead";
  }

  /** Each day's load with its holes. */
  List<String> loads() {
    List<String> loads = new ArrayList<>();
    for (TruckLoads.Load load : packet.truckLoads().loads()) {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("day", day(load));
      values.put("order", formats().truckVolume(load.order()));
      values.put("marks", formats().names(load.marks()));
      loads.add(writing.texts().say("truck-loads.load", values));
    }
    if (!loads.isEmpty() && packet.job().concrete().truckMinimum().isEmpty()) {
      loads.add(writing.texts().say("truck-loads.least-unknown"));
    }
    return loads;
  }

  private String day(TruckLoads.Load load) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("day", formats().count(load.day()));
    load.date().ifPresent(date -> values.put("date", formats().weekday(date)));
    return writing
        .texts()
        .say(load.date().isPresent() ? "day-plan.title.dated" : "day-plan.title.undated", values);
  }

  Optional<String> backfill() {
    List<String> marks =
        plan().fills().stream()
            .filter(fill -> fill.backfill().isPresent())
            .map(Fill::mark)
            .toList();
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            say(
                "backfill",
                Map.of(
                    "volume", formats().volume(plan().totals().backfill()),
                    "marks", formats().names(marks))));
  }

  /** Holes that are poured in two lifts, alike ones together; then tubes over pads. */
  List<String> lifts() {
    Map<List<Lift>, List<String>> alike = new LinkedHashMap<>();
    plan().fills().stream()
        .filter(fill -> fill.lifts().size() > 1)
        .forEach(
            fill -> alike.computeIfAbsent(fill.lifts(), any -> new ArrayList<>()).add(fill.mark()));
    List<String> lines = new ArrayList<>();
    alike.forEach(
        (lifts, marks) -> {
          Map<String, String> values = new LinkedHashMap<>();
          values.put("holes", formats().names(marks));
          values.put("joint", formats().tape(lifts.get(0).to()));
          values.put("first", lift(lifts.get(0)));
          values.put("second", lift(lifts.get(1)));
          lines.add(say("lifts", values));
        });
    List<String> hung =
        packet.asDug().holes().stream().filter(Hole::isHungOverPad).map(Hole::mark).toList();
    if (!hung.isEmpty()) {
      lines.add(say("pads", Map.of("holes", formats().names(hung))));
    }
    return lines;
  }

  private String lift(Lift lift) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("volume", formats().volume(lift.poured()));
    values.put("bags", formats().count(lift.bags()));
    values.put("batches", formats().count(lift.batches()));
    values.put("least", formats().number(lift.pour().least().minutes(), 0));
    values.put("most", formats().number(lift.pour().most().minutes(), 0));
    return say(ConcretePlanSheet.isByVolume(packet) ? "lift-volume" : "lift", values);
  }

  /** Gravel in round tubes: hole by hole alike, and in all. */
  Optional<String> sideGravel() {
    Map<String, List<String>> byVolume = new LinkedHashMap<>();
    plan()
        .fills()
        .forEach(
            fill ->
                fill.sideGravel()
                    .map(formats()::volume)
                    .ifPresent(
                        volume ->
                            byVolume
                                .computeIfAbsent(volume, any -> new ArrayList<>())
                                .add(fill.mark())));
    if (byVolume.isEmpty()) {
      return Optional.empty();
    }
    List<String> each = new ArrayList<>();
    byVolume.forEach(
        (volume, marks) ->
            each.add(
                say(
                    "side-gravel.each",
                    Map.of("holes", formats().names(marks), "volume", volume))));
    Map<String, String> values = new LinkedHashMap<>();
    values.put("each", String.join("; ", each));
    values.put("all", formats().volume(plan().totals().sideGravel()));
    values.put("working", packet.workings().numberOf("concrete-plan.side-gravel").orElse(""));
    return Optional.of(say("side-gravel", values));
  }

  List<String> rules() {
    List<String> rules = new ArrayList<>();
    rules.add(say("rule.look", Map.of()));
    if (!ConcretePlanSheet.isByVolume(packet)) {
      rules.add(water());
    }
    for (String rule : List.of("layers", "rim", "top", "cure")) {
      rules.add(say("rule." + rule, Map.of()));
    }
    return rules;
  }

  private String water() {
    String bag = formats().mass(plan().mix().bag());
    return plan()
        .mix()
        .water()
        .map(
            range ->
                say(
                    "rule.water",
                    Map.of("bag", bag, "least", water(range, true), "most", water(range, false))))
        .orElseGet(() -> say("rule.water-label", Map.of("bag", bag)));
  }

  private String water(WaterRange range, boolean least) {
    Volume volume = least ? range.least() : range.most();
    return formats().units() == UnitSystem.IMPERIAL
        ? formats().in(volume, Unit.US_PINT, 0)
        : formats().in(volume, Unit.LITRE, 1);
  }

  List<String> basis() {
    Mix mix = plan().mix();
    Concrete concrete = packet.job().concrete();
    List<String> basis = new ArrayList<>();
    basis.add(yieldBasis(mix, concrete));
    basis.add(
        say(
            concrete.overBreak().isPresent() ? "basis.over-break-job" : "basis.over-break",
            Map.of("over", formats().quantity(mix.overBreak()))));
    basis.add(say("basis.waste", Map.of("waste", formats().quantity(mix.waste()))));
    basis.add(say("basis.tube", Map.of()));
    if (packet.asDug().holes().stream().anyMatch(hole -> hole.widenings().isAny())) {
      basis.add(say("basis.wide", Map.of()));
    }
    if (!ConcretePlanSheet.isReadyMix(packet)) {
      basis.add(batch(concrete));
    }
    basis.add(time(concrete));
    return basis;
  }

  private String yieldBasis(Mix mix, Concrete concrete) {
    boolean imperial = formats().units() == UnitSystem.IMPERIAL;
    String yield =
        imperial
            ? formats().in(mix.yield(), Unit.CUBIC_FOOT, 3)
            : formats().in(mix.yield(), Unit.LITRE, 1);
    return concrete.yield().isPresent()
        ? say("basis.yield-job", Map.of("yield", yield))
        : say(
            "basis.yield-mass",
            Map.of("yield", yield, "rate", new Sources(writing.texts()).write(ConcreteBag.SOURCE)));
  }

  private String batch(Concrete concrete) {
    Map<String, String> values = new LinkedHashMap<>();
    boolean own = ConcretePlanSheet.isOwnMix(packet);
    Volume volume =
        own ? plan().mix().batch() : plan().mix().yield().times(plan().mix().bagsInBatch());
    values.put("volume", formats().volume(volume));
    values.put("bags", formats().count(plan().mix().bagsInBatch()));
    values.put("working", packet.workings().numberOf("concrete-plan.bags-in-batch").orElse(""));
    values.put(
        "from",
        say("batch." + (concrete.batch().isPresent() ? "job" : mixing(concrete)), Map.of()));
    return say(own ? "basis.load" : "basis.batch", values);
  }

  private String time(Concrete concrete) {
    ConcretePlan.Pace pace = plan().pace();
    Map<String, String> values = new LinkedHashMap<>();
    values.put(
        "least", formats().number(pace.least().minutes(), pace.least().minutes() < 10 ? 1 : 0));
    values.put("most", formats().number(pace.most().minutes(), 0));
    values.put(
        "unit",
        say(
            formats().units() == UnitSystem.IMPERIAL ? "unit.cubic-foot" : "unit.cubic-metre",
            Map.of()));
    values.put("mixing", say("mixing." + mixing(concrete), Map.of()));
    values.put("window", formats().number(pace.window().minutes(), 0));
    return say("basis.time", values);
  }

  private static String mixing(Concrete concrete) {
    return concrete.mixing().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
