package pegbook.calc.digschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.DigWork;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Hole.DepthRule;
import pegbook.figures.PlacedMark;
import pegbook.figures.ToolStep;
import pegbook.figures.ToolStep.Use;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Digging;
import pegbook.job.Pier;
import pegbook.job.Soil;
import pegbook.job.Spoil;
import pegbook.job.Tool;
import pegbook.job.Widenings;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.published.ExcavationRule;
import pegbook.published.SwellFactor;
import pegbook.testing.DigJob;

class DigScheduleCalculatorTest {

  /** Holes of a job: supports 42 in deep, piers as they ask. */
  static List<Hole> holes(DigJob of) {
    List<Hole> holes = new ArrayList<>();
    for (PlacedMark mark : of.placement().marks()) {
      Optional<Pier> pier =
          of.piers.stream().filter(some -> some.id().equals(mark.id())).findFirst();
      holes.add(
          new Hole(
              mark.id(),
              mark.kind(),
              mark.at(),
              pier.map(Pier::hole).orElse(of.supportHole),
              pier.flatMap(Pier::depth).or(() -> of.supportDepth).orElse(Length.ofInches(42)),
              pier.map(Pier::gravel).orElse(of.supportGravel),
              of.supportTop,
              DepthRule.JOB,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Widenings.NONE));
    }
    return holes;
  }

  static DigSchedule schedule(DigJob of) {
    return DigScheduleCalculator.calculate(of.job(), of.placement(), holes(of));
  }

  private static List<String> found(DigSchedule schedule) {
    return schedule.findings().stream().map(Finding::id).toList();
  }

  private static Finding finding(DigSchedule schedule, String id) {
    return schedule.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<String> order(DigSchedule schedule) {
    return schedule.rows().stream().map(row -> row.hole().mark()).toList();
  }

  /** The published examples, through the packet's own formulas in cubic feet. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/pegbook/digging/volume-haul-examples.csv",
      numLinesToSkip = 1,
      useHeadersInDisplayName = false)
  void looseVolumeAndLoadsAreAsPublished(
      String name,
      double bank,
      double swell,
      double cart,
      double loose,
      double printed,
      long loads) {
    DigScheduleFormulas formulas = DigScheduleFormulas.in(UnitSystem.IMPERIAL);
    Working volume =
        new Working(formulas.looseVolume(Citation.COMMON_PRACTICE), name, List.of(bank, swell));
    assertThat(volume.result()).isEqualTo(loose, offset(printed / 2));
    Working carts = new Working(formulas.cartLoads(), name, List.of(volume.result(), cart));
    assertThat(carts.result()).isEqualTo((double) loads);
  }

  /**
   * Hole 12 in across and 48 in deep in clay of 30 %: 3.142 ft³, 4.084 ft³, two barrows of 3 ft³.
   */
  @Test
  void aTwelveInchHoleOfFourFeet() {
    DigJob job = new DigJob();
    job.supportHole = Length.ofInches(12);
    job.supportDepth = Optional.of(Length.ofInches(48));
    job.supportGravel = Length.ZERO;
    job.spoil =
        new Spoil(Volume.ofCubicFeet(3), Optional.of(Ratio.ofPercent(30)), Optional.empty());
    Row row = schedule(job).row("S1");
    assertThat(row.bank().cubicFeet()).isEqualTo(3.142, offset(0.0005));
    assertThat(row.loose().cubicFeet()).isEqualTo(4.084, offset(0.0005));
    assertThat(row.cartLoads()).isEqualTo(2);
  }

  @Test
  void metricFormulasGiveTheSameHole() {
    DigJob job = new DigJob();
    Row imperial = schedule(job).row("S1");
    job.units = UnitSystem.METRIC;
    Row metric = schedule(job).row("S1");
    assertThat(metric.bank().cubicMetres()).isEqualTo(imperial.bank().cubicMetres(), offset(1e-12));
    assertThat(metric.mass().kilograms()).isEqualTo(imperial.mass().kilograms(), offset(1e-9));
  }

  /** Bulking, Shrinkage and Bulk Density (rev. 2022), Table 1; FM 5-434, Table 1-1, from memory. */
  @Test
  void swellIsAsPublished() {
    assertThat(SwellFactor.find("sandy-clay").swell().percent()).isEqualTo(30, offset(0.5));
    assertThat(SwellFactor.find("sandy-gravel").swell().percent()).isEqualTo(15, offset(0.5));
    assertThat(SwellFactor.find("rock").swell().percent()).isEqualTo(72, offset(0.5));
    assertThat(SwellFactor.find("clay").swell().percent()).isEqualTo(43, offset(0.5));
    assertThat(SwellFactor.find("loam").swell().percent()).isEqualTo(25, offset(0.5));
    assertThat(SwellFactor.find("sand").swell().percent()).isEqualTo(11, offset(0.5));
    assertThat(SwellFactor.all()).hasSize(Soil.values().length);
  }

  /** 29 CFR 1926.652(a)(1): 5 ft (1.52 m); 1926.651(j)(2): 2 ft (.61 m). */
  @Test
  void thresholdsAreThoseOfTheCode() {
    assertThat(ExcavationRule.find("unshored-depth").threshold().metres())
        .isEqualTo(1.52, offset(0.005));
    EdgeRule edge = schedule(new DigJob()).edge();
    assertThat(edge.distance().metres()).isEqualTo(0.61, offset(0.005));
    assertThat(edge.source()).isEqualTo(new Citation("cfr-1926", "1926.651(j)(2)"));
    DigJob elsewhere = new DigJob();
    elsewhere.country = "NO";
    assertThat(schedule(elsewhere).edge().source()).isEqualTo(Citation.COMMON_PRACTICE);
  }

  @Test
  void theDeepestIsDugFirst() {
    DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(58)));
    assertThat(order(schedule(job))).containsExactly("P1", "S1", "S2", "S3", "S4", "S5", "S6");
    assertThat(schedule(job).rows()).extracting(Row::order).containsExactly(1, 2, 3, 4, 5, 6, 7);
    job.piers.clear();
    job.pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(40)));
    assertThat(order(schedule(job))).endsWith("P1");
  }

  @Test
  void toolsTakeTurnsDownTheHole() {
    List<ToolStep> steps = schedule(new DigJob()).row("S1").tools();
    assertThat(steps).extracting(ToolStep::use).containsExactly(Use.DIG, Use.PILOT);
    assertThat(steps)
        .extracting(step -> step.tool().kind())
        .containsExactly(Tool.Kind.CLAMSHELL, Tool.Kind.HAND_AUGER);
    assertThat(steps.get(1).from().inches()).isEqualTo(24, offset(1e-9));
    assertThat(steps.get(1).to().inches()).isEqualTo(46, offset(1e-9));
  }

  @Test
  void aPowerAugerIsStartedByHandAndCutsWhatItFits() {
    DigJob job = new DigJob();
    job.tools.add(
        new Tool(
            Tool.Kind.POWER_AUGER,
            "power auger",
            Optional.of(Length.ofInches(18)),
            Length.ofInches(36)));
    List<ToolStep> steps = schedule(job).row("S1").tools();
    assertThat(steps).extracting(ToolStep::use).containsExactly(Use.START, Use.BORE, Use.PILOT);
    assertThat(steps.get(0).to().inches()).isEqualTo(6, offset(1e-9));
    assertThat(steps.get(1).to().inches()).isEqualTo(36, offset(1e-9));
  }

  @Test
  void anAugerWiderThanTheHoleStaysAway() {
    DigJob job = new DigJob();
    job.tools.clear();
    job.tools.add(
        new Tool(
            Tool.Kind.POWER_AUGER,
            "power auger",
            Optional.of(Length.ofInches(20)),
            Length.ofInches(60)));
    DigSchedule schedule = schedule(job);
    assertThat(schedule.row("S1").tools()).isEmpty();
    assertThat(found(schedule)).contains("tool-reach");
  }

  @Test
  void stonesWantABar() {
    DigJob job = new DigJob();
    job.digging = Digging.STONY;
    List<ToolStep> steps = schedule(job).row("S1").tools();
    assertThat(steps.get(steps.size() - 1).use()).isEqualTo(Use.BAR);
    assertThat(found(schedule(job))).isEmpty();
    job.tools.remove(3);
    assertThat(found(schedule(job))).contains("bar-missing");
  }

  @Test
  void toolsThatDoNotReachAreFound() {
    DigJob job = new DigJob();
    job.tools.remove(2);
    Finding short1 = finding(schedule(job), "tool-reach");
    assertThat(short1.subjects()).containsExactly("S1", "S2", "S3", "S4", "S5", "S6");
  }

  @Test
  void aPilotHoleThatNothingOpensIsFound() {
    DigJob job = new DigJob();
    job.tools.remove(3);
    assertThat(found(schedule(job))).containsExactly("pilot-not-opened");
  }

  @Test
  void everyHoleIsHandedOnInTheOrderOfDigging() {
    DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(58)));
    DigSchedule schedule = schedule(job);
    assertThat(schedule.digging())
        .extracting(work -> work.hole().mark())
        .containsExactlyElementsOf(order(schedule));
    for (DigWork work : schedule.digging()) {
      Row row = schedule.row(work.hole().mark());
      assertThat(work.tools()).isEqualTo(row.tools());
      assertThat(work.loose()).isEqualTo(row.loose());
    }
  }

  /** 6 ft³ of sandy clay at 100 lb/ft³ in the ground, loose 1.30: 462 lb. */
  @Test
  void aHeavyCartIsSaid() {
    DigJob job = new DigJob();
    job.spoil = new Spoil(Volume.ofCubicFeet(6), Optional.empty(), Optional.empty());
    DigSchedule schedule = schedule(job);
    assertThat(found(schedule)).containsExactly("cart-heavy");
    assertThat(schedule.soil().cartLoad().pounds()).isEqualTo(462, offset(0.5));
  }
}
