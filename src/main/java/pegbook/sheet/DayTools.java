package pegbook.sheet;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.job.Language;
import pegbook.job.Power.Method;
import pegbook.job.Tool;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.Tick;

/**
 * What the crew lays out in the morning, as boxes to tick. Names of fields come from the kind of
 * thing, not from its words or its place in the list, so that they stay when either changes.
 *
 * @param packet whose day
 * @param writing words and formats
 * @param day the day
 */
record DayTools(Packet packet, Writing writing, WorkDay day) {
  private static final Map<Task.Kind, List<String>> THINGS =
      new EnumMap<>(
          Map.ofEntries(
              Map.entry(Task.Kind.TRENCH, List.of("trench-tools")),
              Map.entry(Task.Kind.BACKFILL, List.of("warning-tape")),
              Map.entry(Task.Kind.MARK_OUT, List.of("tapes", "paint")),
              Map.entry(Task.Kind.PROVE, List.of("tapes")),
              Map.entry(Task.Kind.DIG, List.of("stick")),
              Map.entry(Task.Kind.CARRY_SPOIL, List.of("barrow")),
              Map.entry(Task.Kind.FORM, List.of("forms")),
              Map.entry(Task.Kind.STEEL, List.of("bender", "pliers", "spacers")),
              Map.entry(Task.Kind.FIRST_LIFT, List.of("rod", "goggles")),
              Map.entry(Task.Kind.JOINT, List.of("brush")),
              Map.entry(Task.Kind.POUR, List.of("rod", "goggles")),
              Map.entry(Task.Kind.FRAME, List.of("timber-saw", "driver", "level")),
              Map.entry(Task.Kind.BOARDS, List.of("timber-saw", "driver", "gap-pieces"))));

  private static final List<String> MEASURED = List.of("gravel", "bags", "load", "buckets");

  /** What is bought, and with what, if anything, of the same box is not. */
  private static final Map<String, String> BOUGHT =
      Map.ofEntries(
          Map.entry("tapes", "two-tapes"),
          Map.entry("paint", "hammer"),
          Map.entry("forms", "saw"),
          Map.entry("trench-tools", "trench-spades"),
          Map.entry("pipe-and-wire", ""),
          Map.entry("cable-and-sand", ""),
          Map.entry("warning-tape", "fill-tamper"),
          Map.entry("pliers", "nippers"),
          Map.entry("spacers", ""),
          Map.entry("covers", ""),
          Map.entry("own-mix", ""));

  private static final List<String> ALWAYS = List.of("covers", "first-aid", "water");

  List<Tick> ticks() {
    return things().entrySet().stream()
        .map(thing -> new Tick("day-" + day.number() + ".tool." + thing.getKey(), thing.getValue()))
        .toList();
  }

  /** The same without what is bought: what is had or borrowed. */
  List<String> toLayOut() {
    Map<String, String> things = things();
    MEASURED.forEach(things::remove);
    BOUGHT.forEach(
        (thing, left) ->
            things.computeIfPresent(thing, (any, words) -> left.isEmpty() ? null : say(left)));
    return List.copyOf(things.values());
  }

  private Map<String, String> things() {
    Map<String, String> things = new LinkedHashMap<>();
    for (Task.Kind kind : Task.Kind.values()) {
      if (day.has(kind)) {
        own(kind, things);
        THINGS.getOrDefault(kind, List.of()).forEach(thing -> things.put(thing, say(thing)));
      }
    }
    ALWAYS.forEach(thing -> things.put(thing, say(thing)));
    return things;
  }

  /** What depends on the job: its tools for digging, its gravel, its concrete. */
  private void own(Task.Kind kind, Map<String, String> things) {
    if (kind == Task.Kind.BORE) {
      packet.job().plan().machine().ifPresent(machine -> things.put("machine", machine.what()));
    } else if (kind == Task.Kind.DIG) {
      digging(things);
    } else if (kind == Task.Kind.LAY_PIPE) {
      boolean cable =
          packet
              .job()
              .power()
              .filter(power -> power.wiring().method() == Method.DIRECT_BURIAL)
              .isPresent();
      List.of(cable ? "cable-and-sand" : "pipe-and-wire", "pipe-tools")
          .forEach(thing -> things.put(thing, say(thing)));
    } else if (kind == Task.Kind.GRAVEL) {
      things.put("gravel", gravel());
      things.put("tamper", say("tamper"));
    } else if (Task.POURS.contains(kind) && ConcretePlanSheet.isReadyMix(packet)) {
      load().ifPresent(load -> things.put("load", load));
      things.put("truck", say("truck"));
    } else if (Task.POURS.contains(kind) && ConcretePlanSheet.isOwnMix(packet)) {
      things.put("own-mix", say("own-mix"));
      things.put("scale", say("scale"));
      OwnMixPart.load(packet, writing).ifPresent(load -> things.put("buckets", load));
      things.put("mixer", say("mixer"));
    } else if (Task.POURS.contains(kind)) {
      things.put("bags", bags());
      things.put("mixer", say("mixer"));
    }
  }

  /** The job's own tools by their kind, the second of a kind with its number. */
  private void digging(Map<String, String> things) {
    Map<Tool.Kind, Integer> count = new EnumMap<>(Tool.Kind.class);
    for (Tool tool : packet.job().tools()) {
      int number = count.merge(tool.kind(), 1, Integer::sum);
      String kind = tool.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
      things.put(number == 1 ? kind : kind + "-" + number, named(tool, kind));
    }
  }

  /**
   * A tool as the job calls it. In another language its kind comes first, and the job's own name
   * behind it, for that is what the crew calls it.
   */
  private String named(Tool tool, String kind) {
    String word = writing.texts().say("tool-kind." + kind);
    if (tool.isNamedByKind()) {
      return word;
    }
    return writing.texts().language() == Language.ENGLISH
        ? tool.name()
        : writing.texts().say("day-plan.tool.own", Map.of("kind", word, "name", tool.name()));
  }

  private String gravel() {
    Volume loose =
        day.holes(Task.Kind.GRAVEL).stream()
            .map(mark -> packet.concretePlan().fill(mark).gravelLoose())
            .reduce(Volume.ZERO, Volume::plus);
    return writing
        .texts()
        .say("day-plan.tool.gravel", Map.of("volume", writing.formats().volume(loose)));
  }

  /** What the truck brings today. */
  private Optional<String> load() {
    return packet.truckLoads().loads().stream()
        .filter(load -> load.day() == day.number())
        .map(load -> writing.formats().truckVolume(load.order()))
        .map(volume -> writing.texts().say("day-plan.tool.load", Map.of("volume", volume)))
        .findFirst();
  }

  private String bags() {
    int bags =
        day.poured().stream()
            .mapToInt(mark -> packet.concretePlan().fill(mark).lift(day.pour(mark)).bags())
            .sum();
    ConcretePlan.Mix mix = packet.concretePlan().mix();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("bags", writing.formats().count(bags));
    values.put("bag", writing.formats().mass(mix.bag()));
    values.put("batch", writing.formats().count(mix.bagsInBatch()));
    return writing.texts().say("day-plan.tool.bags", values);
  }

  private String say(String thing) {
    return writing.texts().say("day-plan.tool." + thing);
  }
}
