package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Chosen;
import pegbook.calc.powerline.PowerLine.Pipe;
import pegbook.figures.Working;
import pegbook.job.Power;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.NumberNotation;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.ConduitSize;
import pegbook.published.MetricDuct;
import pegbook.published.Raceway;
import pegbook.published.Wire;

/**
 * The smallest pipe for the conductors; the cable itself where it lies in the ground.
 *
 * @param pipe the pipe or cable
 * @param fits false where no listed pipe holds them; then the largest is drawn
 */
record PipeChoice(Pipe pipe, boolean fits, List<Working> workings) {
  /** Round which a cable by the gauge is drawn and bedded: common practice. */
  private static final Length GAUGE_CABLE = Length.ofInches(1);

  /** Drawn where no conductor was chosen. */
  private static final Length ANY_CABLE = Length.ofMillimetres(30);

  static PipeChoice of(Power power, UnitSystem units, Optional<Chosen> chosen, int size) {
    boolean cable = power.wiring().method() == Power.Method.DIRECT_BURIAL;
    if (units == UnitSystem.METRIC) {
      return metric(chosen.isPresent() ? MetricSeries.cable(size).outside() : ANY_CABLE, cable);
    }
    return cable ? new PipeChoice(bare(GAUGE_CABLE), true, List.of()) : gauge(power, chosen, size);
  }

  /** The pipe of a data cable. */
  static Pipe data(UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return pipe(MetricDuct.all().get(0));
    }
    Raceway raceway =
        Raceway.of("pvc-40").stream()
            .filter(each -> each.trade().equals("1"))
            .findFirst()
            .orElseThrow();
    return pipe(raceway, Optional.empty(), 3);
  }

  private static Pipe bare(Length outside) {
    return new Pipe("", outside, outside, Optional.empty(), Ratio.ZERO, "");
  }

  private static Pipe pipe(MetricDuct duct) {
    return new Pipe(
        NumberNotation.write(duct.outside(), Unit.MILLIMETRE, 0),
        duct.inside(),
        duct.outside(),
        Optional.empty(),
        Ratio.ZERO,
        ConduitSize.of(duct).size());
  }

  private static Pipe pipe(Raceway raceway, Optional<Ratio> filled, int wires) {
    return new Pipe(
        raceway.trade() + " in",
        raceway.inside(),
        raceway.outside(),
        filled,
        Ratio.ofPercent(Raceway.fillPercent(wires)),
        ConduitSize.of(raceway).size());
  }

  private static PipeChoice metric(Length cable, boolean inGround) {
    if (inGround) {
      return new PipeChoice(bare(cable), true, List.of());
    }
    Working least = Working.of(ConductorFormulas.duct(), "", cable);
    List<MetricDuct> ducts = MetricDuct.all();
    Optional<MetricDuct> duct =
        ducts.stream().filter(each -> !least.asLength().isMoreThan(each.inside())).findFirst();
    return new PipeChoice(
        pipe(duct.orElse(ducts.get(ducts.size() - 1))), duct.isPresent(), List.of(least));
  }

  private static PipeChoice gauge(Power power, Optional<Chosen> chosen, int size) {
    boolean metal = power.wiring().method() == Power.Method.METAL_CONDUIT;
    List<Raceway> raceways = Raceway.of(metal ? "metal" : "pvc-40");
    if (chosen.isEmpty()) {
      return new PipeChoice(pipe(raceways.get(2), Optional.empty(), 3), true, List.of());
    }
    int loaded = chosen.get().loaded();
    Area each = GaugeSeries.wire(size).insulated().orElseThrow();
    String earth = chosen.get().earth().replace(" AWG", "");
    Area ground = Wire.find(earth).insulated().orElse(Area.ZERO);
    List<Working> workings = new ArrayList<>();
    for (Raceway raceway : raceways) {
      Working fill =
          Working.of(
              ConductorFormulas.fill(),
              raceway.trade() + " in",
              new Count(loaded),
              each,
              ground,
              raceway.area());
      workings.add(fill);
      if (fill.result() <= Raceway.fillPercent(loaded + 1) + 1e-9) {
        // Only the one that is full before it, and the one that is taken, are worth reading.
        return new PipeChoice(
            pipe(raceway, Optional.of(new Ratio(fill.si())), loaded + 1),
            true,
            workings.subList(Math.max(0, workings.size() - 2), workings.size()));
      }
    }
    return new PipeChoice(
        pipe(raceways.get(raceways.size() - 1), Optional.empty(), loaded + 1), false, workings);
  }
}
