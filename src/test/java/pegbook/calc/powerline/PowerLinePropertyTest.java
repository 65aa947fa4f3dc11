package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import pegbook.calc.powerline.SizeSeries.Load;
import pegbook.geometry.Point;
import pegbook.job.Power;
import pegbook.measure.Angle;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.PowerJob;

class PowerLinePropertyTest {
  private static final List<SizeSeries> SERIES =
      List.of(new GaugeSeries(new Current(20)), new MetricSeries(Power.Method.CONDUIT));

  private static double drop(SizeSeries series, int size, double metres, double amperes) {
    Load load = new Load(new Length(metres), new Current(amperes), Ratio.ofPercent(85), 2);
    return series
        .drop(size, Power.Metal.COPPER, Power.Strands.STRANDED, load)
        .orElseThrow()
        .result();
  }

  @Property(tries = 200, seed = Chance.SEED)
  void dropIsLinearInLengthAndCurrentAndFallsWithSize(
      @ForAll @DoubleRange(min = 1, max = 300) double metres,
      @ForAll @DoubleRange(min = 0.1, max = 100) double amperes,
      @ForAll @DoubleRange(min = 0.1, max = 9) double times) {
    for (SizeSeries series : SERIES) {
      double one = drop(series, 2, metres, amperes);
      assertThat(drop(series, 2, metres * times, amperes))
          .isCloseTo(one * times, within(1e-9 * times * one));
      assertThat(drop(series, 2, metres, amperes * times))
          .isCloseTo(one * times, within(1e-9 * times * one));
      for (int size = 1; size < series.names().size(); size++) {
        assertThat(drop(series, size, metres, amperes))
            .isLessThan(drop(series, size - 1, metres, amperes));
      }
    }
  }

  private static Power power(List<Point> places) {
    Power plain = PowerJob.metric().read().power().orElseThrow();
    return new Power(
        places.stream().map(place -> new Power.Stop(Optional.empty(), place)).toList(),
        Optional.empty(),
        plain.supply(),
        plain.wiring(),
        plain.trench(),
        plain.depth());
  }

  private static Length length(List<Point> places) {
    return RoutePlan.of(power(places), UnitSystem.METRIC, List.of(), new Length(0.6))
        .route()
        .length();
  }

  @Property(tries = 100, seed = Chance.SEED)
  void theRouteIsAsLongHoweverTheSiteIsTurned(
      @ForAll @DoubleRange(min = -40, max = 40) double east,
      @ForAll @DoubleRange(min = -40, max = 40) double north,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    List<Point> places = List.of(new Point(east, 50), new Point(12, north), new Point(5, -3));
    List<Point> turned =
        places.stream().map(place -> place.turned(Angle.ofDegrees(degrees))).toList();
    assertThat(length(turned).metres()).isCloseTo(length(places).metres(), within(1e-9));
  }

  @Property(tries = 60, seed = Chance.SEED)
  void theTrenchGrowsWithItsLength(@ForAll @DoubleRange(min = 1, max = 60) double metres) {
    PowerLine.Trench trench = trench(metres);
    PowerLine.Trench twice = trench(2 * metres);
    assertThat(twice.bank().cubicMetres())
        .isCloseTo(2 * trench.bank().cubicMetres(), within(1e-9 * metres));
    assertThat(twice.sand().cubicMetres())
        .isCloseTo(2 * trench.sand().cubicMetres(), within(1e-9 * metres));
  }

  private static PowerLine.Trench trench(double metres) {
    Power power = power(List.of(new Point(0, 3 + metres), new Point(0, 3)));
    RoutePlan route = RoutePlan.of(power, UnitSystem.METRIC, List.of(), new Length(0.6));
    PowerLine.Pipe pipe = PipeChoice.data(UnitSystem.METRIC);
    return TrenchPlan.of(PowerJob.metric().read(), power, route.route(), pipe).trench();
  }
}
