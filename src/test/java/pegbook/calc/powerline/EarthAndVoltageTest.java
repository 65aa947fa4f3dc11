package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.UnitSystem;
import pegbook.measure.Voltage;
import pegbook.testing.PowerJob;

/** The earth conductor, higher voltages and the places of a route. */
class EarthAndVoltageTest {
  /**
   * IEC 60364-5-54, Table 54.2 (recalled): as large as the line up to 16 mm², 16 mm² up to 35, then
   * half; the next size that is made.
   */
  @ParameterizedTest
  @CsvSource({"1.5, 1.5", "10, 10", "16, 16", "25, 16", "35, 16", "50, 25", "70, 35"})
  void theEarthConductorOfAMetricCable(String line, String earth) {
    List<String> names = new MetricSeries(Power.Method.CONDUIT).names();
    int size = names.indexOf(line + "\u00a0mm²");
    assertThat(size).isNotNegative();
    Job job = PowerJob.metric().read();
    EarthSize taken = EarthSize.of(job.power().orElseThrow(), UnitSystem.METRIC, size, size);
    assertThat(taken.name()).isEqualTo(earth + "\u00a0mm²");
  }

  private static List<Double> above(double volts, UnitSystem units) {
    return HigherVoltage.above(volts, units).stream()
        .map(HigherVoltage::voltage)
        .map(Voltage::volts)
        .toList();
  }

  /** At most two, each at least half as much again. */
  @Test
  void voltagesWorthAsking() {
    assertThat(above(12, UnitSystem.IMPERIAL)).containsExactly(24.0, 48.0);
    assertThat(above(16, UnitSystem.IMPERIAL)).containsExactly(24.0, 48.0);
    assertThat(above(17, UnitSystem.IMPERIAL)).containsExactly(48.0, 120.0);
    assertThat(above(120, UnitSystem.IMPERIAL)).containsExactly(240.0);
    assertThat(above(240, UnitSystem.IMPERIAL)).isEmpty();
    assertThat(above(12, UnitSystem.METRIC)).containsExactly(24.0, 48.0);
    assertThat(above(24, UnitSystem.METRIC)).containsExactly(48.0, 230.0);
    assertThat(above(230, UnitSystem.METRIC)).containsExactly(400.0);
    assertThat(above(400, UnitSystem.METRIC)).isEmpty();
  }

  /** Of three phases the drop is a share of the voltage to the neutral: 400 V / √3 is 230.9 V. */
  @Test
  void theDropOfThreePhasesIsOfTheNeutralsVoltage() {
    assertThat(new HigherVoltage(new Voltage(400), true).lostOf()).isCloseTo(230.94, within(0.005));
    assertThat(new HigherVoltage(new Voltage(240), false).lostOf()).isEqualTo(240);
  }

  @Test
  void placesFollowTheLegs() {
    PowerLine.Route route =
        PowerJob.metric().route("0 m, 33 m", "5 m, 20 m", "0 m, 3 m").line().route();
    assertThat(route.legs()).hasSize(2);
    List<Point> places = route.places();
    assertThat(places).hasSize(3);
    assertThat(places.get(0)).isEqualTo(route.legs().get(0).start());
    assertThat(places.get(1)).isEqualTo(route.legs().get(0).end());
    assertThat(places.get(2)).isEqualTo(route.legs().get(1).end());
    assertThat(route.legs()).extracting(PowerLine.Leg::from).containsExactly("R1", "R2");
    assertThat(route.legs()).extracting(PowerLine.Leg::to).containsExactly("R2", "R3");
  }
}
