package pegbook.calc.tapetable;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * Which third distance says most about a mark that two tapes gave.
 *
 * <p>The two tapes leave a mark an ellipse to lie in, long across the weak direction. A third tape
 * along its long axis sees most of it. Of the marks that are there already and see at least a share
 * of the best, the nearest is taken. Marks beside the baseline come before those on its line: the
 * latter are as far from a mark as from its mirror image, so they cannot show a mark on the wrong
 * side.
 *
 * @param baseline from the first mark to the second
 * @param reach length of the tape
 * @param onLine how far off its line a mark counts as on it
 */
record CheckChoice(Segment baseline, Length reach, Length onLine) {
  /** Share of the best sight that is good enough for a nearer mark. */
  private static final double SHARE = 0.8;

  private record Candidate(PlacedMark mark, double sight, double metres) {}

  /**
   * Chooses among the marks that are there.
   *
   * @param mark the mark to check, beside the baseline
   * @param placed marks there already, without the baseline's own
   */
  Optional<PlacedMark> among(Point mark, List<PlacedMark> placed) {
    return best(mark, placed.stream().filter(this::seesMirror).toList())
        .or(() -> best(mark, placed));
  }

  boolean seesMirror(PlacedMark mark) {
    return Math.abs(baseline.offsetMetres(mark.at())) > onLine.metres();
  }

  private Optional<PlacedMark> best(Point mark, List<PlacedMark> placed) {
    List<Candidate> candidates =
        placed.stream()
            .map(
                other ->
                    new Candidate(
                        other, sight(mark, other.at()), mark.distanceTo(other.at()).metres()))
            .filter(candidate -> candidate.metres() <= reach.metres())
            .toList();
    double most = candidates.stream().mapToDouble(Candidate::sight).max().orElse(0);
    return candidates.stream()
        .filter(candidate -> candidate.sight() >= SHARE * most - 1e-9)
        .min(Comparator.comparingLong(candidate -> Math.round(candidate.metres() * 1e6)))
        .map(Candidate::mark);
  }

  /**
   * Variance along the direction to another mark, for two tapes of variance one: u · (JᵀJ)⁻¹ · u,
   * where the rows of J are the tapes' directions.
   */
  private double sight(Point mark, Point other) {
    Point first = direction(baseline.from(), mark);
    Point second = direction(baseline.to(), mark);
    Point along = direction(other, mark);
    double eastEast = first.east() * first.east() + second.east() * second.east();
    double eastNorth = first.east() * first.north() + second.east() * second.north();
    double northNorth = first.north() * first.north() + second.north() * second.north();
    double determinant = eastEast * northNorth - eastNorth * eastNorth;
    return (along.east() * along.east() * northNorth
            - 2 * along.east() * along.north() * eastNorth
            + along.north() * along.north() * eastEast)
        / determinant;
  }

  private static Point direction(Point from, Point to) {
    double metres = from.distanceTo(to).metres();
    return new Point((to.east() - from.east()) / metres, (to.north() - from.north()) / metres);
  }
}
