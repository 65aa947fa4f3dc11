package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * Holes beside shallower footings.
 *
 * <p>A footing's load spreads down and outwards from the edge of its underside. A hole whose bottom
 * lies below a line falling one in one (45°) from that edge takes away ground that carries (common
 * practice, no source; weak soils want a flatter line). Depths are compared from the datum line
 * where both levels are known, else from the ground, taken as level.
 *
 * @param findings what the reader must act on
 * @param workings the pairs that fail, or else the tightest pair of unequal holes
 */
record BearingLines(List<Finding> findings, List<Working> workings) {

  private record Pair(Hole shallower, Hole deeper, Working working) {
    boolean fails() {
      return DepthChoice.isLess(working.asLength(), Length.ZERO);
    }
  }

  static BearingLines of(Job job, List<Hole> holes) {
    List<Pair> pairs = pairs(job, holes);
    List<Pair> failing = pairs.stream().filter(Pair::fails).toList();
    List<Working> workings =
        failing.isEmpty()
            ? tightest(pairs).map(pair -> List.of(pair.working())).orElse(List.of())
            : failing.stream().map(Pair::working).toList();
    List<Finding> findings =
        tightest(failing).map(worst -> List.of(undermined(failing, worst))).orElse(List.of());
    return new BearingLines(findings, workings);
  }

  /** Every two holes of which one goes below the other's concrete, near enough to matter. */
  private static List<Pair> pairs(Job job, List<Hole> holes) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        pair(job, holes.get(i), holes.get(j)).ifPresent(pairs::add);
      }
    }
    return pairs;
  }

  private static Optional<Pair> pair(Job job, Hole one, Hole other) {
    Length oneUp = below(one, other);
    Length otherUp = below(other, one);
    boolean otherIsDeeper = otherUp.plus(other.gravel()).isMoreThan(oneUp.plus(one.gravel()));
    Hole shallower = otherIsDeeper ? one : other;
    Hole deeper = otherIsDeeper ? other : one;
    Length underside = otherIsDeeper ? oneUp : otherUp;
    Length bottom = (otherIsDeeper ? otherUp : oneUp).plus(deeper.gravel());
    if (!DepthChoice.isLess(underside, bottom)) {
      return Optional.empty();
    }
    Working working =
        Working.of(
            DepthTargetsFormulas.in(job.heading().units()).bearingLine(),
            deeper.mark() + " / " + shallower.mark(),
            one.centre().distanceTo(other.centre()),
            shallower.diameter(),
            deeper.diameter(),
            underside,
            bottom);
    return Optional.of(new Pair(shallower, deeper, working));
  }

  /** Depth of a hole's underside below a level that it shares with the other hole. */
  private static Length below(Hole hole, Hole other) {
    return other
        .datumToUnderside()
        .flatMap(otherKnown -> hole.datumToUnderside())
        .orElse(hole.depth());
  }

  private static Optional<Pair> tightest(List<Pair> pairs) {
    return pairs.stream().min(Comparator.comparing(pair -> pair.working().asLength()));
  }

  private static Finding undermined(List<Pair> failing, Pair worst) {
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
        .with("below", Argument.of(worst.working().asLength().negated()));
  }
}
