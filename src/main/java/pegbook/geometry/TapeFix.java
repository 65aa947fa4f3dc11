package pegbook.geometry;

import java.util.ArrayList;
import java.util.List;
import pegbook.measure.Length;

/**
 * A place that is fixed by two or more tapes. With more than two their arcs do not meet in one
 * point; the place is then the one whose tapes are off least, squares added up, all tapes counting
 * alike: about the middle of the small figure that the arcs make.
 *
 * @param mark the place
 * @param from where the tapes begin; at least two places, and not all in one line with the mark
 */
public record TapeFix(Point mark, List<Point> from) {
  public TapeFix {
    from = List.copyOf(from);
  }

  /**
   * A tape's part in the fix.
   *
   * @param eastAlong east part of its direction, from its beginning to the mark
   * @param northAlong north part
   * @param eastGain metres that the mark moves east for each metre that the tape is too long
   * @param northGain metres north
   */
  public record Pull(double eastAlong, double northAlong, double eastGain, double northGain) {}

  /** The pulls of all tapes: the columns of (JᵀJ)⁻¹Jᵀ, where the rows of J are their directions. */
  public List<Pull> pulls() {
    double eastEast = 0;
    double eastNorth = 0;
    double northNorth = 0;
    List<Point> directions = new ArrayList<>();
    for (Point other : from) {
      double metres = other.distanceTo(mark).metres();
      double east = (mark.east() - other.east()) / metres;
      double north = (mark.north() - other.north()) / metres;
      directions.add(new Point(east, north));
      eastEast += east * east;
      eastNorth += east * north;
      northNorth += north * north;
    }
    double determinant = eastEast * northNorth - eastNorth * eastNorth;
    List<Pull> pulls = new ArrayList<>();
    for (Point along : directions) {
      pulls.add(
          new Pull(
              along.east(),
              along.north(),
              (northNorth * along.east() - eastNorth * along.north()) / determinant,
              (eastEast * along.north() - eastNorth * along.east()) / determinant));
    }
    return pulls;
  }

  /** Where the mark may lie when the tapes begin where they should. */
  public Covariance covariance(List<Length> sigmas) {
    Covariance sum = Covariance.NONE;
    List<Pull> pulls = pulls();
    for (int i = 0; i < pulls.size(); i++) {
      double variance = sigmas.get(i).metres() * sigmas.get(i).metres();
      sum = sum.plus(Covariance.along(pulls.get(i).eastGain(), pulls.get(i).northGain(), variance));
    }
    return sum;
  }
}
