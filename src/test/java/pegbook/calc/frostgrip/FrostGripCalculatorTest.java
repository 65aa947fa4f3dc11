package pegbook.calc.frostgrip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.calc.frostgrip.FrostGrip.Footing;
import pegbook.calc.frostgrip.FrostGrip.Verdict;
import pegbook.calc.frostgrip.FrostGrip.WindLift;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;
import pegbook.published.Adfreeze;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class FrostGripCalculatorTest {
  private static FrostGrip grip(FootingJob trial, Optional<Length> estimate) {
    Job job = trial.job();
    List<Hole> holes = FootingJob.holes(job);
    return FrostGripCalculator.calculate(
        job,
        holes,
        FootingLoadsCalculator.calculate(job, FootingJob.placement(job), holes, Optional.empty())
            .loads(),
        estimate);
  }

  private static FootingJob job(String soil, String frost, String water) {
    FootingJob trial = new FootingJob();
    trial.ground =
        "\"soil\": \"%s\", \"frost\": {\"depth\": \"%s\", \"from\": \"office\"}"
            .formatted(soil, frost);
    if (!water.isEmpty()) {
      trial.ground += ", \"water\": \"" + water + "\"";
    }
    trial.supports = "{ \"hole\": \"12 in\", \"depth\": \"48 in\", \"top\": \"6 in\" }";
    return trial;
  }

  /**
   * 65 kPa, the mean the Canadian Foundation Engineering Manual prints for fine soil on concrete
   * (quoted), on 12 in by 48 in: π · 0.3048 · 1.2192 · 65 = 75.9 kN, 17.1 kip; on 10 in by 42 in
   * 55.3 kN, 12.4 kip.
   */
  @ParameterizedTest
  @CsvSource({"12, 48, 75.9, 17.1", "10, 42, 55.3, 12.4"})
  void gripIsStressTimesFrozenSide(double across, double deep, double kilonewtons, double kips) {
    Length diameter = Length.ofInches(across);
    Length frozen = Length.ofInches(deep);
    Pressure stress = FrostGrip.typicalStress();
    Working imperial =
        Working.of(new FrostGripFormulas(UnitSystem.IMPERIAL).grip(), "", stress, diameter, frozen);
    Working metric =
        Working.of(new FrostGripFormulas(UnitSystem.METRIC).grip(), "", stress, diameter, frozen);
    assertThat(stress.kilopascals()).isCloseTo(65, within(1e-9));
    assertThat(metric.result()).isCloseTo(kilonewtons, within(0.05));
    assertThat(imperial.result() / 1000).isCloseTo(kips, within(0.05));
    assertThat(imperial.si()).isCloseTo(metric.si(), within(1e-6));
  }

  /** Printed means: 65 kPa on concrete, 100 kPa on steel, 150 kPa for saturated gravel on steel. */
  @Test
  void thePrintedMeansAreTakenInOrder() {
    assertThat(Adfreeze.all().stream().map(row -> row.stress().kilopascals()))
        .containsExactly(65.0, 100.0, 150.0);
  }

  /** The same footing in the same frost: soil, sleeve and backfill decide before any number. */
  @ParameterizedTest
  @CsvSource({
    "sand, DRAINS, 0",
    "sandy gravel, DRAINS, 0",
    "clay, LIFTS, 1",
    "silt, LIFTS, 1",
    "silty sand, LIFTS, 1",
    "peat, LIFTS, 1"
  })
  void theSoilDecidesFirst(String soil, Verdict verdict, int findings) {
    FrostGrip grip = grip(job(soil, "48 in", ""), Optional.empty());
    assertThat(grip.footings()).allMatch(footing -> footing.verdict() == verdict);
    assertThat(grip.findings()).hasSize(findings);
  }

  @Test
  void aSleeveIsTakenAtItsWordAndAskedForOnlyOnce() {
    FootingJob trial = job("clay", "48 in", "");
    trial.supports = "{ \"hole\": \"12 in\", \"depth\": \"48 in\", \"side\": \"smooth sleeve\" }";
    FrostGrip grip = grip(trial, Optional.empty());
    assertThat(grip.findings()).isEmpty();
    assertThat(grip.footings()).allMatch(footing -> footing.verdict() == Verdict.KEPT_OFF);
    assertThat(grip.footings()).allMatch(footing -> footing.grip().isEmpty());
    assertThat(grip.needs())
        .singleElement()
        .satisfies(need -> assertThat(need.order()).isEqualTo(4));
    assertThat(grip.sleeves())
        .extracting(FrostSleeve::mark)
        .containsExactly("S1", "S2", "S3", "S4");
    assertThat(grip.sleeves())
        .allSatisfy(sleeve -> assertThat(sleeve.length().inches()).isEqualTo(48, within(1e-9)))
        .allSatisfy(sleeve -> assertThat(sleeve.across().inches()).isEqualTo(12, within(1e-9)));
    trial.ground = "\"soil\": \"clay\"";
    assertThat(grip(trial, Optional.empty()).sleeves()).isEmpty();
  }

  /** Water that is known to be deep makes a note of it, where no pier is lifted. */
  @ParameterizedTest
  @CsvSource({"30 ft, NOTE", "8 ft, ASK", "'', ASK"})
  void waterDecidesHowHardItIsAsked(String water, Kind kind) {
    assertThat(grip(job("clay", "48 in", water), Optional.empty()).findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.kind()).isEqualTo(kind))
        .satisfies(
            finding -> assertThat(finding.subjects()).containsExactly("S1", "S2", "S3", "S4"));
  }

  @Test
  void withoutFrostThereIsNoGrip() {
    FrostGrip grip = grip(job("clay", "0 in", ""), Optional.empty());
    assertThat(grip.footings()).allMatch(footing -> footing.verdict() == Verdict.NO_FROST);
    assertThat(grip.workings()).isEmpty();
    assertThat(grip(job("clay", "0 in", ""), Optional.of(Length.ofInches(20))).findings())
        .hasSize(1);
  }

  /** Deeper by what the sheet says, weight and friction hold the typical grip exactly. */
  @Property(tries = 30, seed = Chance.SEED)
  void asMuchDeeperAsItSaysHolds(@ForAll @IntRange(min = 20, max = 40) int frost) {
    FootingJob trial = job("clay", frost + " in", "");
    Footing footing = grip(trial, Optional.empty()).footings().get(0);
    Length deeper = footing.grip().orElseThrow().deeper().orElseThrow();
    trial.supports =
        "{ \"hole\": \"12 in\", \"depth\": \"%s in\", \"top\": \"6 in\" }"
            .formatted(Math.ceil((48 + deeper.inches()) * 16 + 1) / 16);
    Footing further = grip(trial, Optional.empty()).footings().get(0);
    double holds = further.hold().plus(further.grip().orElseThrow().anchorage()).poundsForce();
    assertThat(further.verdict()).isEqualTo(Verdict.MAY_LIFT);
    assertThat(holds).isCloseTo(further.grip().orElseThrow().typical().poundsForce(), within(60.0));
  }

  /**
   * By hand: four supports of 48 ft² each under 20 psf: 960 lbf up; dead 480 lbf. Post base 960 −
   * 0.6 · 480 = 672 lbf. The footing, 12 in by 54 in of concrete, weighs 150 · π / 4 · 4.5 = 530
   * lbf: 960 − 0.6 · 1010 = 354 lbf are left.
   */
  @Test
  void windLiftsByTheSupportsShareOfTheRoof() {
    FootingJob trial = job("sand", "48 in", "");
    trial.floor =
        """
        { "live": "40 psf", "dead": "10 psf" },
        "wind": { "uplift": "20 psf", "from": "designer of the roof" }
        """;
    FrostGrip grip = grip(trial, Optional.empty());
    assertThat(grip.lifts()).hasSize(4);
    WindLift lift = grip.lifts().get(0);
    assertThat(lift.up().poundsForce()).isCloseTo(960, within(1e-6));
    assertThat(lift.anchor().poundsForce()).isCloseTo(672, within(1e-6));
    assertThat(lift.hold().poundsForce()).isCloseTo(1010.14, within(0.01));
    assertThat(lift.net().poundsForce()).isCloseTo(353.9, within(0.05));
    assertThat(grip.findings())
        .singleElement()
        .extracting(Finding::id)
        .isEqualTo("wind-lifts-footing");
  }

  @Test
  void aDomeOnAPierIsHeldByThePiersWeight() {
    FootingJob trial = job("sand", "48 in", "");
    trial.piers =
        """
        [{ "id": "P1", "at": "centre", "hole": "20 in", "depth": "60 in", "top": "24 in",
           "instrument": "100 lb", "uplift": "400 lbf" }]
        """;
    FrostGrip grip = grip(trial, Optional.empty());
    WindLift lift = grip.lifts().get(0);
    assertThat(lift.mark()).isEqualTo("P1");
    assertThat(lift.anchor().poundsForce()).isCloseTo(340, within(1e-3));
    assertThat(lift.net().newtons()).isNegative();
    assertThat(grip.findings()).isEmpty();
  }
}
