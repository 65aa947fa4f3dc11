package pegbook.calc.dayplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Task;
import pegbook.measure.Duration;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class DayPlanCalculatorTest {

  private static Task task(Task.Kind kind, String mark, double least, double most) {
    return new Task(
        kind,
        mark.isEmpty() ? Optional.empty() : Optional.of(mark),
        new Duration(least),
        new Duration(most));
  }

  /**
   * So many holes that take four person-hours to dig, one to fill, two to pour; two people, 6 h.
   */
  private static List<Task> tasks(int holes) {
    List<Task> tasks = new ArrayList<>();
    tasks.add(task(Task.Kind.MARK_OUT, "", 1, 3));
    for (int i = 1; i <= holes; i++) {
      tasks.add(task(Task.Kind.DIG, "S" + i, 3, 5));
    }
    for (int i = 1; i <= holes; i++) {
      tasks.add(task(Task.Kind.GRAVEL, "S" + i, 0.5, 1.5));
    }
    tasks.add(task(Task.Kind.INSPECTION, "", 0, 0));
    for (int i = 1; i <= holes; i++) {
      tasks.add(task(Task.Kind.POUR, "S" + i, 1, 2));
    }
    return tasks;
  }

  private static FillJob job(int holes) {
    FillJob of = new FillJob();
    of.dig.utilities = Optional.of(LocalDate.of(2027, 5, 1));
    for (int i = 1; i <= holes; i++) {
      of.with(of.hole("S" + i, 18, 48, 4, 6));
    }
    return of;
  }

  private static DayPlan plan(FillJob of, List<Task> tasks) {
    return DayPlanCalculator.calculate(of.job(), of.holes, tasks, List.of());
  }

  @Test
  void daysFollowTheOrderOfTheWork() {
    DayPlan plan = plan(job(4), tasks(4));
    assertThat(plan.crewHours().hours()).isEqualTo(12, offset(1e-9));
    // 2 h marking and 16 h digging, 4 h gravel: 12, then 10; the pours, 8 h at worst, on their own.
    assertThat(plan.days()).hasSize(3);
    assertThat(plan.days().get(0).portions())
        .extracting(Portion::kind)
        .containsExactly(Task.Kind.MARK_OUT, Task.Kind.DIG, Task.Kind.DIG, Task.Kind.DIG);
    assertThat(plan.days().get(1).holes(Task.Kind.DIG)).containsExactly("S3", "S4");
    assertThat(plan.days().get(1).holes(Task.Kind.GRAVEL)).containsExactly("S1", "S2", "S3", "S4");
    assertThat(plan.days().get(2).portions().get(0).kind()).isEqualTo(Task.Kind.INSPECTION);
    assertThat(plan.days().get(2).holes(Task.Kind.POUR)).containsExactly("S1", "S2", "S3", "S4");
  }

  @Test
  void aHoleFlowsOverIntoTheNextDay() {
    DayPlan plan = plan(job(4), tasks(4));
    Portion first = plan.days().get(0).portions().get(3);
    Portion rest = plan.days().get(1).portions().get(0);
    assertThat(first.mark()).contains("S3");
    assertThat(first.unfinished()).isTrue();
    assertThat(rest.mark()).contains("S3");
    assertThat(rest.continued()).isTrue();
    assertThat(first.least().plus(rest.least()).hours()).isEqualTo(3, offset(1e-9));
    assertThat(first.most().plus(rest.most()).hours()).isEqualTo(5, offset(1e-9));
  }

  @Test
  void holesStayOpenUntilTheyArePoured() {
    DayPlan plan = plan(job(4), tasks(4));
    assertThat(plan.days().get(0).openOvernight()).containsExactly("S1", "S2", "S3");
    assertThat(plan.days().get(1).openOvernight()).containsExactly("S1", "S2", "S3", "S4");
    assertThat(plan.days().get(2).openOvernight()).isEmpty();
  }

  @Test
  void pouringBeginsOnADayOfItsOwn() {
    DayPlan plan = plan(job(1), tasks(1));
    assertThat(plan.days()).hasSize(2);
    assertThat(plan.days().get(0).has(Task.Kind.POUR)).isFalse();
  }

  @Test
  void aPourIsNeverCut() {
    FillJob of = job(3);
    List<Task> tasks = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      tasks.add(task(Task.Kind.POUR, "S" + i, 4, 7));
    }
    DayPlan plan = plan(of, tasks);
    assertThat(plan.days()).hasSize(3);
    assertThat(plan.days())
        .allSatisfy(day -> assertThat(day.portions()).noneMatch(Portion::unfinished));
  }

  @Test
  void aPourLongerThanADayStops() {
    DayPlan plan = plan(job(1), List.of(task(Task.Kind.POUR, "S1", 8, 13)));
    Finding stop = plan.findings().get(0);
    assertThat(stop.id()).isEqualTo("pour-longer-than-day");
    assertThat(stop.kind()).isEqualTo(Kind.STOP);
    assertThat(stop.subjects()).containsExactly("S1");
  }

  @Test
  void aHoleLongerThanADayIsNoted() {
    DayPlan plan = plan(job(1), List.of(task(Task.Kind.DIG, "S1", 20, 30)));
    assertThat(plan.days()).hasSize(3);
    assertThat(plan.findings()).extracting(Finding::id).containsExactly("hole-longer-than-day");
  }

  /** The inspector comes on Monday 17 May; the crew pours on the Saturday after. */
  @Test
  void daysHaveDatesOnlyWhenTheJobNamesAStart() {
    FillJob of = job(4);
    assertThat(plan(of, tasks(4)).days()).allMatch(day -> day.date().isEmpty());
    of.start = Optional.of(LocalDate.of(2027, 5, 8));
    assertThat(plan(of, tasks(4)).days())
        .extracting(WorkDay::date)
        .containsExactly(
            Optional.of(LocalDate.of(2027, 5, 8)),
            Optional.of(LocalDate.of(2027, 5, 9)),
            Optional.of(LocalDate.of(2027, 5, 15)));
  }

  @Test
  void aStartOnAnotherDayIsNoted() {
    FillJob of = job(1);
    of.start = Optional.of(LocalDate.of(2027, 5, 5));
    Finding note = plan(of, tasks(1)).findings().get(0);
    assertThat(note.id()).isEqualTo("start-not-a-work-day");
    assertThat(note.arguments()).containsEntry("first", Argument.of(LocalDate.of(2027, 5, 8)));
  }

  @Test
  void holesThatStayOpenForMoreThanAWeekAreNoted() {
    FillJob of = job(2);
    of.workDays = List.of(DayOfWeek.SATURDAY);
    of.start = Optional.of(LocalDate.of(2027, 5, 8));
    DayPlan weekly = plan(of, tasks(2));
    assertThat(weekly.days()).hasSize(2);
    assertThat(weekly.findings()).as("seven nights").isEmpty();
    DayPlan longer = plan(with(of, 4), tasks(4));
    Finding note = longer.findings().get(0);
    assertThat(note.id()).isEqualTo("holes-open-long");
    assertThat(note.arguments()).containsEntry("nights", Argument.of(14));
  }

  private static FillJob with(FillJob of, int holes) {
    for (int i = of.holes.size() + 1; i <= holes; i++) {
      of.with(of.hole("S" + i, 18, 48, 4, 6));
    }
    return of;
  }

  @Test
  void aCrewWithoutHoursIsRefused() {
    FillJob of = job(1);
    of.hoursPerDay = Duration.ZERO;
    assertThatThrownBy(() -> plan(of, tasks(1))).isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void nothingIsLostAndNoDayIsOverfull(
      @ForAll @IntRange(min = 1, max = 40) int holes,
      @ForAll @DoubleRange(min = 1, max = 10) double hours,
      @ForAll @IntRange(min = 1, max = 5) int people) {
    FillJob of = job(holes);
    of.hoursPerDay = new Duration(hours);
    of.people = people;
    List<Task> tasks = tasks(holes);
    DayPlan plan = plan(of, tasks);
    double most = tasks.stream().mapToDouble(task -> task.most().hours()).sum();
    assertThat(plan.days().stream().mapToDouble(day -> day.most().hours()).sum())
        .isEqualTo(most, offset(1e-6));
    for (WorkDay day : plan.days()) {
      double planned =
          day.portions().stream()
              .mapToDouble(
                  portion ->
                      portion.kind() == Task.Kind.POUR
                          ? portion.most().hours()
                          : (portion.least().hours() + portion.most().hours()) / 2)
              .sum();
      boolean onePour =
          day.portions().stream().filter(p -> p.kind() == Task.Kind.POUR).count() == 1;
      assertThat(planned).isPositive();
      if (!onePour) {
        assertThat(planned).isLessThanOrEqualTo(plan.crewHours().hours() + 1e-6);
      }
    }
    assertThat(plan.days()).extracting(WorkDay::number).isSorted();
  }

  @Property(tries = 50, seed = Chance.SEED)
  void moreHoursNeverTakeMoreDays(
      @ForAll @IntRange(min = 1, max = 20) int holes,
      @ForAll @DoubleRange(min = 2, max = 10) double hours) {
    FillJob of = job(holes);
    of.hoursPerDay = new Duration(hours);
    int days = plan(of, tasks(holes)).days().size();
    of.hoursPerDay = new Duration(hours * 2);
    assertThat(plan(of, tasks(holes)).days().size()).isLessThanOrEqualTo(days);
  }
}
