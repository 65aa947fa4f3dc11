package pegbook.calc.powerline;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Count;
import pegbook.measure.NumberNotation;
import pegbook.measure.Unit;
import pegbook.published.MetricCable;

/**
 * Metric cables. The method works with one resistivity for a metal, so that solid and stranded
 * conductors lose the same.
 */
final class MetricSeries implements SizeSeries {
  private static final List<MetricCable> CABLES = MetricCable.all();

  private final boolean inGround;

  MetricSeries(Power.Method method) {
    this.inGround = method == Power.Method.DIRECT_BURIAL;
  }

  static MetricCable cable(int size) {
    return CABLES.get(size);
  }

  @Override
  public List<String> names() {
    return CABLES.stream()
        .map(cable -> NumberNotation.write(cable.area(), Unit.SQUARE_MILLIMETRE))
        .toList();
  }

  @Override
  public String written(int size) {
    return names().get(size).replace('\u00a0', ' ').replace("mm²", "mm2");
  }

  @Override
  public Optional<Double> amperes(int size, Power.Metal metal) {
    return (metal == Power.Metal.COPPER ? cable(size).copper() : cable(size).aluminium())
        .map(carried -> inGround ? carried.inGround().orElse(carried.inDuct()) : carried.inDuct());
  }

  @Override
  public Optional<Double> breakerLimit(int size, Power.Metal metal) {
    return Optional.empty();
  }

  @Override
  public Optional<Working> drop(
      int size, Power.Metal metal, Power.Strands strands, SizeSeries.Load load) {
    return amperes(size, metal)
        .map(
            made ->
                Working.of(
                    ConductorFormulas.metricDrop(),
                    names().get(size),
                    new Count(load.ways()),
                    metal == Power.Metal.COPPER ? MetricCable.COPPER : MetricCable.ALUMINIUM,
                    load.oneWay(),
                    cable(size).area(),
                    load.powerFactor(),
                    load.current()));
  }

  @Override
  public int celsius() {
    return 0;
  }
}
