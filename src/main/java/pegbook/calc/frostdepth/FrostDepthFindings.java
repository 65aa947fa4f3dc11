package pegbook.calc.frostdepth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.frostdepth.FrostDepth.Estimate;
import pegbook.calc.frostdepth.FrostDepth.Ground;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.AirFreezingIndex.Winter;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.published.Citation;

/**
 * What the reader must know of the estimates.
 *
 * @param job the job
 * @param rule the authority's depth
 * @param estimate beside it
 * @param above footings whose concrete ends above the estimate
 */
record FrostDepthFindings(
    Job job, Optional<Length> rule, Optional<Estimate> estimate, List<String> above) {
  private static final Citation DESIGN_WINTER = new Citation("ufc-3-130-04", "design index");

  /**
   * The findings.
   *
   * @param ground what an estimate would rest on; absent where the soil allows none
   * @param most the most water that the ground can hold, where the job gives more
   */
  List<Finding> of(Optional<Ground> ground, Optional<Ratio> most) {
    List<Finding> findings = new ArrayList<>();
    if (job.ground().freezing().isPresent() && ground.isEmpty()) {
      findings.add(
          ask("frost-soil-outside", "ground.soil", Decider.ENGINEER, Citation.COMMON_PRACTICE)
              .with("soil", Argument.entry("soil." + job.ground().soil().id())));
    } else if (ground.isPresent() && estimate.isEmpty()) {
      findings.add(moisture(ground.get(), most));
    }
    estimate.ifPresent(
        some -> {
          winter(some).ifPresent(findings::add);
          deeper(some).ifPresent(findings::add);
        });
    return findings;
  }

  private static Finding ask(String id, String place, Decider decides, Citation source) {
    return Finding.of(Kind.ASK, id, place, decides, source);
  }

  private static Finding moisture(Ground ground, Optional<Ratio> most) {
    String place = "ground.airFreezingIndex.moisture";
    String id = most.isPresent() ? "frost-moisture-high" : "frost-moisture-low";
    Ratio limit =
        most.orElse(Ratio.ofPercent(ground.coarse() ? 1 : 7))
            .setTo(Ratio.ofPercent(0.1), pegbook.measure.Rounding.NEAREST);
    return ask(id, place, Decider.OWNER, Citation.COMMON_PRACTICE)
        .with("moisture", Argument.of(ground.moisture()))
        .with("density", Argument.of(ground.dry()))
        .with("limit", Argument.of(limit));
  }

  /** A footing that stays is drawn for the coldest winter in 30 years or a rarer one. */
  private static Optional<Finding> winter(Estimate estimate) {
    Winter winter = estimate.index().winter();
    boolean rare = winter == Winter.THIRTY_YEARS || winter == Winter.HUNDRED_YEARS;
    return rare
        ? Optional.empty()
        : Optional.of(
            ask(
                    "frost-index-winter",
                    "ground.airFreezingIndex.return",
                    Decider.BUILDING_AUTHORITY,
                    DESIGN_WINTER)
                .with("winter", Argument.entry("frost.winter." + winter.id())));
  }

  /** The rule stays as it is; who set it is told what the estimate says. */
  private Optional<Finding> deeper(Estimate estimate) {
    Length depth = estimate.decided();
    Length ruled = rule.orElse(Length.ZERO);
    boolean exceeds = depth.isMoreThan(ruled.plus(Length.ofMillimetres(0.1)));
    if (!exceeds || (above.isEmpty() && rule.isEmpty())) {
      return Optional.empty();
    }
    String id =
        rule.isEmpty()
            ? "frost-estimate-no-rule"
            : above.isEmpty() ? "frost-estimate-reached" : "frost-estimate-deeper";
    Kind kind = above.isEmpty() ? Kind.NOTE : Kind.ASK;
    Finding finding =
        Finding.of(
                kind,
                id,
                "ground.airFreezingIndex",
                Decider.BUILDING_AUTHORITY,
                estimate.berggren().isPresent()
                    ? FrostDepthFormulas.BERGGREN
                    : FrostDepthFormulas.STEFAN)
            .about(above)
            .with("estimate", Argument.of(depth))
            .with(
                "method",
                Argument.entry(
                    estimate.berggren().isPresent() ? "frost.by.berggren" : "frost.by.stefan"))
            .with("winter", Argument.entry("frost.winter." + estimate.index().winter().id()))
            .with(
                "surface",
                Argument.entry("frost.surface." + estimate.ground().surface().surface()));
    return Optional.of(rule.map(some -> finding.with("rule", Argument.of(some))).orElse(finding));
  }
}
