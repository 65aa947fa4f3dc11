package pegbook.calc.safepegs;

import java.util.List;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/** Which marks are taped from which places, and how well two places find a mark together. */
final class Sightings {
  /** A crossing outside the limits counts this many times its spread. */
  private static final double WEAK = 1000;

  private static final double LEAST_SINE =
      StrictMath.sin(Crossings.LEAST.minus(Crossings.TOLERANCE).radians());

  private final List<Point> places;
  private final List<Point> marks;
  private final boolean[][] seen;
  private final double[][] variances;

  /**
   * Looks from every place to every mark.
   *
   * @param sight what blocks a tape
   * @param height at which it is held
   * @param reach of the tape
   */
  Sightings(
      List<Point> places,
      List<Point> marks,
      Sight sight,
      Length height,
      Length reach,
      TapeAccuracy accuracy) {
    this.places = List.copyOf(places);
    this.marks = List.copyOf(marks);
    this.seen = new boolean[places.size()][marks.size()];
    this.variances = new double[places.size()][marks.size()];
    for (int place = 0; place < places.size(); place++) {
      for (int mark = 0; mark < marks.size(); mark++) {
        Length distance = places.get(place).distanceTo(marks.get(mark));
        double sigmaMetres = accuracy.sigma(distance).metres();
        variances[place][mark] = sigmaMetres * sigmaMetres;
        seen[place][mark] =
            distance.metres() > 1e-6
                && !distance.isMoreThan(reach)
                && sight.blocked(places.get(place), marks.get(mark), height).isEmpty();
      }
    }
  }

  int places() {
    return places.size();
  }

  int marks() {
    return marks.size();
  }

  Point place(int place) {
    return places.get(place);
  }

  boolean sees(int place, int mark) {
    return seen[place][mark];
  }

  boolean seesAll(int place) {
    for (boolean one : seen[place]) {
      if (!one) {
        return false;
      }
    }
    return true;
  }

  boolean isWeak(int one, int other, int mark) {
    return sine(one, other, mark) < LEAST_SINE;
  }

  /**
   * How well two places find a mark, metres: the root of the variance of a crossing of two tapes, √
   * (σ₁² + σ₂²) / sin γ. Weak crossings count many times worse.
   */
  double spread(int one, int other, int mark) {
    double sine = sine(one, other, mark);
    double both = Math.sqrt(variances[one][mark] + variances[other][mark]);
    return both / Math.max(sine, 1e-9) * (sine < LEAST_SINE ? WEAK : 1);
  }

  private double sine(int one, int other, int mark) {
    Point at = marks.get(mark);
    Point first = places.get(one);
    Point second = places.get(other);
    double firstEast = first.east() - at.east();
    double firstNorth = first.north() - at.north();
    double secondEast = second.east() - at.east();
    double secondNorth = second.north() - at.north();
    double lengths =
        Math.sqrt(firstEast * firstEast + firstNorth * firstNorth)
            * Math.sqrt(secondEast * secondEast + secondNorth * secondNorth);
    return Math.abs(firstEast * secondNorth - firstNorth * secondEast) / Math.max(lengths, 1e-12);
  }
}
