package pegbook.calc.dayplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import pegbook.calc.dayplan.DayPlan.Order;
import pegbook.calc.dayplan.DayPlan.Portion;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.job.DaySpan;
import pegbook.job.Plan;
import pegbook.measure.Duration;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

/** Whatever the job: the order holds, no day is overfull, everything is done once. */
class DayPlanPropertyTest {
  private static final List<Task.Kind> AT_HOLE =
      List.of(
          Task.Kind.BORE,
          Task.Kind.DIG,
          Task.Kind.GRAVEL,
          Task.Kind.FORM,
          Task.Kind.STEEL,
          Task.Kind.POUR,
          Task.Kind.STRIP);

  record Made(FillJob of, List<Task> tasks, List<String> dug) {
    DayPlan plan(int people) {
      of.people = people;
      return DayPlanCalculator.calculate(of.job(), of.holes, tasks, dug);
    }
  }

  @Provide
  Arbitrary<Made> jobs() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 9),
            Arbitraries.integers().between(0, 127),
            Arbitraries.doubles().between(2, 9),
            Arbitraries.doubles().between(0.3, 9).list().ofSize(7),
            Arbitraries.integers().between(0, 255))
        .as(DayPlanPropertyTest::made);
  }

  private static Made made(int holes, int weekdays, double hours, List<Double> work, int how) {
    FillJob of = new FillJob();
    of.hoursPerDay = new Duration(hours);
    of.workDays =
        java.util.Arrays.stream(DayOfWeek.values())
            .filter(day -> weekdays == 0 || ((weekdays >> (day.getValue() - 1)) & 1) == 1)
            .toList();
    if ((how & 1) == 1) {
      of.start = Optional.of(LocalDate.of(2027, 5, 1 + how % 20));
    }
    if ((how & 2) == 2) {
      of.dig.utilities = Optional.of(LocalDate.of(2027, 5, 7));
    }
    boolean machine = (how & 4) == 4 && of.start.isPresent();
    of.plan =
        new Plan(
            how % 3,
            machine
                ? Optional.of(
                    new Plan.Machine(
                        "machine",
                        (how & 8) == 8 ? Plan.Purpose.DIGGING : Plan.Purpose.POURING,
                        LocalDate.of(2027, 5, 16)))
                : Optional.empty(),
            Plan.PLAIN.utility(),
            new Plan.Inspection(
                new DaySpan(2, true),
                (how & 16) == 16 ? Plan.Looks.OPEN_HOLE_AND_STEEL : Plan.Looks.STEEL),
            Plan.PLAIN.loadAfter(),
            Optional.empty(),
            List.of());
    List<Task> tasks = new ArrayList<>();
    List<String> dug =
        java.util.stream.IntStream.rangeClosed(1, how >> 6).mapToObj(i -> "S" + i).toList();
    if (dug.isEmpty()) {
      add(tasks, Task.Kind.MARK_OUT, Optional.empty(), work.get(0));
      add(tasks, Task.Kind.SET_PEGS, Optional.empty(), work.get(1) / 3);
    }
    for (int i = 1; i <= holes; i++) {
      of.with(of.hole("S" + i, 18, 48, 4, 6));
      Optional<String> mark = Optional.of("S" + i);
      if (!dug.contains("S" + i)) {
        if (machine && (how & 8) == 8 && i % 2 == 1) {
          add(tasks, Task.Kind.BORE, mark, work.get(2) / 4);
        }
        add(tasks, Task.Kind.DIG, mark, work.get(2) * (1 + i % 3));
        add(tasks, Task.Kind.CARRY_SPOIL, mark, work.get(3) / 4);
      }
      if ((how & 32) == 32 || i % 2 == 0) {
        add(tasks, Task.Kind.GRAVEL, mark, work.get(4) / 4);
        add(tasks, Task.Kind.FORM, mark, work.get(5) / 4);
        add(tasks, Task.Kind.STEEL, mark, work.get(5) / 2);
        add(tasks, Task.Kind.STRIP, mark, 0.2);
      }
      add(tasks, Task.Kind.POUR, mark, work.get(6) / 2);
    }
    return new Made(of, tasks, dug);
  }

  private static void add(List<Task> tasks, Task.Kind kind, Optional<String> mark, double hours) {
    tasks.add(new Task(kind, mark, new Duration(hours), new Duration(hours * 2)));
  }

  @Property(tries = 300, seed = Chance.SEED)
  void noTaskComesBeforeWhatItNeeds(@ForAll("jobs") Made made) {
    DayPlan plan = made.plan(2);
    Map<String, Integer> ends = new LinkedHashMap<>();
    Map<String, Integer> begins = new LinkedHashMap<>();
    int place = 0;
    for (WorkDay day : plan.days()) {
      for (Portion portion : day.portions()) {
        String key = portion.kind() + portion.mark().orElse("");
        begins.putIfAbsent(key, place);
        ends.put(key, place);
        place++;
      }
    }
    for (Task task : made.tasks()) {
      String mark = task.mark().orElse("");
      int own = AT_HOLE.indexOf(task.kind());
      for (int before = 0; before < own; before++) {
        Integer end = ends.get(AT_HOLE.get(before) + mark);
        assertThat(end == null || end < begins.get(task.kind() + mark))
            .as(AT_HOLE.get(before) + " before " + task.kind() + " at " + mark)
            .isTrue();
      }
      if (own >= 0 && made.dug().isEmpty()) {
        assertThat(ends.get("SET_PEGS")).isLessThan(begins.get(task.kind() + mark));
      }
    }
    if (made.dug().isEmpty()) {
      assertThat(ends.get("MARK_OUT")).isLessThan(begins.get("SET_PEGS"));
    }
  }

  @Property(tries = 300, seed = Chance.SEED)
  void everyTaskIsDoneOnceAndNoDayIsOverfull(@ForAll("jobs") Made made) {
    DayPlan plan = made.plan(3);
    Map<String, Double> done = new LinkedHashMap<>();
    for (WorkDay day : plan.days()) {
      double planned = 0;
      long pours = 0;
      Map<String, Double> atHole = new LinkedHashMap<>();
      for (Portion portion : day.portions()) {
        String mark = portion.mark().orElse("");
        boolean pour = portion.kind() == Task.Kind.POUR;
        double hours =
            pour ? portion.most().hours() : (portion.least().hours() + portion.most().hours()) / 2;
        planned += hours;
        pours += pour ? 1 : 0;
        if (!pour && !mark.isEmpty()) {
          atHole.merge(mark, hours, Double::sum);
        }
        done.merge(portion.kind() + mark, portion.most().hours(), Double::sum);
      }
      if (pours != 1) {
        assertThat(planned).isLessThanOrEqualTo(plan.crewHours().hours() + 1e-6);
      }
      double two = 2 * made.of().hoursPerDay.hours();
      assertThat(atHole.values()).allMatch(hours -> hours <= two + 1e-6);
    }
    for (Task task : made.tasks()) {
      assertThat(done.get(task.kind() + task.mark().orElse("")))
          .isCloseTo(task.most().hours(), org.assertj.core.api.Assertions.offset(1e-6));
    }
    assertThat(plan.days()).allSatisfy(day -> assertThat(day.portions()).isNotEmpty());
  }

  /** A hole that was dug stands open until its pour, which waits for whoever looks. */
  @Property(tries = 300, seed = Chance.SEED)
  void whatWasDugStandsOpenAndWaitsForThoseWhoLook(@ForAll("jobs") Made made) {
    DayPlan plan = made.plan(2);
    List<String> dug =
        made.dug().stream()
            .filter(mark -> made.tasks().stream().anyMatch(task -> task.mark().equals(of(mark))))
            .toList();
    for (String mark : dug) {
      boolean poured = false;
      for (WorkDay day : plan.days()) {
        assertThat(day.holes(Task.Kind.DIG)).doesNotContain(mark);
        poured |= day.holes(Task.Kind.POUR).contains(mark);
        assertThat(day.openOvernight().contains(mark)).isEqualTo(!poured);
      }
      assertThat(poured).isTrue();
    }
    if (!dug.isEmpty()) {
      List<Task.Kind> kinds =
          plan.days().stream().flatMap(day -> day.portions().stream()).map(Portion::kind).toList();
      assertThat(kinds).contains(Task.Kind.INSPECTION);
      assertThat(kinds.indexOf(Task.Kind.INSPECTION)).isLessThan(kinds.indexOf(Task.Kind.POUR));
      boolean looks = made.of().plan.inspection().looks() == Plan.Looks.OPEN_HOLE_AND_STEEL;
      if (looks && kinds.contains(Task.Kind.GRAVEL)) {
        assertThat(kinds.indexOf(Task.Kind.LOOK)).isBetween(0, kinds.indexOf(Task.Kind.GRAVEL));
      }
    }
  }

  private static Optional<String> of(String mark) {
    return Optional.of(mark);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void moreHandsNeverTakeLonger(@ForAll("jobs") Made made) {
    long before = Long.MAX_VALUE;
    for (int people = 1; people <= 5; people++) {
      List<Order> orders = made.plan(people).orders();
      Order one = orders.get(0);
      long end = one.lastPour().map(LocalDate::toEpochDay).orElse((long) one.days());
      if (one.lastPour().isPresent()) {
        assertThat(end).as("with " + people).isLessThanOrEqualTo(before);
        before = end;
      }
    }
  }

  @Property(tries = 200, seed = Chance.SEED)
  void datesRiseAndOfficesComeOnWeekdays(@ForAll("jobs") Made made) {
    DayPlan plan = made.plan(2);
    List<LocalDate> dates = plan.days().stream().flatMap(day -> day.date().stream()).toList();
    assertThat(dates).isSorted().doesNotHaveDuplicates();
    boolean machine = made.of().plan.machine().isPresent();
    if (!machine) {
      assertThat(dates).allMatch(date -> made.of().workDays.contains(date.getDayOfWeek()));
    }
    plan.holds().stream()
        .filter(hold -> hold.kind() == DayPlan.Wait.INSPECTION || hold.kind() == DayPlan.Wait.LOOK)
        .flatMap(hold -> hold.date().stream())
        .forEach(date -> assertThat(DaySpan.isOfficeDay(date)).isTrue());
    plan.finish()
        .ifPresent(
            finish -> {
              assertThat(finish.earliest()).isBeforeOrEqualTo(finish.planned());
              assertThat(finish.planned()).isBeforeOrEqualTo(finish.latest());
            });
    assertThat(plan.orders()).filteredOn(Order::chosen).hasSize(1);
  }
}
