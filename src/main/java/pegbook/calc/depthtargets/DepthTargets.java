package pegbook.calc.depthtargets;

import java.util.List;
import java.util.Optional;
import pegbook.figures.DatumLine;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Result;
import pegbook.figures.Working;

/**
 * How deep each hole goes.
 *
 * @param holes in the order of the marks, with their depths
 * @param choices one for the supports and one for each pier: what each rule asks for, and the
 *     winner
 * @param datum the line from which depths are read, where any level is known
 */
public record DepthTargets(
    List<Hole> holes,
    List<DepthChoice> choices,
    Optional<DatumLine> datum,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public DepthTargets {
    holes = List.copyOf(holes);
    choices = List.copyOf(choices);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }
}
