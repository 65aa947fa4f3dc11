package pegbook.sheet;

import java.util.List;
import pegbook.calc.dayplan.DayPlan.WorkDay;
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
 * @param lead today's work in a sentence
 * @param hours how long it takes, and what the crew has
 * @param stops what forbids the work of today
 * @param tasks work that is not at a hole, and hold points
 * @param dig holes that are dug
 * @param datum true when depths below the datum line are known
 * @param fill holes that get gravel and steel
 * @param gravel true when some of them get gravel
 * @param steel true when some of them get steel
 * @param pour holes that are poured
 * @param plan today's holes on the figure
 * @param dangers the few that matter today
 * @param tools what to lay out
 * @param stopWhen when to stop and ask
 * @param calls whom to call
 * @param leaving what to look at before going
 */
public record DaySheet(
    String id,
    String title,
    String lead,
    String hours,
    List<Stop> stops,
    List<Tick> tasks,
    List<DigRow> dig,
    boolean datum,
    List<FillRow> fill,
    boolean gravel,
    boolean steel,
    List<PourRow> pour,
    Drawing plan,
    List<String> dangers,
    String tools,
    List<String> stopWhen,
    List<Call> calls,
    List<Tick> leaving)
    implements Sheet {
  /**
   * The picture's part of the width, less the gap beside it; its height is at most a part of it.
   */
  private static final double PICTURE_PART = 0.47;

  private static final double PICTURE_GAP_MM = 4;
  private static final double PICTURE_HEIGHT = 0.8;

  /** What forbids the work: what was found, and the way out. */
  public record Stop(String what, String way) {}

  /** A box to tick; the name is that of its field. */
  public record Tick(String name, String words) {}

  /** Someone to call, and what is known of them; empty: to be written in. */
  public record Call(String who, String known) {}

  /** A hole to dig: how wide, how deep to the bare bottom, how far below the datum line. */
  public record DigRow(
      String name, String mark, String remark, String hole, String depth, String datum) {}

  /** A hole to fill up to the pour: gravel and steel; empty where it has none today. */
  public record FillRow(String name, String mark, String gravel, String steel, String cover) {}

  /** A hole to pour: bags, top above the ground, minutes. */
  public record PourRow(String name, String mark, String bags, String top, String minutes) {}

  @Override
  public List<Drawing> drawings() {
    return List.of(plan);
  }

  /** Makes the sheet of a day; the days are numbered from 1. */
  public static DaySheet of(Packet packet, Writing writing, WorkDay day) {
    DayWords words = new DayWords(packet, writing, day);
    DayRows rows = new DayRows(packet, writing, day);
    return new DaySheet(
        words.id(),
        words.title(),
        words.lead(),
        words.hours(),
        words.stops(),
        words.tasks(),
        rows.dig(),
        rows.dig().stream().anyMatch(row -> !row.datum().isEmpty()),
        rows.fill(),
        rows.fill().stream().anyMatch(row -> !row.gravel().isEmpty()),
        rows.fill().stream().anyMatch(row -> !row.steel().isEmpty()),
        rows.pour(),
        DayPicture.of(
            writing,
            packet.placement(),
            packet.depthTargets().holes(),
            day.holes(),
            words.id() + "-plan",
            picture(writing)),
        words.dangers(),
        words.tools(),
        words.stopWhen(),
        words.calls(),
        words.leaving());
  }

  private static Spot picture(Writing writing) {
    double width = writing.page().widthMm() * PICTURE_PART - PICTURE_GAP_MM;
    return new Spot(width, width * PICTURE_HEIGHT);
  }
}
