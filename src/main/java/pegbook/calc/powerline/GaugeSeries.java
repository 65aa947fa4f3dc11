package pegbook.calc.powerline;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Current;
import pegbook.measure.LineResistance;
import pegbook.published.Citation;
import pegbook.published.Wire;

/**
 * Conductors by the American gauge. Ampacities are read at 60 °C up to a breaker of 100 A and at 75
 * °C above, as terminals are rated where nothing is marked on them.
 */
final class GaugeSeries implements SizeSeries {
  static final Citation TERMINALS = new Citation("nec-memory", "110.14(C)");

  private static final double LARGEST_AT_60 = 100;
  private static final int COOL = 60;
  private static final int WARM = 75;

  private static final List<Wire> WIRES =
      Wire.all().stream().filter(wire -> wire.copper().isPresent()).toList();

  private final boolean warm;

  GaugeSeries(Current breaker) {
    this.warm = breaker.amperes() > LARGEST_AT_60 + 1e-9;
  }

  static Wire wire(int size) {
    return WIRES.get(size);
  }

  @Override
  public List<String> names() {
    return WIRES.stream().map(wire -> wire.size() + " AWG").toList();
  }

  @Override
  public String written(int size) {
    return names().get(size);
  }

  @Override
  public Optional<Double> amperes(int size, Power.Metal metal) {
    Wire wire = wire(size);
    return (metal == Power.Metal.COPPER ? wire.copper() : wire.aluminium())
        .map(ampacity -> warm ? ampacity.at75() : ampacity.at60());
  }

  @Override
  public Optional<Double> breakerLimit(int size, Power.Metal metal) {
    return wire(size)
        .breaker()
        .flatMap(
            limit -> metal == Power.Metal.COPPER ? Optional.of(limit.copper()) : limit.aluminium());
  }

  @Override
  public Optional<Working> drop(
      int size, Power.Metal metal, Power.Strands strands, SizeSeries.Load load) {
    Wire wire = wire(size);
    return wire.resistance(metal == Power.Metal.ALUMINIUM, strands == Power.Strands.SOLID)
        .map(
            resistance ->
                Working.of(
                    ConductorFormulas.gaugeDrop(),
                    names().get(size),
                    load.oneWay(),
                    load.current(),
                    resistance,
                    wire.reactance().orElse(new LineResistance(0)),
                    load.powerFactor()));
  }

  @Override
  public int celsius() {
    return warm ? WARM : COOL;
  }
}
