package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Finding;
import pegbook.figures.Task;
import pegbook.job.Tool;
import pegbook.job.UtilityMarking;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.Call;
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

  /** Kinds of work at holes, in the order in which a sentence names them. */
  private static final List<Task.Kind> AT_HOLES =
      List.of(Task.Kind.DIG, Task.Kind.GRAVEL, Task.Kind.STEEL, Task.Kind.POUR);

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

  /** "Dig S1 to S3. Gravel: S1, S2." */
  String lead() {
    List<String> parts = new ArrayList<>();
    if (day.has(Task.Kind.MARK_OUT) || day.has(Task.Kind.PROVE)) {
      parts.add(say("work.mark-out"));
    }
    for (Task.Kind kind : AT_HOLES) {
      if (day.has(kind)) {
        parts.add(say("work." + word(kind), Map.of("holes", formats().names(day.holes(kind)))));
      }
    }
    return String.join(" ", parts);
  }

  static String word(Task.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String hours() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("least", formats().hours(day.least()));
    values.put("most", formats().hours(day.most()));
    values.put("crew", formats().hours(packet.dayPlan().crewHours()));
    values.put("people", formats().count(packet.job().crew().people()));
    values.put("each", formats().hours(packet.job().crew().hoursPerDay()));
    return say("hours", values);
  }

  /** Stops about today's holes, or about the whole job. */
  List<Stop> stops() {
    return packet.findings().stream()
        .filter(finding -> finding.kind() == Finding.Kind.STOP)
        .filter(
            finding ->
                finding.subjects().isEmpty()
                    || finding.subjects().stream().anyMatch(day.holes()::contains))
        .map(this::stop)
        .toList();
  }

  private Stop stop(Finding finding) {
    Map<String, String> values = formats().arguments(finding.arguments());
    String key = "finding." + finding.id();
    String about = finding.subjects().isEmpty() ? "" : formats().names(finding.subjects()) + ": ";
    return new Stop(
        about + writing.texts().say(key + ".title", values),
        writing.texts().say(key + ".way", values));
  }

  List<Tick> tasks() {
    List<Tick> tasks = new ArrayList<>();
    for (Portion portion : day.portions()) {
      if (portion.mark().isEmpty()) {
        String word = word(portion.kind());
        tasks.add(new Tick(id() + ".job." + word, say("task." + word)));
      }
    }
    return tasks;
  }

  List<String> dangers() {
    List<Task.Kind> kinds = day.portions().stream().map(Portion::kind).distinct().toList();
    return packet.safetyNotes().dangers(day.holes(), kinds, DANGERS).stream()
        .map(note -> SafetyNotesSheet.line(note, writing).action())
        .toList();
  }

  String tools() {
    List<String> tools = new ArrayList<>();
    for (Task.Kind kind : Task.Kind.values()) {
      if (day.has(kind) && writing.texts().has("day-plan.tools." + word(kind))) {
        tools.add(say("tools." + word(kind), Map.of("tools", diggingTools())));
      }
    }
    tools.add(say("tools.always"));
    return String.join("; ", tools) + ".";
  }

  private String diggingTools() {
    return packet.job().tools().stream().map(Tool::name).collect(Collectors.joining(", "));
  }

  List<String> stopWhen() {
    List<String> rules = new ArrayList<>();
    if (day.has(Task.Kind.DIG)) {
      rules.add(say("stop.line"));
      rules.add(say("stop.hole"));
    }
    if (day.has(Task.Kind.POUR)) {
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

  List<Call> calls() {
    List<Call> calls = new ArrayList<>();
    calls.add(new Call(say("call.emergency"), ""));
    calls.add(
        new Call(
            say("call.utilities"),
            packet.job().place().utilities().flatMap(UtilityMarking::ticket).orElse("")));
    calls.add(new Call(packet.job().place().authority().orElse(say("call.authority")), ""));
    return calls;
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
    ticks.add(new Tick(id() + ".leaving.written", say("leaving.written")));
    return ticks;
  }
}
