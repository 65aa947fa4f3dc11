package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * Bars that are longer because a hole was dug deeper and is filled with concrete. They may be cut
 * already, so they are told rather than quietly listed anew.
 */
final class DugSteel {
  private DugSteel() {}

  /** From which length to which, of the bars that stand lowest. */
  private record Change(Length planned, Length found) {}

  static List<Finding> of(SteelPlan planned, SteelPlan found) {
    Map<Change, List<String>> changes = new LinkedHashMap<>();
    for (Cage cage : found.cages()) {
      for (String mark : cage.marks()) {
        change(planned, cage, mark)
            .ifPresent(
                change -> changes.computeIfAbsent(change, any -> new ArrayList<>()).add(mark));
      }
    }
    List<Finding> findings = new ArrayList<>();
    changes.forEach((change, marks) -> findings.add(finding(change, marks)));
    return findings;
  }

  private static Optional<Change> change(SteelPlan planned, Cage found, String mark) {
    return planned.cages().stream()
        .filter(cage -> cage.marks().contains(mark))
        .map(cage -> new Change(lowest(cage), lowest(found)))
        .filter(
            change -> change.found().isMoreThan(change.planned().plus(SteelPlanFindings.TOLERANCE)))
        .findFirst();
  }

  /** Cut length of the bars that stand on the bottom. */
  private static Length lowest(Cage cage) {
    return cage.uprights().starters().map(Starters::cut).orElse(cage.cut());
  }

  private static Finding finding(Change change, List<String> marks) {
    return Finding.of(
            Kind.ASK, "dug-bars-longer", "field.dug", Decider.ENGINEER, Citation.COMMON_PRACTICE)
        .about(marks)
        .with("planned", Argument.of(change.planned()))
        .with("found", Argument.of(change.found()))
        .with("by", Argument.of(change.found().minus(change.planned())));
  }
}
