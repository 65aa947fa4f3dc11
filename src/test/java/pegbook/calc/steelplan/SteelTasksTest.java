package pegbook.calc.steelplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Task;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.testing.FillJob;

/** Times and small things of the steel by hand, from the numbers given as common practice. */
class SteelTasksTest {
  private static FillJob two(Optional<Steel.Ties> ties, Steel.Foot foot) {
    FillJob of = new FillJob();
    for (String mark : List.of("P1", "P2")) {
      Hole hole = of.tube(of.hole(mark, 22, 58, 4, 36), 16, Tube.From.GROUND);
      of.with(of.starters(of.steel(hole, 6, "#5", 1.5, ties), foot, Optional.<Length>empty()));
    }
    return of;
  }

  private static SteelPlan plan(FillJob of) {
    return SteelPlanCalculator.calculate(of.job(), of.holes, of.holes);
  }

  private static double order(SteelPlan plan, String id) {
    return plan.needs().stream()
        .filter(need -> need.id().equals(id))
        .mapToDouble(Need::order)
        .sum();
  }

  /**
   * Six bars and n rings: each piece is cut in 1 to 3 minutes, each ring bent in 3 to 8, each of 6n
   * crossings tied in 0.5 to 1, the cage set in 10 to 30.
   */
  @Test
  void ringsAreCutBentAndTied() {
    FillJob of = new FillJob();
    SteelPlan plan = plan(two(of.ties("#3", 10), Steel.Foot.STRAIGHT));
    int rings = plan.cages().get(0).rings().orElseThrow().count();
    assertThat(rings).isGreaterThan(5);
    assertThat(plan.tasks()).hasSize(2);
    for (Task task : plan.tasks()) {
      assertThat(task.least().minutes())
          .isEqualTo(6 + rings + 3 * rings + 0.5 * 6 * rings + 10, offset(1e-9));
      assertThat(task.most().minutes())
          .isEqualTo(3 * (6 + rings) + 8 * rings + 6 * rings + 30, offset(1e-9));
    }
    assertThat(order(plan, "wire-ties")).isEqualTo(2.0 * 6 * rings);
  }

  /** Six bars without rings, each bent at its foot. */
  @Test
  void hookedBarsAreBentToo() {
    SteelPlan plan = plan(two(Optional.empty(), Steel.Foot.HOOKED));
    for (Task task : plan.tasks()) {
      assertThat(task.least().minutes()).isEqualTo(6 + 6 * 3 + 10, offset(1e-9));
      assertThat(task.most().minutes()).isEqualTo(6 * 3 + 6 * 8 + 30, offset(1e-9));
    }
  }

  /** Three feet and six spacers a cage, a cap on every bar. */
  @Test
  void smallThingsAreCountedForEveryCage() {
    SteelPlan plan = plan(two(Optional.empty(), Steel.Foot.STRAIGHT));
    assertThat(order(plan, "bar-feet")).isEqualTo(6);
    assertThat(order(plan, "side-spacers")).isEqualTo(12);
    assertThat(order(plan, "bar-caps")).isEqualTo(12);
    assertThat(order(plan, "wire-ties")).isZero();
  }
}
