package pegbook.sheet;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Element.Anchor;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Bars over days: a line for each kind of work, a black bar on each day it is done, a grey one
 * while it waits, a diamond where a wait is over. Columns are days of the calendar where the job
 * names its first day, else work days. What does not fit side by side goes on below.
 */
final class CalendarBars {
  private static final double NAMES_MM = 36;
  private static final double ROW_MM = 5.2;
  private static final double BAR_MM = 2.8;
  private static final double HEAD_MM = 7;
  private static final double TYPE = 9;
  private static final double SMALL_TYPE = 8;

  /** A narrower day cannot be told from its neighbour. */
  private static final double LEAST_DAY_MM = 1.7;

  private static final double MOST_DAY_MM = 9;

  /** A line of the picture: its name, the columns worked on, those waited in, the end of a wait. */
  private record Line(
      String name, List<Long> worked, Optional<Range> waited, Optional<Long> ends) {}

  private record Range(long from, long to) {}

  private final Packet packet;
  private final Writing writing;
  private final List<WorkDay> days;
  private final boolean dated;
  private final long first;
  private final long last;

  private CalendarBars(Packet packet, Writing writing) {
    this.packet = packet;
    this.writing = writing;
    this.days = packet.dayPlan().days();
    this.dated = days.get(0).date().isPresent();
    this.first = column(days.get(0));
    long work = column(days.get(days.size() - 1));
    this.last = packet.dayPlan().finish().map(finish -> finish.planned().toEpochDay()).orElse(work);
  }

  static List<Drawing> of(Packet packet, Writing writing) {
    return new CalendarBars(packet, writing).pictures();
  }

  private long column(WorkDay day) {
    return day.date().map(LocalDate::toEpochDay).orElse((long) day.number());
  }

  private List<Drawing> pictures() {
    double width = writing.page().widthMm();
    int most = (int) Math.floor((width - NAMES_MM - 1) / LEAST_DAY_MM);
    long all = Math.max(last, column(days.get(days.size() - 1))) - first + 1;
    long stretches = (all + most - 1) / most;
    long each = (all + stretches - 1) / stretches;
    List<Line> lines = lines();
    List<Drawing> pictures = new ArrayList<>();
    for (long from = first; from < first + all; from += each) {
      pictures.add(picture(lines, new Range(from, Math.min(from + each, first + all) - 1), width));
    }
    return pictures;
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    work(lines, "mark-out", Task.Kind.MARK_OUT, Task.Kind.PROVE);
    waits(lines, Wait.UTILITIES);
    work(lines, "set-pegs", Task.Kind.SET_PEGS);
    waits(lines, Wait.MACHINE);
    work(lines, "bore", Task.Kind.BORE);
    work(lines, "dig", Task.Kind.DIG, Task.Kind.CARRY_SPOIL);
    waits(lines, Wait.LOOK);
    work(lines, "fill", Task.Kind.GRAVEL, Task.Kind.FORM, Task.Kind.STEEL);
    waits(lines, Wait.INSPECTION);
    work(lines, "pour", Task.Kind.FIRST_LIFT, Task.Kind.JOINT, Task.Kind.POUR);
    work(lines, "strip", Task.Kind.STRIP);
    work(lines, "trench", Task.Kind.TRENCH, Task.Kind.LAY_PIPE);
    waits(lines, Wait.TRENCH_INSPECTION);
    work(lines, "backfill", Task.Kind.BACKFILL);
    waits(lines, Wait.LOAD);
    work(lines, "floor", Task.Kind.FRAME, Task.Kind.BOARDS);
    return lines;
  }

  private void work(List<Line> lines, String name, Task.Kind... kinds) {
    List<Long> worked =
        days.stream()
            .filter(day -> List.of(kinds).stream().anyMatch(day::has))
            .map(this::column)
            .toList();
    if (!worked.isEmpty()) {
      lines.add(
          new Line(
              writing.texts().say("calendar.line." + name),
              worked,
              Optional.empty(),
              Optional.empty()));
    }
  }

  private void waits(List<Line> lines, Wait kind) {
    for (Hold hold : CalendarSheet.merged(packet.dayPlan().holds())) {
      Optional<Long> ends = hold.date().map(LocalDate::toEpochDay);
      if (hold.kind() == kind && ends.filter(end -> end >= first).isPresent()) {
        long from = hold.afterDay() == 0 ? first : column(days.get(hold.afterDay() - 1)) + 1;
        String name = writing.texts().say("calendar.line." + DayWords.word(kind));
        lines.add(
            new Line(
                name,
                List.of(),
                Optional.of(new Range(Math.min(from, ends.get()), ends.get())),
                ends));
      }
    }
  }

  private Drawing picture(List<Line> lines, Range shown, double width) {
    long count = shown.to() - shown.from() + 1;
    double day = Math.min(MOST_DAY_MM, (width - NAMES_MM - 1) / count);
    double height = HEAD_MM + lines.size() * ROW_MM + 1;
    Canvas canvas = new Canvas(width, height, writing.lettering());
    double bottom = 0.5;
    double top = bottom + lines.size() * ROW_MM;
    shadeWorkDays(canvas, shown, day, bottom, top);
    scale(canvas, shown, day, bottom, top);
    for (int i = 0; i < lines.size(); i++) {
      line(canvas, lines.get(i), shown, day, top - (i + 0.5) * ROW_MM);
    }
    double right = NAMES_MM + count * day;
    canvas.path(
        List.of(
            new Spot(NAMES_MM, bottom),
            new Spot(right, bottom),
            new Spot(right, top),
            new Spot(NAMES_MM, top)),
        true,
        Pen.THIN);
    return canvas.drawing("calendar-" + shown.from(), description(shown));
  }

  private void shadeWorkDays(Canvas canvas, Range shown, double day, double bottom, double top) {
    if (!dated) {
      return;
    }
    for (WorkDay each : days) {
      long column = column(each);
      if (column >= shown.from() && column <= shown.to()) {
        double left = NAMES_MM + (column - shown.from()) * day;
        canvas.area(box(left, bottom, left + day, top), Ink.LIGHT);
      }
    }
  }

  private static List<Spot> box(double left, double bottom, double right, double top) {
    return List.of(
        new Spot(left, bottom), new Spot(right, bottom), new Spot(right, top), new Spot(left, top));
  }

  /** Weeks with the date of their Monday, or the numbers of work days. */
  private void scale(Canvas canvas, Range shown, double day, double bottom, double top) {
    for (long column = shown.from(); column <= shown.to(); column++) {
      double left = NAMES_MM + (column - shown.from()) * day;
      boolean tick = !dated || isMonday(column);
      if (tick && column > shown.from()) {
        canvas.line(new Spot(left, bottom), new Spot(left, top + 1), Pen.HAIR);
      }
      if (tick || column == shown.from()) {
        canvas.write(
            new Element.Label(
                new Spot(dated ? left + 0.4 : left + day / 2, top + 1.8),
                head(column),
                SMALL_TYPE,
                dated ? Anchor.LEFT : Anchor.CENTRE,
                0,
                false,
                false));
      }
    }
  }

  private static boolean isMonday(long epochDay) {
    return LocalDate.ofEpochDay(epochDay).getDayOfWeek() == DayOfWeek.MONDAY;
  }

  private String head(long column) {
    return dated
        ? writing.formats().monthDay(LocalDate.ofEpochDay(column))
        : writing.formats().count(column);
  }

  private void line(Canvas canvas, Line line, Range shown, double day, double middle) {
    canvas.write(
        new Element.Label(
            new Spot(0.5, middle), line.name(), TYPE, Anchor.LEFT_MIDDLE, 0, false, false));
    line.waited()
        .filter(range -> range.to() >= shown.from() && range.from() <= shown.to())
        .ifPresent(
            range ->
                bar(
                    canvas,
                    NAMES_MM + (Math.max(range.from(), shown.from()) - shown.from()) * day,
                    NAMES_MM + (Math.min(range.to(), shown.to()) - shown.from() + 0.5) * day,
                    middle,
                    Ink.GREY));
    for (long column : line.worked()) {
      if (column >= shown.from() && column <= shown.to()) {
        double left = NAMES_MM + (column - shown.from()) * day;
        bar(canvas, left, left + day, middle, Ink.BLACK);
      }
    }
    line.ends()
        .filter(end -> end >= shown.from() && end <= shown.to())
        .ifPresent(end -> diamond(canvas, NAMES_MM + (end - shown.from() + 0.5) * day, middle));
  }

  private static void bar(Canvas canvas, double left, double right, double middle, Ink ink) {
    if (right > left) {
      canvas.area(box(left, middle - BAR_MM / 2, right, middle + BAR_MM / 2), ink);
    }
  }

  private static void diamond(Canvas canvas, double x, double y) {
    double half = BAR_MM / 2 + 0.4;
    canvas.area(
        List.of(
            new Spot(x - half, y),
            new Spot(x, y + half),
            new Spot(x + half, y),
            new Spot(x, y - half)),
        Ink.BLACK);
  }

  private String description(Range shown) {
    return writing
        .texts()
        .say(
            dated ? "calendar.description" : "calendar.description.undated",
            Map.of("from", whole(shown.from()), "to", whole(shown.to())));
  }

  private String whole(long column) {
    return dated
        ? writing.formats().date(LocalDate.ofEpochDay(column))
        : writing.formats().count(column);
  }
}
