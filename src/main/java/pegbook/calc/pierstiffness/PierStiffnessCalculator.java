package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.pierstiffness.PierOnGround.Forces;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.pierstiffness.PierStiffness.GroundModulus;
import pegbook.figures.Hole;
import pegbook.figures.MarkRuns;
import pegbook.figures.Placement;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Force;

/**
 * Finds how far a pier's top moves under a hand and the wind, how fast it would swing by itself,
 * and whether it stands clear of the floor.
 *
 * <p>The ground decides nearly all of it, and nobody knows it well; so every result has a low and a
 * high end: soft and stiff ground, with no help from the soil at the side and with all of it. It
 * judges none of them: how still an instrument must stand is its owner's word.
 */
public final class PierStiffnessCalculator {
  private PierStiffnessCalculator() {}

  /**
   * The piers of a job.
   *
   * @param job for piers, ground and concrete
   * @param placement for the floor's edge
   * @param holes with the depths that were decided
   */
  public static PierStiffness calculate(Job job, Placement placement, List<Hole> holes) {
    Steps steps = new Steps();
    GroundChoice choice = new GroundChoice(job, steps);
    GroundModulus ground = choice.choose();
    List<FloorGap> gaps = FloorGaps.of(job, placement, holes);
    PierFindings findings = new PierFindings(job, holes);
    List<AlikePiers> piers = new ArrayList<>();
    for (PierGroup group : PierGroup.of(holes, job.piers())) {
      piers.add(alike(job, ground, group, steps, findings));
    }
    if (!piers.isEmpty()) {
      findings.ground(ground, choice.isQuestionable());
      gaps.forEach(findings::gap);
    }
    return new PierStiffness(
        ground, piers, gaps, findings.all(), piers.isEmpty() ? List.of() : steps.workings());
  }

  private static AlikePiers alike(
      Job job, GroundModulus ground, PierGroup group, Steps steps, PierFindings findings) {
    Hole hole = group.holes().get(0);
    Pier pier = group.pier();
    PierShape shape = PierShape.of(hole, pier);
    Forces forces = new Forces(pier.push(), pier.wind());
    String marks = MarkRuns.brief(group.marks());
    PierOnGround standing = new PierOnGround(job, ground, shape, forces, marks, steps);
    PierFamily family = new PierFamily(job, ground, shape, forces);
    AlikePiers piers =
        new AlikePiers(
            group.marks(),
            hole,
            pier,
            standing.concreteModulus(),
            standing.cases(),
            standing.overturning(pier.push()),
            pier.wind().map(standing::overturning),
            family.byDiameter(),
            family.byDepth());
    double worst = Math.max(pier.push().newtons(), pier.wind().map(f -> f.newtons()).orElse(0.0));
    findings.piers(piers, standing.cracking(job, new Force(worst)));
    return piers;
  }
}
