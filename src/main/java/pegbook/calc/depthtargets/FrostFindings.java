package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.MarkKind;
import pegbook.job.Frost;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;
import pegbook.published.FootingDepth;

/** What the reader must know of frost and of the code's least depth. */
final class FrostFindings {
  private static final Citation FROST_RULE = new Citation("irc", "R403.1.4.1");

  private FrostFindings() {}

  static List<Finding> of(Job job, List<DepthChoice> choices) {
    List<Finding> findings = new ArrayList<>();
    if (job.ground().frost().isEmpty()) {
      findings.add(
          Finding.of(
              Kind.ASK, "frost-unknown", "ground.frost", Decider.BUILDING_AUTHORITY, rule(job)));
    }
    for (DepthChoice choice : choices) {
      if (choice.exemption().isPresent()) {
        findings.add(exempted(job, choice));
      } else if (choice.asksForLessThanFrost()) {
        findings.add(notReached(job, choice));
      } else if (choice.asksForLessThanLeast()) {
        findings.add(lessThanLeast(job, choice));
      }
      if (choice.kind() == MarkKind.PIER) {
        findings.addAll(pier(job, choice));
      }
    }
    return findings;
  }

  private static Citation rule(Job job) {
    return job.place().isUnitedStates() ? FROST_RULE : Citation.COMMON_PRACTICE;
  }

  private static Finding about(DepthChoice choice, Kind kind, String id, Citation source) {
    return new Finding(
        kind,
        id,
        choice.marks(),
        choice.place(),
        Map.of(),
        Decider.BUILDING_AUTHORITY,
        List.of(source));
  }

  private static Finding notReached(Job job, DepthChoice choice) {
    return about(choice, Kind.STOP, "frost-not-reached", rule(job))
        .with("asked", Argument.of(choice.asked().orElseThrow()))
        .with("frost", Argument.of(choice.frost().orElseThrow()))
        .with("from", Argument.words(job.ground().frost().orElseThrow().from()))
        .with("target", Argument.of(choice.target()));
  }

  private static Finding exempted(Job job, DepthChoice choice) {
    Frost.Exemption exemption = choice.exemption().orElseThrow();
    return about(choice, Kind.NOTE, "frost-exemption", rule(job))
        .with("who", Argument.words(exemption.who()))
        .with("when", Argument.of(exemption.when()))
        .with("target", Argument.of(choice.target()))
        .with("frost", Argument.of(choice.frost().orElseThrow()));
  }

  private static Finding lessThanLeast(Job job, DepthChoice choice) {
    FootingDepth least = FootingDepth.find("code-minimum");
    Citation source = job.place().isUnitedStates() ? least.citation() : Citation.COMMON_PRACTICE;
    return about(choice, Kind.ASK, "depth-below-least", source)
        .with("asked", Argument.of(choice.asked().orElseThrow()))
        .with("least", Argument.of(choice.least()));
  }

  /** A pier must not move: it wants its bottom well below the frost. */
  private static List<Finding> pier(Job job, DepthChoice choice) {
    Length frost = choice.frost().orElse(Length.ZERO);
    if (!frost.isMoreThan(Length.ZERO)) {
      return List.of();
    }
    Length margin = choice.target().minus(frost);
    if (choice.exemption().isPresent() && DepthChoice.isLess(choice.target(), frost)) {
      return List.of(pierFinding(choice, "pier-above-frost", frost));
    }
    if (!DepthChoice.isLess(margin, leastMargin(job))) {
      return List.of();
    }
    return List.of(
        pierFinding(choice, "pier-margin", frost)
            .with("margin", Argument.of(margin))
            .with("wanted", Argument.of(leastMargin(job))));
  }

  private static Finding pierFinding(DepthChoice choice, String id, Length frost) {
    return new Finding(
            Kind.ASK,
            id,
            choice.marks(),
            choice.place(),
            Map.of(),
            Decider.ENGINEER,
            List.of(Citation.COMMON_PRACTICE))
        .with("target", Argument.of(choice.target()))
        .with("frost", Argument.of(frost));
  }

  /** Below the frost depth by 6 in or 150 mm: common practice, no source. */
  private static Length leastMargin(Job job) {
    return job.heading().units() == UnitSystem.IMPERIAL
        ? Length.ofInches(6)
        : Length.ofMillimetres(150);
  }
}
