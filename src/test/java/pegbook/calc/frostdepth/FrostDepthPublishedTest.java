package pegbook.calc.frostdepth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.measure.UnitSystem;
import pegbook.published.FrostSurface;

/** The formulas of frost depth against printed examples and tables. */
class FrostDepthPublishedTest {
  private static final FrostDepthFormulas IMPERIAL = new FrostDepthFormulas(UnitSystem.IMPERIAL);
  private static final FrostDepthFormulas METRIC = new FrostDepthFormulas(UnitSystem.METRIC);

  /** A step too small to show. */
  private static final double FINE = 1e-6;

  private static double work(Formula formula, Double... numbers) {
    return new Working(formula, "", List.of(numbers)).result();
  }

  /**
   * Handy and Spangler, Example 11.7, part a: 50 °C-days into ground of 3.3 W/(m·K) with 77 MJ/m³
   * freeze 0.6 m (24 in); part b: 62 °C-days thaw 0.6 m again at 2.6 W/(m·K). Heat by their
   * figures: 12 % of water in 18.9 kN/m³ (which is 1927 kg/m³) give 77,000 kJ/m³.
   */
  @Test
  void stefanGivesTheTextbooksExample() {
    assertThat(work(METRIC.stefan(), 3.3, 1.0, 50.0, 77.0, FINE)).isCloseTo(600, within(50.0));
    assertThat(work(METRIC.stefan(), 3.3, 1.0, 50.0, 77.0, FINE) / 25.4).isCloseTo(24, within(0.5));
    assertThat(work(METRIC.stefan(), 2.6, 1.0, 62.0, 77.0, FINE)).isCloseTo(600, within(50.0));
    assertThat(work(METRIC.latentHeat(), 1927.0, 12.0)).isCloseTo(77, within(0.5));
  }

  /**
   * The homogeneous example of the modified Berggren formula, TM 5-852-6 (1988), chapter 3, from
   * memory: mean of the year 37.2 °F, 2,500 °F-days at the surface in 160 days, 100 lb/ft³ with 15
   * % of water, mean conductivity 0.76: heat 2,160 Btu/ft³, α 0.33, μ 0.20, λ 0.89 off a chart, 5.8
   * ft. The chart is read to a hundredth; its curves follow from the equation solved here.
   */
  @Test
  void modifiedBerggrenGivesTheManualsExample() {
    double heat = work(IMPERIAL.latentHeat(), 100.0, 15.0);
    double frost = work(IMPERIAL.surfaceFrost(), 1.0, 2500.0, 160.0);
    double alpha = work(IMPERIAL.warmth(), 5.2, frost);
    double mu = work(IMPERIAL.stored(), 100.0, 15.0, frost, heat);
    double lambda = work(IMPERIAL.coefficient(), alpha, mu);
    double inches = work(IMPERIAL.berggren(), lambda, 0.76, 0.76, 1.0, 2500.0, heat, FINE);
    assertThat(heat).isCloseTo(2160, within(1e-9));
    assertThat(frost).isCloseTo(15.6, within(0.05));
    assertThat(alpha).isCloseTo(0.33, within(0.005));
    assertThat(mu).isCloseTo(0.20, within(0.005));
    assertThat(lambda).isCloseTo(0.89, within(0.01));
    assertThat(inches / 12).isCloseTo(5.8, within(0.05));
  }

  /** UFC 3-130-05, chapter 12: water alone sets 144 · 62.4 = 8,986 Btu/ft³ free. */
  @Test
  void waterAloneSetsItsWholeHeatFree() {
    assertThat(work(IMPERIAL.latentHeat(), 62.4, 100.0)).isCloseTo(8986, within(0.5));
  }

  /** Kersten's formulas, from memory, meet 20 of the 22 printed values; the others are named. */
  @ParameterizedTest
  @CsvFileSource(resources = "conductivities.csv", numLinesToSkip = 4)
  void conductivitiesAreThoseOfTheTable(
      String soil, double dry, double moisture, double frozen, double unfrozen, boolean fits) {
    boolean coarse = soil.equals("coarse");
    assertThat(work(IMPERIAL.frozen(coarse), dry, moisture))
        .isCloseTo(frozen, within(fits ? 0.05 : 0.2));
    assertThat(work(IMPERIAL.unfrozen(coarse), dry, moisture)).isCloseTo(unfrozen, within(0.05));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "surface_factors.csv", numLinesToSkip = 3)
  void surfaceFactorsAreThoseOfTheManual(String surface, double n) {
    assertThat(FrostSurface.find(surface).n().fraction()).isCloseTo(n, within(1e-12));
  }

  /**
   * A second road: the depth of frost over water mains by the air's index alone, 55.18 · F^0.468 mm
   * with F in °C-days (Fair, Geyer and Okun, equation 5.41b, page 181). Fine soil under bare ground
   * comes within an eighth of it over all winters; sand, which conducts better, goes deeper.
   */
  @ParameterizedTest
  @ValueSource(doubles = {100, 200, 400, 800, 1500, 3000})
  void fineSoilFollowsTheCurveOfWaterMains(double celsiusDays) {
    double curve = 55.18 * Math.pow(celsiusDays, 0.468);
    assertThat(stefanMillimetres(false, 100, 20, celsiusDays) / curve).isBetween(0.875, 1.125);
    assertThat(stefanMillimetres(true, 120, 8, celsiusDays)).isGreaterThan(curve);
  }

  private static double stefanMillimetres(
      boolean coarse, double pcf, double moisture, double index) {
    double heat = work(IMPERIAL.latentHeat(), pcf, moisture);
    double frozen = work(IMPERIAL.frozen(coarse), pcf, moisture);
    return 25.4 * work(IMPERIAL.stefan(), frozen, 0.7, index * 1.8, heat, FINE);
  }

  /** The error function against a library's. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.28, 0.7, 1.1, 1.58})
  void theErrorFunctionIsTheLibrarys(double x) {
    assertThat(Neumann.erf(x)).isCloseTo(Erf.erf(x), within(1e-14));
  }

  /** Without warmth and with little heat stored there is nothing to hold the frost back. */
  @Test
  void theCoefficientFallsFromOne() {
    assertThat(Neumann.lambda(0, 1e-6)).isCloseTo(1, within(1e-5));
    double before = 1;
    for (double mu = 0.05; mu <= 5; mu += 0.15) {
      double now = Neumann.lambda(0.5, mu);
      assertThat(now).isLessThan(before).isPositive();
      assertThat(Neumann.lambda(1.5, mu)).isLessThan(now);
      before = now;
    }
  }

  /** Both variants of each formula give one depth, as far as their rounded constants let them. */
  @ParameterizedTest
  @CsvSource({"true, 120, 8", "true, 130, 5", "false, 100, 20", "false, 90, 30"})
  void imperialAndMetricAgree(boolean coarse, double pcf, double moisture) {
    double dry = pcf * 16.018463373960142;
    double frozen = work(METRIC.frozen(coarse), dry, moisture);
    double unfrozen = work(METRIC.unfrozen(coarse), dry, moisture);
    assertThat(frozen)
        .isCloseTo(
            1.730734666 * work(IMPERIAL.frozen(coarse), pcf, moisture), within(frozen * 3e-4));
    assertThat(unfrozen)
        .isCloseTo(
            1.730734666 * work(IMPERIAL.unfrozen(coarse), pcf, moisture), within(unfrozen * 3e-4));
    double heat = work(METRIC.latentHeat(), dry, moisture);
    double frost = work(METRIC.surfaceFrost(), 0.7, 1000.0, 140.0);
    double lambda =
        work(
            METRIC.coefficient(),
            work(METRIC.warmth(), 6.0, frost),
            work(METRIC.stored(), dry, moisture, frost, heat));
    double metric = work(METRIC.berggren(), lambda, frozen, unfrozen, 0.7, 1000.0, heat, FINE);
    double heatHere = work(IMPERIAL.latentHeat(), pcf, moisture);
    double frostHere = work(IMPERIAL.surfaceFrost(), 0.7, 1800.0, 140.0);
    double lambdaHere =
        work(
            IMPERIAL.coefficient(),
            work(IMPERIAL.warmth(), 10.8, frostHere),
            work(IMPERIAL.stored(), pcf, moisture, frostHere, heatHere));
    double imperial =
        work(
            IMPERIAL.berggren(),
            lambdaHere,
            work(IMPERIAL.frozen(coarse), pcf, moisture),
            work(IMPERIAL.unfrozen(coarse), pcf, moisture),
            0.7,
            1800.0,
            heatHere,
            FINE);
    assertThat(metric).isCloseTo(25.4 * imperial, within(metric * 1e-3));
    assertThat(work(METRIC.mostWater(), dry))
        .isCloseTo(work(IMPERIAL.mostWater(), pcf), within(0.1));
  }
}
