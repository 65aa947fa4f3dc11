package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Steel;
import pegbook.measure.UnitSystem;

/**
 * Fits the steel that the job asks for into its footings, cuts and weighs it, and holds it to
 * rules.
 *
 * <p>It does not design: how much steel a footing needs is an engineer's word. Vertical bars are
 * straight and end short of the top and the bottom by the cover; under them the cover is at least
 * that for concrete against the ground, whatever the job says of its sides. Rings overlap and end
 * in hooks of 135 degrees round a vertical bar.
 */
public final class SteelPlanCalculator {
  private SteelPlanCalculator() {}

  /**
   * The steel of all footings.
   *
   * @param job for its units
   * @param holes with the depths that were decided
   */
  public static SteelPlan calculate(Job job, List<Hole> holes) {
    UnitSystem units = job.heading().units();
    BarList barList = new BarList(units);
    SteelPlanFindings findings = new SteelPlanFindings(units);
    List<Cage> cages = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      Optional<Steel> steel = alike.first().steel();
      if (steel.isEmpty()) {
        continue;
      }
      CageDesign design = new CageDesign(alike, steel.get(), units, barList);
      Optional<Cage> cage = design.cage();
      workings.addAll(design.workings());
      cage.ifPresentOrElse(
          fitted -> {
            findings.check(alike, fitted);
            cages.add(fitted);
          },
          () -> findings.doesNotFit(alike, steel.get()));
    }
    findings.plain(holes);
    workings.addAll(barList.workings());
    return new SteelPlan(
        cages,
        barList.lines(),
        barList.sizes(),
        findings.all(),
        workings,
        SteelPlanNeeds.of(cages),
        SteelTasks.of(cages));
  }
}
