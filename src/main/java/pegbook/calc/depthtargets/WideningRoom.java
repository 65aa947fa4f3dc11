package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
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
 * Bells that meet a neighbour under the ground, and caps that meet one over it. A bell is wide at
 * its own depth only; depths are compared from the datum line where both levels are known, else
 * from the ground. Caps count as round, and as if all stood at one height.
 *
 * @param findings what the reader must act on
 * @param workings the pair that meets most
 */
record WideningRoom(List<Finding> findings, List<Working> workings) {
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  private record Pair(Hole one, Hole other, Working working) {
    Length apart() {
      return working.asLength();
    }
  }

  static WideningRoom of(Job job, List<Hole> holes) {
    List<Pair> bells = new ArrayList<>();
    List<Pair> caps = new ArrayList<>();
    WideningFormulas formulas = new WideningFormulas(job.heading().units());
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        Hole one = holes.get(i);
        Hole other = holes.get(j);
        if (one.widenings().bell().isPresent() || other.widenings().bell().isPresent()) {
          meet(one, other, beside(one, other), beside(other, one), formulas, bells);
        }
        if (one.widenings().cap().isPresent() || other.widenings().cap().isPresent()) {
          meet(one, other, one.headAcross(), other.headAcross(), formulas, caps);
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    worst(bells)
        .forEach(
            pair -> {
              workings.add(pair.working());
              findings.add(
                  about(
                      bells,
                      pair,
                      Finding.of(
                          Kind.STOP,
                          "bells-meet",
                          "supports.bell",
                          Decider.ENGINEER,
                          Citation.GEOMETRY)));
            });
    worst(caps)
        .forEach(
            pair -> {
              workings.add(pair.working());
              findings.add(
                  about(
                      caps,
                      pair,
                      Finding.of(
                          Kind.ASK,
                          "caps-meet",
                          "supports.cap",
                          Decider.OWNER,
                          Citation.GEOMETRY)));
            });
    return new WideningRoom(findings, workings);
  }

  private static List<Pair> worst(List<Pair> pairs) {
    return pairs.stream().min(Comparator.comparing(Pair::apart)).stream().toList();
  }

  private static void meet(
      Hole one,
      Hole other,
      Length oneWide,
      Length otherWide,
      WideningFormulas formulas,
      List<Pair> meeting) {
    Working working =
        Working.of(
            formulas.between(),
            one.mark() + " / " + other.mark(),
            one.centre().distanceTo(other.centre()),
            oneWide,
            otherWide);
    if (working.asLength().isLessThan(TOLERANCE.negated())) {
      meeting.add(new Pair(one, other, working));
    }
  }

  /**
   * How wide a hole is beside another: as its bell where the other reaches as deep. Of two bells at
   * different depths the lower one's is not reached.
   */
  private static Length beside(Hole hole, Hole other) {
    return flare(hole, other).isLessThan(bottom(other, hole))
        ? hole.bottomWidth()
        : hole.diameter();
  }

  /** Depth at which the bell of a hole begins, or where its concrete ends. */
  private static Length flare(Hole hole, Hole other) {
    return below(hole, other).minus(hole.widenings().bottomHeight());
  }

  private static Length bottom(Hole deep, Hole beside) {
    return below(deep, beside).plus(deep.gravel());
  }

  private static Length below(Hole hole, Hole other) {
    return other.datumToUnderside().flatMap(known -> hole.datumToUnderside()).orElse(hole.depth());
  }

  private static Finding about(List<Pair> meeting, Pair worst, Finding finding) {
    Set<String> marks = new LinkedHashSet<>();
    meeting.forEach(pair -> marks.addAll(List.of(pair.one().mark(), pair.other().mark())));
    return finding
        .about(List.copyOf(marks))
        .with("one", Argument.words(worst.one().mark()))
        .with("other", Argument.words(worst.other().mark()))
        .with("overlap", Argument.of(worst.apart().negated()));
  }
}
