package pegbook.calc.concreteplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.concreteplan.ConcretePlan.Fill;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.job.Concrete.Mixing;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.testing.FillJob;

/** Times of filling by hand, from the rates that the class gives as common practice. */
class FillingTimesTest {
  private static ConcretePlan plan(FillJob of) {
    return ConcretePlanCalculator.calculate(of.job(), of.holes);
  }

  private static Task task(ConcretePlan plan, Task.Kind kind, String mark) {
    return plan.tasks().stream()
        .filter(task -> task.kind() == kind && task.mark().equals(Optional.of(mark)))
        .findFirst()
        .orElseThrow();
  }

  private static void takes(Task task, double least, double most) {
    assertThat(task.least().minutes()).isEqualTo(least, offset(1e-6));
    assertThat(task.most().minutes()).isEqualTo(most, offset(1e-6));
  }

  /**
   * A pair with a mixer needs 125 to 250 minutes for a cubic metre, twice that in person-minutes;
   * 15 to 40 go with every pour, an hour or two for each cubic metre that goes round a tube.
   */
  @Test
  void aPourTakesWhatItsConcreteTakes() {
    FillJob of = new FillJob();
    of.with(of.tube(of.hole("S1", 18, 48, 4, 6), 12, Tube.From.BOTTOM));
    ConcretePlan plan = plan(of);
    Fill fill = plan.fill("S1");
    double poured = fill.poured().cubicMetres();
    double round = fill.backfill().orElseThrow().cubicMetres();
    assertThat(poured).isPositive();
    assertThat(round).isPositive();
    takes(
        task(plan, Task.Kind.POUR, "S1"),
        15 + 2 * 125 * poured + 60 * round,
        40 + 2 * 250 * poured + 120 * round);
    takes(task(plan, Task.Kind.GRAVEL, "S1"), 10, 30);
  }

  /** What goes round the tube goes in once, before the first of two lifts. */
  @Test
  void soilGoesInBeforeTheFirstLift() {
    FillJob of = new FillJob();
    of.mixing = Mixing.BY_HAND;
    Hole tube = of.tube(of.hole("P1", 24, 60, 0, 36), 16, Tube.From.BOTTOM);
    of.with(
        of.starters(
            of.steel(tube, 6, "#5", 3, Optional.empty()),
            Steel.Foot.STRAIGHT,
            Optional.of(Length.ofInches(50))));
    ConcretePlan plan = plan(of);
    Fill fill = plan.fill("P1");
    double round = fill.backfill().orElseThrow().cubicMetres();
    double first = fill.lift(Task.Kind.FIRST_LIFT).poured().cubicMetres();
    double second = fill.lift(Task.Kind.POUR).poured().cubicMetres();
    assertThat(first).isNotEqualTo(second);
    assertThat(fill.lift(Task.Kind.FIRST_LIFT)).isEqualTo(fill.lifts().get(0));
    assertThat(fill.lift(Task.Kind.POUR)).isEqualTo(fill.lifts().get(1));
    takes(
        task(plan, Task.Kind.FIRST_LIFT, "P1"),
        15 + 2 * 250 * first + 60 * round,
        40 + 2 * 420 * first + 120 * round);
    takes(task(plan, Task.Kind.POUR, "P1"), 15 + 2 * 250 * second, 40 + 2 * 420 * second);
  }

  /** One drum keeps one pair busy; by hand or from a truck every pair works. */
  @ParameterizedTest
  @CsvSource({
    "MIXER, 1, 0.5",
    "MIXER, 2, 1",
    "MIXER, 4, 1",
    "BY_HAND, 1, 0.5",
    "BY_HAND, 4, 2",
    "READY_MIX, 4, 2"
  })
  void pairsAtWork(Mixing mixing, int people, double pairs) {
    FillJob of = new FillJob();
    of.people = people;
    of.with(of.hole("S1", 18, 48, 4, 0));
    assertThat(MixingRate.of(mixing).pairs(of.job().crew())).isEqualTo(pairs, offset(1e-12));
  }

  /** ASTM C94: an hour and a half from the water on; half an hour of a truck's goes on the road. */
  @ParameterizedTest
  @CsvSource({"MIXER, 90", "BY_HAND, 90", "READY_MIX, 60"})
  void concreteWaitsForNobody(Mixing mixing, double minutes) {
    assertThat(MixingRate.of(mixing).window().minutes()).isEqualTo(minutes, offset(1e-12));
  }

  /** Holes that are worked out together still stand in the job's order. */
  @Test
  void fillsStandInTheOrderOfTheHoles() {
    FillJob of = new FillJob();
    of.with(of.hole("S1", 18, 48, 4, 0))
        .with(of.hole("S2", 24, 48, 4, 0))
        .with(of.hole("S3", 18, 48, 4, 0));
    assertThat(plan(of).fills()).extracting(Fill::mark).containsExactly("S1", "S2", "S3");
    assertThat(plan(of).fill("S2").standing()).isEqualTo(Length.ofInches(24));
  }

  /** A drum of a hire shop turns 2 ft³ or 60 L well; in a tub one bag is mixed at once. */
  @Test
  void batchesByWhatTurnsThem() {
    FillJob of = new FillJob();
    of.with(of.hole("S1", 18, 48, 4, 0));
    assertThat(plan(of).mix().batch()).isEqualTo(Volume.ofCubicFeet(2));
    assertThat(plan(of.metric()).mix().batch()).isEqualTo(new Volume(0.06));
    of.mixing = Mixing.BY_HAND;
    assertThat(plan(of).mix().batch()).isEqualTo(plan(of).mix().yield());
  }

  /** Gravel that is ordered is worked out, once for the bottoms. */
  @Test
  void theOrderOfGravelIsShown() {
    FillJob of = new FillJob();
    of.with(of.hole("S1", 18, 48, 4, 0));
    assertThat(plan(of).workings())
        .extracting(working -> working.formula().id())
        .anyMatch(id -> id.startsWith("concrete-plan.gravel-"));
    assertThat(plan(of).workings()).extracting(Working::subject).contains("S1");
  }

  /** A tube as wide as its hole is none too wide; the place of the finding is the pier's own. */
  @Test
  void onlyATubeWiderThanItsHoleStops() {
    FillJob of = new FillJob();
    of.with(of.tube(of.hole("P1", 16, 48, 4, 6), 16, Tube.From.GROUND));
    of.with(of.tube(of.hole("P2", 16, 48, 4, 6), 17, Tube.From.GROUND));
    assertThat(plan(of).findings())
        .filteredOn(finding -> finding.id().equals("tube-wider-than-hole"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.subjects()).containsExactly("P2");
              assertThat(finding.place()).isEqualTo("piers.P2.tube");
              assertThat(finding.kind()).isEqualTo(Finding.Kind.STOP);
            });
    FillJob bare = new FillJob();
    bare.with(bare.hole("S1", 18, 48, 4, 6));
    assertThat(plan(bare).findings()).extracting(Finding::place).contains("supports.tube");
  }
}
