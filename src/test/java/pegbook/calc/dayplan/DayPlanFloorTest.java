package pegbook.calc.dayplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Task;
import pegbook.job.DaySpan;
import pegbook.job.Plan;
import pegbook.measure.Duration;
import pegbook.published.Citation;
import pegbook.testing.FillJob;
import pegbook.testing.PowerJob;

/**
 * What comes beside and after the holes: floor, trench, forms, deadline. Two people of 6 h at
 * weekends from Saturday 8 May 2027; 2 h of marking, four holes of 5.5 h, filled in 1 h, poured in
 * 2 h. In two lots S1 and S2 are filled by the 9th, looked at on Monday the 10th and poured on the
 * 15th, S3 and S4 a week later; a footing bears after 7 days.
 */
class DayPlanFloorTest {
  private final FillJob of = new FillJob();
  private final List<Task> tasks = new ArrayList<>();
  private Optional<LocalDate> deadline = Optional.empty();
  private Optional<DaySpan> valid = Optional.empty();

  private static LocalDate may(int day) {
    return LocalDate.of(2027, 5, day);
  }

  private void add(Task.Kind kind, String mark, double hours) {
    tasks.add(
        new Task(
            kind,
            mark.isEmpty() ? Optional.empty() : Optional.of(mark),
            new Duration(hours),
            new Duration(hours)));
  }

  @BeforeEach
  void fourHoles() {
    of.start = Optional.of(may(8));
    of.dig.utilities = Optional.of(may(6));
    of.dig.issued = Optional.of(LocalDate.of(2027, 4, 12));
    add(Task.Kind.MARK_OUT, "", 2);
    for (int i = 1; i <= 4; i++) {
      of.with(of.hole("S" + i, 18, 40, 4, 6));
      add(Task.Kind.DIG, "S" + i, 5);
      add(Task.Kind.CARRY_SPOIL, "S" + i, 0.5);
      add(Task.Kind.GRAVEL, "S" + i, 0.5);
      add(Task.Kind.STEEL, "S" + i, 0.5);
      add(Task.Kind.POUR, "S" + i, 2);
      add(Task.Kind.STRIP, "S" + i, 0.25);
    }
  }

  private DayPlan plan() {
    of.plan =
        new Plan(
            0,
            Optional.empty(),
            new Plan.Utility(new DaySpan(3, true), valid),
            new Plan.Inspection(new DaySpan(2, true), Plan.Looks.STEEL),
            new DaySpan(7, false),
            deadline,
            List.of());
    return DayPlanCalculator.calculate(of.job(), of.holes, tasks, List.of());
  }

  private static List<LocalDate> dates(DayPlan plan, Task.Kind kind) {
    return plan.days().stream()
        .filter(day -> day.has(kind))
        .map(day -> day.date().orElseThrow())
        .toList();
  }

  private static Hold hold(DayPlan plan, Wait kind) {
    return plan.holds().stream().filter(hold -> hold.kind() == kind).findFirst().orElseThrow();
  }

  /** Poured on the 15th and 22nd, borne on the 29th: 10 h of frame, 6 h of boards from then on. */
  @Test
  void theFloorWaitsForTheLastFooting() {
    add(Task.Kind.FRAME, "", 10);
    add(Task.Kind.BOARDS, "", 6);
    DayPlan plan = plan();
    assertThat(dates(plan, Task.Kind.POUR)).containsExactly(may(15), may(22));
    assertThat(hold(plan, Wait.LOAD).date()).contains(may(29));
    assertThat(dates(plan, Task.Kind.FRAME)).containsExactly(may(29));
    assertThat(dates(plan, Task.Kind.BOARDS)).containsExactly(may(29), may(30));
    Portion begun = plan.days().get(plan.days().size() - 2).portions().get(1);
    assertThat(begun.least().hours()).isEqualTo(2);
    assertThat(begun.unfinished()).isTrue();
  }

  /** Without dates nothing is known of curing: the floor comes on a day after the last pour. */
  @Test
  void withoutDatesTheFloorComesAfterThePour() {
    of.start = Optional.empty();
    add(Task.Kind.FRAME, "", 1);
    DayPlan plan = plan();
    int poured = 0;
    int framed = 0;
    for (WorkDay day : plan.days()) {
      poured = day.has(Task.Kind.POUR) ? day.number() : poured;
      framed = day.has(Task.Kind.FRAME) ? day.number() : framed;
    }
    assertThat(framed).isGreaterThan(poured);
    assertThat(plan.days()).extracting(WorkDay::number).first().isEqualTo(1);
  }

  /** Nothing is poured: the floor stands on what is there. */
  @Test
  void aFloorAloneNeedsNoPour() {
    tasks.clear();
    add(Task.Kind.FRAME, "", 5);
    add(Task.Kind.BOARDS, "", 3);
    DayPlan plan = plan();
    assertThat(plan.days()).hasSize(1);
    assertThat(plan.days().get(0).portions())
        .extracting(Portion::kind)
        .containsExactly(Task.Kind.FRAME, Task.Kind.BOARDS);
    assertThat(plan.holds()).isEmpty();
    assertThat(plan.finish()).isEmpty();
  }

  /** Forms come off on a day after the pour, which is held to the day after it at least. */
  @Test
  void formsComeOffTheDayAfter() {
    DayPlan plan = plan();
    Hold strip = hold(plan, Wait.STRIP);
    assertThat(strip.date()).contains(may(23));
    assertThat(plan.days().get(strip.afterDay() - 1).date()).contains(may(22));
    assertThat(strip.call()).isEmpty();
    WorkDay last = plan.days().get(plan.days().size() - 1);
    assertThat(last.date()).contains(may(23));
    assertThat(last.holes()).containsExactly("S3", "S4");
    assertThat(last.openHoles()).as("a stripped footing is no hole").isEmpty();
    tasks.removeIf(task -> task.kind() == Task.Kind.STRIP);
    assertThat(plan().holds()).noneMatch(hold -> hold.kind() == Wait.STRIP);
  }

  /** On a day with holes dug and filled each is named once. */
  @Test
  void theHolesOfADayAreNamedOnce() {
    WorkDay day = plan().days().get(0);
    assertThat(day.holes()).containsExactly("S1", "S2");
    assertThat(day.openHoles()).containsExactly("S1", "S2");
    assertThat(day.poured()).isEmpty();
    assertThat(day.isTrenching()).isFalse();
    assertThat(day.trenchOpenOvernight()).isFalse();
  }

  private void trench() {
    of.power = PowerJob.imperial().read().power();
    add(Task.Kind.TRENCH, "", 6);
    add(Task.Kind.LAY_PIPE, "", 3);
    add(Task.Kind.BACKFILL, "", 3);
  }

  /** The trench is dug where holes wait, shown to the inspector with its pipe, and then filled. */
  @Test
  void theTrenchStaysOpenUntilItIsLookedAt() {
    trench();
    DayPlan plan = plan();
    Hold look = hold(plan, Wait.TRENCH_INSPECTION);
    assertThat(look.marks()).isEmpty();
    LocalDate laid = dates(plan, Task.Kind.LAY_PIPE).get(0);
    LocalDate filled = dates(plan, Task.Kind.BACKFILL).get(0);
    assertThat(look.date().orElseThrow()).isAfter(laid).isBeforeOrEqualTo(filled);
    assertThat(look.date().orElseThrow()).isEqualTo(may(17));
    for (WorkDay day : plan.days()) {
      LocalDate date = day.date().orElseThrow();
      boolean open = !date.isBefore(dates(plan, Task.Kind.TRENCH).get(0)) && date.isBefore(filled);
      assertThat(day.trenchOpenOvernight()).as(date.toString()).isEqualTo(open);
      assertThat(day.isTrenching())
          .as(date.toString())
          .isEqualTo(
              day.has(Task.Kind.TRENCH)
                  || day.has(Task.Kind.LAY_PIPE)
                  || day.has(Task.Kind.BACKFILL));
    }
    WorkDay filling =
        plan.days().stream().filter(day -> day.has(Task.Kind.BACKFILL)).findFirst().orElseThrow();
    List<Task.Kind> kinds = filling.portions().stream().map(Portion::kind).toList();
    assertThat(kinds.indexOf(Task.Kind.TRENCH_INSPECTION))
        .isNotNegative()
        .isLessThan(kinds.indexOf(Task.Kind.BACKFILL));
  }

  /** Pipe that lies already is shown to nobody here: filling waits for nothing. */
  @Test
  void aTrenchWithoutWorkBeforeItsFillingWaitsForNobody() {
    of.power = PowerJob.imperial().read().power();
    tasks.clear();
    add(Task.Kind.BACKFILL, "", 3);
    DayPlan plan = plan();
    assertThat(dates(plan, Task.Kind.BACKFILL)).containsExactly(may(8));
    assertThat(plan.holds()).isEmpty();
  }

  private Finding finding(String id) {
    return plan().findings().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * Planned for the 29th. Three people dig and fill all by the 9th, pour on the 15th and are ready
   * on the 22nd; as planned two of four footings bear by then, none a day before.
   */
  @Test
  void howManyFootingsFit() {
    deadline = Optional.of(may(22));
    assertThat(finding("deadline-missed-people").arguments())
        .contains(
            entry("people", Argument.of(3)),
            entry("fits", Argument.of(2)),
            entry("holes", Argument.of(4)),
            entry("days", Argument.of(7)));
    deadline = Optional.of(may(21));
    assertThat(finding("deadline-missed").arguments())
        .contains(entry("fits", Argument.of(0)), entry("days", Argument.of(8)))
        .doesNotContainKey("people");
  }

  /** Marks of the utilities hold so long by the job's word, else by the published age. */
  @Test
  void whoSaysHowLongMarksHold() {
    valid = Optional.of(new DaySpan(2, false));
    Finding old = finding("utility-marks-run-out");
    assertThat(old.citations()).containsExactly(Citation.COMMON_PRACTICE);
    assertThat(old.subjects()).as("S2 is done on the 9th").containsExactly("S2", "S3", "S4");
    assertThat(old.arguments()).containsEntry("until", Argument.of(may(8)));
  }

  /** Least and most of all tasks, and the crew's hours, are printed as worked. */
  @Test
  void theSumsAreKept() {
    tasks.clear();
    tasks.add(new Task(Task.Kind.DIG, Optional.of("S1"), new Duration(2), new Duration(5)));
    tasks.add(new Task(Task.Kind.DIG, Optional.of("S2"), new Duration(1), new Duration(4)));
    DayPlan plan = plan();
    assertThat(plan.workings()).hasSize(2);
    assertThat(plan.workings().get(0).result()).isEqualTo(12);
    assertThat(plan.workings().get(1).inputs()).containsExactly(3.0, 9.0);
  }

  /** All well: one weekend; all badly: a third one. The planned end lies between. */
  @Test
  void theEndLiesBetweenItsBounds() {
    tasks.replaceAll(
        task ->
            task.kind() == Task.Kind.DIG
                ? new Task(task.kind(), task.mark(), new Duration(1), new Duration(9))
                : task);
    DayPlan plan = plan();
    assertThat(plan.finish().orElseThrow().planned()).isEqualTo(may(29));
    assertThat(plan.finish().orElseThrow().earliest()).isBefore(may(29));
    assertThat(plan.finish().orElseThrow().latest()).isAfterOrEqualTo(may(29));
  }
}
