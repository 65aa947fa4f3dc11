package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.figures.Diggings;
import pegbook.figures.Finding;
import pegbook.figures.Placement;
import pegbook.figures.SafePeg;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Power;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.DropLimit;
import pegbook.published.MetricCable;
import pegbook.published.Wire;

/**
 * Plans the buried power line: the cover that its circuit and method ask for, the route with the
 * length of its conductors, the conductors themselves, the pipe they need, the trench, the hours.
 *
 * <p>It helps to talk to an electrician and the electrical authority; they decide.
 */
public final class PowerLineCalculator {
  private PowerLineCalculator() {}

  /**
   * The power line.
   *
   * @param job its power, ground, site and units
   * @param placement the floor's edge
   * @param diggings holes with their depths, and heaps
   * @param pegs safe pegs
   */
  public static PowerLine calculate(
      Job job, Placement placement, Diggings diggings, List<SafePeg> pegs) {
    return job.power()
        .map(power -> plan(job, power, placement, diggings, pegs))
        .orElseGet(
            () ->
                new PowerLine(
                    Optional.empty(), List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  private static PowerLine plan(
      Job job, Power power, Placement placement, Diggings diggings, List<SafePeg> pegs) {
    UnitSystem units = job.heading().units();
    CoverRule cover = CoverRule.of(job, power, Optional.empty());
    RoutePlan route = RoutePlan.of(power, units, diggings.holes(), cover.cover());
    ConductorPlan.Planned planned = ConductorPlan.of(power, units, route.route().oneWay());
    PipeChoice pipe = PipeChoice.of(power, units, planned.conductors().chosen(), planned.index());
    TrenchPlan trench = TrenchPlan.of(job, power, route.route(), pipe.pipe());
    PipeRuns pipes = PipeRuns.of(job, power, route.route(), trench.trench());
    Line line = new Line(route.route(), planned.conductors(), trench.trench(), pipes.runs());
    RouteGround ground = new RouteGround(job, placement, line, diggings.holes());
    ground.holes();
    ground.floor();
    ground.features();
    ground.buildings();
    ground.lot();
    ground.heaps(diggings.heaps());
    ground.pegs(pegs);
    TrenchTasks.Planned tasks = TrenchTasks.of(job, power, line);
    PowerLineNeeds.Planned needs = PowerLineNeeds.of(job, power, line, planned.index());
    List<Finding> findings = new ArrayList<>(ground.findings());
    findings.addAll(new PowerLineFindings(job, power, line, planned, pipe.fits()).all());
    List<Working> workings = new ArrayList<>();
    List.of(
            route.workings(),
            planned.workings(),
            pipe.workings(),
            trench.workings(),
            ground.workings(),
            tasks.workings(),
            pipes.workings(),
            needs.workings())
        .forEach(workings::addAll);
    return new PowerLine(
        Optional.of(line), findings, workings, needs.needs(), tasks.tasks(), sources(job));
  }

  private static List<Citation> sources(Job job) {
    List<Citation> sources = new ArrayList<>(List.of(CoverRule.source(job)));
    if (job.heading().units() == UnitSystem.IMPERIAL) {
      sources.addAll(
          List.of(
              Wire.RESISTANCES,
              Wire.IMPEDANCES,
              Wire.AMPACITIES,
              Wire.SMALL,
              Wire.AREAS,
              GaugeSeries.TERMINALS,
              DropLimit.find("us-branch").citation()));
    } else {
      sources.addAll(
          List.of(
              MetricCable.DROP,
              MetricCable.AMPACITIES,
              DropLimit.find("public-lighting").citation()));
    }
    return sources;
  }
}
