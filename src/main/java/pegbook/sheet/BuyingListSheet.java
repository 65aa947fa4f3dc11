package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pegbook.calc.buyinglist.BuyingList;
import pegbook.calc.buyinglist.BuyingList.Group;
import pegbook.calc.buyinglist.BuyingList.Line;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Need;
import pegbook.figures.TaskDay;
import pegbook.job.Prices;
import pegbook.packet.Packet;

/**
 * Everything to buy, by supplier, with a box to tick at each line.
 *
 * @param title the sheet's title
 * @param lead how much, in a sentence
 * @param groups one for each supplier
 * @param each head of the column of prices, with the currency where there is one
 * @param sum head of the column of sums
 * @param total what all lines with a price cost; empty without prices
 * @param days what must lie there on which morning
 * @param bags how many bags are opened on which day; empty where none are
 * @param notes what to mind when buying and fetching
 * @param counts by which rules small things are counted
 * @param tools what the day sheets lay out beside what is bought
 */
public record BuyingListSheet(
    String title,
    String lead,
    List<GroupRows> groups,
    String each,
    String sum,
    Optional<String> total,
    List<DayRow> days,
    Optional<String> bags,
    List<String> notes,
    List<String> counts,
    String tools)
    implements Sheet {

  /** One supplier's lines under their heading, with what they weigh and cost together. */
  public record GroupRows(String heading, String sums, List<Row> rows) {}

  /** A line of the list; an empty price is filled in by hand. */
  public record Row(
      String name,
      String what,
      String order,
      String spare,
      String mass,
      String by,
      String each,
      String sum) {}

  /** What must lie there on a morning. */
  public record DayRow(String day, String lines) {}

  /** Makes the sheet. */
  public static BuyingListSheet of(Packet packet, Writing writing) {
    return new BuyingListWords(packet, writing).sheet();
  }

  /** Makes its strings. */
  private record BuyingListWords(Packet packet, Writing writing) {
    private BuyingListSheet sheet() {
      BuyingList list = packet.buyingList();
      Map<String, String> currency =
          Map.of("currency", packet.job().prices().map(Prices::currency).orElse(""));
      return new BuyingListSheet(
          say("title"),
          lead(list),
          list.groups().stream().map(this::rows).toList(),
          say("column.each", currency).strip(),
          say("column.sum", currency).strip(),
          total(list),
          days(list),
          bags(),
          notes(list),
          new SuppliesWords(packet, writing).rules(),
          tools());
    }

    private String say(String key) {
      return say(key, Map.of());
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say("buying-list." + key, values);
    }

    private Formats formats() {
      return writing.formats();
    }

    private String lead(BuyingList list) {
      return say(
          "lead",
          Map.of(
              "lines", formats().count(list.lines().size()),
              "suppliers", formats().count(list.groups().size())));
    }

    private Optional<String> total(BuyingList list) {
      return list.total()
          .map(
              total -> {
                Map<String, String> values = new LinkedHashMap<>();
                values.put("total", formats().money(total));
                values.put("count", formats().count(list.withoutPrice()));
                return say(list.withoutPrice() == 0 ? "total" : "total-open", values);
              });
    }

    private GroupRows rows(Group group) {
      String supplier = group.supplier().name().toLowerCase(Locale.ROOT).replace('_', '-');
      Map<String, String> heading = new LinkedHashMap<>();
      heading.put("letter", group.letter());
      heading.put("supplier", say("supplier." + supplier));
      List<String> sums = new ArrayList<>();
      group.mass().ifPresent(mass -> sums.add(say("mass", Map.of("mass", formats().mass(mass)))));
      group
          .trips()
          .ifPresent(trips -> sums.add(say("trips", Map.of("trips", formats().count(trips)))));
      group.sum().ifPresent(sum -> sums.add(formats().money(sum)));
      return new GroupRows(
          say("heading", heading),
          String.join(" · ", sums),
          group.lines().stream().map(this::row).toList());
    }

    private Row row(Line line) {
      Need need = line.need();
      return new Row(
          line.name(),
          Purchase.of(need, writing).what(),
          Purchase.of(need, writing).order(),
          line.spare() > 1e-6 ? Purchase.amount(line.spare(), need.unit(), writing) : "",
          line.mass().map(formats()::mass).orElse(""),
          line.by().map(by -> formats().count(by.day())).orElse(""),
          line.each().map(formats()::amount).orElse(""),
          line.sum().map(formats()::amount).orElse(""));
    }

    private String day(TaskDay day) {
      return day.date()
          .map(
              date ->
                  say(
                      "day-dated",
                      Map.of("day", formats().count(day.day()), "date", formats().weekday(date))))
          .orElseGet(() -> say("day", Map.of("day", formats().count(day.day()))));
    }

    private List<DayRow> days(BuyingList list) {
      Map<Integer, List<Line>> byDay = new TreeMap<>();
      list.lines()
          .forEach(
              line ->
                  line.by()
                      .ifPresent(
                          by ->
                              byDay.computeIfAbsent(by.day(), any -> new ArrayList<>()).add(line)));
      return byDay.values().stream()
          .map(
              lines ->
                  new DayRow(
                      day(lines.get(0).by().orElseThrow()),
                      formats().names(lines.stream().map(Line::name).toList())))
          .toList();
    }

    /** Bags of each day of pours, where there are several. */
    private Optional<String> bags() {
      if (ConcretePlanSheet.isByVolume(packet)) {
        return Optional.empty();
      }
      List<String> days =
          packet.dayPlan().days().stream()
              .filter(day -> !day.poured().isEmpty())
              .map(this::bags)
              .toList();
      return days.size() < 2
          ? Optional.empty()
          : Optional.of(say("bags", Map.of("days", String.join("; ", days))));
    }

    private String bags(WorkDay day) {
      int bags =
          day.poured().stream()
              .mapToInt(mark -> packet.concretePlan().fill(mark).lift(day.pour(mark)).bags())
              .sum();
      return say(
          "bags-of-day",
          Map.of("day", formats().count(day.number()), "bags", formats().count(bags)));
    }

    private List<String> notes(BuyingList list) {
      List<String> notes = new ArrayList<>();
      list.load()
          .ifPresent(load -> notes.add(say("note.trips", Map.of("load", formats().mass(load)))));
      notes.add(say("note.mass"));
      List<String> open =
          list.lines().stream().filter(line -> line.mass().isEmpty()).map(Line::name).toList();
      if (!open.isEmpty()) {
        notes.add(say("note.mass-open", Map.of("lines", formats().names(open))));
      }
      if (!ConcretePlanSheet.isByVolume(packet)) {
        notes.add(say("note.bags"));
      }
      notes.add(say("note.spare"));
      notes.add(say(list.total().isPresent() ? "note.prices" : "note.no-prices"));
      return notes;
    }

    private String tools() {
      return packet.dayPlan().days().stream()
          .flatMap(day -> new DayTools(packet, writing, day).toLayOut().stream())
          .distinct()
          .collect(Collectors.joining("; "));
    }
  }
}
