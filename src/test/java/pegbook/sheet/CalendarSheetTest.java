package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.dayplan.DayPlan;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.testing.TrialPacket;

/** The calendar's words and bars against the plan. */
class CalendarSheetTest {
  private static final TrialPacket DECK = TrialPacket.example(Path.of("input/sky-deck.json"));

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static CalendarSheet sheet(TrialPacket trial) {
    return CalendarSheet.of(trial.packet(), trial.writing());
  }

  /** By the calendar of May 2027: the sky deck begins on Saturday the 8th. */
  @Test
  void theLeadNamesBothEnds() {
    DayPlan plan = DECK.packet().dayPlan();
    assertThat(sheet(DECK).lead())
        .contains("Sat 2027-05-08", plan.finish().orElseThrow().planned().toString())
        .contains(plan.finish().orElseThrow().latest().toString());
    assertThat(sheet(DECK).chain()).contains("crew hours on days 1 to", "7 days of curing");
  }

  @Test
  void everyHoldPointHasItsReason() {
    assertThat(sheet(DECK).holds())
        .extracting(CalendarSheet.HoldRow::what)
        .containsExactly(
            "Buried lines marked and confirmed",
            "Inspector's visit",
            "Trench looked at before it is filled",
            "Forms off",
            "Load");
    assertThat(sheet(DECK).holds()).allSatisfy(row -> assertThat(row.why()).endsWith("."));
  }

  @ParameterizedTest
  @MethodSource("packets")
  void theBarsHaveAColumnForEveryDay(TrialPacket trial) {
    CalendarSheet sheet = sheet(trial);
    List<WorkDay> days = trial.packet().dayPlan().days();
    assertThat(sheet.bars()).isNotEmpty();
    long black =
        sheet.bars().stream()
            .flatMap(drawing -> drawing.elements().stream())
            .filter(CalendarSheetTest::isBlackBox)
            .count();
    long worked = days.stream().mapToLong(CalendarSheetTest::linesWorkedOn).sum();
    long ends =
        CalendarSheet.merged(trial.packet().dayPlan().holds()).stream()
            .filter(hold -> days.get(0).date().isPresent() && hold.kind() != Wait.STRIP)
            .filter(
                hold ->
                    hold.date()
                        .filter(date -> !date.isBefore(days.get(0).date().orElseThrow()))
                        .isPresent())
            .count();
    assertThat(black).isEqualTo(worked + ends);
    for (Drawing drawing : sheet.bars()) {
      assertThat(drawing.widthMm()).isLessThanOrEqualTo(trial.writing().page().widthMm() + 0.01);
    }
  }

  private static boolean isBlackBox(Element element) {
    return element instanceof Element.Path path
        && path.fill().filter(ink -> ink == Ink.BLACK).isPresent();
  }

  /** The lines of the picture on which a day has a bar. */
  private static long linesWorkedOn(WorkDay day) {
    return day.portions().stream()
        .map(
            portion ->
                switch (portion.kind()) {
                  case MARK_OUT, PROVE -> "mark";
                  case DIG, CARRY_SPOIL -> "dig";
                  case GRAVEL, FORM, STEEL -> "fill";
                  case FIRST_LIFT, JOINT, POUR -> "pour";
                  case FRAME, BOARDS -> "floor";
                  case TRENCH, LAY_PIPE -> "trench";
                  case LOOK, INSPECTION, TRENCH_INSPECTION -> "";
                  default -> portion.kind().name();
                })
        .filter(line -> !line.isEmpty())
        .distinct()
        .count();
  }

  @Test
  void entriesStandInTheOrderOfTheDays() {
    CalendarEntries entries = CalendarEntries.of(DECK.packet(), DECK.writing());
    List<LocalDate> dates = entries.entries().stream().map(CalendarEntries.Entry::date).toList();
    assertThat(dates).isSorted();
    assertThat(entries.entries())
        .extracting(CalendarEntries.Entry::id)
        .contains("day-1", "inspection-1", "call-inspection-1", "load-1");
  }
}
