package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Metal;
import pegbook.calc.powerline.PowerLine.Size;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.measure.Length;
import pegbook.testing.PowerJob;

/** Which conductors are taken; figures by hand from the published tables named beside them. */
class ConductorPlanTest {
  private static Chosen chosen(PowerJob job) {
    return job.line().conductors().chosen().orElseThrow();
  }

  private static Size size(PowerJob job, String name) {
    return job.line().conductors().sizes().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * 100 ft of trench, 18 in up at each end and 3 ft of slack: 109 ft one way. 12 A in 12 AWG
   * stranded (Table 8: 1.98 ohm): 5.18 V, 4.3 %; in 10 AWG (1.24): 3.24 V, 2.7 %.
   */
  @Test
  void theDropMakesItLarger() {
    PowerJob job = PowerJob.imperial();
    assertThat(job.line().route().oneWay().feet()).isCloseTo(109, within(1e-9));
    assertThat(size(job, "12 AWG").copper().flatMap(Metal::stranded).orElseThrow().lost().volts())
        .isCloseTo(2 * 109 * 12 * 1.98 / 1000, within(1e-9));
    Chosen chosen = chosen(job);
    assertThat(chosen.size()).isEqualTo("10 AWG");
    assertThat(chosen.bearing()).isEqualTo("12 AWG");
    assertThat(chosen.running().share().fraction()).isCloseTo(0.02703, within(5e-6));
    // 250.122(B): 12 AWG (6530 cmil) · 10380 / 6530 = 10380, which is 10 AWG.
    assertThat(chosen.earth()).isEqualTo("10 AWG");
    // 20 A: 5.41 V of 120 V.
    assertThat(chosen.full().share().fraction()).isCloseTo(0.04505, within(5e-6));
  }

  /** Solid copper: Table 8 has 1.93 and 1.21 ohm; aluminium of 10 AWG stranded 2.04. */
  @Test
  void metalsAndMakesStandBesideEachOther() {
    PowerJob job = PowerJob.imperial();
    Metal copper = size(job, "10 AWG").copper().orElseThrow();
    assertThat(copper.solid().orElseThrow().lost().volts())
        .isCloseTo(2 * 109 * 12 * 1.21 / 1000, within(1e-9));
    Metal aluminium = size(job, "10 AWG").aluminium().orElseThrow();
    assertThat(aluminium.stranded().orElseThrow().lost().volts())
        .isCloseTo(2 * 109 * 12 * 2.04 / 1000, within(1e-9));
    assertThat(aluminium.amperes()).isEqualTo(25);
    assertThat(size(job, "14 AWG").aluminium()).isEmpty();
    assertThat(size(job, "6 AWG").copper().orElseThrow().solid()).isEmpty();
  }

  /** 240.4(D): 14 AWG carries 15 A at 60 °C and lies behind 15 A; 12 aluminium behind 15 A. */
  @Test
  void smallConductorsKeepTheirBreaker() {
    PowerJob job = PowerJob.imperial().route("0 ft, 20 ft", "0 ft, 10 ft");
    assertThat(chosen(job).size()).isEqualTo("12 AWG");
    job.power("breaker", "\"15 A\"");
    assertThat(chosen(job).size()).isEqualTo("14 AWG");
    job.power("metal", "\"aluminium\"");
    assertThat(chosen(job).size()).isEqualTo("12 AWG");
    job.power("breaker", "\"20 A\"");
    assertThat(chosen(job).size()).isEqualTo("10 AWG");
    // 30 A: 10 AWG copper carries 30 A at 60 °C and may; aluminium wants 8 AWG, 35 A.
    job.power("breaker", "\"30 A\"");
    assertThat(chosen(job).size()).isEqualTo("8 AWG");
  }

  /** 110.14(C): terminals count as 60 °C up to 100 A, 75 °C above: 1 AWG is 110 A, 3/0 200 A. */
  @Test
  void terminalsDecideTheColumn() {
    PowerJob job =
        PowerJob.imperial().route("0 ft, 20 ft", "0 ft, 10 ft").power("voltage", "\"240 V\"");
    assertThat(chosen(job.power("breaker", "\"100 A\"")).size()).isEqualTo("1 AWG");
    assertThat(job.line().conductors().celsius()).isEqualTo(60);
    assertThat(chosen(job.power("breaker", "\"200 A\"")).size()).isEqualTo("3/0 AWG");
    assertThat(job.line().conductors().celsius()).isEqualTo(75);
    assertThat(chosen(job).earth()).isEqualTo("6 AWG");
  }

  /** Half the current, half the volts, a quarter of the share. */
  @Test
  void aHigherVoltageLosesLess() {
    PowerJob job = PowerJob.imperial();
    PowerLine.Supplied higher = job.line().conductors().supplies().get(0);
    assertThat(higher.voltage().volts()).isEqualTo(240);
    assertThat(higher.current().amperes()).isCloseTo(6, within(1e-9));
    assertThat(higher.drop().orElseThrow().share().fraction())
        .isCloseTo(chosen(job).running().share().fraction() / 4, within(1e-9));
    assertThat(higher.smallest()).hasValue("14 AWG");
  }

  /** Two of 10 AWG and one of 10: 3 · 0.0211 in² in 1/2 in (0.285 in²): 22 % of 40 %. */
  @Test
  void theSmallestPipeThatMayBeFilled() {
    PowerLine.Pipe pipe = PowerJob.imperial().line().trench().pipe();
    assertThat(pipe.name()).isEqualTo("1/2 in");
    assertThat(pipe.filled().orElseThrow().fraction()).isCloseTo(3 * 0.0211 / 0.285, within(1e-9));
    // Three of 3/0 (0.2679 in²) and 6 AWG (0.0507) want 0.854 / 0.4 = 2.14 in²: 2 in.
    PowerLine.Pipe feeder =
        PowerJob.imperial()
            .power("voltage", "\"240 V\"")
            .power("breaker", "\"200 A\"")
            .power("circuit", "\"feeder\"")
            .line()
            .trench()
            .pipe();
    assertThat(feeder.name()).isEqualTo("2 in");
    assertThat(feeder.filled().orElseThrow().fraction())
        .isCloseTo((3 * 0.2679 + 0.0507) / 3.291, within(1e-9));
  }

  /** Nothing larger than 12 AWG allowed: what would do is told. */
  @Test
  void whatWouldDoWhereNothingDoes() {
    PowerJob job = PowerJob.imperial().power("sizes", "[\"14 AWG\", \"12 AWG\"]");
    assertThat(job.line().conductors().chosen()).isEmpty();
    Finding finding = finding(job, "power-no-conductor");
    assertThat(finding.arguments().get("larger")).isEqualTo(Argument.words("10 AWG"));
    // 109 ft · 3 % / 4.316 %
    assertThat(length(finding, "longest").feet()).isCloseTo(75.76, within(0.005));
    assertThat(finding.arguments().get("voltage"))
        .isEqualTo(Argument.of(new pegbook.measure.Voltage(240)));
    assertThat(job.plan().needs()).noneMatch(need -> need.id().equals("power-wire"));
  }

  @Test
  void noSizeMayLieBehindTheBreaker() {
    PowerJob job = PowerJob.imperial().power("sizes", "[\"14 AWG\"]");
    assertThat(finding(job, "power-no-conductor-bears").arguments().get("larger"))
        .isEqualTo(Argument.words("10 AWG"));
  }

  private static Length length(Finding finding, String name) {
    return finding.arguments().get(name) instanceof Argument.Measured measured
            && measured.quantity() instanceof Length length
        ? length
        : Length.ZERO;
  }

  private static Finding finding(PowerJob job, String id) {
    return job.plan().findings().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /**
   * IEC 60364-5-52, Annex G, with cos φ 0.8 by default: 30 m, 600 mm up at each end, 1 m of slack:
   * 33.2 m. 10 A in 1.5 mm²: 2 · (0.0225 · 33.2 / 1.5 · 0.8 + 0.00008 · 33.2 · 0.6) · 10 = 8.00 V,
   * 3.48 %; in 2.5 mm²: 4.81 V, 2.09 %.
   */
  @Test
  void metricCables() {
    PowerJob job = PowerJob.metric();
    assertThat(job.line().route().oneWay().metres()).isCloseTo(33.2, within(1e-9));
    assertThat(
            size(job, "1.5\u00a0mm²")
                .copper()
                .flatMap(Metal::stranded)
                .orElseThrow()
                .lost()
                .volts())
        .isCloseTo(8.00, within(0.005));
    Chosen chosen = chosen(job);
    assertThat(chosen.size()).isEqualTo("2.5\u00a0mm²");
    assertThat(chosen.running().lost().volts()).isCloseTo(4.81, within(0.005));
    assertThat(chosen.running().share().fraction()).isCloseTo(0.0209, within(5e-5));
    assertThat(chosen.earth()).isEqualTo("2.5\u00a0mm²");
    // 1.5 · 13 mm = 19.5 mm: the smallest pipe, 33 mm inside.
    assertThat(job.line().trench().pipe().name()).isEqualTo("40\u00a0mm");
  }

  /** Over three phases the same load takes 230 / (√3 · 400) of the current, one way. */
  @Test
  void threePhases() {
    PowerLine.Supplied three = PowerJob.metric().line().conductors().supplies().get(0);
    assertThat(three.threePhase()).isTrue();
    assertThat(three.current().amperes()).isCloseTo(3.32, within(0.005));
    assertThat(three.smallest()).hasValue("1.5\u00a0mm²");
  }

  @Test
  void aSizeInMetricJobsIsNamedAsItIsWritten() {
    PowerJob job = PowerJob.metric().power("sizes", "[\"4 mm2\", \"6 mm2\"]");
    assertThat(chosen(job).size()).isEqualTo("4\u00a0mm²");
    assertThat(
            job.line().conductors().sizes().stream().filter(Size::allowed).map(Size::name).toList())
        .isEqualTo(List.of("4\u00a0mm²", "6\u00a0mm²"));
    assertThat(Optional.of(size(job, "2.5\u00a0mm²")).map(Size::allowed)).hasValue(false);
  }
}
