package pegbook.calc.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.measure.Unit;
import pegbook.testing.FootingJob;

/** Bells, pads and caps on the ground: width, weight by hand, and the remedy that is written in. */
class WidenedFootingTest {
  private static final String GROUND =
      "\"soil\": \"clay\", \"unitWeight\": { \"value\": \"110 pcf\", \"from\": \"x\" },"
          + " \"allowablePressure\": { \"value\": \"%s psf\", \"kind\": \"gross\", \"from\": \"x\" }";

  private static Bearing bearing(Consumer<FootingJob> change) {
    FootingJob trial = new FootingJob();
    trial.ground = GROUND.formatted("3000");
    change.accept(trial);
    Job job = trial.job();
    List<Hole> holes = FootingJob.holes(job);
    return BearingCalculator.calculate(
        job,
        holes,
        FootingLoadsCalculator.calculate(job, FootingJob.placement(job), holes, Optional.empty())
            .loads());
  }

  private static double pounds(Footing footing) {
    return Unit.POUND_FORCE.in(footing.own());
  }

  /**
   * By hand: hole 12 in, 48 in deep, 6 in over the ground; bell 24 in, flare 12 in, toe 4 in. Shaft
   * and top π / 4 · 144 · (32 + 6) / 1,728 = 2.4871 ft³ and bell 2.8798 ft³, at 150: 805.0 lbf.
   * Soil over the bell π / 4 · (576 · 48 − 144 · 32) / 1,728 − 2.8798 = 7.5922 ft³ at 110: 835.1
   * lbf.
   */
  @Test
  void aBellCarriesItsSoil() {
    Footing footing =
        bearing(
                of ->
                    of.supports =
                        "{ \"hole\": \"12 in\", \"depth\": \"48 in\", \"top\": \"6 in\","
                            + " \"bell\": { \"diameter\": \"24 in\", \"height\": \"12 in\" } }")
            .footings()
            .get(0);
    assertThat(footing.standing().inches()).isCloseTo(24, within(1e-9));
    assertThat(Unit.SQUARE_FOOT.in(footing.area())).isCloseTo(3.1416, within(5e-5));
    assertThat(pounds(footing)).isCloseTo(805.0 + 835.1, within(0.1));
  }

  /**
   * By hand: pad 24 in, 10 in thick, tube 12 in on it, 42 in deep, 8 in over the ground: pad 2.6180
   * ft³, tube 0.7854 · 40 / 12 = 2.6180 ft³, at 150 785.4 lbf; soil π / 4 · (576 − 144) · 32 /
   * 1,728 = 6.2832 ft³ at 110 691.2 lbf. A cap of 16 in square, 4 in thick, takes 4 in of the
   * tube's place: 0.5926 − 0.2618 = 0.3308 ft³ more, 49.6 lbf.
   */
  @Test
  void aPadCarriesItsSoilAndACapWeighs() {
    String supports =
        "{ \"hole\": \"24 in\", \"depth\": \"42 in\", \"top\": \"8 in\","
            + " \"tube\": { \"inside\": \"12 in\", \"from\": \"bottom\" },"
            + " \"pad\": { \"thickness\": \"10 in\" }";
    Footing pad = bearing(of -> of.supports = supports + "}").footings().get(0);
    assertThat(pounds(pad)).isCloseTo(785.4 + 691.2, within(0.1));
    Footing capped =
        bearing(
                of ->
                    of.supports =
                        supports + ", \"cap\": { \"side\": \"16 in\", \"thickness\": \"4 in\" } }")
            .footings()
            .get(0);
    assertThat(pounds(capped) - pounds(pad)).isCloseTo(49.6, within(0.05));
  }

  /** Whoever writes in the bell that was asked for is not stopped again. */
  @Test
  void theRemedyWrittenInIsEnough() {
    Consumer<FootingJob> narrow =
        of -> {
          of.ground = GROUND.formatted("1500");
          of.supports = "{ \"hole\": \"12 in\", \"depth\": \"48 in\", \"top\": \"6 in\" }";
        };
    Bearing before = bearing(narrow);
    assertThat(before.findings()).extracting(Finding::id).contains("bearing-exceeded");
    double diameter = before.remedies().get(0).diameter().inches();
    Bearing after =
        bearing(
            narrow.andThen(
                of ->
                    of.supports =
                        of.supports.replace(
                            " }",
                            ", \"bell\": { \"diameter\": \"%.0f in\", \"height\": \"12 in\" } }"
                                .formatted(diameter))));
    assertThat(after.findings()).extracting(Finding::id).doesNotContain("bearing-exceeded");
  }
}
