package pegbook.calc.ownmix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.ownmix.OwnMixPlan.Mix;
import pegbook.calc.ownmix.OwnMixPlan.Weights;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.OwnMix;
import pegbook.measure.Count;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.MixTables;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class OwnMixCalculatorTest {
  private static final OwnMixFormulas POUNDS = new OwnMixFormulas(UnitSystem.IMPERIAL);

  private static double work(Formula formula, double... numbers) {
    return new Working(formula, "", java.util.Arrays.stream(numbers).boxed().toList()).result();
  }

  // Published: a worked example of ACI 211.1 in lecture notes on mix design, 4000 psi, stone of
  // 3/8 in, fineness 2.9, slump 3 in. Its printed digits, half a unit of the last.

  private static final double WATER = 385;

  @Test
  void theExamplesWaterAndRatioStandInTheTables() {
    MixTables.Stone stone = MixTables.stone(Length.ofInches(0.375));
    assertThat(stone.waterPounds(Length.ofInches(3), false)).isEqualTo(WATER);
    assertThat(stone.airPercent()).isEqualTo(3);
    assertThat(
            MixTables.ratios(false).stream()
                .filter(row -> Math.abs(row.strength().psi() - 4000) < 1e-6)
                .findFirst()
                .orElseThrow()
                .plain())
        .isEqualTo(0.57);
  }

  @Test
  void theExampleToItsPrintedDigits() {
    double cement = work(POUNDS.cement(), WATER, 0.57);
    assertThat(cement).isEqualTo(675.44, offset(0.005));
    double share = work(POUNDS.share(), 2.9, 2.8, 0.46, 0.44);
    assertThat(share).isEqualTo(0.45, offset(0.005));
    double stone = work(POUNDS.stone(), share, 103);
    assertThat(stone).isEqualTo(1251, offset(0.5));
    double sand = work(POUNDS.sand(), WATER, cement, stone, 3, 2.68, 2.67);
    assertThat(sand).isEqualTo(1516, offset(0.5));
    assertThat(sand / 2.67 / 62.4).as("its volume").isEqualTo(9.1, offset(0.05));
    assertThat(work(POUNDS.asItLies(true), sand, 2.37) / 100).isEqualTo(15.52, offset(0.005));
    assertThat(work(POUNDS.asItLies(false), stone, -0.81) / 100).isEqualTo(12.41, offset(0.005));
    assertThat(work(POUNDS.water(), WATER, sand, 2.37, stone, -0.81) / 100)
        .as("3.58 in print, a slip of the pencil: 3.592 from its own numbers")
        .isEqualTo(3.592, offset(0.0005));
    assertThat(cement / 100).as("6.75, once misprinted 6.57").isEqualTo(6.75, offset(0.005));
  }

  /** The metric columns of the same table, kg/m3; they are rounded from pounds. */
  @ParameterizedTest
  @CsvSource({
    "0.375, 1.5, false, 207", "0.375, 3, false, 228", "0.75, 3, false, 205", "1, 1.5, false, 179",
    "1.5, 3, false, 181", "0.375, 1.5, true, 181", "0.75, 3, true, 184", "1.5, 1.5, true, 148"
  })
  void waterAgreesWithTheMetricColumns(double stone, double slump, boolean air, double kilograms) {
    double pounds =
        MixTables.stone(Length.ofInches(stone)).waterPounds(Length.ofInches(slump), air);
    assertThat(MixTables.metric(pounds)).as("pounds go in fives").isEqualTo(kilograms, offset(3.5));
  }

  /** Along every row and column the tables only rise or only fall. */
  @Test
  void theTablesAreInOrder() {
    List<Double> sizes = List.of(0.375, 0.5, 0.75, 1.0, 1.5);
    for (int i = 1; i < sizes.size(); i++) {
      MixTables.Stone smaller = MixTables.stone(Length.ofInches(sizes.get(i - 1)));
      MixTables.Stone larger = MixTables.stone(Length.ofInches(sizes.get(i)));
      for (int j = 0; j < 4; j++) {
        assertThat(larger.water().get(j)).isLessThan(smaller.water().get(j));
        assertThat(larger.shares().get(j)).isGreaterThan(smaller.shares().get(j));
      }
      assertThat(larger.airPercent()).isLessThan(smaller.airPercent());
    }
    for (boolean air : new boolean[] {false, true}) {
      List<MixTables.Ratio> rows = MixTables.ratios(air);
      assertThat(rows).hasSize(air ? 4 : 5);
      for (int i = 1; i < rows.size(); i++) {
        assertThat(rows.get(i).strength()).isGreaterThan(rows.get(i - 1).strength());
        assertThat(rows.get(i).plain()).isLessThan(rows.get(i - 1).plain());
      }
    }
  }

  /** Twenty millimetres are three quarters; what is smaller than a size is not of that size. */
  @ParameterizedTest
  @CsvSource({"20, 19.05", "19, 19.05", "18, 12.7", "40, 38.1", "9.5, 9.525", "25, 25.4"})
  void aStoneIsTheNextSizeDown(double millimetres, double size) {
    assertThat(MixTables.stone(Length.ofMillimetres(millimetres)).size().millimetres())
        .isEqualTo(size, offset(1e-9));
  }

  // Decisions

  private static FillJob job(boolean imperial) {
    FillJob job = imperial ? new FillJob() : new FillJob().metric();
    job.strength = imperial ? Pressure.ofPsi(3000) : Pressure.ofMegapascals(20);
    job.ownMix =
        Optional.of(
            new OwnMix(
                Length.ofInches(0.75),
                Density.ofPoundsPerCubicFoot(100),
                OwnMix.Sand.MEDIUM,
                Length.ofInches(3),
                Ratio.ofPercent(4),
                Ratio.ZERO,
                Mass.ofPounds(94)));
    return job;
  }

  private static OwnMixPlan plan(FillJob job, Optional<Double> most) {
    return OwnMixCalculator.calculate(
        job.job(), Volume.ofCubicFeet(54), Volume.ofCubicFeet(2), most);
  }

  @Test
  void nothingIsWorkedWhereNothingIsAsked() {
    FillJob job = job(true);
    job.ownMix = Optional.empty();
    OwnMixPlan plan = plan(job, Optional.empty());
    assertThat(plan.mix()).isEmpty();
    assertThat(plan.needs()).isEmpty();
  }

  /** 3000 psi aim at 4200; between 0.57 at 4000 and 0.48 at 5000: 0.552. */
  @Test
  void aMeanAboveTheStrengthIsAimedAt() {
    Mix mix = plan(job(true), Optional.empty()).mix().orElseThrow();
    assertThat(mix.aim().psi()).isEqualTo(4200, offset(1e-6));
    assertThat(mix.waterCement()).isEqualTo(0.552, offset(1e-9));
    assertThat(mix.unit().water().pounds()).isEqualTo(340, offset(1e-9));
    assertThat(mix.unit().cement().pounds()).isEqualTo(340 / 0.552, offset(1e-6));
  }

  @Test
  void theExposureHoldsTheMix() {
    assertThat(plan(job(true), Optional.of(0.45)).mix().orElseThrow().waterCement())
        .isEqualTo(0.45);
    assertThat(plan(job(true), Optional.of(0.60)).mix().orElseThrow().waterCement())
        .isEqualTo(0.552, offset(1e-9));
  }

  /** With air the table ends at 5000 psi: 4000 would aim at 5200. */
  @Test
  void beyondTheTableAsksAndTakesItsLastRow() {
    FillJob job = job(true);
    job.strength = Pressure.ofPsi(4000);
    job.air = Optional.of(Ratio.ofPercent(6));
    OwnMixPlan plan = plan(job, Optional.empty());
    assertThat(plan.mix().orElseThrow().waterCement()).isEqualTo(0.40, offset(1e-9));
    assertThat(plan.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.id()).isEqualTo("own-mix-beyond-table");
              assertThat(finding.kind()).isEqualTo(Finding.Kind.ASK);
            });
    job.air = Optional.empty();
    assertThat(plan(job, Optional.empty()).findings()).isEmpty();
  }

  @Test
  void cementSandAndStoneAreBoughtInsteadOfBags() {
    OwnMixPlan plan = plan(job(true), Optional.empty());
    assertThat(plan.needs())
        .extracting(Need::id)
        .containsExactly("cement-bags", "mix-sand", "mix-stone");
    Mix mix = plan.mix().orElseThrow();
    assertThat(mix.cementBags())
        .as("two cubic yards")
        .isEqualTo((int) Math.ceil(2 * 340 / 0.552 / 94));
    assertThat(plan.needs().get(1).order() % 100).isZero();
    assertThat(plan.needs().get(1).order())
        .isGreaterThanOrEqualTo(plan.needs().get(1).amount())
        .isLessThan(plan.needs().get(1).amount() + 100);
  }

  /** Imperial and metric are one mix: the same weights within the digits of 62.4 and 27. */
  @Test
  void bothSystemsMakeOneMix() {
    FillJob metric = job(false);
    metric.strength = Pressure.ofPsi(3000);
    Weights one = plan(job(true), Optional.of(0.5)).mix().orElseThrow().load();
    Weights other = plan(metric, Optional.of(0.5)).mix().orElseThrow().load();
    assertThat(other.cement().dividedBy(one.cement())).isEqualTo(1, offset(0.002));
    assertThat(other.sand().dividedBy(one.sand())).isEqualTo(1, offset(0.002));
    assertThat(other.stone().dividedBy(one.stone())).isEqualTo(1, offset(0.002));
    assertThat(other.water().dividedBy(one.water())).isEqualTo(1, offset(0.002));
  }

  /** Volumes of all that goes in, and air, fill the yard; dampness changes no water in all. */
  @Property(tries = 100, seed = Chance.SEED)
  void whatGoesInFillsTheWhole(
      @ForAll @DoubleRange(min = 2000, max = 4500) double psi,
      @ForAll @DoubleRange(min = 10, max = 40) double stone,
      @ForAll OwnMix.Sand sand,
      @ForAll @DoubleRange(min = 0, max = 10) double damp) {
    FillJob job = job(true);
    job.strength = Pressure.ofPsi(psi);
    job.ownMix =
        Optional.of(
            new OwnMix(
                Length.ofMillimetres(stone),
                Density.ofPoundsPerCubicFoot(100),
                sand,
                Length.ofInches(3),
                Ratio.ofPercent(damp),
                Ratio.ZERO,
                Mass.ofPounds(94)));
    Mix mix = plan(job, Optional.empty()).mix().orElseThrow();
    Weights unit = mix.unit();
    double air = MixTables.stone(Length.ofMillimetres(stone)).airPercent() / 100;
    double filled =
        unit.water().pounds() / 62.4
            + unit.cement().pounds() / (3.15 * 62.4)
            + (unit.sand().pounds() + unit.stone().pounds()) / (2.65 * 62.4)
            + 27 * air;
    assertThat(filled).isEqualTo(27, offset(1e-6));
    Weights all = mix.all();
    double dry = all.sand().pounds() / (1 + damp / 100);
    assertThat(all.water().pounds() + dry * damp / 100)
        .isEqualTo(2 * unit.water().pounds(), offset(1e-6));
    assertThat(unit.water().pounds() / unit.cement().pounds())
        .isEqualTo(mix.waterCement(), offset(1e-9));
    assertThat(Unit.NONE.in(new Count(mix.cementBags()))).isPositive();
  }
}
