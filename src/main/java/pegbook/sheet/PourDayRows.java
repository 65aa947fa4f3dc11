package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.calc.pourday.PourDay.After;
import pegbook.calc.pourday.PourDay.Batching;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.Stop;
import pegbook.sheet.DaySheet.Tick;
import pegbook.sheet.PourDaySheet.Pace;
import pegbook.sheet.PourDaySheet.Row;

/**
 * The rows and boxes of a hold sheet.
 *
 * @param packet whose day
 * @param writing words and formats
 * @param day the day of pouring
 */
record PourDayRows(Packet packet, Writing writing, WorkDay day) {
  private static final String TOO_LONG = "pour-too-long";
  private static final String LONGER_THAN_DAY = "pour-longer-than-day";

  private String say(String key) {
    return say(key, Map.of());
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("pour-day." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  String id() {
    return "pour-" + day.number();
  }

  String title() {
    return say("title", Map.of("day", new DayWords(packet, writing, day).title()));
  }

  String strip() {
    return say("strip", Map.of("day", formats().count(day.number())));
  }

  private List<Hole> poured() {
    return day.poured().stream()
        .flatMap(mark -> packet.asDug().holes().stream().filter(hole -> hole.mark().equals(mark)))
        .toList();
  }

  /** Stops that are about the concrete of these holes. */
  List<Stop> stops() {
    return new DayWords(packet, writing, day)
        .stops(finding -> List.of(TOO_LONG, LONGER_THAN_DAY).contains(finding.id()));
  }

  List<Row> holes() {
    return poured().stream().map(this::row).toList();
  }

  private Row row(Hole hole) {
    Optional<Cage> cage =
        packet.steelPlan().cages().stream()
            .filter(each -> each.marks().contains(hole.mark()))
            .findFirst();
    boolean isSecond = hole.joint().isPresent() && !isFirst(hole.mark());
    return new Row(
        id() + "." + hole.mark(),
        hole.mark(),
        isSecond ? writing.texts().say("day-plan.joint") : formats().tape(hole.depth()),
        isSecond ? "" : hole.datumToUnderside().map(formats()::tape).orElse(""),
        cage.map(
                steel ->
                    formats().size(steel.cover()) + " / " + formats().size(steel.bottomCover()))
            .orElse(""),
        hole.tube().isPresent() && !(isFirst(hole.mark()) && hole.isFormedOnJoint()),
        isFirst(hole.mark()) ? writing.texts().say("day-plan.joint") : formats().size(hole.top()));
  }

  private boolean isFirst(String mark) {
    return day.pour(mark) == Task.Kind.FIRST_LIFT;
  }

  private Lift lift(String mark) {
    return packet.concretePlan().fill(mark).lift(day.pour(mark));
  }

  /** What is asked of the joint of two lifts: how high the first ends, what the second needs. */
  List<Tick> lifts() {
    Map<Joint, List<String>> alike = new LinkedHashMap<>();
    for (Hole hole : poured()) {
      hole.joint()
          .map(height -> joint(hole.mark(), height))
          .ifPresent(
              joint -> alike.computeIfAbsent(joint, any -> new ArrayList<>()).add(hole.mark()));
    }
    List<Tick> ticks = new ArrayList<>();
    alike.forEach(
        (joint, marks) ->
            ticks.add(
                new Tick(
                    id() + "." + marks.get(0) + ".joint",
                    say(
                        joint.first() ? "lift.first" : "lift.second",
                        Map.of(
                            "mark",
                            formats().names(marks),
                            "joint",
                            joint.height(),
                            "lap",
                            joint.lap())))));
    return ticks;
  }

  /** What holes with one tick for all have in common. */
  private record Joint(boolean first, String height, String lap) {}

  private Joint joint(String mark, Length height) {
    String lap =
        packet.steelPlan().cages().stream()
            .filter(cage -> cage.marks().contains(mark))
            .flatMap(cage -> cage.uprights().starters().stream())
            .map(starters -> formats().tape(starters.lap()))
            .findFirst()
            .orElse("–");
    return new Joint(isFirst(mark), formats().tape(height), lap);
  }

  List<Tick> insets() {
    List<Tick> ticks = new ArrayList<>();
    for (Pier pier : packet.job().piers()) {
      if (day.holes(Task.Kind.POUR).contains(pier.id())) {
        pier.sleeve().ifPresent(sleeve -> ticks.add(sleeve(pier, sleeve)));
        pier.anchors().ifPresent(anchors -> ticks.add(anchors(pier, anchors)));
      }
    }
    return ticks;
  }

  /** Bells, pads and caps of these holes; bottoms only where they are filled today. */
  List<Tick> widenings() {
    List<Tick> ticks = new ArrayList<>();
    new WideningWords(writing)
        .look(
            poured().stream()
                .filter(hole -> hole.joint().isEmpty() || isFirst(hole.mark()))
                .toList(),
            poured().stream().filter(hole -> !isFirst(hole.mark())).toList())
        .forEach((name, words) -> ticks.add(new Tick(id() + "." + name, words)));
    return ticks;
  }

  private Tick sleeve(Pier pier, Sleeve sleeve) {
    return new Tick(
        id() + "." + pier.id() + ".sleeve",
        say(
            "sleeve",
            Map.of(
                "mark", pier.id(),
                "outside", formats().size(sleeve.outside()),
                "towards", formats().roundAngle(sleeve.towards()))));
  }

  private Tick anchors(Pier pier, Anchors anchors) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("mark", pier.id());
    words.put("count", formats().count(anchors.count()));
    words.put("size", formats().size(anchors.size()));
    words.put("circle", formats().size(anchors.circle()));
    words.put("above", formats().size(anchors.above()));
    return new Tick(id() + "." + pier.id() + ".anchors", say("anchors", words));
  }

  List<Tick> ready() {
    List<Tick> ticks = new ArrayList<>();
    boolean truck = ConcretePlanSheet.isReadyMix(packet);
    for (String thing :
        List.of("seen", truck ? "truck" : "mixing", "hands", "weather", "covered")) {
      ticks.add(new Tick(id() + ".ready." + thing, say("ready." + thing)));
    }
    return ticks;
  }

  /** One row for holes that are poured alike, in the order of the pour. */
  List<Pace> paces() {
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (String mark : day.poured()) {
      Lift lift = lift(mark);
      List<String> same =
          List.of(amount(lift), minutes(lift), verdict(mark, lift), lift.kind().name());
      alike.computeIfAbsent(same, key -> new ArrayList<>()).add(mark);
    }
    return alike.values().stream().map(this::pace).toList();
  }

  private Pace pace(List<String> marks) {
    String mark = marks.get(0);
    Lift lift = lift(mark);
    Optional<Batching> batching = packet.pourDay().batching(mark, lift.kind());
    double window = packet.concretePlan().pace().window().minutes();
    return new Pace(
        formats().names(marks),
        amount(lift),
        batching.map(this::batches).orElse(""),
        batching.map(this::every).orElse(""),
        minutes(lift),
        batching
            .map(
                each ->
                    say(
                        "half",
                        Map.of(
                            "batches", formats().count(each.half()),
                            "minutes", formats().number(window / 2, 0))))
            .orElse(""),
        verdict(mark, lift));
  }

  /** Words with the time that the concrete allows. */
  String window(String key) {
    double minutes = packet.concretePlan().pace().window().minutes();
    return say(key, Map.of("window", formats().number(minutes, 0)));
  }

  private String batches(Batching batching) {
    String loads = batching.bagsOfBatch() == 0 ? "batches.loads" : "batches";
    return say(
        batching.bagsOfBatch() == 1 ? "batches.single" : loads,
        Map.of(
            "batches", formats().count(batching.batches()),
            "bags", formats().count(batching.bagsOfBatch())));
  }

  private String every(Batching batching) {
    double minutes = batching.each().minutes();
    return formats().number(minutes, minutes == Math.rint(minutes) ? 0 : 1);
  }

  private String amount(Lift lift) {
    return ConcretePlanSheet.isReadyMix(packet) || ConcretePlanSheet.isOwnMix(packet)
        ? formats().volume(lift.poured())
        : formats().count(lift.bags());
  }

  private String minutes(Lift lift) {
    return formats().number(lift.pour().least().minutes(), 0)
        + " – "
        + formats().number(lift.pour().most().minutes(), 0);
  }

  /** Whether the pour fits into the time of the concrete and into a day. */
  private String verdict(String mark, Lift lift) {
    if (packet.dayPlan().longPours().contains(mark)) {
      return say("verdict.stop");
    }
    return switch (packet.concretePlan().pace().fit(lift.pour())) {
      case TOO_LONG -> say("verdict.stop");
      case MAY_RUN_LONG -> say("verdict.tight");
      case FITS -> say("verdict.fits");
    };
  }

  List<Tick> after() {
    Optional<After> after = packet.pourDay().after(day.number());
    List<Tick> ticks = new ArrayList<>();
    ticks.add(
        new Tick(id() + ".after.top", say(insets().isEmpty() ? "after.top-plain" : "after.top")));
    if (day.has(Task.Kind.FIRST_LIFT)) {
      ticks.add(new Tick(id() + ".after.joint", say("after.joint")));
    }
    for (String thing : List.of("cover", "frost")) {
      ticks.add(new Tick(id() + ".after." + thing, say("after." + thing)));
    }
    after
        .flatMap(After::strip)
        .ifPresent(strip -> ticks.add(dated("strip", formats().weekday(strip))));
    after.flatMap(After::load).ifPresent(load -> ticks.add(dated("load", formats().weekday(load))));
    return ticks;
  }

  private Tick dated(String thing, String date) {
    return new Tick(id() + ".after." + thing, say("after." + thing, Map.of("date", date)));
  }
}
