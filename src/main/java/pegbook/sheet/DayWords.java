package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.PlacedMark;
import pegbook.figures.Task;
import pegbook.job.UtilityMarking;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.Call;
import pegbook.sheet.DaySheet.Step;
import pegbook.sheet.DaySheet.Stop;
import pegbook.sheet.DaySheet.Tick;

/**
 * The sentences of a day sheet.
 *
 * @param packet whose day
 * @param writing words and formats
 * @param day the day
 */
record DayWords(Packet packet, Writing writing, WorkDay day) {
  private static final int DANGERS = 3;

  /** Kinds of work that the sheet names hole by hole. */
  private static final List<Task.Kind> AT_HOLES =
      List.of(
          Task.Kind.BORE,
          Task.Kind.DIG,
          Task.Kind.GRAVEL,
          Task.Kind.FORM,
          Task.Kind.STEEL,
          Task.Kind.FIRST_LIFT,
          Task.Kind.JOINT,
          Task.Kind.POUR,
          Task.Kind.STRIP);

  /** With or without a number: a rule to write on where there is none. */
  private static final List<pegbook.job.Call.Who> ALWAYS_CALLED =
      List.of(
          pegbook.job.Call.Who.EMERGENCY,
          pegbook.job.Call.Who.UTILITY_MARKING,
          pegbook.job.Call.Who.INSPECTOR);

  private String say(String key) {
    return say(key, Map.of());
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("day-plan." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  String id() {
    return "day-" + day.number();
  }

  String title() {
    String number = formats().count(day.number());
    return day.date()
        .map(date -> say("title.dated", Map.of("day", number, "date", formats().weekday(date))))
        .orElseGet(() -> say("title.undated", Map.of("day", number)));
  }

  /** What of a finding's holes is worked at today, in the order of the marks. */
  private List<String> today(Finding finding) {
    return packet.placement().marks().stream()
        .map(PlacedMark::id)
        .filter(finding.subjects()::contains)
        .filter(day.openHoles()::contains)
        .toList();
  }

  /**
   * "Mark out and prove the marks." "Dig S1 to S3." In the order of the work; an earlier lot goes
   * first.
   */
  List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    List<Tick> marking = ticks(Task.Kind.MARK_OUT, Task.Kind.PROVE, Task.Kind.SET_PEGS);
    if (!marking.isEmpty()) {
      steps.add(new Step(say("work.mark-out"), marking));
    }
    day.portions().stream()
        .map(Portion::kind)
        .distinct()
        .sorted(
            Comparator.comparing((Task.Kind kind) -> !isOfEarlierLot(kind))
                .thenComparing(kind -> kind))
        .flatMap(kind -> step(kind).stream())
        .forEach(steps::add);
    return steps;
  }

  /** Whether the day begins with pours, or with forms to strip, before it goes on digging. */
  private boolean isOfEarlierLot(Task.Kind kind) {
    return kind.compareTo(Task.Kind.INSPECTION) >= 0 && begins(kind) < begins(Task.Kind.DIG);
  }

  /** The place of the first portion of a kind; that of the end where there is none. */
  private int begins(Task.Kind kind) {
    List<Task.Kind> kinds = day.portions().stream().map(Portion::kind).toList();
    return kinds.contains(kind) ? kinds.indexOf(kind) : kinds.size();
  }

  private Optional<Step> step(Task.Kind kind) {
    if (kind.isTrenching()) {
      return Optional.of(new TrenchDay(packet, writing).step(kind, id()));
    }
    if (Task.HOLD_POINTS.contains(kind)) {
      return Optional.of(new Step(say("work." + word(kind)), ticks(kind)));
    }
    String holes = formats().names(day.holes(kind));
    if (kind == Task.Kind.FORM) {
      return Optional.of(new Step(forms(holes), List.of()));
    }
    if (kind == Task.Kind.FRAME || kind == Task.Kind.BOARDS) {
      return Optional.of(new Step(say("work." + word(kind)), List.of()));
    }
    return AT_HOLES.contains(kind)
        ? Optional.of(new Step(say("work." + word(kind), Map.of("holes", holes)), List.of()))
        : Optional.empty();
  }

  /** Sleeves against frost are told by their length: no form shows how far down they go. */
  private String forms(String holes) {
    Map<String, List<String>> byLength = new LinkedHashMap<>();
    packet.frostGrip().sleeves().stream()
        .filter(sleeve -> day.holes(Task.Kind.FORM).contains(sleeve.mark()))
        .forEach(
            sleeve ->
                byLength
                    .computeIfAbsent(formats().tape(sleeve.length()), key -> new ArrayList<>())
                    .add(sleeve.mark()));
    List<String> sentences = new ArrayList<>(List.of(say("work.form", Map.of("holes", holes))));
    byLength.forEach(
        (length, marks) ->
            sentences.add(
                say(
                    "work.frost-sleeve",
                    Map.of("holes", formats().names(marks), "length", length))));
    return String.join(" ", sentences);
  }

  /** What bells, pads and caps ask of today's digging, forms and pours. */
  List<String> wide() {
    WideningWords words = new WideningWords(writing);
    return Stream.of(
            words.dig(today(Task.Kind.DIG)),
            words.form(today(Task.Kind.FORM)),
            words.pour(today(Task.Kind.FIRST_LIFT)),
            words.pour(
                today(Task.Kind.POUR).stream().filter(hole -> hole.joint().isEmpty()).toList()))
        .flatMap(List::stream)
        .toList();
  }

  private List<Hole> today(Task.Kind kind) {
    return packet.depthTargets().holes().stream()
        .filter(hole -> day.holes(kind).contains(hole.mark()))
        .toList();
  }

  /** Boxes for work that is not at a hole. */
  private List<Tick> ticks(Task.Kind... kinds) {
    return Stream.of(kinds)
        .filter(day::has)
        .map(DayWords::word)
        .map(word -> new Tick(id() + ".job." + word, say("task." + word)))
        .toList();
  }

  static String word(Enum<?> kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String hours() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("least", formats().hours(day.least()));
    values.put("most", formats().hours(day.most()));
    values.put("crew", formats().hours(packet.dayPlan().crewHours()));
    return say("hours", values);
  }

  /** Stops about today's holes, or about the whole job. */
  List<Stop> stops() {
    return stops(any -> true);
  }

  /** Those of them that are wanted. */
  List<Stop> stops(Predicate<Finding> wanted) {
    return packet.findings().stream()
        .filter(wanted)
        .filter(finding -> finding.kind() == Finding.Kind.STOP)
        .filter(
            finding ->
                finding.subjects().isEmpty()
                    || (packet.powerLine().findings().contains(finding)
                        && day.has(Task.Kind.TRENCH))
                    || finding.subjects().stream().anyMatch(day.openHoles()::contains))
        .map(this::stop)
        .toList();
  }

  private Stop stop(Finding finding) {
    Map<String, String> values = formats().arguments(finding.arguments());
    String key = "finding." + finding.id();
    String title = writing.texts().say(key + ".title", values);
    String holes = formats().names(today(finding));
    boolean named =
        holes.isEmpty() || title.startsWith(holes + " ") || title.startsWith(holes + ":");
    return new Stop(
        named ? title : holes + ": " + title, writing.texts().say(key + ".way", values));
  }

  List<String> dangers() {
    List<Task.Kind> kinds = day.portions().stream().map(Portion::kind).distinct().toList();
    return packet.safetyNotes().dangers(day.holes(), kinds, DANGERS).stream()
        .map(note -> SafetyNotesSheet.action(note, writing))
        .toList();
  }

  List<String> stopWhen() {
    List<String> rules = new ArrayList<>();
    if (day.has(Task.Kind.DIG)) {
      rules.add(say("stop.line"));
      rules.add(say("stop.hole"));
    }
    if (day.has(Task.Kind.TRENCH) && rules.isEmpty()) {
      rules.add(say("stop.line"));
    }
    if (day.has(Task.Kind.BACKFILL)) {
      rules.add(say("stop.trench"));
    }
    if (!day.poured().isEmpty()) {
      rules.add(say("stop.inspection"));
      rules.add(
          say(
              "stop.pour",
              Map.of(
                  "window", formats().number(packet.concretePlan().pace().window().minutes(), 0))));
    }
    if (rules.isEmpty()) {
      rules.add(say("stop.doubt"));
    }
    return rules;
  }

  /** The three that every site needs, then whomever the job names beside them. */
  List<Call> calls() {
    List<Call> calls = new ArrayList<>();
    for (pegbook.job.Call.Who who : pegbook.job.Call.Who.values()) {
      List<pegbook.job.Call> named =
          packet.job().place().calls().stream().filter(call -> call.who() == who).toList();
      named.forEach(call -> calls.add(call(who, call.name(), call.number())));
      if (named.isEmpty() && ALWAYS_CALLED.contains(who)) {
        calls.add(call(who, Optional.empty(), ""));
      }
    }
    return calls;
  }

  private Call call(pegbook.job.Call.Who who, Optional<String> name, String number) {
    Optional<String> own =
        who == pegbook.job.Call.Who.INSPECTOR
            ? name.or(() -> packet.job().place().authority())
            : name;
    String ticket =
        who == pegbook.job.Call.Who.UTILITY_MARKING
            ? packet.job().place().utilities().flatMap(UtilityMarking::ticket).orElse("")
            : "";
    return new Call(own.orElseGet(() -> say("call." + who.id())), ticket, number);
  }

  /** Bags are put away where there are any. */
  private String written() {
    if (ConcretePlanSheet.isReadyMix(packet)) {
      return "leaving.written-plain";
    }
    return ConcretePlanSheet.isOwnMix(packet) ? "leaving.written-own-mix" : "leaving.written";
  }

  List<Tick> leaving() {
    List<Tick> ticks = new ArrayList<>();
    List<String> open = day.openOvernight();
    if (!open.isEmpty()) {
      ticks.add(
          new Tick(
              id() + ".leaving.covered",
              say(
                  "leaving.covered",
                  Map.of("count", formats().count(open.size()), "holes", formats().names(open)))));
    }
    if (day.trenchOpenOvernight()) {
      ticks.add(new Tick(id() + ".leaving.trench", say("leaving.trench")));
    }
    ticks.add(new Tick(id() + ".leaving.written", say(written())));
    return ticks;
  }
}
