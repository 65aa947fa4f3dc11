package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole.DepthRule;
import pegbook.figures.MarkKind;
import pegbook.figures.MarkRuns;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.FootingDepth;

/** The rules for depth, and which of them decides. */
final class DepthRules {
  private DepthRules() {}

  /** One choice for the supports, all alike, and one for each pier. */
  static List<DepthChoice> choose(Job job, Placement placement, List<Working> workings) {
    List<DepthChoice> choices = new ArrayList<>();
    List<String> supports =
        placement.marks().stream()
            .filter(mark -> mark.kind() == MarkKind.SUPPORT)
            .map(PlacedMark::id)
            .toList();
    if (!supports.isEmpty()) {
      Footing footing =
          new Footing(
              supports,
              MarkKind.SUPPORT,
              "supports.depth",
              job.supports().depth(),
              job.supports().gravel());
      choices.add(choose(job, footing, workings));
    }
    for (int i = 0; i < job.piers().size(); i++) {
      Pier pier = job.piers().get(i);
      Footing footing =
          new Footing(
              List.of(pier.id()),
              MarkKind.PIER,
              "piers[" + i + "].depth",
              pier.depth(),
              pier.gravel());
      choices.add(choose(job, footing, workings));
    }
    return choices;
  }

  /** What the job says of footings that are alike. */
  private record Footing(
      List<String> marks, MarkKind kind, String place, Optional<Length> asked, Length gravel) {}

  private static DepthChoice choose(Job job, Footing footing, List<Working> workings) {
    FootingDepth least = FootingDepth.find("code-minimum");
    Optional<Length> frost = job.ground().frost().map(Frost::depth);
    Optional<Frost.Exemption> exemption = exemption(job, footing);
    Length frostThatCounts = exemption.isPresent() ? Length.ZERO : frost.orElse(Length.ZERO);
    Length asked = footing.asked().orElse(Length.ZERO);
    DepthTargetsFormulas formulas = DepthTargetsFormulas.in(job.heading().units());
    Citation source = job.place().isUnitedStates() ? least.citation() : Citation.COMMON_PRACTICE;
    String subject = MarkRuns.brief(footing.marks());
    Working target =
        Working.of(
            formulas.target(source),
            subject,
            least.least(),
            frostThatCounts,
            asked,
            job.layout().tape().division());
    workings.add(target);
    workings.add(Working.of(formulas.dug(), subject, target.asLength(), footing.gravel()));
    return new DepthChoice(
        footing.marks(),
        footing.kind(),
        footing.place(),
        least.least(),
        frost,
        footing.asked(),
        exemption,
        target.asLength(),
        winner(least.least(), frostThatCounts, asked));
  }

  /**
   * Frost first, as it is the authority's word; then the code; the job only where it goes deeper.
   */
  private static DepthRule winner(Length least, Length frost, Length asked) {
    Length deepest = least.max(frost).max(asked);
    if (!DepthChoice.isLess(frost, deepest)) {
      return DepthRule.FROST;
    }
    return DepthChoice.isLess(least, deepest) ? DepthRule.JOB : DepthRule.CODE_MINIMUM;
  }

  /** An exemption counts only where it covers the footing and the job asks for a smaller depth. */
  private static Optional<Frost.Exemption> exemption(Job job, Footing footing) {
    return job.ground()
        .frost()
        .filter(frost -> footing.asked().isPresent())
        .filter(frost -> DepthChoice.isLess(footing.asked().orElseThrow(), frost.depth()))
        .flatMap(Frost::exemption)
        .filter(exemption -> covers(exemption, footing.kind()));
  }

  private static boolean covers(Frost.Exemption exemption, MarkKind kind) {
    return switch (exemption.covers()) {
      case ALL -> true;
      case SUPPORTS -> kind == MarkKind.SUPPORT;
      case PIERS -> kind == MarkKind.PIER;
    };
  }
}
