package pegbook.calc.digschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;
import static pegbook.calc.digschedule.DigScheduleCalculatorTest.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import pegbook.calc.digschedule.DigSchedule.Row;
import pegbook.figures.ToolStep;
import pegbook.geometry.Point;
import pegbook.job.Soil;
import pegbook.measure.Length;
import pegbook.testing.Chance;
import pegbook.testing.DigJob;

class DigSchedulePropertyTest {

  private static DigJob job(double holeInches, double depthInches) {
    DigJob job = new DigJob();
    job.supportHole = Length.ofInches(holeInches);
    job.supportDepth = Optional.of(Length.ofInches(depthInches));
    job.supportGravel = Length.ZERO;
    return job;
  }

  @Property(tries = 100, seed = Chance.SEED)
  void volumeGrowsWithTheSquareOfTheDiameterAndWithDepth(
      @ForAll @DoubleRange(min = 6, max = 30) double hole,
      @ForAll @DoubleRange(min = 12, max = 60) double depth) {
    double one = schedule(job(hole, depth)).row("S1").bank().cubicMetres();
    double wider = schedule(job(hole * 2, depth)).row("S1").bank().cubicMetres();
    double deeper = schedule(job(hole, depth * 1.5)).row("S1").bank().cubicMetres();
    assertThat(wider).isCloseTo(one * 4, withinPercentage(1e-9));
    assertThat(deeper).isCloseTo(one * 1.5, withinPercentage(1e-9));
  }

  @Property(tries = 100, seed = Chance.SEED)
  void totalsAreSumsAndLoadsNeverMoreThanTheSumOfRows(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 8, max = 30) double hole,
      @ForAll Soil soil) {
    DigJob job = job(hole, 40).pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(55)));
    job.sides = sides;
    job.acrossCorners = Length.ofFeet(40);
    job.soil = soil;
    DigSchedule schedule = schedule(job);
    List<Row> rows = schedule.rows();
    assertThat(schedule.totals().bank().cubicMetres())
        .isEqualTo(rows.stream().mapToDouble(r -> r.bank().cubicMetres()).sum(), offset(1e-9));
    assertThat(schedule.totals().mass().kilograms())
        .isEqualTo(rows.stream().mapToDouble(r -> r.mass().kilograms()).sum(), offset(1e-6));
    assertThat(schedule.totals().cartLoads())
        .isLessThanOrEqualTo(rows.stream().mapToLong(Row::cartLoads).sum())
        .isGreaterThanOrEqualTo(
            (long) Math.ceil(schedule.totals().loose().dividedBy(schedule.soil().cart()) - 1e-6));
    assertThat(schedule.totals().loose()).isGreaterThan(schedule.totals().bank());
  }

  @Property(tries = 60, seed = Chance.SEED)
  void theOrderNeverGoesFromShallowToDeep(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = 20, max = 60) double pierInches) {
    DigJob job = job(16, 40).pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(pierInches)));
    job.pier("P2", new Point(8, 0), Optional.of(Length.ofInches(45)));
    job.sides = sides;
    List<Length> depths = schedule(job).rows().stream().map(row -> row.hole().dug()).toList();
    assertThat(depths).isSortedAccordingTo(Comparator.<Length>reverseOrder());
  }

  @Property(tries = 100, seed = Chance.SEED)
  void stepsFollowOneAnotherWithoutGap(
      @ForAll @DoubleRange(min = 8, max = 30) double hole,
      @ForAll @DoubleRange(min = 12, max = 70) double depth) {
    Row row = schedule(job(hole, depth)).row("S1");
    double down = 0;
    for (ToolStep step : row.tools()) {
      assertThat(step.from().inches()).isEqualTo(down, offset(1e-9));
      assertThat(step.to().inches()).isGreaterThan(down);
      down = step.to().inches();
    }
    assertThat(down).isEqualTo(depth, offset(0.05));
  }
}
