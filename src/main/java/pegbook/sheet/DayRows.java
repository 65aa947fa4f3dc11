package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pegbook.calc.concreteplan.ConcretePlan.Lift;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.DigRow;
import pegbook.sheet.DaySheet.FillLine;
import pegbook.sheet.DaySheet.FillRow;
import pegbook.sheet.DaySheet.FillTable;
import pegbook.sheet.DaySheet.PourRow;

/**
 * The rows of a day's tables.
 *
 * @param packet whose day
 * @param writing words and formats
 * @param day the day
 */
record DayRows(Packet packet, Writing writing, WorkDay day) {

  private Hole hole(String mark) {
    return packet.depthTargets().holes().stream()
        .filter(hole -> hole.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole " + mark));
  }

  /** As it is filled: as it was dug, where that is known. */
  private Hole filled(String mark) {
    return packet.asDug().holes().stream()
        .filter(hole -> hole.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole " + mark));
  }

  private String name(String mark) {
    return "day-" + day.number() + "." + mark;
  }

  List<DigRow> dig() {
    return day.holes(Task.Kind.DIG).stream().map(this::dig).toList();
  }

  private DigRow dig(String mark) {
    Formats formats = writing.formats();
    Hole hole = hole(mark);
    return new DigRow(
        name(mark),
        mark,
        remark(mark),
        formats.size(hole.diameter()),
        formats.tape(hole.dug()),
        hole.datumToBottom().map(formats::tape).orElse(""),
        isWithDigging(mark) ? formats.size(filled(mark).gravel()) : "");
  }

  /** Whether the hole was begun before, or goes on on another day. */
  private String remark(String mark) {
    List<Portion> portions =
        day.portions().stream()
            .filter(portion -> portion.kind() == Task.Kind.DIG)
            .filter(portion -> portion.mark().equals(Optional.of(mark)))
            .toList();
    boolean continued =
        packet.workEstimate().begun().contains(mark)
            || portions.stream().anyMatch(Portion::continued);
    boolean unfinished = portions.stream().anyMatch(Portion::unfinished);
    if (!continued && !unfinished) {
      return "";
    }
    String key = continued && unfinished ? "goes-on" : continued ? "finish" : "begin";
    return writing.texts().say("day-plan.remark." + key);
  }

  /** Whether a hole's gravel is written down beside its digging: the same day, and no steel. */
  private boolean isWithDigging(String mark) {
    return day.holes(Task.Kind.DIG).contains(mark)
        && day.holes(Task.Kind.GRAVEL).contains(mark)
        && !day.holes(Task.Kind.STEEL).contains(mark);
  }

  List<FillRow> fill() {
    return Stream.concat(day.holes(Task.Kind.GRAVEL).stream(), day.holes(Task.Kind.STEEL).stream())
        .distinct()
        .filter(mark -> !isWithDigging(mark))
        .map(this::fill)
        .toList();
  }

  /**
   * The tables in which they stand: one where a hole gets both; else one for gravel and one for
   * steel, with two holes on a line where there are two.
   */
  List<FillTable> fillTables() {
    List<FillRow> rows = fill();
    if (rows.stream().anyMatch(row -> !row.gravel().isEmpty() && !row.steel().isEmpty())) {
      List<FillLine> lines = rows.stream().map(row -> new FillLine(List.of(row))).toList();
      return List.of(new FillTable(lines, true, true, false));
    }
    List<FillRow> gravel = rows.stream().filter(row -> !row.gravel().isEmpty()).toList();
    List<FillRow> steel = rows.stream().filter(row -> !row.steel().isEmpty()).toList();
    return Stream.of(table(gravel, true, false), table(steel, false, true))
        .filter(table -> !table.lines().isEmpty())
        .toList();
  }

  private static FillTable table(List<FillRow> rows, boolean gravel, boolean steel) {
    boolean twoAcross = rows.size() > 1;
    List<FillLine> lines =
        twoAcross ? twoAcross(rows) : rows.stream().map(row -> new FillLine(List.of(row))).toList();
    return new FillTable(lines, gravel, steel, twoAcross);
  }

  /** Two rows on a line; the left column is read down first. */
  private static List<FillLine> twoAcross(List<FillRow> rows) {
    FillRow none = new FillRow("", "", "", "", "", "");
    int lines = (rows.size() + 1) / 2;
    return IntStream.range(0, lines)
        .mapToObj(
            line ->
                new FillLine(
                    List.of(
                        rows.get(line),
                        line + lines < rows.size() ? rows.get(line + lines) : none)))
        .toList();
  }

  private FillRow fill(String mark) {
    boolean gravel = day.holes(Task.Kind.GRAVEL).contains(mark);
    Optional<Cage> cage =
        packet.steelPlan().cages().stream()
            .filter(each -> each.marks().contains(mark))
            .filter(each -> day.holes(Task.Kind.STEEL).contains(mark))
            .findFirst();
    return new FillRow(
        name(mark),
        mark,
        gravel ? writing.formats().size(filled(mark).gravel()) : "",
        gravel ? writing.formats().volume(packet.concretePlan().fill(mark).gravelLoose()) : "",
        cage.map(this::steel).orElse(""),
        cage.map(this::cover).orElse(""));
  }

  private String steel(Cage cage) {
    return String.join(
        " + ", cage.pieces().stream().map(piece -> piece.count() + " " + piece.barMark()).toList());
  }

  private String cover(Cage cage) {
    return writing
        .texts()
        .say(
            "day-plan.cover",
            Map.of(
                "side", writing.formats().size(cage.cover()),
                "under", writing.formats().size(cage.bottomCover())));
  }

  List<PourRow> pour() {
    return day.poured().stream().map(this::pour).toList();
  }

  private PourRow pour(String mark) {
    Formats formats = writing.formats();
    Lift lift = packet.concretePlan().fill(mark).lift(day.pour(mark));
    return new PourRow(
        name(mark),
        mark,
        ConcretePlanSheet.isByVolume(packet)
            ? formats.volume(lift.poured())
            : formats.count(lift.bags()),
        lift.kind() == Task.Kind.FIRST_LIFT
            ? writing.texts().say("day-plan.joint")
            : formats.size(hole(mark).top()),
        formats.number(lift.pour().least().minutes(), 0)
            + " – "
            + formats.number(lift.pour().most().minutes(), 0));
  }
}
