package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.AlikeHoles;
import pegbook.figures.BarAnchorage;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Steel;
import pegbook.measure.UnitSystem;

/**
 * Fits the steel that the job asks for into its footings, cuts and weighs it, names what each
 * footing counts as, and holds it to the rules of that element.
 *
 * <p>It does not design: how much steel a footing needs is an engineer's word. Vertical bars end
 * short of the top and the bottom by the cover; under them the cover is at least that for concrete
 * against the ground, whatever the job says of its sides. Rings overlap and end in hooks of 135
 * degrees round a vertical bar.
 */
public final class SteelPlanCalculator {
  private final UnitSystem units;
  private final BarAnchorage anchorage;
  private final BarList barList;
  private final SteelPlanFindings findings;
  private final ElementFindings elementFindings = new ElementFindings();
  private final List<Cage> cages = new ArrayList<>();
  private final List<Element> elements = new ArrayList<>();
  private final List<Working> workings = new ArrayList<>();

  private SteelPlanCalculator(Job job) {
    this.units = job.heading().units();
    this.anchorage =
        new BarAnchorage(
            units, job.concrete().strength(), job.stock().yield(), job.stock().coating());
    this.barList = new BarList(units);
    this.findings = new SteelPlanFindings(units);
  }

  /**
   * The steel of all footings.
   *
   * @param job for its units, concrete and steel
   * @param planned the holes with the depths that were decided, for which steel may be cut already
   * @param found the same with the depths that were found where holes are dug
   */
  public static SteelPlan calculate(Job job, List<Hole> planned, List<Hole> found) {
    SteelPlan plan = new SteelPlanCalculator(job).plan(found);
    return planned.equals(found)
        ? plan
        : plan.with(DugSteel.of(new SteelPlanCalculator(job).plan(planned), plan));
  }

  private SteelPlan plan(List<Hole> holes) {
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      Optional<Cage> cage = alike.first().steel().flatMap(steel -> cage(alike, steel));
      Element element = new ElementNaming(alike, cage, units, workings).element();
      elements.add(element);
      cage.ifPresent(fitted -> findings.check(alike, fitted, element.kind()));
      elementFindings.check(alike, element);
    }
    workings.addAll(barList.workings());
    List<String> order = holes.stream().map(Hole::mark).toList();
    return new SteelPlan(
        elements,
        cages,
        barList.lines(),
        barList.sizes(),
        Stream.concat(findings.all().stream(), elementFindings.all(order).stream()).toList(),
        workings,
        SteelPlanNeeds.of(cages),
        SteelTasks.of(cages));
  }

  private Optional<Cage> cage(AlikeHoles alike, Steel steel) {
    CageDesign design = new CageDesign(alike, steel, anchorage, barList);
    Optional<Cage> cage = design.cage();
    workings.addAll(design.workings());
    cage.ifPresentOrElse(cages::add, () -> findings.doesNotFit(alike, steel));
    return cage;
  }
}
