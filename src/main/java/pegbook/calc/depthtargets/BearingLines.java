package pegbook.calc.depthtargets;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pegbook.figures.Argument;
import pegbook.figures.BearingPair;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.published.Citation;

/**
 * Holes beside shallower footings, as they are planned.
 *
 * @param findings what the reader must act on
 * @param workings the pairs that fail, or else the tightest pair of unequal holes
 */
record BearingLines(List<Finding> findings, List<Working> workings) {

  static BearingLines of(Job job, List<Hole> holes) {
    List<BearingPair> pairs =
        BearingPair.all(holes, DepthTargetsFormulas.in(job.heading().units()).bearingLine());
    List<BearingPair> failing = pairs.stream().filter(BearingPair::fails).toList();
    List<Working> workings =
        failing.isEmpty()
            ? tightest(pairs).map(pair -> List.of(pair.working())).orElse(List.of())
            : failing.stream().map(BearingPair::working).toList();
    List<Finding> findings =
        tightest(failing).map(worst -> List.of(undermined(failing, worst))).orElse(List.of());
    return new BearingLines(findings, workings);
  }

  private static Optional<BearingPair> tightest(List<BearingPair> pairs) {
    return pairs.stream().min(Comparator.comparing(BearingPair::margin));
  }

  private static Finding undermined(List<BearingPair> failing, BearingPair worst) {
    Set<String> marks = new LinkedHashSet<>();
    failing.forEach(pair -> marks.addAll(List.of(pair.deeper().mark(), pair.shallower().mark())));
    return new Finding(
            Kind.STOP,
            "bearing-line",
            List.copyOf(marks),
            "piers",
            Map.of(),
            Decider.ENGINEER,
            List.of(Citation.COMMON_PRACTICE))
        .with("deeper", Argument.words(worst.deeper().mark()))
        .with("shallower", Argument.words(worst.shallower().mark()))
        .with("below", Argument.of(worst.margin().negated()));
  }
}
