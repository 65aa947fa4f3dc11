package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pegbook.figures.Working;
import pegbook.measure.Count;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.LineResistance;
import pegbook.measure.Ratio;
import pegbook.measure.Voltage;
import pegbook.published.MetricCable;
import pegbook.published.Wire;

/** Voltage drop against worked examples. */
class VoltageDropPublishedTest {
  private static double drop(String size, double feet, double amperes) {
    return Working.of(
            ConductorFormulas.gaugeDrop(),
            "",
            Length.ofFeet(feet),
            new Current(amperes),
            Wire.find(size).stranded().orElseThrow().copper(),
            new LineResistance(0),
            Ratio.ofPercent(100))
        .result();
  }

  private static double share(double lost, double volts) {
    return Working.of(ConductorFormulas.share(), "", new Voltage(lost), new Voltage(volts))
        .result();
  }

  /** A training page: 2-wire, 100 ft, 16 AWG stranded, 4 A, 24 V: 4.0 V; 16.7 % of the rounded. */
  @Test
  void sixteenGauge() {
    assertThat(drop("16", 100, 4)).isCloseTo(4.0, within(0.05)).isCloseTo(3.992, within(5e-4));
    assertThat(share(3.992, 24)).isCloseTo(16.63, within(0.005));
    assertThat(share(4.0, 24)).isCloseTo(16.7, within(0.05));
  }

  /** The same page by circular mils, 12.9 · 2 · 100 ft · 20 A / 16510: 3.1 V, 2.6 % of 120 V. */
  @Test
  void eightGauge() {
    assertThat(drop("8", 100, 20)).isCloseTo(3.1, within(0.05));
    assertThat(2 * 12.9 * 100 * 20 / Wire.find("8").circularMils())
        .isCloseTo(3.125, within(5e-4))
        .isCloseTo(drop("8", 100, 20), within(0.02));
    assertThat(share(drop("8", 100, 20), 120)).isCloseTo(2.6, within(0.05));
  }

  /** IEC 60364-5-52, Annex G: 230 V, 10 A, 30 m, 2.5 mm² copper, cos φ 1: 5.40 V, 2.348 %. */
  @Test
  void metric() {
    double lost = metric(30, 2.5, 100, 10);
    assertThat(lost).isCloseTo(5.40, within(0.005));
    assertThat(share(lost, 230)).isCloseTo(2.348, within(5e-4));
  }

  /** With cos φ 0.8, by hand: 2 · (0.0225 · 30 / 2.5 · 0.8 + 0.00008 · 30 · 0.6) · 10. */
  @Test
  void metricWithReactance() {
    assertThat(metric(30, 2.5, 80, 10)).isCloseTo(2 * (0.216 + 0.00144) * 10, within(1e-9));
  }

  private static double metric(double metres, double area, double factor, double amperes) {
    return Working.of(
            ConductorFormulas.metricDrop(),
            "",
            new Count(2),
            MetricCable.COPPER,
            new Length(metres),
            pegbook.measure.Area.ofSquareMillimetres(area),
            Ratio.ofPercent(factor),
            new Current(amperes))
        .result();
  }

  /** NEC Chapter 9, Table 9, effective impedance at 0.85: R · 0.85 + X · 0.527 for 1/0 copper. */
  @Test
  void reactanceCounts() {
    Wire wire = Wire.find("1/0");
    double lost =
        Working.of(
                ConductorFormulas.gaugeDrop(),
                "",
                Length.ofFeet(1000),
                new Current(1),
                wire.stranded().orElseThrow().copper(),
                wire.reactance().orElseThrow(),
                Ratio.ofPercent(85))
            .result();
    // Table 9 prints 0.13 ohm to neutral for a thousand feet of 1/0 in PVC (recalled).
    assertThat(lost / 2).isCloseTo(0.13, within(0.005));
    assertThat(lost / 2).isCloseTo(0.122 * 0.85 + 0.044 * 0.5268, within(1e-4));
  }
}
