package pegbook.calc.pourday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.calc.dayplan.DayPlan.Wait;
import pegbook.calc.pourday.PourDay.Batching;
import pegbook.figures.Pour;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Volume;
import pegbook.packet.Packet;
import pegbook.testing.Chance;
import pegbook.testing.TrialPacket;

class PourDayCalculatorTest {
  private static final Job DECK = job("{}");

  /** A stand whose concrete has these keys. */
  private static Job job(String concrete) {
    String text =
        """
        {"title": "Stand", "ground": {"soil": "sand"}, "concrete": %s,
         "layout": {"outline": {"regular": {"sides": 3, "side": "5 ft"}}, "centreToFirstMark": "0 deg"}}
        """
            .formatted(concrete);
    return TrialPacket.text("stand", text).packet().job();
  }

  private static Pour pour(String mark, int batches) {
    return new Pour(
        mark,
        Task.Kind.POUR,
        new Volume(0.2),
        batches,
        3,
        Duration.ofMinutes(120),
        Duration.ofMinutes(90));
  }

  private static Batching only(Job job, Pour... pours) {
    PourDay day = PourDayCalculator.calculate(job, List.of(pours), List.of());
    assertThat(day.batchings()).hasSize(1);
    return day.batchings().get(0);
  }

  /** By hand: 90 minutes over 12 batches are 7.5; over 8 they are 11.25, set down to 11. */
  @Test
  void paceByHand() {
    Batching deck = only(DECK, pour("P1", 12));
    assertThat(deck.bagsOfBatch()).isEqualTo(3);
    assertThat(deck.batches()).isEqualTo(12);
    assertThat(deck.each().minutes()).isCloseTo(7.5, within(1e-9));
    assertThat(deck.half()).isEqualTo(6);
    assertThat(only(DECK, pour("S1", 8)).each().minutes()).isCloseTo(11, within(1e-9));
    assertThat(only(DECK, pour("S1", 5)).half()).isEqualTo(3);
  }

  @Test
  void aTruckHasNoBatches() {
    PourDay day =
        PourDayCalculator.calculate(
            job("{\"mixing\": \"ready mix\"}"), List.of(pour("S1", 15)), List.of());
    assertThat(day.batchings()).isEmpty();
    assertThat(day.workings()).isEmpty();
  }

  @Property(tries = 200, seed = Chance.SEED)
  void thePaceEndsInsideTheWindow(@ForAll @IntRange(min = 1, max = 100) int batches) {
    Batching batching = only(DECK, pour("S1", batches));
    assertThat(batching.each().minutes() * batching.batches()).isLessThanOrEqualTo(90 + 1e-6);
    assertThat(2 * batching.half()).isGreaterThanOrEqualTo(batching.batches());
  }

  @Test
  void alikeHolesShareAWorking() {
    PourDay day =
        PourDayCalculator.calculate(
            DECK, List.of(pour("S1", 5), pour("P1", 12), pour("S2", 5)), List.of());
    assertThat(day.batchings()).extracting(Batching::marks).contains(List.of("S1", "S2"));
    assertThat(day.workings()).extracting(Working::subject).hasSize(2);
    assertThat(day.batching("P1", Task.Kind.POUR).orElseThrow().batches()).isEqualTo(12);
  }

  /** Two pours on one day are followed once; other work of other days by nothing. */
  @Test
  void whatFollowsAPourFollowsItsDay() {
    LocalDate date = LocalDate.of(2027, 5, 8);
    TaskDay poured = new TaskDay(Task.Kind.POUR, 4, Optional.of(date));
    PourDay day =
        PourDayCalculator.calculate(
            DECK,
            List.of(pour("S1", 5)),
            List.of(
                new TaskDay(Task.Kind.DIG, 2, Optional.of(date.minusDays(2))),
                poured,
                poured,
                new TaskDay(Task.Kind.POUR, 6, Optional.empty())));
    assertThat(day.afters()).extracting(PourDay.After::day).containsExactly(4, 6);
    assertThat(day.after(6)).contains(day.afters().get(1));
    assertThat(day.after(4).orElseThrow().load()).contains(DECK.plan().loadAfter().after(date));
    assertThat(day.after(2)).isEmpty();
  }

  /** A first lift and a pour of as many batches are told apart: they are on two days. */
  @Test
  void liftsAreNotAlikeWithPours() {
    Pour lift =
        new Pour(
            "P1",
            Task.Kind.FIRST_LIFT,
            new Volume(0.2),
            5,
            3,
            Duration.ofMinutes(120),
            Duration.ofMinutes(90));
    PourDay day = PourDayCalculator.calculate(DECK, List.of(lift, pour("P1", 5)), List.of());
    assertThat(day.batchings())
        .extracting(Batching::kind)
        .containsExactly(Task.Kind.FIRST_LIFT, Task.Kind.POUR);
  }

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(20));
  }

  /** The last pour's footings are loaded, by the calendar, when its hold sheet says so. */
  @ParameterizedTest
  @Tag("long")
  @MethodSource("packets")
  void everyPourHasItsDatesAsTheCalendarHasThem(TrialPacket trial) {
    Packet packet = trial.packet();
    List<Integer> days =
        packet.dayPlan().days().stream()
            .filter(day -> day.has(Task.Kind.POUR))
            .map(day -> day.number())
            .toList();
    assertThat(packet.pourDay().afters()).extracting(PourDay.After::day).isEqualTo(days);
    packet.dayPlan().holds().stream()
        .filter(hold -> hold.kind() == Wait.LOAD)
        .forEach(
            hold ->
                assertThat(packet.pourDay().afters().get(days.size() - 1).load())
                    .isEqualTo(hold.date()));
  }
}
