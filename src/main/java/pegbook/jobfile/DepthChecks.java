package pegbook.jobfile;

import java.util.Optional;
import pegbook.job.Frost;
import pegbook.measure.Length;
import pegbook.published.FootingDepth;

/** Bells and pads against the depth that is dug in any case: the code's, the frost's, the job's. */
final class DepthChecks {
  private DepthChecks() {}

  static void look(JobMarks marks, Report report) {
    Optional<Fields> ground = report.object(JobKeys.GROUND.name());
    if (ground.isEmpty() || ground.get().isRefused(GroundKeys.FROST)) {
      return;
    }
    Optional<Frost> frost = ground.get().find(GroundKeys.FROST);
    report.object(JobKeys.SUPPORTS.name()).ifPresent(some -> look(some, frost, report));
    marks.piers().forEach(pier -> look(pier, frost, report));
  }

  private static void look(Fields footing, Optional<Frost> frost, Report report) {
    if (!footing.isRefused(FootingKeys.DEPTH)) {
      WideningKeys.hasDepth(footing, least(footing, frost), report);
    }
  }

  /** An exemption, whomever it covers, may leave no more than what the job asks for. */
  private static Length least(Fields footing, Optional<Frost> frost) {
    Optional<Length> asked = footing.find(FootingKeys.DEPTH).flatMap(depth -> depth);
    Length frozen =
        frost
            .filter(some -> asked.isEmpty() || some.exemption().isEmpty())
            .map(Frost::depth)
            .orElse(Length.ZERO);
    return FootingDepth.find("code-minimum").least().max(asked.orElse(Length.ZERO)).max(frozen);
  }
}
