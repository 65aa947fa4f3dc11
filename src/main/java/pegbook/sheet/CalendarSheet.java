package pegbook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.dayplan.DayPlan.Finish;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.Link;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;

/**
 * The calendar: bars over days, hold points and their reasons, the range of the end and what it
 * hangs on.
 *
 * @param title heading
 * @param lead first day and end
 * @param done holes that are dug already and not planned again; empty where none is
 * @param caution the line of caution
 * @param chain what the end hangs on
 * @param bars the picture, in stretches where it is long
 * @param legend what its signs mean
 * @param holds hold points in the order of the work
 * @param dated true when the days have dates, and so a calendar file
 */
public record CalendarSheet(
    String title,
    String lead,
    String done,
    String caution,
    String chain,
    List<Drawing> bars,
    String legend,
    List<HoldRow> holds,
    boolean dated)
    implements Sheet {
  /** A hold point: what, for which holes, when, whom to call by when, why. */
  public record HoldRow(String what, String holes, String date, String call, String why) {}

  @Override
  public List<Drawing> drawings() {
    return bars;
  }

  /** Whether there are days to show. */
  public static boolean isWanted(Packet packet) {
    return !packet.dayPlan().days().isEmpty();
  }

  /** Makes the sheet. */
  public static CalendarSheet of(Packet packet, Writing writing) {
    DayPlan plan = packet.dayPlan();
    Texts texts = writing.texts();
    return new CalendarSheet(
        texts.say("calendar.title"),
        lead(packet, writing),
        DaySheets.done(packet, writing),
        texts.say("calendar.caution"),
        chain(packet, writing),
        CalendarBars.of(packet, writing),
        texts.say("calendar.legend"),
        holds(packet, writing),
        plan.days().get(0).date().isPresent());
  }

  private static String lead(Packet packet, Writing writing) {
    Formats formats = writing.formats();
    Optional<Finish> finish = packet.dayPlan().finish();
    Optional<LocalDate> first = packet.dayPlan().days().get(0).date();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("days", formats.count(packet.dayPlan().days().size()));
    values.put("cure", writing.texts().say("calendar.cure", cure(packet, writing)));
    if (finish.isEmpty() || first.isEmpty()) {
      return writing.texts().say("calendar.lead.undated", values);
    }
    values.put("first", formats.weekday(first.get()));
    values.put("planned", formats.weekday(finish.get().planned()));
    values.put("earliest", formats.weekday(finish.get().earliest()));
    values.put("latest", formats.weekday(finish.get().latest()));
    values.put("rain", formats.count(packet.job().plan().rainDays()));
    return writing.texts().say("calendar.lead", values);
  }

  private static Map<String, String> cure(Packet packet, Writing writing) {
    return Map.of("days", writing.formats().count(packet.job().plan().loadAfter().count()));
  }

  /** "Crew hours on days 1 to 4; then the inspector's visit; …". */
  private static String chain(Packet packet, Writing writing) {
    List<String> links =
        packet.dayPlan().chain().stream().map(link -> link(link, packet, writing)).toList();
    return writing
        .texts()
        .say("calendar.chain", Map.of("links", links.stream().collect(Collectors.joining("; "))));
  }

  private static String link(Link link, Packet packet, Writing writing) {
    Texts texts = writing.texts();
    if (link.kind().isPresent()) {
      return texts.say("calendar.link." + DayWords.word(link.kind().get()), cure(packet, writing));
    }
    Map<String, String> days =
        Map.of(
            "from", writing.formats().count(link.fromDay()),
            "to", writing.formats().count(link.toDay()));
    return texts.say(
        link.fromDay() == link.toDay() ? "calendar.link.crew-day" : "calendar.link.crew", days);
  }

  private static List<HoldRow> holds(Packet packet, Writing writing) {
    List<HoldRow> rows = new ArrayList<>();
    for (Hold hold : merged(packet.dayPlan().holds())) {
      rows.add(row(hold, packet, writing));
    }
    return rows;
  }

  /** Visits to two lots on one day are one visit. */
  static List<Hold> merged(List<Hold> holds) {
    List<Hold> merged = new ArrayList<>();
    for (Hold hold : holds) {
      int last = merged.size() - 1;
      if (last >= 0
          && hold.date().isPresent()
          && merged.get(last).kind() == hold.kind()
          && merged.get(last).date().equals(hold.date())) {
        List<String> marks = new ArrayList<>(merged.get(last).marks());
        marks.addAll(hold.marks());
        merged.set(
            last,
            new Hold(hold.kind(), marks, hold.call(), hold.date(), merged.get(last).afterDay()));
      } else {
        merged.add(hold);
      }
    }
    return merged;
  }

  private static HoldRow row(Hold hold, Packet packet, Writing writing) {
    Texts texts = writing.texts();
    Formats formats = writing.formats();
    String kind = DayWords.word(hold.kind());
    String when =
        hold.date()
            .map(formats::weekday)
            .orElseGet(
                () ->
                    hold.afterDay() == 0
                        ? texts.say("calendar.before-first")
                        : texts.say(
                            "calendar.after-day", Map.of("day", formats.count(hold.afterDay()))));
    Map<String, String> values = values(packet, writing);
    return new HoldRow(
        texts.say("calendar.hold." + kind, values),
        hold.marks().isEmpty()
            ? texts.say(hold.kind() == Wait.TRENCH_INSPECTION ? "calendar.trench" : "calendar.all")
            : formats.names(hold.marks()),
        when,
        hold.call().map(formats::weekday).orElse(""),
        texts.say("calendar.why." + kind, values));
  }

  /** What the words of a wait may name: days of curing, the machine. */
  static Map<String, String> values(Packet packet, Writing writing) {
    Map<String, String> values = new LinkedHashMap<>(cure(packet, writing));
    values.put("machine", packet.job().plan().machine().map(machine -> machine.what()).orElse(""));
    return values;
  }
}
