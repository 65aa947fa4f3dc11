package pegbook.calc.bearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.figures.Bottom;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.testing.FootingJob;

/** Footings that are worked out together stand in the job's order again, each with its own load. */
class FootingOrderTest {
  @Test
  void footingsStandInTheOrderOfTheHoles() {
    FootingJob trial = new FootingJob();
    trial.ground =
        "\"soil\": \"gravel\", \"allowablePressure\": { \"value\": \"3000 psf\", \"kind\":"
            + " \"gross\", \"from\": \"x\" }";
    Job job = trial.job();
    List<Hole> holes = new ArrayList<>(FootingJob.holes(job));
    Hole second = holes.get(1);
    holes.set(
        1,
        second.asDug(
            second.centre(),
            second.diameter().plus(Length.ofInches(6)),
            second.depth(),
            second.gravel()));
    FootingLoads loads =
        FootingLoadsCalculator.calculate(job, FootingJob.placement(job), holes, Optional.empty());
    Bearing bearing = BearingCalculator.calculate(job, holes, loads.loads());
    assertThat(bearing.footings())
        .extracting(footing -> footing.mark())
        .containsExactly("S1", "S2", "S3", "S4");
    assertThat(bearing.bottoms()).extracting(Bottom::mark).containsExactly("S1", "S2", "S3", "S4");
    assertThat(bearing.bottoms().get(1).pressure())
        .as("six inches wider presses less")
        .isLessThan(bearing.bottoms().get(0).pressure());
  }
}
