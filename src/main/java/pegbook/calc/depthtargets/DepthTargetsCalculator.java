package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Length;

/**
 * Decides how deep each hole goes.
 *
 * <p>The depth target is the deepest of the code's least depth, the authority's frost depth and
 * what the job asks for, set up to the tape's division. Only a recorded exemption lets a job's
 * smaller depth stand. Where levels are known, a datum line is set above the highest ground and
 * every depth is also given from it.
 */
public final class DepthTargetsCalculator {
  private DepthTargetsCalculator() {}

  /** Depths for every mark of a placement. */
  public static DepthTargets calculate(Job job, Placement placement) {
    List<Working> workings = new ArrayList<>();
    List<DepthChoice> choices = DepthRules.choose(job, placement, workings);
    Optional<Length> line = DatumLines.height(job, placement, workings);
    List<Hole> holes = new ArrayList<>();
    for (PlacedMark mark : placement.marks()) {
      holes.add(hole(job, mark, choiceFor(mark, choices), line, workings));
    }
    BearingLines bearing = BearingLines.of(job, holes);
    workings.addAll(bearing.workings());
    List<Finding> findings = new ArrayList<>(FrostFindings.of(job, choices));
    findings.addAll(HoleFindings.of(job, holes));
    WideningFindings widenings = new WideningFindings(job, holes);
    findings.addAll(widenings.findings());
    workings.addAll(widenings.workings());
    findings.addAll(bearing.findings());
    findings.addAll(LevelFindings.of(placement));
    return new DepthTargets(
        holes, choices, DatumLines.of(line, placement, holes), findings, workings);
  }

  private static DepthChoice choiceFor(PlacedMark mark, List<DepthChoice> choices) {
    return choices.stream()
        .filter(choice -> choice.marks().contains(mark.id()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no depth for " + mark.id()));
  }

  private static Hole hole(
      Job job, PlacedMark mark, DepthChoice choice, Optional<Length> line, List<Working> workings) {
    Optional<Length> underside =
        line.flatMap(
            height ->
                mark.level()
                    .map(level -> DatumLines.underside(job, mark.id(), height, level, choice))
                    .map(working -> kept(working, workings).asLength()));
    if (mark.kind() == MarkKind.PIER) {
      Pier pier = pier(job, mark.id());
      return new Hole(
          mark.id(),
          mark.kind(),
          mark.at(),
          pier.hole(),
          choice.target(),
          pier.gravel(),
          pier.top(),
          choice.rule(),
          pier.tube(),
          pier.steel(),
          mark.level(),
          underside,
          pier.widenings());
    }
    return new Hole(
        mark.id(),
        mark.kind(),
        mark.at(),
        job.supports().hole(),
        choice.target(),
        job.supports().gravel(),
        job.supports().top(),
        choice.rule(),
        job.supports().tube(),
        job.supports().steel(),
        mark.level(),
        underside,
        job.supports().widenings());
  }

  private static Working kept(Working working, List<Working> workings) {
    workings.add(working);
    return working;
  }

  private static Pier pier(Job job, String id) {
    return job.piers().stream()
        .filter(pier -> pier.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pier " + id));
  }
}
