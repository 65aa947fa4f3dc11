package pegbook.calc.frostgrip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.testing.FootingJob;

/** Footings that are worked out together stand in the job's order again, each with its own load. */
class GripOrderTest {
  private static FrostGrip grip(String soil, String frost) {
    FootingJob trial = new FootingJob();
    trial.ground =
        "\"soil\": \"%s\", \"frost\": {\"depth\": \"%s\", \"from\": \"office\"}"
            .formatted(soil, frost);
    trial.supports = "{ \"hole\": \"12 in\", \"depth\": \"48 in\", \"top\": \"6 in\" }";
    Job job = trial.job();
    List<Hole> holes = new ArrayList<>(FootingJob.holes(job));
    Hole second = holes.get(1);
    holes.set(
        1,
        second.asDug(
            second.centre(),
            second.diameter(),
            second.depth().plus(Length.ofInches(6)),
            second.gravel()));
    return FrostGripCalculator.calculate(
        job,
        holes,
        FootingLoadsCalculator.calculate(job, FootingJob.placement(job), holes, Optional.empty())
            .loads(),
        Optional.empty());
  }

  @Test
  void footingsStandInTheOrderOfTheHoles() {
    FrostGrip grip = grip("silt", "42 in");
    assertThat(grip.footings())
        .extracting(footing -> footing.mark())
        .containsExactly("S1", "S2", "S3", "S4");
    assertThat(grip.workings())
        .filteredOn(working -> working.formula().id().equals("frost-grip.grip"))
        .extracting(working -> working.subject())
        .contains("S1, S3, S4", "S2");
  }

  /** The table of adfreeze is cited where frost grips, and only there. */
  @Test
  void whatGripsIsCited() {
    assertThat(grip("silt", "42 in").sources()).isNotEmpty();
    FrostGrip none = grip("gravel", "0 in");
    assertThat(none.footings()).allMatch(footing -> footing.grip().isEmpty());
    assertThat(none.sources().size()).isLessThan(grip("silt", "42 in").sources().size());
  }
}
