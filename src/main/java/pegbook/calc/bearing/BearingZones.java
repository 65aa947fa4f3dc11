package pegbook.calc.bearing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * Piers and supports that press on each other's ground.
 *
 * <p>Load spreads from the edge of a footing's underside, one outwards for two down (common
 * practice, no source). Two widths below its own underside less than a tenth of the pressure is
 * left (an even load on a circle, elastic ground): there its zone ends. At the lowest level that
 * both reach, each is as wide as its zone, or as its concrete where that still goes on down. Seen
 * from above alone, a deep pier would meet the zone of a shallow support that has long ended, or
 * miss the one that its own zone runs into. The depth targets hold the steeper case, a hole that
 * takes away the ground under a shallower footing. Depths are compared from the datum line where
 * both levels are known, else from the ground.
 *
 * @param findings what the reader must act on
 * @param workings the pair that comes nearest
 */
record BearingZones(List<Finding> findings, List<Working> workings) {
  private static final Length TOLERANCE = Length.ofMillimetres(0.1);

  /** How many widths down a zone goes. */
  private static final double REACH = 2;

  private record Pair(Hole pier, Hole support, Working working) {
    Length apart() {
      return working.asLength();
    }
  }

  static BearingZones of(Job job, List<Hole> holes) {
    List<Pair> pairs = new ArrayList<>();
    for (Hole pier : holes) {
      for (Hole support : holes) {
        if (pier.kind() == MarkKind.PIER && support.kind() == MarkKind.SUPPORT) {
          pairs.add(new Pair(pier, support, working(job, pier, support)));
        }
      }
    }
    Optional<Pair> nearest = pairs.stream().min(Comparator.comparing(Pair::apart));
    List<Pair> meeting =
        pairs.stream().filter(pair -> pair.apart().isLessThan(TOLERANCE.negated())).toList();
    return new BearingZones(
        meeting.isEmpty() ? List.of() : List.of(finding(meeting, nearest.orElseThrow())),
        nearest.map(pair -> List.of(pair.working())).orElse(List.of()));
  }

  private static Working working(Job job, Hole pier, Hole support) {
    Length pierDown = underside(pier, support);
    Length supportDown = underside(support, pier);
    Length pierEnds = pierDown.plus(pier.standing().times(REACH));
    Length supportEnds = supportDown.plus(support.standing().times(REACH));
    Length level = pierEnds.min(supportEnds);
    return Working.of(
        new BearingFormulas(job.heading().units()).zones(),
        pier.mark() + " / " + support.mark(),
        pier.centre().distanceTo(support.centre()),
        pier.standing(),
        support.standing(),
        level.minus(pierDown).max(Length.ZERO),
        level.minus(supportDown).max(Length.ZERO));
  }

  /** Depth of a hole's underside below a level that it shares with the other hole. */
  static Length underside(Hole hole, Hole other) {
    return other.datumToUnderside().flatMap(known -> hole.datumToUnderside()).orElse(hole.depth());
  }

  private static Finding finding(List<Pair> meeting, Pair nearest) {
    List<String> marks = new ArrayList<>();
    meeting.stream().map(pair -> pair.pier().mark()).distinct().forEach(marks::add);
    meeting.stream().map(pair -> pair.support().mark()).distinct().forEach(marks::add);
    return new Finding(
            Kind.ASK,
            "bearing-zones-meet",
            marks,
            "piers",
            Map.of(),
            Decider.ENGINEER,
            List.of(Citation.COMMON_PRACTICE))
        .with("pier", Argument.words(nearest.pier().mark()))
        .with("support", Argument.words(nearest.support().mark()))
        .with("overlap", Argument.of(nearest.apart().negated()));
  }
}
