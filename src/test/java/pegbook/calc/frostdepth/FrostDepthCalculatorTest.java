package pegbook.calc.frostdepth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import pegbook.calc.frostdepth.FrostDepth.Estimate;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.published.FrostSoil;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class FrostDepthCalculatorTest {
  private static final String RULE =
      ", \"frost\": {\"depth\": \"%s\", \"from\": \"county building office\"}";

  private static FrostDepth frost(String soil, String rule, String index) {
    FootingJob trial = new FootingJob();
    trial.ground = "\"soil\": \"" + soil + "\"" + (rule.isEmpty() ? "" : RULE.formatted(rule));
    if (!index.isEmpty()) {
      trial.ground += ", \"airFreezingIndex\": {" + index + "}";
    }
    trial.supports = "{ \"hole\": \"18 in\", \"depth\": \"48 in\", \"top\": \"6 in\" }";
    Job job = trial.job();
    return FrostDepthCalculator.calculate(job, FootingJob.holes(job));
  }

  private static String index(int fahrenheitDays, String more) {
    return "\"value\": \"%d F-days\", \"return\": \"100 years\"%s".formatted(fahrenheitDays, more);
  }

  private static final String SEASON = ", \"days\": 140, \"meanYear\": \"44 °F\"";

  @Test
  void withoutAnIndexThereIsOnlyTheRule() {
    FrostDepth frost = frost("clay", "42 in", "");
    assertThat(frost.rule().orElseThrow().inches()).isCloseTo(42, within(1e-9));
    assertThat(frost.estimate()).isEmpty();
    assertThat(frost.findings()).isEmpty();
    assertThat(frost.workings()).isEmpty();
  }

  /**
   * By hand: L = 144 · 100 · 0.2 = 2880; kf = 1.026; x = 12 · √(48 · 1.026 · 0.9 · 1000 / 2880).
   */
  @Test
  void stefanAloneDecidesWhereTheSeasonIsNotKnown() {
    FrostDepth frost = frost("clay", "60 in", index(1000, ""));
    Estimate estimate = frost.estimate().orElseThrow();
    assertThat(estimate.stefan().inches()).isCloseTo(48, within(1e-9));
    assertThat(estimate.berggren()).isEmpty();
    assertThat(estimate.decided()).isEqualTo(estimate.stefan());
    assertThat(frost.findings()).isEmpty();
  }

  @Test
  void anEstimateDeeperThanTheRuleIsAskedAboutAndChangesNoDepth() {
    FrostDepth frost = frost("clay", "42 in", index(1800, SEASON));
    Estimate estimate = frost.estimate().orElseThrow();
    assertThat(estimate.decided()).isLessThan(estimate.stefan());
    assertThat(frost.above()).containsExactly("S1", "S2", "S3", "S4");
    assertThat(frost.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.kind()).isEqualTo(Kind.ASK);
              assertThat(finding.id()).isEqualTo("frost-estimate-deeper");
              assertThat(finding.subjects()).containsExactly("S1", "S2", "S3", "S4");
            });
  }

  @Test
  void footingsBelowBothAreOnlyNoted() {
    FrostDepth frost = frost("clay", "24 in", index(700, SEASON));
    assertThat(frost.above()).isEmpty();
    assertThat(frost.findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.kind()).isEqualTo(Kind.NOTE))
        .extracting(Finding::id)
        .isEqualTo("frost-estimate-reached");
  }

  @ParameterizedTest
  @CsvSource({"mean, 1", "10 years, 1", "30 years, 0", "100 years, 0"})
  void acommonWinterIsAskedAbout(String winter, int asked) {
    FrostDepth frost =
        frost("clay", "90 in", "\"value\": \"900 F-days\", \"return\": \"" + winter + "\"");
    assertThat(frost.findings()).hasSize(asked);
    assertThat(frost.findings())
        .allSatisfy(finding -> assertThat(finding.id()).isEqualTo("frost-index-winter"));
  }

  /** The same winter on both bases gives one estimate; the bare number must not. */
  @Test
  void fahrenheitAndCelsiusDaysDifferByTheirRatio() {
    Estimate fahrenheit = frost("loam", "", index(1800, "")).estimate().orElseThrow();
    Estimate celsius =
        frost("loam", "", "\"value\": \"1000 C-days\", \"return\": \"mean\"")
            .estimate()
            .orElseThrow();
    assertThat(celsius.stefan().metres()).isCloseTo(fahrenheit.stefan().metres(), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"rock", "peat", "fill"})
  void soilsThatNoFormulaCoversHaveNoEstimate(String soil) {
    FrostDepth frost = frost(soil, "42 in", index(1800, SEASON));
    assertThat(frost.estimate()).isEmpty();
    assertThat(frost.findings()).extracting(Finding::id).containsExactly("frost-soil-outside");
  }

  @ParameterizedTest
  @CsvSource({
    "sand, 20 %, 130 pcf, frost-moisture-high",
    "clay, 5 %, 100 pcf, frost-moisture-low",
    "silt, 60 %, 110 pcf, frost-moisture-high"
  })
  void waterOutsideTheFormulasIsAFindingAndNoEstimate(
      String soil, String moisture, String dry, String id) {
    String more = ", \"moisture\": \"%s\", \"dryDensity\": \"%s\"".formatted(moisture, dry);
    FrostDepth frost = frost(soil, "42 in", index(1800, more));
    assertThat(frost.estimate()).isEmpty();
    assertThat(frost.findings()).extracting(Finding::id).containsExactly(id);
  }

  @Property(tries = 50, seed = Chance.SEED)
  void moreFrostGoesDeeperAndMoreShelterLessDeep(
      @ForAll @IntRange(min = 100, max = 4000) int index) {
    Estimate less = frost("sandy clay", "", index(index, SEASON)).estimate().orElseThrow();
    Estimate more = frost("sandy clay", "", index(index + 400, SEASON)).estimate().orElseThrow();
    Estimate turf =
        frost("sandy clay", "", index(index, SEASON + ", \"surface\": \"turf\""))
            .estimate()
            .orElseThrow();
    assertThat(more.stefan()).isGreaterThan(less.stefan());
    assertThat(more.decided()).isGreaterThanOrEqualTo(less.decided());
    assertThat(turf.decided()).isLessThan(less.decided());
    assertThat(less.decided()).isLessThanOrEqualTo(less.stefan());
  }

  @Test
  void whatTheClassOfSoilStandsForLiesInsideTheFormulas() {
    for (FrostSoil soil : FrostSoil.all()) {
      soil.heat()
          .ifPresent(
              heat -> {
                double full = 100 * (62.4 / heat.dry().poundsPerCubicFoot() - 1 / 2.7);
                assertThat(heat.moisture().percent())
                    .as(soil.soil())
                    .isBetween(heat.coarse() ? 1.0 : 7.0, full);
              });
    }
  }

  @ParameterizedTest
  @EnumSource(Soil.class)
  void everySoilHasItsRow(Soil soil) {
    assertThat(FrostSoil.find(soil.id()).soil()).isEqualTo(soil.id());
  }
}
