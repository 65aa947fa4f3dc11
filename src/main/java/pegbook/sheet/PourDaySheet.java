package pegbook.sheet;

import java.util.List;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.Stop;
import pegbook.sheet.DaySheet.Tick;

/**
 * The hold sheet of a day of pouring: what is looked at in each of its holes before the first
 * batch, the pace, and what follows.
 *
 * <p>Names of form fields are like those of the day sheets, such as {@code pour-5.P1.bottom}, and
 * are for good.
 *
 * @param id of the day, such as "pour-5"
 * @param title the day and its date
 * @param strip what the strip at the foot calls it
 * @param stops what forbids the pour
 * @param holes one row for each hole
 * @param datum true when depths below the datum line are known
 * @param steel true when some of them have steel
 * @param tube true when some of them have a tube
 * @param lifts what the joints of holes in two lifts ask for
 * @param insets sleeves and anchors in the tops of these holes
 * @param widenings what bells, pads and caps of these holes ask for
 * @param ready what else must be there before the first batch
 * @param paces how fast each hole must be filled
 * @param paceHead head of the column of verdicts, with the time that the concrete allows
 * @param paceRule what to do when the pace is not kept
 * @param readyMix true when a truck brings the concrete
 * @param after what is done when the concrete is in
 */
public record PourDaySheet(
    String id,
    String title,
    String strip,
    List<Stop> stops,
    List<Row> holes,
    boolean datum,
    boolean steel,
    boolean tube,
    List<Tick> lifts,
    List<Tick> insets,
    List<Tick> widenings,
    List<Tick> ready,
    List<Pace> paces,
    String paceHead,
    String paceRule,
    boolean readyMix,
    List<Tick> after)
    implements Sheet {

  /**
   * A hole: depth to the underside of its concrete from the ground and from the datum line, cover
   * of its steel beside and under, height of its top; empty where there is none.
   */
  public record Row(
      String name,
      String mark,
      String depth,
      String datum,
      String cover,
      boolean tube,
      String top) {}

  /** The pace of holes that are poured alike; its verdict and what to do about it. */
  public record Pace(
      String marks,
      String amount,
      String batches,
      String each,
      String minutes,
      String half,
      String verdict) {}

  /** Whether a day pours at all. */
  static boolean isWanted(WorkDay day) {
    return !day.poured().isEmpty();
  }

  /** Makes the sheet of a day. */
  static PourDaySheet of(Packet packet, Writing writing, WorkDay day) {
    PourDayRows rows = new PourDayRows(packet, writing, day);
    List<Row> holes = rows.holes();
    return new PourDaySheet(
        rows.id(),
        rows.title(),
        rows.strip(),
        rows.stops(),
        holes,
        holes.stream().anyMatch(row -> !row.datum().isEmpty()),
        holes.stream().anyMatch(row -> !row.cover().isEmpty()),
        holes.stream().anyMatch(Row::tube),
        rows.lifts(),
        rows.insets(),
        rows.widenings(),
        rows.ready(),
        rows.paces(),
        rows.window("verdict"),
        rows.window("pace-rule"),
        ConcretePlanSheet.isReadyMix(packet),
        rows.after());
  }
}
