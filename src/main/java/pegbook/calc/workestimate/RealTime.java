package pegbook.calc.workestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.workestimate.WorkEstimate.Real;
import pegbook.figures.DigWork;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Field.Dug;
import pegbook.job.Job;
import pegbook.measure.Duration;
import pegbook.measure.Length;
import pegbook.published.HandDigRate;

/**
 * How the holes that were dug compare with the published rate: each as wide and as deep as it was
 * found, as planned where nobody measured it.
 *
 * @param real what they took; none where nobody wrote hours down
 * @param times the same holes at the rate
 */
record RealTime(Optional<Real> real, List<DigTime> times, List<Working> workings) {

  static RealTime of(Job job, List<DigWork> digging, HandDigRate rate) {
    List<DigTime> times = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    List<Dug> dug = job.field().dug().stream().filter(one -> one.hours().isPresent()).toList();
    if (dug.isEmpty()) {
      return new RealTime(Optional.empty(), times, workings);
    }
    for (Dug one : dug) {
      DigWork work =
          digging.stream()
              .filter(some -> some.hole().mark().equals(one.hole()))
              .findFirst()
              .orElseThrow();
      DigTime time = DigTime.of(found(work, one), one.hole(), rate, job.heading().units());
      workings.addAll(time.workings());
      times.add(time);
    }
    Duration hours =
        dug.stream().flatMap(one -> one.hours().stream()).reduce(Duration.ZERO, Duration::plus);
    Duration atRate = times.stream().map(DigTime::atRate).reduce(Duration.ZERO, Duration::plus);
    Working factor = Working.of(WorkEstimateFormulas.realFactor(), "", hours, atRate);
    workings.add(factor);
    return new RealTime(
        Optional.of(new Real(dug.stream().map(Dug::hole).toList(), hours, factor.result())),
        times,
        workings);
  }

  private static DigWork found(DigWork work, Dug dug) {
    Hole hole = work.hole();
    Hole found =
        hole.asDug(
            hole.centre(),
            dug.diameter().orElse(hole.diameter()),
            dug.depth().orElse(hole.dug()),
            Length.ZERO);
    return new DigWork(found, work.loose(), work.tools(), work.haul());
  }
}
