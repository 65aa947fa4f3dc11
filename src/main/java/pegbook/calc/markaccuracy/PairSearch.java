package pegbook.calc.markaccuracy;

import java.util.List;
import java.util.Optional;
import pegbook.figures.BaselineErrors;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * Looks for the two places from which the worst of all marks is best.
 *
 * <p>There are many pairs, so most are dropped early: a pair is out as soon as the long half axis
 * of one mark alone makes it worse than the best so far, and the mark that put the pair before out
 * is looked at first. Only marks that may be the worst of a pair get their exact radius.
 */
final class PairSearch {
  /** Radii and lengths that differ by less than this, in parts of one, are alike. */
  private static final double ALIKE = 1e-9;

  private final BaselineErrors errors;
  private final List<Point> ends;
  private final List<Point> marks;
  private final boolean among;
  private final double reachMetres;
  private final Sight[][] sights;

  /** The mark that put the last pair out. */
  private int suspect;

  /** A mark seen from an end: direction and variance of the tape between them. */
  private record Sight(double east, double north, double metres, double variance) {}

  /**
   * A pair of ends and what it gives.
   *
   * @param beyondReach how many tapes are longer than the tape
   * @param worst index of the worst mark; -1 where there is none
   * @param radiusMetres that holds 95 % of its errors; infinite where that cannot be told
   * @param metres length of the baseline
   */
  record Found(
      int first, int second, int beyondReach, int worst, double radiusMetres, double metres) {
    Optional<Length> radius() {
      return Double.isInfinite(radiusMetres)
          ? Optional.empty()
          : Optional.of(new Length(radiusMetres));
    }

    boolean isBetterThan(Found other) {
      if (beyondReach != other.beyondReach) {
        return beyondReach < other.beyondReach;
      }
      if (radiusMetres > other.radiusMetres * (1 + ALIKE)) {
        return false;
      }
      boolean clearly = radiusMetres * (1 + ALIKE) < other.radiusMetres;
      return clearly || metres > other.metres * (1 + ALIKE);
    }
  }

  private PairSearch(
      BaselineErrors errors, List<Point> ends, List<Point> marks, boolean among, Length reach) {
    this.errors = errors;
    this.ends = ends;
    this.marks = marks;
    this.among = among;
    this.reachMetres = reach.metres() * (1 + ALIKE);
    this.sights = new Sight[ends.size()][marks.size()];
    for (int i = 0; i < ends.size(); i++) {
      for (int j = 0; j < marks.size(); j++) {
        sights[i][j] = sight(ends.get(i), marks.get(j));
      }
    }
  }

  /** Among the marks themselves. */
  static PairSearch among(BaselineErrors errors, List<Point> marks, Length reach) {
    return new PairSearch(errors, marks, marks, true, reach);
  }

  /** Among places where no mark is. */
  static PairSearch beside(
      BaselineErrors errors, List<Point> places, List<Point> marks, Length reach) {
    return new PairSearch(errors, places, marks, false, reach);
  }

  private Sight sight(Point from, Point to) {
    Length distance = from.distanceTo(to);
    double sigma = errors.tape().sigma(distance).metres();
    double metres = distance.metres();
    return new Sight(
        (to.east() - from.east()) / metres,
        (to.north() - from.north()) / metres,
        metres,
        sigma * sigma);
  }

  /**
   * The best of all pairs, in both directions; of pairs that are alike the longest, then the first.
   */
  Optional<Found> best() {
    Optional<Found> best = Optional.empty();
    for (int first = 0; first < ends.size(); first++) {
      for (int second = 0; second < ends.size(); second++) {
        Optional<Found> found = first == second ? Optional.empty() : of(first, second, best);
        if (found.isPresent() && (best.isEmpty() || found.get().isBetterThan(best.get()))) {
          best = found;
        }
      }
    }
    return best;
  }

  /** One pair; nothing for one that is clearly worse than another. */
  private Optional<Found> of(int first, int second, Optional<Found> other) {
    int beyond = beyondReach(first, second);
    double limit = Double.POSITIVE_INFINITY;
    if (other.isPresent() && other.get().beyondReach() <= beyond) {
      limit = other.get().radiusMetres() * (1 + ALIKE);
      if (other.get().beyondReach() < beyond || isOut(first, second, suspect, limit)) {
        return Optional.empty();
      }
    }
    for (int i = 0; i < marks.size(); i++) {
      if (isOut(first, second, i, limit)) {
        suspect = i;
        return Optional.empty();
      }
    }
    return Optional.of(exact(first, second, beyond));
  }

  private boolean isEnd(int first, int second, int mark) {
    return among && (mark == first || mark == second);
  }

  private boolean isOut(int first, int second, int mark, double limit) {
    return !isEnd(first, second, mark)
        && major(first, second, mark) * ErrorEllipse.LEAST_FACTOR > limit;
  }

  /** Long half axis of a mark's ellipse; on the line itself nothing, as the string gives it. */
  private double major(int first, int second, int mark) {
    Sight one = sights[first][mark];
    Sight two = sights[second][mark];
    double cross = one.east() * two.north() - one.north() * two.east();
    double baseEast = ends.get(second).east() - ends.get(first).east();
    double baseNorth = ends.get(second).north() - ends.get(first).north();
    double base = Math.sqrt(baseEast * baseEast + baseNorth * baseNorth);
    double offset = Math.abs(cross) * one.metres() * two.metres() / base;
    if (offset <= errors.crossings().onLine().metres() * (1 + ALIKE)) {
      return 0;
    }
    double cosine = (two.east() * baseEast + two.north() * baseNorth) / base;
    double second2 = two.variance() + cosine * cosine * baseVariance(first, second, base);
    double sum = one.variance() + second2;
    double square = cross * cross;
    double root = Math.sqrt(Math.max(0, sum * sum - 4 * one.variance() * second2 * square));
    return Math.sqrt((sum + root) / (2 * square));
  }

  private double baseVariance(int first, int second, double metres) {
    if (among) {
      return sights[first][second].variance();
    }
    double sigma = errors.tape().sigma(new Length(metres)).metres();
    return sigma * sigma;
  }

  private Found exact(int first, int second, int beyond) {
    Segment baseline = new Segment(ends.get(first), ends.get(second));
    int worst = among ? second : -1;
    double radius =
        among ? errors.atSecond(baseline).radiusHolding(BaselineErrors.SHARE).metres() : 0;
    for (int i = 0; i < marks.size() && Double.isFinite(radius); i++) {
      if (isEnd(first, second, i)) {
        continue;
      }
      double exact = atLeast(errors.at(baseline, marks.get(i)), radius);
      worst = exact > radius * (1 + ALIKE) ? i : worst;
      radius = Math.max(radius, exact);
    }
    return new Found(first, second, beyond, worst, radius, baseline.length().metres());
  }

  /** A mark's radius where it may be larger than another; infinite where it cannot be told. */
  private static double atLeast(Optional<ErrorEllipse> ellipse, double metres) {
    if (ellipse.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double most = ellipse.get().semiMajor().metres() * ErrorEllipse.MOST_FACTOR;
    return most <= metres ? most : ellipse.get().radiusHolding(BaselineErrors.SHARE).metres();
  }

  private int beyondReach(int first, int second) {
    int beyond = ends.get(first).distanceTo(ends.get(second)).metres() > reachMetres ? 1 : 0;
    for (int i = 0; i < marks.size(); i++) {
      beyond += sights[first][i].metres() > reachMetres ? 1 : 0;
      beyond += sights[second][i].metres() > reachMetres ? 1 : 0;
    }
    return beyond;
  }
}
