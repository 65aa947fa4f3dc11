package pegbook.calc.safepegs;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * A peg set by two tapes from marks. Its place is where the set readings cross, so that every
 * distance from it is that of the peg as it will stand.
 *
 * @param at where it stands
 * @param first index of the first tape's mark
 * @param second index of the second tape's mark
 */
record PegSwing(Point at, int first, int second) {
  /** A check mark lies this far beside the two tapes' marks, to show a peg on the wrong side. */
  private static final double BESIDE_METRES = 0.3;

  /** From the two marks whose tapes cross best at the wanted place, before anything is dug. */
  static PegSwing of(PegSite site, Point wanted) {
    Sightings seen = seen(site, wanted);
    int first = 0;
    int second = 1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < site.marks().size(); i++) {
      for (int j = i + 1; j < site.marks().size(); j++) {
        double spread = seen.spread(i, j, 0) * (seen.sees(i, 0) && seen.sees(j, 0) ? 1 : 1e6);
        if (spread < least * (1 - 1e-9)) {
          least = spread;
          first = i;
          second = j;
        }
      }
    }
    return new PegSwing(set(site, wanted, first, second), first, second);
  }

  private static Point set(PegSite site, Point wanted, int first, int second) {
    Segment line = new Segment(site.marks().get(first), site.marks().get(second));
    Length one = setTo(site, line.from().distanceTo(wanted));
    Length other = setTo(site, line.to().distanceTo(wanted));
    if (Swing.of(line, one, other) instanceof Swing.Crossing crossing) {
      return line.offsetMetres(wanted) > 0 ? crossing.left() : crossing.right();
    }
    return wanted;
  }

  private static Length setTo(PegSite site, Length distance) {
    return distance.setTo(site.division(), Rounding.NEAREST);
  }

  private static Sightings seen(PegSite site, Point peg) {
    Sight bare = new Sight(site.sight().features(), List.of(), site.rules());
    return new Sightings(
        site.marks(), List.of(peg), bare, site.rules().tape(), site.reach(), site.accuracy());
  }

  /** The mark whose distance checks the peg best, beside the two if there is one. */
  Optional<Integer> check(PegSite site) {
    Segment line = new Segment(site.marks().get(first), site.marks().get(second));
    return check(site, at, List.of(first, second), mark -> isBeside(line, site.marks().get(mark)))
        .or(() -> check(site, at, List.of(first, second), mark -> true));
  }

  private static boolean isBeside(Segment line, Point mark) {
    return Math.abs(line.offsetMetres(mark)) > BESIDE_METRES;
  }

  /**
   * The mark whose tape crosses best with one of those that set a peg.
   *
   * @param used marks that set it
   */
  static Optional<Integer> check(
      PegSite site, Point peg, List<Integer> used, java.util.function.IntPredicate wanted) {
    Sightings seen = seen(site, peg);
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int mark = 0; mark < site.marks().size(); mark++) {
      int other = mark;
      if (used.contains(mark) || !seen.sees(mark, 0) || !wanted.test(mark)) {
        continue;
      }
      double spread =
          IntStream.range(0, used.size())
              .mapToDouble(one -> seen.spread(used.get(one), other, 0))
              .min()
              .orElse(0);
      if (spread < least * (1 - 1e-9)) {
        least = spread;
        best = mark;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(best);
  }
}
