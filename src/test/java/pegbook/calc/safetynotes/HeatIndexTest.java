package pegbook.calc.safetynotes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.measure.Temperature;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;

/** The heat index against the chart of the National Weather Service and cases by hand. */
class HeatIndexTest {
  /**
   * Half a unit of the chart's last digit, and what its makers' own rounding adds: the cell of 90
   * and 45 is 92.493 by the regression and prints 93.
   */
  private static final double CHART = 0.508;

  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/safety/heat-index-chart.csv", useHeadersInDisplayName = true)
  void theRegressionIsThatOfTheChart(double air, double humidity, double printed) {
    double index = HeatFormulas.REGRESSION.function().applyAsDouble(new double[] {air, humidity});
    assertThat(index).isCloseTo(printed, within(CHART));
  }

  /**
   * The full algorithm, worked by hand from SR 90-23: below 80 the simple form; dry and humid air
   * adjusted. 95 at 5 %: 90.1768 less (13 - 5)/4 times the root of 17/17, which is 2. 84 at 95 %:
   * 100.2817 and (95 - 85)/10 times (87 - 84)/5, which is 0.6.
   */
  @ParameterizedTest
  @CsvSource({
    "75, 50, 74.775",
    "92, 60, 104.6844",
    "95, 5, 88.1768",
    "100, 10, 94.1225",
    "84, 95, 100.8817",
    "80, 100, 89.2879",
    "87, 90, 109.1832"
  })
  void theAlgorithmByHand(double air, double humidity, double index) {
    assertThat(HeatIndex.of(air, humidity).fahrenheit()).isCloseTo(index, within(0.0001));
  }

  @ParameterizedTest
  @CsvSource({
    "75, 50, NONE",
    "88, 50, CAUTION",
    "84, 50, BEGIN",
    "92, 60, DANGER",
    "96, 70, EXTREME"
  })
  void classesBeginAtTheirLimits(double air, double humidity, HeatIndex.Level heat) {
    assertThat(HeatIndex.of(air, humidity).level()).isEqualTo(heat);
  }

  /** More of either never feels cooler by more than the regression is off. */
  @Property(tries = 300, seed = Chance.SEED)
  void hotterAndDamperIsNotCooler(
      @ForAll @DoubleRange(min = 80, max = 105) double air,
      @ForAll @DoubleRange(min = 40, max = 90) double humidity) {
    double here = HeatIndex.of(air, humidity).fahrenheit();
    assertThat(HeatIndex.of(air + 2, humidity).fahrenheit()).isGreaterThan(here - 1.3);
    assertThat(HeatIndex.of(air, humidity + 4).fahrenheit()).isGreaterThan(here - 1.3);
  }

  @Test
  void theTableIsSetUpAndMarksDanger() {
    HeatTable table = HeatTable.of(UnitSystem.IMPERIAL);
    // 92 °F at 60 %: 104.68 is set up to 105, danger. 100 °F at 90 % is beyond the chart.
    HeatTable.Cell cell = table.rows().get(3).cells().get(2);
    assertThat(cell.index().map(Temperature::fahrenheit).orElseThrow())
        .isCloseTo(105, within(1e-6));
    assertThat(cell.danger()).isTrue();
    assertThat(table.rows().get(5).cells().get(5).index()).isEmpty();
    assertThat(table.rows().get(0).cells().get(0).danger()).isFalse();
    HeatTable metric = HeatTable.of(UnitSystem.METRIC);
    // 33 °C would be 91.4 °F; the row of 31 °C is 87.8 °F, at 60 % 94.85 °F or 34.9 °C.
    assertThat(metric.rows().get(2).cells().get(2).index().map(Temperature::celsius).orElseThrow())
        .isCloseTo(35, within(1e-6));
  }
}
