package pegbook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.packet.Packet;

/**
 * The plan as entries of a calendar of one's own: work days, calls to make, hold points.
 *
 * @param name of the calendar
 * @param entries in the order of the days; none where the days have no dates
 */
public record CalendarEntries(String name, List<Entry> entries) {
  public CalendarEntries {
    entries = List.copyOf(entries);
  }

  /**
   * A whole day.
   *
   * @param id unique in the calendar, and the same when the packet comes out again: "day-3"
   * @param date the day
   * @param summary its line
   * @param description what to know of it
   */
  public record Entry(String id, LocalDate date, String summary, String description) {}

  /** Makes the entries. */
  public static CalendarEntries of(Packet packet, Writing writing) {
    List<Entry> entries = new ArrayList<>();
    for (WorkDay day : packet.dayPlan().days()) {
      day.date().ifPresent(date -> entries.add(work(packet, writing, day, date)));
    }
    Map<String, Integer> count = new LinkedHashMap<>();
    for (Hold hold : CalendarSheet.merged(packet.dayPlan().holds())) {
      String word = DayWords.word(hold.kind());
      String id = word + "-" + count.merge(word, 1, Integer::sum);
      Making making = new Making(packet, writing, hold);
      hold.call().ifPresent(date -> entries.add(making.entry("call-" + id, date, "call.")));
      hold.date().ifPresent(date -> entries.add(making.entry(id, date, "")));
    }
    boolean dated = packet.dayPlan().days().stream().anyMatch(day -> day.date().isPresent());
    return new CalendarEntries(
        packet.job().heading().title(),
        dated
            ? entries.stream()
                .sorted(Comparator.comparing(Entry::date).thenComparing(Entry::id))
                .toList()
            : List.of());
  }

  private static Entry work(Packet packet, Writing writing, WorkDay day, LocalDate date) {
    DayWords words = new DayWords(packet, writing, day);
    String done = day.number() == 1 ? DaySheets.done(packet, writing) : "";
    String steps =
        words.steps().stream().map(DaySheet.Step::words).collect(Collectors.joining("\n"));
    return new Entry(
        words.id(),
        date,
        writing
            .texts()
            .say(
                "calendar.entry.day",
                Map.of("day", writing.formats().count(day.number()), "job", name(packet))),
        (done.isEmpty() ? "" : done + "\n")
            + steps
            + "\n"
            + words.hours()
            + "\n"
            + writing.texts().say("calendar.caution"));
  }

  private static String name(Packet packet) {
    return packet.job().heading().title();
  }

  /** An entry about a hold point. */
  private record Making(Packet packet, Writing writing, Hold hold) {
    Entry entry(String id, LocalDate date, String prefix) {
      Texts texts = writing.texts();
      String word = DayWords.word(hold.kind());
      String holes =
          hold.marks().isEmpty()
              ? texts.say("calendar.all")
              : writing.formats().names(hold.marks());
      return new Entry(
          id,
          date,
          texts.say("calendar.entry." + prefix + word, Map.of("holes", holes)),
          texts.say("calendar.why." + word, CalendarSheet.values(packet, writing)));
    }
  }
}
