package pegbook.calc.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.bearing.Bearing.Remedy;
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
 * Whether a wider footing has room beside its neighbours.
 *
 * <p>A bell or a pad is wide at its own depth only: it meets a neighbour's hole, or its wider
 * bottom, where both lie at one depth. A hole that is wide all the way up meets every neighbour
 * that is near enough. Depths are compared from the datum line where both levels are known, else
 * from the ground.
 *
 * @param findings what the reader must act on
 * @param workings the nearest pair of each kind of remedy that has no room
 */
record RemedyRoom(List<Finding> findings, List<Working> workings) {
  /** Less than this is a touch, not a meeting. */
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  /** A wider footing beside another; the working tells the ground between them. */
  private record Pair(Hole wide, Hole other, boolean atDepth, Working working) {
    Length apart() {
      return working.asLength();
    }

    boolean meets() {
      return apart().isLessThan(TOLERANCE.negated());
    }
  }

  static RemedyRoom of(Job job, List<Hole> holes, List<Remedy> remedies) {
    List<Finding> findings = new ArrayList<>();
    List<Working> workings = new ArrayList<>();
    for (Remedy remedy : remedies) {
      List<Pair> meeting =
          pairs(job, holes, remedies, remedy).stream().filter(Pair::meets).toList();
      boolean atDepth = meeting.stream().anyMatch(Pair::atDepth);
      meeting.stream()
          .filter(pair -> pair.atDepth() == atDepth)
          .min(Comparator.comparing(Pair::apart))
          .ifPresent(
              worst -> {
                workings.add(worst.working());
                findings.add(finding(remedy, meeting, worst));
              });
    }
    return new RemedyRoom(findings, workings);
  }

  private static List<Pair> pairs(Job job, List<Hole> holes, List<Remedy> remedies, Remedy remedy) {
    BearingFormulas formulas = new BearingFormulas(job.heading().units());
    List<Pair> pairs = new ArrayList<>();
    for (Hole wide : holes) {
      for (Hole other : holes) {
        if (remedy.marks().contains(wide.mark()) && !other.mark().equals(wide.mark())) {
          Optional<Remedy> also =
              remedies.stream().filter(one -> one.marks().contains(other.mark())).findFirst();
          Working apart =
              Working.of(
                  formulas.bottoms(),
                  wide.mark() + " / " + other.mark(),
                  wide.centre().distanceTo(other.centre()),
                  remedy.diameter(),
                  also.map(Remedy::diameter).orElse(other.bottomWidth()));
          pairs.add(new Pair(wide, other, isAtOneDepth(wide, remedy, other, also), apart));
        }
      }
    }
    return pairs;
  }

  /** Whether the wide part of one lies beside the other's hole, or beside its wide part. */
  private static boolean isAtOneDepth(Hole wide, Remedy remedy, Hole other, Optional<Remedy> also) {
    Length low = BearingZones.underside(wide, other);
    Length high = low.minus(remedy.thickness());
    Length otherLow = BearingZones.underside(other, wide).plus(other.gravel());
    boolean beside = high.isLessThan(otherLow);
    return beside
        && also.map(wider -> otherLow.minus(other.gravel()).minus(wider.thickness()))
            .map(otherHigh -> otherHigh.isLessThan(low))
            .orElse(true);
  }

  private static Finding finding(Remedy remedy, List<Pair> meeting, Pair worst) {
    List<String> marks = new ArrayList<>();
    meeting.stream().map(pair -> pair.wide().mark()).distinct().forEach(marks::add);
    meeting.stream()
        .map(pair -> pair.other().mark())
        .distinct()
        .filter(mark -> !marks.contains(mark))
        .forEach(marks::add);
    String id = worst.atDepth() ? "bearing-no-room" : "bearing-no-room-above";
    return new Finding(
            Kind.ASK,
            id,
            marks,
            "supports.hole",
            Map.of(),
            Decider.ENGINEER,
            List.of(Citation.GEOMETRY))
        .with("one", Argument.words(worst.wide().mark()))
        .with("other", Argument.words(worst.other().mark()))
        .with("diameter", Argument.of(remedy.diameter()))
        .with("overlap", Argument.of(worst.apart().negated()));
  }
}
