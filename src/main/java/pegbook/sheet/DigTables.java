package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pegbook.calc.depthtargets.DepthChoice;
import pegbook.calc.digschedule.DigSchedule;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.calc.digschedule.DigSchedule.Totals;
import pegbook.calc.digschedule.HeapSpot;
import pegbook.calc.workestimate.WorkEstimate.Basis;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.sheet.DigScheduleSheet.ChoiceRow;
import pegbook.sheet.DigScheduleSheet.DepthRow;
import pegbook.sheet.DigScheduleSheet.Heap;
import pegbook.sheet.DigScheduleSheet.HeapRow;
import pegbook.sheet.DigScheduleSheet.SoilRow;
import pegbook.sheet.DigScheduleSheet.ToolLine;

/** The tables of the dig schedule, cell by cell. */
record DigTables(Packet packet, Writing writing) {
  private Texts texts() {
    return writing.texts();
  }

  private Formats formats() {
    return writing.formats();
  }

  private DigSchedule schedule() {
    return packet.digSchedule();
  }

  private String none() {
    return texts().say("dig-schedule.none");
  }

  List<DepthRow> depths() {
    return schedule().rows().stream().map(this::depth).toList();
  }

  private DepthRow depth(Row row) {
    Hole hole = row.hole();
    return new DepthRow(
        formats().count(row.order()),
        hole.mark(),
        formats().size(hole.diameter()),
        formats().tape(hole.depth()),
        hole.gravel().isMoreThan(Length.ZERO) ? formats().size(hole.gravel()) : none(),
        formats().tape(hole.dug()),
        hole.datumToUnderside().map(formats()::tape).orElse(unknown()),
        hole.datumToBottom().map(formats()::tape).orElse(unknown()),
        rule(hole.rule()));
  }

  private String unknown() {
    return texts().say("dig-schedule.unknown");
  }

  /** Which rule won; the code's least depth is the code's only where it is in force. */
  private String rule(Hole.DepthRule rule) {
    if (rule == Hole.DepthRule.CODE_MINIMUM) {
      boolean code = packet.job().place().isUnitedStates();
      return texts().say(code ? "depth-targets.rule.code" : "depth-targets.rule.least");
    }
    return texts().say("depth-targets.rule." + rule.name().toLowerCase(Locale.ROOT));
  }

  DepthRow depthWorking() {
    return new DepthRow(
        "",
        texts().say("dig-schedule.working"),
        "",
        number("depth-targets.target"),
        "",
        number("depth-targets.dug"),
        number("depth-targets.datum-depth"),
        "",
        "");
  }

  private String number(String formula) {
    return packet.workings().numberOf(formula).orElse("");
  }

  List<ChoiceRow> choices() {
    return packet.depthTargets().choices().stream().map(this::choice).toList();
  }

  private ChoiceRow choice(DepthChoice choice) {
    return new ChoiceRow(
        formats().names(choice.marks()),
        formats().tape(choice.least()),
        choice.frost().map(formats()::tape).orElse(texts().say("dig-schedule.not-stated")),
        choice.asked().map(formats()::tape).orElse(none()),
        formats().tape(choice.target()),
        rule(choice.rule()));
  }

  List<ToolLine> tools() {
    Map<List<String>, List<String>> marks = new LinkedHashMap<>();
    for (Row row : schedule().rows()) {
      List<String> steps = row.tools().stream().map(step -> step(step, row.hole())).toList();
      marks.computeIfAbsent(steps, key -> new ArrayList<>()).add(row.hole().mark());
    }
    List<ToolLine> lines = new ArrayList<>();
    marks.forEach(
        (steps, names) ->
            lines.add(
                new ToolLine(
                    formats().names(names),
                    steps.isEmpty()
                        ? texts().say("dig-schedule.no-tool")
                        : String.join("; ", steps) + ".")));
    return lines;
  }

  private String step(ToolStep step, Hole hole) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("tool", step.tool().name());
    values.put("from", formats().tape(step.from()));
    values.put("to", formats().tape(step.to()));
    values.put("diameter", formats().size(hole.diameter()));
    return texts().say("dig-schedule.step." + step.use().name().toLowerCase(Locale.ROOT), values);
  }

  List<SoilRow> soil() {
    return AlikeHoles.of(
            schedule().rows().stream().map(Row::hole).toList(),
            hole -> left(packet.workEstimate().dig(hole.mark())))
        .stream()
        .map(this::soil)
        .toList();
  }

  /** Hours that are left of digging a hole; a word where it is dug. */
  private String left(HoleWork work) {
    return work.basis() == Basis.DUG
        ? texts().say("dig-schedule.dug")
        : hours(work.least(), work.most());
  }

  /** All volumes of a table in one unit, so that they add up in sight. */
  String room(Volume volume) {
    return formats().units() == UnitSystem.IMPERIAL
        ? formats().in(volume, Unit.CUBIC_FOOT, 1)
        : formats().in(volume, Unit.CUBIC_METRE, 2);
  }

  private SoilRow soil(AlikeHoles kind) {
    Row row = schedule().row(kind.first().mark());
    HoleWork work = packet.workEstimate().dig(kind.first().mark());
    return new SoilRow(
        formats().names(kind.marks()),
        room(row.bank()),
        room(row.loose()),
        formats().count(row.cartLoads()),
        formats().mass(row.mass()),
        left(work));
  }

  SoilRow soilTotal() {
    Totals totals = schedule().totals();
    return new SoilRow(
        texts()
            .say("dig-schedule.total", Map.of("count", formats().count(schedule().rows().size()))),
        room(totals.bank()),
        room(totals.loose()),
        formats().count(totals.cartLoads()),
        formats().mass(totals.mass()),
        hours(packet.workEstimate().digLeast(), packet.workEstimate().digMost()));
  }

  SoilRow soilWorking() {
    return new SoilRow(
        texts().say("dig-schedule.working"),
        either("dig-schedule.bank-volume", "dig-schedule.belled-volume"),
        number("dig-schedule.loose-volume"),
        number("dig-schedule.cart-loads"),
        number("dig-schedule.spoil-mass"),
        number("work-estimate.most"));
  }

  /** Numbers of the formulas that this job has. */
  private String either(String one, String other) {
    return Stream.of(one, other)
        .map(this::number)
        .filter(number -> !number.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** Least to most, or one number where they are the same. */
  String hours(Duration least, Duration most) {
    if (least.equals(most)) {
      return formats().hours(least);
    }
    return texts()
        .say(
            "dig-schedule.range",
            Map.of("least", formats().hours(least), "most", formats().hours(most)));
  }

  /** Heaps beside holes, two a row. */
  List<HeapRow> heaps() {
    List<Heap> heaps =
        schedule().heapSpots().stream()
            .filter(spot -> spot.kind() != HeapSpot.Kind.TIP)
            .map(this::heap)
            .toList();
    int rows = (heaps.size() + 1) / 2;
    List<HeapRow> paired = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      boolean both = rows + i < heaps.size();
      paired.add(new HeapRow(heaps.get(i), both ? heaps.get(rows + i) : new Heap("", "", "")));
    }
    return paired;
  }

  private Heap heap(HeapSpot spot) {
    return new Heap(
        spot.from(),
        texts().say("dig-schedule.heap.size", values(spot)),
        texts().say("dig-schedule.heap.place", values(spot)));
  }

  /** Where the carts tip, in words; empty without a tip. */
  String tip() {
    return schedule().heapSpots().stream()
        .filter(spot -> spot.kind() == HeapSpot.Kind.TIP)
        .map(spot -> texts().say("dig-schedule.heap.tip", values(spot)))
        .findFirst()
        .orElse("");
  }

  private Map<String, String> values(HeapSpot spot) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("across", formats().distance(spot.heap().radius().times(2)));
    values.put("height", formats().distance(spot.heap().height()));
    values.put("from", spot.from());
    values.put("distance", formats().distance(spot.distance()));
    values.put("direction", formats().roundAngle(spot.direction()));
    return values;
  }
}
