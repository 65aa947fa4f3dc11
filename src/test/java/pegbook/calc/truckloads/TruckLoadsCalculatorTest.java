package pegbook.calc.truckloads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.truckloads.TruckLoads.Load;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Pour;
import pegbook.figures.Task;
import pegbook.figures.TaskDay;
import pegbook.job.Concrete.Mixing;
import pegbook.measure.Duration;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class TruckLoadsCalculatorTest {
  private final FillJob job = new FillJob();
  private final Map<Pour, TaskDay> days = new LinkedHashMap<>();

  TruckLoadsCalculatorTest() {
    job.mixing = Mixing.READY_MIX;
  }

  private void pour(String mark, int day, Volume poured, double minutes) {
    Pour pour =
        new Pour(
            mark,
            Task.Kind.POUR,
            poured,
            0,
            0,
            Duration.ofMinutes(minutes),
            Duration.ofMinutes(60));
    days.put(pour, new TaskDay(Task.Kind.POUR, day, Optional.empty()));
  }

  private TruckLoads loads() {
    return TruckLoadsCalculator.calculate(job.job(), days);
  }

  /** 27 ft3 are a cubic yard; a hair over a quarter is the next quarter. */
  @ParameterizedTest
  @CsvSource({"27, , 1", "27.1, , 1.25", "6, , 0.25", "27, 3, 3", "100, 3, 3.75"})
  void aLoadIsSetUpAndNoLessThanThePlantBrings(double cubicFeet, Double least, double yards) {
    job.truckMinimum = Optional.ofNullable(least).map(Volume::ofCubicYards);
    pour("S1", 4, Volume.ofCubicFeet(cubicFeet), 10);
    assertThat(loads().order().cubicYards()).isEqualTo(yards, offset(1e-9));
  }

  @Test
  void metricLoadsComeInQuartersOfAMetre() {
    job.metric();
    pour("S1", 4, new Volume(0.51), 10);
    assertThat(loads().order().cubicMetres()).isEqualTo(0.75, offset(1e-9));
  }

  @Test
  void everyDayOfPoursIsALoad() {
    pour("P1", 4, Volume.ofCubicFeet(10), 10);
    pour("S1", 4, Volume.ofCubicFeet(10), 10);
    pour("S2", 6, Volume.ofCubicFeet(10), 10);
    TruckLoads loads = loads();
    assertThat(loads.loads()).extracting(Load::day).containsExactly(4, 6);
    assertThat(loads.loads().get(0).marks()).containsExactly("P1", "S1");
    Need need = loads.needs().get(0);
    assertThat(need.amount()).isEqualTo(30 / 27.0, offset(1e-9));
    assertThat(need.order()).as("0.75 and 0.5, not 1.25 for all").isEqualTo(1.25, offset(1e-9));
    assertThat(need.arguments()).containsEntry("loads", Argument.of(2));
  }

  @Test
  void aShortLoadAsksAndANearlyFullOneDoesNot() {
    job.truckMinimum = Optional.of(Volume.ofCubicYards(1));
    pour("S1", 4, Volume.ofCubicFeet(15), 10);
    assertThat(loads().findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo("short-load");
              assertThat(finding.kind()).isEqualTo(Finding.Kind.ASK);
              assertThat(finding.subjects()).containsExactly("S1");
            });
    pour("S2", 4, Volume.ofCubicFeet(6), 10);
    assertThat(loads().findings()).isEmpty();
  }

  /** Days 4 and 6 lack 12 of 27 ft³ and 17 of 27 ft³; day 5 is full. */
  @Test
  void severalShortLoadsAskOnce() {
    job.truckMinimum = Optional.of(Volume.ofCubicYards(1));
    pour("S1", 4, Volume.ofCubicFeet(15), 10);
    pour("S2", 5, Volume.ofCubicFeet(26), 10);
    pour("S3", 6, Volume.ofCubicFeet(10), 10);
    assertThat(loads().findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo("short-loads");
              assertThat(finding.subjects()).containsExactly("S1", "S3");
              assertThat(finding.arguments())
                  .containsEntry("short", Argument.of(2))
                  .containsEntry("loads", Argument.of(3));
              assertThat(cubicFeet(finding, "poured")).isEqualTo(25, offset(1e-9));
              assertThat(cubicFeet(finding, "over")).isEqualTo(29, offset(1e-9));
            });
  }

  private static double cubicFeet(Finding finding, String name) {
    return finding.arguments().get(name) instanceof Argument.Measured measured
            && measured.quantity() instanceof Volume volume
        ? volume.cubicMetres() / Volume.ofCubicFeet(1).cubicMetres()
        : Double.NaN;
  }

  @Test
  void aTruckThatMustWaitAsks() {
    pour("S1", 4, Volume.ofCubicFeet(15), 40);
    pour("S2", 5, Volume.ofCubicFeet(15), 40);
    assertThat(loads().findings()).isEmpty();
    pour("S3", 5, Volume.ofCubicFeet(15), 40);
    assertThat(loads().findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo("truck-must-wait");
              assertThat(finding.arguments())
                  .containsEntry("most", Argument.of(80))
                  .containsEntry("window", Argument.of(60));
            });
  }

  @Test
  void whoMixesOrdersNoTruck() {
    job.mixing = Mixing.MIXER;
    pour("S1", 4, Volume.ofCubicFeet(15), 40);
    assertThat(loads().loads()).isEmpty();
    assertThat(loads().needs()).isEmpty();
  }

  /** Never less than is poured, never a step more unless the plant asks for it. */
  @Property(tries = 100, seed = Chance.SEED)
  void loadsCoverThePours(
      @ForAll @DoubleRange(min = 0.01, max = 12) double volume,
      @ForAll @DoubleRange(min = 0.25, max = 4) double least,
      @ForAll @IntRange(min = 0, max = 1) int given) {
    TruckLoadsCalculatorTest of = new TruckLoadsCalculatorTest();
    of.job.dig.units = UnitSystem.METRIC;
    of.job.truckMinimum = given == 1 ? Optional.of(new Volume(least)) : Optional.empty();
    of.pour("S1", 1, new Volume(volume), 1);
    double order = of.loads().order().cubicMetres();
    assertThat(order).isGreaterThanOrEqualTo(volume - 1e-6);
    assertThat(order).isLessThan(Math.max(volume + 0.25 + 1e-6, given * least + 1e-6));
  }
}
