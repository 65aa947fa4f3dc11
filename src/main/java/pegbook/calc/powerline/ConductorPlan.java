package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Conductors;
import pegbook.calc.powerline.PowerLine.Drop;
import pegbook.calc.powerline.PowerLine.Metal;
import pegbook.calc.powerline.PowerLine.Size;
import pegbook.calc.powerline.PowerLine.Supplied;
import pegbook.calc.powerline.SizeSeries.Load;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.measure.Voltage;

/**
 * Chooses the smallest conductors that may lie behind the breaker and lose no more than allowed.
 *
 * <p>A conductor bears the breaker where its ampacity is no less than the breaker's rating and, for
 * small sizes, the limit of the code is no less either; the next larger standard breaker, which
 * some codes allow, is not taken.
 */
final class ConductorPlan {
  /** A share this much over what is allowed still keeps it. */
  private static final double TOLERANCE = 1e-6;

  /** Two hot conductors and a neutral lead to a further panel at this voltage and more. */
  private static final double SPLIT_PHASE_VOLTS = 200;

  private final Power power;
  private final UnitSystem units;
  private final SizeSeries series;
  private final Length oneWay;
  private final List<Working> workings = new ArrayList<>();

  private ConductorPlan(Power power, UnitSystem units, Length oneWay) {
    this.power = power;
    this.units = units;
    this.oneWay = oneWay;
    this.series = series(power.supply().breaker());
  }

  private SizeSeries series(Current breaker) {
    return units == UnitSystem.IMPERIAL
        ? new GaugeSeries(breaker)
        : new MetricSeries(power.wiring().method());
  }

  /**
   * The plan, with what its findings need.
   *
   * @param index of the chosen size; -1: none
   * @param longest how far the largest size that is allowed would reach, where none keeps the drop
   * @param larger smallest size, allowed by the job or not, that would do
   */
  record Planned(
      Conductors conductors,
      int index,
      Optional<Length> longest,
      Optional<String> larger,
      List<Working> workings) {}

  static Planned of(Power power, UnitSystem units, Length oneWay) {
    return new ConductorPlan(power, units, oneWay).plan();
  }

  private Power.Supply supply() {
    return power.supply();
  }

  private Load load(Current current, int ways) {
    return new Load(oneWay, current, supply().powerFactor(), ways);
  }

  /** Whether a size may lie behind a breaker. */
  private boolean bears(int size, Power.Metal metal, double breaker) {
    boolean carries =
        series.amperes(size, metal).filter(amperes -> amperes >= breaker - 1e-9).isPresent();
    return carries
        && series.breakerLimit(size, metal).map(limit -> limit >= breaker - 1e-9).orElse(true);
  }

  private boolean isAllowed(int size) {
    List<String> sizes = power.wiring().sizes();
    return sizes.isEmpty() || sizes.contains(series.written(size));
  }

  private Drop drop(Working lost, double volts) {
    Working share = share(lost, volts);
    return new Drop(
        new Voltage(lost.si()),
        new Ratio(share.si()),
        share.si() <= supply().drop().fraction() + TOLERANCE);
  }

  private static Working share(Working lost, double volts) {
    return Working.of(
        ConductorFormulas.share(), lost.subject(), new Voltage(lost.si()), new Voltage(volts));
  }

  private Optional<Drop> drop(int size, Power.Metal metal, Power.Strands strands) {
    return series
        .drop(size, metal, strands, load(supply().running(), 2))
        .map(lost -> drop(lost, supply().voltage().volts()));
  }

  private Optional<Metal> metal(int size, Power.Metal metal) {
    return series
        .amperes(size, metal)
        .map(
            amperes ->
                new Metal(
                    amperes,
                    series.breakerLimit(size, metal),
                    bears(size, metal, supply().breaker().amperes()),
                    drop(size, metal, Power.Strands.STRANDED),
                    drop(size, metal, Power.Strands.SOLID)));
  }

  /** The smallest size that does for a load; -1: none. */
  private int smallest(Load load, double breaker, double volts, boolean any) {
    Power.Metal metal = power.wiring().metal();
    return IntStream.range(0, series.names().size())
        .filter(size -> any || isAllowed(size))
        .filter(size -> bears(size, metal, breaker))
        .filter(
            size ->
                series.drop(size, metal, power.wiring().strands(), load).stream()
                    .anyMatch(lost -> drop(lost, volts).kept()))
        .findFirst()
        .orElse(-1);
  }

  private Planned plan() {
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < series.names().size(); i++) {
      sizes.add(
          new Size(
              series.names().get(i),
              metal(i, Power.Metal.COPPER),
              metal(i, Power.Metal.ALUMINIUM),
              isAllowed(i)));
    }
    double volts = supply().voltage().volts();
    double breaker = supply().breaker().amperes();
    Load running = load(supply().running(), 2);
    int chosen = smallest(running, breaker, volts, false);
    int larger = smallest(running, breaker, volts, true);
    if (chosen > 0) {
      work(chosen - 1, supply().running(), 2, volts);
    }
    Optional<Chosen> taken = chosen < 0 ? Optional.empty() : Optional.of(chosen(chosen));
    Optional<Length> longest = chosen < 0 ? longest() : Optional.empty();
    Conductors conductors =
        new Conductors(sizes, taken, supplies(chosen), supply().drop(), series.celsius());
    return new Planned(
        conductors,
        chosen,
        longest,
        larger < 0 ? Optional.empty() : Optional.of(series.names().get(larger)),
        workings);
  }

  /** Keeps the workings of a drop, where the size has one. */
  private Optional<Drop> work(int size, Current current, int ways, double volts) {
    Optional<Working> lost =
        series.drop(size, power.wiring().metal(), power.wiring().strands(), load(current, ways));
    return lost.map(
        working -> {
          workings.add(working);
          workings.add(share(working, volts));
          return drop(working, volts);
        });
  }

  private Chosen chosen(int size) {
    double volts = supply().voltage().volts();
    Drop running = work(size, supply().running(), 2, volts).orElseThrow();
    Drop full = work(size, supply().breaker(), 2, volts).orElseThrow();
    int bearing =
        IntStream.range(0, series.names().size())
            .filter(i -> bears(i, power.wiring().metal(), supply().breaker().amperes()))
            .findFirst()
            .orElse(size);
    EarthSize earth = EarthSize.of(power, units, size, bearing);
    workings.addAll(earth.workings());
    return new Chosen(
        series.names().get(size),
        running,
        full,
        loaded(),
        earth.name(),
        series.names().get(bearing));
  }

  /** Conductors beside the one that grounds. */
  private int loaded() {
    boolean split =
        supply().circuit() == Power.Circuit.FEEDER
            && units == UnitSystem.IMPERIAL
            && supply().voltage().volts() >= SPLIT_PHASE_VOLTS;
    return split ? 3 : 2;
  }

  /** How far the largest allowed size that bears the breaker would keep the drop. */
  private Optional<Length> longest() {
    Power.Metal metal = power.wiring().metal();
    return IntStream.range(0, series.names().size())
        .filter(this::isAllowed)
        .filter(size -> bears(size, metal, supply().breaker().amperes()))
        .boxed()
        .reduce((smaller, last) -> last)
        .flatMap(size -> work(size, supply().running(), 2, supply().voltage().volts()))
        .map(
            lost -> {
              Working reach =
                  Working.of(
                      new ConductorFormulas(units).reach(),
                      "",
                      oneWay,
                      lost.share(),
                      supply().drop());
              workings.add(reach);
              return reach.asLength();
            });
  }

  private List<Supplied> supplies(int chosen) {
    List<Supplied> supplies = new ArrayList<>();
    double volts = supply().voltage().volts();
    for (HigherVoltage higher : HigherVoltage.above(volts, units)) {
      Working current =
          Working.of(
              ConductorFormulas.otherCurrent(higher.threePhase()),
              "",
              supply().running(),
              supply().voltage(),
              higher.voltage());
      workings.add(current);
      Current other = new Current(current.si());
      int ways = higher.threePhase() ? 1 : 2;
      // What the breaker must let through falls with the current; whole breakers are sold.
      double breaker =
          Rounding.UP.steps(supply().breaker().amperes() * current.si(), supply().running().si());
      int smallest = smallest(load(other, ways), breaker, higher.lostOf(), false);
      Optional<Drop> drop =
          chosen < 0 ? Optional.empty() : work(chosen, other, ways, higher.lostOf());
      supplies.add(
          new Supplied(
              higher.voltage(),
              higher.threePhase(),
              other,
              drop,
              smallest < 0 ? Optional.empty() : Optional.of(series.names().get(smallest))));
    }
    return supplies;
  }
}
