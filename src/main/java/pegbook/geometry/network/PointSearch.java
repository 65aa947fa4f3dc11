package pegbook.geometry.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.measure.Length;

/**
 * Searches the place of one point that explains most of its distances.
 *
 * <p>It starts from the place meant and from where the best crossing pair of its tapes meets, on
 * either side, and steps by Gauss and Newton until it rests; the lowest sum wins.
 */
final class PointSearch {
  private static final int MOST_STEPS = 40;

  /** A step shorter than this, metres, is rest. */
  private static final double REST = 1e-9;

  /** Of the information in the best seen direction, less than this counts as not seen. */
  private static final double UNSEEN = 1e-6;

  private final Suppositions suppositions;
  private final Point meant;
  private final List<Integer> own;
  private final double[][] weights;

  PointSearch(Suppositions suppositions, Point meant, List<Integer> own) {
    this.suppositions = suppositions;
    this.meant = meant;
    this.own = own;
    this.weights = new double[own.size()][own.size()];
    for (int i = 0; i < own.size(); i++) {
      for (int j = 0; j < own.size(); j++) {
        weights[i][j] = suppositions.jointWeight(own.get(i), own.get(j));
      }
    }
  }

  Shift best() {
    if (own.isEmpty()) {
      return new Shift(0, 0, 0, Optional.empty(), 0);
    }
    Shift best = from(meant);
    for (Point start : crossings()) {
      Shift other = from(start);
      if (other.fall() > best.fall() + 1e-6) {
        best = other;
      }
    }
    return best;
  }

  /** Where the two tapes meet that cross nearest to square; none when the mark has but one. */
  private List<Point> crossings() {
    List<Point> places = new ArrayList<>();
    double squarest = 0.1;
    int first = -1;
    int second = -1;
    for (int i = 0; i < own.size(); i++) {
      for (int j = 0; j < i; j++) {
        Point a = suppositions.otherEnd(own.get(i), meant);
        Point b = suppositions.otherEnd(own.get(j), meant);
        double crossing = StrictMath.sin(Swing.angleAt(meant, a, b).radians());
        if (crossing > squarest && a.distanceTo(b).metres() > 0) {
          squarest = crossing;
          first = own.get(i);
          second = own.get(j);
        }
      }
    }
    if (first >= 0) {
      Segment line =
          new Segment(suppositions.otherEnd(first, meant), suppositions.otherEnd(second, meant));
      Swing swing =
          Swing.of(
              line,
              new Length(suppositions.measured(first)),
              new Length(suppositions.measured(second)));
      if (swing instanceof Swing.Crossing crossing) {
        places.add(crossing.left());
        places.add(crossing.right());
      }
    }
    return places;
  }

  private Shift from(Point start) {
    Point at = start;
    double fall = fall(at);
    for (int step = 0; step < MOST_STEPS; step++) {
      Step next = new Step(at);
      double share = 1;
      Point moved = next.moved(share);
      while (fall(moved) < fall - 1e-9 * Math.abs(fall) && share > 1e-3) {
        share /= 2;
        moved = next.moved(share);
      }
      double length = at.distanceTo(moved).metres();
      at = moved;
      fall = fall(at);
      if (length < REST) {
        break;
      }
    }
    Step last = new Step(at);
    return new Shift(
        at.east() - meant.east(), at.north() - meant.north(), last.seen, last.spread(), fall);
  }

  private double[] changes(Point at) {
    double[] changes = new double[own.size()];
    for (int i = 0; i < changes.length; i++) {
      Point other = suppositions.otherEnd(own.get(i), meant);
      changes[i] = other.distanceTo(at).metres() - other.distanceTo(meant).metres();
    }
    return changes;
  }

  /** By how much the sum falls with the point at a place: 2 sᵀC⁻¹y − sᵀC⁻¹s. */
  private double fall(Point at) {
    double[] changes = changes(at);
    double fall = 0;
    for (int i = 0; i < changes.length; i++) {
      fall += changes[i] * (suppositions.pull(own.get(i)) + rest(i, changes));
    }
    return fall;
  }

  /** What is left of C⁻¹y when the point has moved. */
  private double rest(int i, double[] changes) {
    double rest = suppositions.pull(own.get(i));
    for (int j = 0; j < changes.length; j++) {
      rest -= weights[i][j] * changes[j];
    }
    return rest;
  }

  /** One step of Gauss and Newton from a place. */
  private final class Step {
    private final Point at;
    private final Spread information;
    private final int seen;
    private double east;
    private double north;

    Step(Point at) {
      this.at = at;
      double[] changes = changes(at);
      int count = own.size();
      double[] alongEast = new double[count];
      double[] alongNorth = new double[count];
      double pullEast = 0;
      double pullNorth = 0;
      for (int i = 0; i < count; i++) {
        Point other = suppositions.otherEnd(own.get(i), meant);
        double metres = Math.max(1e-6, other.distanceTo(at).metres());
        alongEast[i] = (at.east() - other.east()) / metres;
        alongNorth[i] = (at.north() - other.north()) / metres;
        pullEast += alongEast[i] * rest(i, changes);
        pullNorth += alongNorth[i] * rest(i, changes);
      }
      information = information(alongEast, alongNorth);
      double large = square(information.longHalfAxis());
      double small = square(information.shortHalfAxis());
      seen = large <= 0 ? 0 : small <= UNSEEN * large ? 1 : 2;
      solve(pullEast, pullNorth, large);
    }

    private Spread information(double[] alongEast, double[] alongNorth) {
      double ee = 0;
      double en = 0;
      double nn = 0;
      for (int i = 0; i < alongEast.length; i++) {
        for (int j = 0; j < alongEast.length; j++) {
          ee += alongEast[i] * weights[i][j] * alongEast[j];
          en += alongEast[i] * weights[i][j] * alongNorth[j];
          nn += alongNorth[i] * weights[i][j] * alongNorth[j];
        }
      }
      return new Spread(ee, en, nn);
    }

    private void solve(double pullEast, double pullNorth, double large) {
      if (seen == 2) {
        Spread inverse = Shifts.inverse(information);
        east = inverse.eastEast() * pullEast + inverse.eastNorth() * pullNorth;
        north = inverse.eastNorth() * pullEast + inverse.northNorth() * pullNorth;
      } else if (seen == 1) {
        double sine = StrictMath.sin(information.longAxisAzimuth().radians());
        double cosine = StrictMath.cos(information.longAxisAzimuth().radians());
        double along = (pullEast * sine + pullNorth * cosine) / large;
        east = along * sine;
        north = along * cosine;
      }
    }

    Point moved(double share) {
      return at.plus(east * share, north * share);
    }

    Optional<Spread> spread() {
      return seen == 2 ? Optional.of(Shifts.inverse(information)) : Optional.empty();
    }
  }

  private static double square(Length length) {
    return length.metres() * length.metres();
  }
}
