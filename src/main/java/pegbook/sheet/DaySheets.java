package pegbook.sheet;

import java.util.List;
import java.util.Map;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.dayplan.DayPlan.Order;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;

/**
 * The days in the binder: all of them on one table, then each on its sheet.
 *
 * @param title the sheet's title
 * @param lead how many days, in a sentence
 * @param done holes that are dug already and not planned again; empty where none is
 * @param rows one for each day
 * @param orders orders of the work that were compared; none where there was only one
 * @param choice why one of them was taken
 * @param estimate how long each task takes
 * @param days the sheets; the contents leave them out, as they follow the table of all days in
 *     order
 */
public record DaySheets(
    String title,
    String lead,
    String done,
    List<Row> rows,
    List<OrderRow> orders,
    String choice,
    WorkEstimatePart estimate,
    List<DaySheet> days)
    implements Sheet {
  /** A day on the table. */
  public record Row(String day, String dig, String fill, String pour, String hours, String open) {}

  /** An order of the work; the one that was taken says so. */
  public record OrderRow(
      String lots, String days, String last, String nights, String open, boolean chosen) {}

  @Override
  public List<Drawing> drawings() {
    return days.stream().flatMap(day -> day.drawings().stream()).toList();
  }

  /** Makes the sheets. */
  public static DaySheets of(Packet packet, Writing writing) {
    DayPlan plan = packet.dayPlan();
    return new DaySheets(
        writing.texts().say("day-plan.title"),
        writing
            .texts()
            .say(
                "day-plan.lead",
                Map.of(
                    "days", writing.formats().count(plan.days().size()),
                    "crew", writing.formats().hours(plan.crewHours()))),
        done(packet, writing),
        plan.days().stream().map(day -> row(packet, writing, day)).toList(),
        plan.orders().size() > 1
            ? plan.orders().stream().map(order -> row(order, writing)).toList()
            : List.of(),
        writing.texts().say("day-plan.choice"),
        WorkEstimatePart.of(packet, writing),
        plan.days().stream().map(day -> DaySheet.of(packet, writing, day)).toList());
  }

  /** Which holes are dug already and not planned again; empty where none is. */
  static String done(Packet packet, Writing writing) {
    List<String> dug = packet.dayPlan().dug();
    return dug.isEmpty()
        ? ""
        : writing.texts().say("day-plan.done", Map.of("holes", writing.formats().names(dug)));
  }

  private static Row row(Packet packet, Writing writing, WorkDay day) {
    Formats formats = writing.formats();
    List<String> fill =
        day.portions().stream()
            .filter(
                portion ->
                    portion.kind() == Task.Kind.GRAVEL
                        || portion.kind() == Task.Kind.FORM
                        || portion.kind() == Task.Kind.STEEL
                        || portion.kind() == Task.Kind.JOINT)
            .flatMap(portion -> portion.mark().stream())
            .distinct()
            .toList();
    return new Row(
        new DayWords(packet, writing, day).title(),
        formats.names(day.holes(Task.Kind.DIG)),
        formats.names(fill),
        formats.names(day.poured()),
        writing
            .texts()
            .say(
                "day-plan.hours-range",
                Map.of("least", formats.hours(day.least()), "most", formats.hours(day.most()))),
        formats.count(day.openOvernight().size()));
  }

  private static OrderRow row(Order order, Writing writing) {
    Formats formats = writing.formats();
    return new OrderRow(
        formats.count(order.lots()),
        formats.count(order.days()),
        order.lastPour().map(formats::weekday).orElse(""),
        formats.count(order.holeNights()),
        formats.count(order.mostOpen()),
        order.chosen());
  }
}
