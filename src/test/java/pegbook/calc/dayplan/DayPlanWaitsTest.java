package pegbook.calc.dayplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pegbook.calc.dayplan.DayPlan.Hold;
import pegbook.calc.dayplan.DayPlan.Link;
import pegbook.calc.dayplan.DayPlan.Order;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.job.DaySpan;
import pegbook.job.Field;
import pegbook.job.Plan;
import pegbook.measure.Duration;
import pegbook.testing.FillJob;

/**
 * What the days wait for: offices that work on weekdays, a machine's date, a deadline. Dates
 * checked by hand against the calendar of May 2027: the 1st is a Saturday.
 */
class DayPlanWaitsTest {
  private static final LocalDate SATURDAY = LocalDate.of(2027, 5, 8);

  private final FillJob of = new FillJob();
  private final List<Task> tasks = new ArrayList<>();

  private Optional<Plan.Machine> machine = Optional.empty();
  private Optional<LocalDate> deadline = Optional.empty();
  private Optional<DaySpan> valid = Optional.empty();
  private Plan.Looks looks = Plan.Looks.STEEL;
  private int rainDays = 0;
  private final List<String> dug = new ArrayList<>();

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

  /** Four holes of 5 h, filled in 1 h, poured in 2 h; two people of 6 h at weekends. */
  @BeforeEach
  void fourHoles() {
    of.start = Optional.of(SATURDAY);
    of.dig.utilities = Optional.of(may(6));
    of.dig.issued = Optional.of(LocalDate.of(2027, 4, 12));
    add(Task.Kind.MARK_OUT, "", 1);
    add(Task.Kind.PROVE, "", 0.5);
    add(Task.Kind.SET_PEGS, "", 0.5);
    for (int i = 1; i <= 4; i++) {
      of.with(of.hole("S" + i, 18, 40, 4, 6));
      add(Task.Kind.DIG, "S" + i, 5);
      add(Task.Kind.CARRY_SPOIL, "S" + i, 0.5);
    }
    for (int i = 1; i <= 4; i++) {
      add(Task.Kind.GRAVEL, "S" + i, 0.5);
      add(Task.Kind.STEEL, "S" + i, 0.5);
      add(Task.Kind.POUR, "S" + i, 2);
      add(Task.Kind.STRIP, "S" + i, 0.25);
    }
  }

  private DayPlan plan() {
    of.plan =
        new Plan(
            rainDays,
            machine,
            new Plan.Utility(new DaySpan(3, true), valid),
            new Plan.Inspection(new DaySpan(2, true), looks),
            new DaySpan(7, false),
            deadline,
            List.of());
    return DayPlanCalculator.calculate(of.job(), of.holes, tasks, dug);
  }

  /**
   * The second lift waits for the first to set, its joint for the same; neither is cut, however
   * little of a day is left.
   */
  @Test
  void theSecondLiftComesOnALaterDay() {
    add(Task.Kind.FIRST_LIFT, "S1", 5);
    add(Task.Kind.JOINT, "S1", 0.5);
    DayPlan plan = plan();
    WorkDay lift =
        plan.days().stream().filter(day -> day.has(Task.Kind.FIRST_LIFT)).findFirst().orElseThrow();
    WorkDay joint =
        plan.days().stream().filter(day -> day.has(Task.Kind.JOINT)).findFirst().orElseThrow();
    WorkDay second =
        plan.days().stream()
            .filter(day -> day.holes(Task.Kind.POUR).contains("S1"))
            .findFirst()
            .orElseThrow();
    assertThat(lift.poured()).contains("S1");
    assertThat(lift.pour("S1")).isEqualTo(Task.Kind.FIRST_LIFT);
    assertThat(lift.openOvernight()).as("half filled").contains("S1");
    assertThat(joint.number()).isGreaterThan(lift.number());
    assertThat(second.number()).isGreaterThanOrEqualTo(joint.number());
    assertThat(second.pour("S1")).isEqualTo(Task.Kind.POUR);
    assertThat(plan.days().stream().flatMap(day -> day.portions().stream()))
        .filteredOn(portion -> Task.POURS.contains(portion.kind()))
        .noneMatch(portion -> portion.continued() || portion.unfinished());
  }

  private static LocalDate first(DayPlan plan, Task.Kind kind) {
    return plan.days().stream()
        .filter(day -> day.has(kind))
        .findFirst()
        .flatMap(WorkDay::date)
        .orElseThrow();
  }

  private static Hold hold(DayPlan plan, Wait kind) {
    return plan.holds().stream().filter(hold -> hold.kind() == kind).findFirst().orElseThrow();
  }

  private static Finding finding(DayPlan plan, String id) {
    return plan.findings().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<String> found(DayPlan plan) {
    return plan.findings().stream().map(Finding::id).toList();
  }

  /** 2 + 22 h of digging and 4 h of filling: Sat, Sun, and 4 h on the next Saturday. */
  @Test
  void theInspectorComesOnAWeekdayBetweenSteelAndPour() {
    DayPlan plan = plan();
    Order one = plan.orders().get(0);
    assertThat(one.lots()).isEqualTo(1);
    assertThat(one.lastPour()).contains(may(22));
    // In two lots the first is looked at after the first weekend, and poured on the second.
    assertThat(plan.orders().get(1).chosen()).isTrue();
    assertThat(plan.holds())
        .filteredOn(hold -> hold.kind() == Wait.INSPECTION)
        .extracting(
            Hold::marks, hold -> hold.call().orElseThrow(), hold -> hold.date().orElseThrow())
        .containsExactly(
            tuple(List.of("S1", "S2"), may(6), may(10)),
            tuple(List.of("S3", "S4"), may(13), may(17)));
    assertThat(hold(plan, Wait.LOAD).date()).contains(may(29));
    assertThat(plan.finish().orElseThrow().planned()).isEqualTo(may(29));
  }

  @Test
  void aCrewOfWeekdaysPoursOnTheDayOfTheVisit() {
    of.workDays =
        List.of(
            DayOfWeek.MONDAY,
            DayOfWeek.TUESDAY,
            DayOfWeek.WEDNESDAY,
            DayOfWeek.THURSDAY,
            DayOfWeek.FRIDAY);
    of.start = Optional.of(may(10));
    DayPlan plan = plan();
    assertThat(plan.orders().get(0).lastPour()).contains(may(13));
    assertThat(plan.holds())
        .filteredOn(hold -> hold.kind() == Wait.INSPECTION)
        .extracting(hold -> hold.date().orElseThrow())
        .containsExactly(may(11), may(12), may(13));
    WorkDay pour = plan.days().stream().filter(day -> day.has(Task.Kind.POUR)).findFirst().get();
    assertThat(pour.portions().get(0).kind()).isEqualTo(Task.Kind.INSPECTION);
  }

  /**
   * Painted on Saturday, asked on Monday, three work days: Thursday; pegs on the Saturday after.
   */
  @Test
  void noPegAndNoHoleBeforeTheUtilitiesHaveAnswered() {
    of.dig.utilities = Optional.empty();
    DayPlan plan = plan();
    Hold utilities = hold(plan, Wait.UTILITIES);
    assertThat(utilities.call()).contains(may(10));
    assertThat(utilities.date()).contains(may(13));
    assertThat(utilities.afterDay()).isEqualTo(1);
    assertThat(first(plan, Task.Kind.MARK_OUT)).isEqualTo(may(8));
    assertThat(first(plan, Task.Kind.SET_PEGS)).isEqualTo(may(15));
    assertThat(first(plan, Task.Kind.DIG)).isEqualTo(may(15));
  }

  @Test
  void confirmedLaterThanTheStartOnlyPaintComesFirst() {
    of.dig.utilities = Optional.of(may(9));
    DayPlan plan = plan();
    assertThat(first(plan, Task.Kind.PROVE)).isEqualTo(may(8));
    assertThat(first(plan, Task.Kind.DIG)).isEqualTo(may(9));
  }

  @Test
  void marksThatRunOutAreFound() {
    valid = Optional.of(new DaySpan(8, false));
    Finding old = finding(plan(), "utility-marks-run-out");
    assertThat(old.kind()).isEqualTo(Kind.ASK);
    assertThat(old.arguments()).containsEntry("until", Argument.of(may(14)));
    assertThat(old.subjects()).contains("S4").doesNotContain("S1");
    valid = Optional.empty();
    assertThat(found(plan())).doesNotContain("utility-marks-run-out");
  }

  @Test
  void anOpenHoleLookComesBeforeTheGravel() {
    looks = Plan.Looks.OPEN_HOLE_AND_STEEL;
    DayPlan plan = plan();
    Hold look = hold(plan, Wait.LOOK);
    LocalDate dug = plan.days().get(look.afterDay() - 1).date().orElseThrow();
    assertThat(look.date().orElseThrow()).isAfter(dug);
    assertThat(first(plan, Task.Kind.GRAVEL)).isAfterOrEqualTo(look.date().orElseThrow());
    WorkDay gravel =
        plan.days().stream().filter(day -> day.has(Task.Kind.GRAVEL)).findFirst().get();
    List<Task.Kind> kinds = gravel.portions().stream().map(Portion::kind).toList();
    assertThat(kinds.indexOf(Task.Kind.LOOK)).isLessThan(kinds.indexOf(Task.Kind.GRAVEL));
  }

  @Test
  void theChainEndsWithCuringAndBeginsWithTheFirstDay() {
    DayPlan plan = plan();
    assertThat(plan.chain().get(0)).isEqualTo(new Link(Optional.empty(), 1, 3));
    assertThat(plan.chain())
        .extracting(Link::kind)
        .containsExactly(
            Optional.empty(),
            Optional.of(Wait.INSPECTION),
            Optional.empty(),
            Optional.of(Wait.LOAD));
  }

  @Test
  void rainMovesTheLateEndOnly() {
    DayPlan dry = plan();
    rainDays = 2;
    DayPlan wet = plan();
    assertThat(wet.days()).isEqualTo(dry.days());
    assertThat(wet.finish().orElseThrow().planned()).isEqualTo(dry.finish().get().planned());
    assertThat(wet.finish().orElseThrow().latest()).isAfter(dry.finish().get().latest());
  }

  private void bore() {
    for (int i = 1; i <= 4; i++) {
      add(Task.Kind.BORE, "S" + i, 2);
    }
  }

  private void machine(Plan.Purpose purpose, LocalDate date) {
    machine = Optional.of(new Plan.Machine("auger on a loader", purpose, date));
  }

  @Test
  void theMachinesDayIsWorkedOnAndDiggingWaitsForIt() {
    bore();
    machine(Plan.Purpose.DIGGING, may(12));
    DayPlan plan = plan();
    assertThat(first(plan, Task.Kind.BORE)).isEqualTo(may(12));
    assertThat(first(plan, Task.Kind.DIG)).isEqualTo(may(12));
    assertThat(first(plan, Task.Kind.SET_PEGS)).isEqualTo(may(8));
    assertThat(found(plan))
        .contains("machine-outside-work-days")
        .doesNotContain("machine-too-early");
    assertThat(plan.days()).filteredOn(day -> day.has(Task.Kind.BORE)).hasSize(1);
  }

  @Test
  void aMachineBeforeTheMarkingIsStopped() {
    bore();
    of.dig.utilities = Optional.of(may(13));
    machine(Plan.Purpose.DIGGING, may(9));
    Finding early = finding(plan(), "machine-too-early");
    assertThat(early.kind()).isEqualTo(Kind.STOP);
    assertThat(early.arguments()).containsEntry("possible", Argument.of(may(15)));
  }

  @Test
  void moreThanAMachineCanDoIsSaid() {
    for (int i = 1; i <= 4; i++) {
      add(Task.Kind.BORE, "S" + i, 5);
    }
    machine(Plan.Purpose.DIGGING, may(9));
    assertThat(finding(plan(), "machine-day-too-short").subjects()).contains("S4");
  }

  @Test
  void aTruckThatComesBeforeTheSteelIsStopped() {
    machine(Plan.Purpose.POURING, may(15));
    Finding early = finding(plan(), "machine-too-early");
    assertThat(early.arguments()).containsKey("possible");
    machine(Plan.Purpose.POURING, may(22));
    assertThat(found(plan())).doesNotContain("machine-too-early");
    assertThat(first(plan(), Task.Kind.POUR)).isEqualTo(may(22));
  }

  @Test
  void aDeadlineThatIsMissedSaysByHowMuchAndWhatWouldFit() {
    deadline = Optional.of(may(24));
    Finding missed = finding(plan(), "deadline-missed-people");
    assertThat(missed.arguments())
        .containsEntry("planned", Argument.of(may(29)))
        .containsEntry("days", Argument.of(5))
        .containsKeys("people", "fits");
    deadline = Optional.of(may(10));
    assertThat(found(plan())).contains("deadline-missed");
    deadline = Optional.of(may(29));
    assertThat(found(plan())).doesNotContain("deadline-missed", "deadline-at-risk");
    rainDays = 3;
    assertThat(found(plan())).contains("deadline-at-risk");
  }

  @Test
  void daysBeforeTheIssueAreFoundUnlessWorkIsWrittenDown() {
    of.dig.issued = Optional.of(may(20));
    assertThat(found(plan())).contains("start-before-issue");
    of.dig.field = new Field(List.of(), List.of(Field.Dug.inHours("S1", new Duration(4))));
    assertThat(found(plan())).doesNotContain("start-before-issue");
  }

  private void dig(String mark) {
    dug.add(mark);
    tasks.removeIf(
        task ->
            task.kind().compareTo(Task.Kind.SET_PEGS) <= 0
                || (task.mark().equals(Optional.of(mark))
                    && task.kind().compareTo(Task.Kind.CARRY_SPOIL) <= 0));
    List<Field.Dug> all = dug.stream().map(one -> Field.Dug.inHours(one, new Duration(4))).toList();
    of.dig.field = new Field(List.of(), all);
  }

  /** Two of four are dug: the look into them comes before anything is dug, and they go first. */
  @Test
  void holesThatAreDugAreFilledFirstAndNotDugAgain() {
    looks = Plan.Looks.OPEN_HOLE_AND_STEEL;
    of.dig.issued = Optional.of(may(5));
    dig("S1");
    dig("S3");
    DayPlan plan = plan();
    assertThat(plan.dug()).containsExactly("S1", "S3");
    assertThat(plan.days().get(0).holes(Task.Kind.DIG)).containsExactly("S2", "S4");
    assertThat(plan.days().get(0).openOvernight()).contains("S1", "S3");
    Order two = plan.orders().stream().filter(order -> order.lots() == 2).findFirst().get();
    assertThat(two.lastPour()).isPresent();
    List<Hold> looked = plan.holds().stream().filter(any -> any.kind() == Wait.LOOK).toList();
    assertThat(looked.get(0).date().orElseThrow()).isAfterOrEqualTo(may(10));
    assertThat(plan.holds())
        .noneMatch(any -> any.kind() == Wait.UTILITIES && any.call().isPresent());
  }

  /** All are dug, and steel and gravel lie in them: only the inspector is waited for. */
  @Test
  void onlyThePourIsLeft() {
    List.of("S1", "S2", "S3", "S4").forEach(this::dig);
    tasks.removeIf(task -> task.kind() == Task.Kind.GRAVEL || task.kind() == Task.Kind.STEEL);
    of.dig.issued = Optional.of(may(7));
    DayPlan plan = plan();
    Hold visit = hold(plan, Wait.INSPECTION);
    assertThat(visit.afterDay()).isZero();
    assertThat(visit.date()).as("two office days after the 7th").contains(may(11));
    assertThat(first(plan, Task.Kind.POUR)).isEqualTo(may(15));
    assertThat(plan.chain().get(0).kind()).contains(Wait.INSPECTION);
  }

  /** What is left is not planned before the day of issue. */
  @Test
  void whatIsLeftBeginsOnTheDayOfIssue() {
    dig("S1");
    of.dig.issued = Optional.of(may(20));
    DayPlan plan = plan();
    assertThat(plan.days().get(0).date()).contains(may(22));
    Finding moved = finding(plan, "rest-from-issue");
    assertThat(moved.arguments()).containsEntry("issued", Argument.of(may(20)));
    of.dig.issued = Optional.of(may(7));
    assertThat(found(plan())).doesNotContain("rest-from-issue");
    assertThat(plan().days().get(0).date()).contains(may(8));
  }

  /** A trench that is dug after the marks ran out is no less a danger than a hole. */
  @Test
  void marksMustHoldForTheTrenchToo() {
    valid = Optional.of(new DaySpan(10, false));
    assertThat(found(plan())).doesNotContain("utility-marks-run-out");
    add(Task.Kind.TRENCH, "", 30);
    assertThat(finding(plan(), "utility-marks-run-out").subjects()).isEmpty();
  }

  @Test
  void onePersonAtDeepHolesIsAsked() {
    of.people = 1;
    assertThat(found(plan())).doesNotContain("alone-at-deep-holes");
    of.with(of.hole("S5", 18, 44, 4, 6));
    Finding alone = finding(plan(), "alone-at-deep-holes");
    assertThat(alone.subjects()).as("44 and 4 in are 4 ft").containsExactly("S5");
  }

  /** The notice runs from the day of issue: a packet of the eve moves the visit. */
  @Test
  void theVisitIsNotBeforeItsNotice() {
    of.dig.issued = Optional.of(may(14));
    assertThat(hold(plan(), Wait.INSPECTION).date()).contains(may(18));
  }
}
