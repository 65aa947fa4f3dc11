package pegbook.sheet;

import java.util.List;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Spot;

/**
 * One working day on one sheet: today's holes, what to find and write down, tools, dangers.
 *
 * <p>Form fields are named by day, hole and column, such as {@code day-1.S3.depth}; they are read
 * back from filled sheets, so the names are for good.
 *
 * @param id of the day, such as "day-1"
 * @param title the day and its date
 * @param hours how long it takes, and what the crew has
 * @param stops what forbids the work of today
 * @param steps today's work, in its order
 * @param dangers the few that matter today
 * @param tools what to lay out
 * @param plan today's holes on the figure
 * @param largePlan the same, for a day that takes two sides
 * @param dig holes that are dug
 * @param datum true when depths below the datum line are known
 * @param filled true when some of them get gravel on the same day and nothing else
 * @param fill other holes that get gravel and steel
 * @param wide what bells, pads and caps ask for today
 * @param bars what the bars are that go in today, a line a bar mark
 * @param pour holes that are poured
 * @param readyMix true when a truck brings the concrete
 * @param stopWhen when to stop and ask
 * @param calls whom to call
 * @param leaving what to look at before going
 */
public record DaySheet(
    String id,
    String title,
    String hours,
    List<Stop> stops,
    List<Step> steps,
    List<String> dangers,
    List<Tick> tools,
    Drawing plan,
    Drawing largePlan,
    List<DigRow> dig,
    boolean datum,
    boolean filled,
    List<FillTable> fill,
    List<String> wide,
    List<String> bars,
    List<PourRow> pour,
    boolean readyMix,
    List<String> stopWhen,
    List<Call> calls,
    List<Tick> leaving)
    implements Sheet {
  /** The picture's part of the width, less the gap beside it, and of the height of the page. */
  private static final double PICTURE_PART = 0.44;

  private static final double PICTURE_GAP_MM = 4;
  private static final double PICTURE_HEIGHT = 0.232;
  private static final double LARGE_PICTURE_HEIGHT = 0.4;

  /** What forbids the work: what was found, and the way out. */
  public record Stop(String what, String way) {}

  /** A part of the day's work, and boxes for what of it is not at a hole. */
  public record Step(String words, List<Tick> ticks) {}

  /** A box to tick; the name is that of its field. */
  public record Tick(String name, String words) {}

  /** Someone to call, a ticket to name, and the number; an empty one is written in by hand. */
  public record Call(String who, String known, String number) {}

  /**
   * A hole to dig: how wide, how deep to the bare bottom, how far below the datum line; gravel that
   * it gets on the same day, where it gets nothing else.
   */
  public record DigRow(
      String name,
      String mark,
      String remark,
      String hole,
      String depth,
      String datum,
      String gravel) {}

  /**
   * A hole to fill up to the pour: gravel as tamped and as tipped in, steel and its cover; empty
   * where it has none today.
   */
  public record FillRow(
      String name, String mark, String gravel, String loose, String steel, String cover) {}

  /**
   * A table of holes to fill.
   *
   * @param gravel true when some of them get gravel
   * @param steel true when some of them get steel
   * @param twoAcross true when a line has two holes, for there is only gravel, or only steel
   */
  public record FillTable(List<FillLine> lines, boolean gravel, boolean steel, boolean twoAcross) {}

  /** A line of the table of holes to fill: one hole or two, the second perhaps without a mark. */
  public record FillLine(List<FillRow> holes) {}

  /** A hole to pour: bags or volume, top above the ground, minutes. */
  public record PourRow(String name, String mark, String concrete, String top, String minutes) {}

  @Override
  public List<Drawing> drawings() {
    return List.of(plan, largePlan);
  }

  /** Makes the sheet of a day; the days are numbered from 1. */
  public static DaySheet of(Packet packet, Writing writing, WorkDay day) {
    DayWords words = new DayWords(packet, writing, day);
    DayRows rows = new DayRows(packet, writing, day);
    return new DaySheet(
        words.id(),
        words.title(),
        words.hours(),
        words.stops(),
        words.steps(),
        words.dangers(),
        new DayTools(packet, writing, day).ticks(),
        picture(packet, writing, day, "plan", PICTURE_PART),
        picture(packet, writing, day, "large-plan", 1),
        rows.dig(),
        rows.dig().stream().anyMatch(row -> !row.datum().isEmpty()),
        rows.dig().stream().anyMatch(row -> !row.gravel().isEmpty()),
        rows.fillTables(),
        words.wide(),
        new DayBars(packet, writing, day).lines(),
        rows.pour(),
        ConcretePlanSheet.isByVolume(packet),
        words.stopWhen(),
        words.calls(),
        words.leaving());
  }

  private static Drawing picture(
      Packet packet, Writing writing, WorkDay day, String name, double part) {
    return DayPicture.of(
        writing,
        packet.placement(),
        packet.depthTargets().holes(),
        new DayPicture.Today(day.holes(), trench(packet, day)),
        "day-" + day.number() + "-" + name,
        new Spot(
            writing.page().widthMm() * part - PICTURE_GAP_MM,
            writing.page().heightMm() * (part < 1 ? PICTURE_HEIGHT : LARGE_PICTURE_HEIGHT)));
  }

  private static List<Leg> trench(Packet packet, WorkDay day) {
    return packet
        .powerLine()
        .line()
        .filter(line -> day.isTrenching())
        .map(line -> line.route().legs())
        .orElse(List.of());
  }
}
