package pegbook.calc.powerline;

import java.util.List;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Area;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.MetricCable;
import pegbook.published.Wire;

/**
 * The conductor that grounds equipment. By the gauge it is the table's for the breaker, made larger
 * as the others were, but never larger than they. In metric cables it is like the others up to 16
 * mm², 16 mm² up to 35 mm², half of them above.
 *
 * @param name of its size
 */
record EarthSize(String name, List<Working> workings) {
  /** IEC 60364-5-54, Table 54.2, recalled. */
  private static final double SAME_UP_TO = 16;

  private static final double HALF_ABOVE = 35;

  static EarthSize of(Power power, UnitSystem units, int size, int bearing) {
    return units == UnitSystem.IMPERIAL
        ? gauge(power, GaugeSeries.wire(size), GaugeSeries.wire(bearing))
        : metric(size);
  }

  private static Area area(Wire wire) {
    return new Area(Unit.CIRCULAR_MIL.toSi(wire.circularMils()));
  }

  private static EarthSize gauge(Power power, Wire chosen, Wire bearing) {
    boolean aluminium = power.wiring().metal() == Power.Metal.ALUMINIUM;
    double breaker = power.supply().breaker().amperes();
    Wire listed = Wire.grounding(breaker, aluminium).orElse(chosen);
    Working least =
        Working.of(
            ConductorFormulas.ground(),
            chosen.size() + " AWG",
            area(listed),
            area(chosen),
            area(bearing));
    Wire taken =
        Wire.all().stream()
            .filter(wire -> wire.circularMils() >= listed.circularMils() - 1e-9)
            .filter(wire -> wire.circularMils() >= least.result() * (1 - 1e-9))
            .findFirst()
            .filter(wire -> wire.circularMils() <= chosen.circularMils())
            .orElse(chosen);
    return new EarthSize(taken.size() + " AWG", List.of(least));
  }

  private static EarthSize metric(int size) {
    double area = Unit.SQUARE_MILLIMETRE.in(MetricSeries.cable(size).area());
    double least = area <= SAME_UP_TO ? area : area <= HALF_ABOVE ? SAME_UP_TO : area / 2;
    List<String> names = new MetricSeries(Power.Method.CONDUIT).names();
    for (int i = 0; i < names.size(); i++) {
      MetricCable cable = MetricSeries.cable(i);
      if (Unit.SQUARE_MILLIMETRE.in(cable.area()) >= least - 1e-9) {
        return new EarthSize(names.get(i), List.of());
      }
    }
    return new EarthSize(names.get(size), List.of());
  }
}
