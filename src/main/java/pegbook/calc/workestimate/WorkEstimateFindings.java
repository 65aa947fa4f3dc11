package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.workestimate.WorkEstimate.HoleWork;
import pegbook.calc.workestimate.WorkEstimate.Real;
import pegbook.figures.Argument;
import pegbook.figures.DigWork;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Soil;
import pegbook.measure.Area;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.HandDigRate;
import pegbook.published.HaulRate;

/** Where the published rates do not hold, and what a first hole showed. */
final class WorkEstimateFindings {
  private WorkEstimateFindings() {}

  static List<Finding> of(
      Job job, HandDigRate rate, List<DigWork> digging, List<HoleWork> holes, RealTime real) {
    List<Finding> findings = new ArrayList<>();
    if (job.ground().soil() == Soil.ROCK) {
      findings.add(
          Finding.of(Kind.ASK, "rock-digging", "ground.soil", Decider.ENGINEER, rate.citation()));
    }
    outside(rate, holes).ifPresent(findings::add);
    far(digging).ifPresent(findings::add);
    real.real().ifPresent(some -> findings.add(rescaled(some, real.times())));
    return findings;
  }

  private static Optional<Finding> outside(HandDigRate rate, List<HoleWork> holes) {
    List<String> outside =
        holes.stream()
            .map(HoleWork::hole)
            .filter(WorkEstimateFindings::isOutside)
            .map(Hole::mark)
            .toList();
    return outside.isEmpty()
        ? Optional.empty()
        : Optional.of(
            note("dig-rate-outside", outside, "", rate.citation())
                .with("depth", Argument.of(HandDigRate.DEEPEST))
                .with("area", Argument.of(HandDigRate.LARGEST_PIT)));
  }

  private static boolean isOutside(Hole hole) {
    Length radius = hole.diameter().times(0.5);
    Area area = radius.times(radius).times(Math.PI);
    return hole.dug().isMoreThan(HandDigRate.DEEPEST) || area.isMoreThan(HandDigRate.LARGEST_PIT);
  }

  private static Optional<Finding> far(List<DigWork> digging) {
    List<DigWork> far =
        digging.stream().filter(work -> work.haul().isMoreThan(HaulRate.farthest())).toList();
    return far.stream()
        .map(DigWork::haul)
        .max(Length::compareTo)
        .map(
            distance ->
                note(
                        "haul-far",
                        far.stream().map(work -> work.hole().mark()).toList(),
                        "spoil.place",
                        HaulRate.at(distance).citation())
                    .with("distance", Argument.of(distance))
                    .with("limit", Argument.of(HaulRate.farthest())));
  }

  /** What the holes took, against what was guessed for them. */
  private static Finding rescaled(Real real, List<DigTime> times) {
    Duration least = Duration.ZERO;
    Duration most = Duration.ZERO;
    for (DigTime time : times) {
      List<Working> whole = time.whole(time.work().hole().mark());
      least = least.plus(whole.get(0).asDuration());
      most = most.plus(whole.get(1).asDuration());
    }
    return note("hours-rescaled", real.holes(), "field.dug", Citation.COMMON_PRACTICE)
        .with("hours", Argument.of(real.hours()))
        .with("least", Argument.of(least))
        .with("most", Argument.of(most));
  }

  private static Finding note(String id, List<String> marks, String place, Citation source) {
    return Finding.of(Kind.NOTE, id, place, Decider.CREW, source).about(marks);
  }
}
