package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.measure.Length;

/**
 * Where one mark can lie and pass, every other mark being right.
 *
 * <p>A distance from another mark passes in a ring round that mark, between its shortest and its
 * longest good reading. What passes several distances lies in all their rings. The place of it that
 * is furthest from where the mark belongs is a corner, where the edges of two rings cross, or a
 * place on one edge straight behind or beyond the other mark. All of these are found once; a set of
 * distances then lets pass what none of them shows. Nothing is taken for straight that is round, so
 * a mark on the wrong side of a line is found as well as one that was kicked.
 */
final class HiddenPlaces {
  /** So many rings can be told apart. */
  static final int MOST_RINGS = 62;

  private final List<Place> places;

  private HiddenPlaces(List<Place> places) {
    this.places = places;
  }

  /**
   * The ring in which a distance passes.
   *
   * @param centre where its tape is held
   * @param inner shortest good reading, metres
   * @param outer longest, metres
   */
  record Ring(Point centre, double inner, double outer) {}

  /**
   * A place that may pass.
   *
   * @param metres how far off it is
   * @param east how far east of where the mark belongs
   * @param north how far north
   * @param shownBy one bit for each ring that it lies outside
   */
  record Place(double metres, double east, double north, long shownBy) {}

  private record Circle(int ring, Point centre, double radius) {}

  /**
   * Finds the places.
   *
   * @param mark where it belongs
   * @param rings of all distances to it, no more than {@link #MOST_RINGS}
   * @param tie a place outside a ring by less than this, metres, counts as in it
   */
  static HiddenPlaces of(Point mark, List<Ring> rings, double tie) {
    if (rings.size() > MOST_RINGS) {
      throw new IllegalArgumentException(rings.size() + " rings");
    }
    List<Circle> circles = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      Ring ring = rings.get(i);
      circles.add(new Circle(i, ring.centre(), ring.outer()));
      if (ring.inner() > tie) {
        circles.add(new Circle(i, ring.centre(), ring.inner()));
      }
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < circles.size(); i++) {
      Circle one = circles.get(i);
      double along = mark.distanceTo(one.centre()).metres();
      for (double sign : new double[] {1, -1}) {
        double part = sign * one.radius() / along;
        points.add(
            one.centre()
                .plus(
                    part * (mark.east() - one.centre().east()),
                    part * (mark.north() - one.centre().north())));
      }
      for (int j = i + 1; j < circles.size(); j++) {
        if (circles.get(j).ring() != one.ring()) {
          points.addAll(crossings(one, circles.get(j)));
        }
      }
    }
    return new HiddenPlaces(
        points.stream()
            .map(point -> place(mark, point, rings, tie))
            .sorted(Comparator.comparingDouble(place -> -place.metres()))
            .toList());
  }

  private static List<Point> crossings(Circle one, Circle other) {
    if (one.centre().distanceTo(other.centre()).metres() == 0) {
      return List.of();
    }
    Swing swing =
        Swing.of(
            new Segment(one.centre(), other.centre()),
            new Length(one.radius()),
            new Length(other.radius()));
    if (swing instanceof Swing.Crossing crossing) {
      return List.of(crossing.left(), crossing.right());
    }
    return swing instanceof Swing.Touching touching ? List.of(touching.at()) : List.of();
  }

  private static Place place(Point mark, Point point, List<Ring> rings, double tie) {
    long shownBy = 0;
    for (int i = 0; i < rings.size(); i++) {
      Ring ring = rings.get(i);
      double metres =
          length(point.east() - ring.centre().east(), point.north() - ring.centre().north());
      if (metres > ring.outer() + tie || metres < ring.inner() - tie) {
        shownBy |= 1L << i;
      }
    }
    double east = point.east() - mark.east();
    double north = point.north() - mark.north();
    return new Place(length(east, north), east, north, shownBy);
  }

  private static double length(double east, double north) {
    return Math.sqrt(east * east + north * north);
  }

  /**
   * The place furthest off that a set of distances lets pass; nothing without a distance, when
   * every place passes.
   *
   * @param taped one bit for each ring whose distance is taped
   */
  Optional<Place> farthest(long taped) {
    if (taped == 0) {
      return Optional.empty();
    }
    return places.stream().filter(place -> (place.shownBy() & taped) == 0).findFirst();
  }

  /** How far off that is, metres; without bound when every place passes. */
  double radius(long taped) {
    if (taped == 0) {
      return Double.POSITIVE_INFINITY;
    }
    for (Place place : places) {
      if ((place.shownBy() & taped) == 0) {
        return place.metres();
      }
    }
    return 0;
  }

  /**
   * What a set of distances must hold to let pass nothing further off than a bound: at least one
   * distance of each of these, one bit for each ring. None of them holds another, the smallest come
   * first. A zero among them cannot be met.
   *
   * @param bound metres
   */
  long[] rows(double bound) {
    List<Long> shown =
        places.stream()
            .filter(place -> place.metres() > bound)
            .map(Place::shownBy)
            .distinct()
            .sorted(Comparator.<Long>comparingInt(Long::bitCount).thenComparing(row -> row))
            .toList();
    List<Long> rows = new ArrayList<>();
    for (long row : shown) {
      if (rows.stream().noneMatch(other -> (row & other) == other)) {
        rows.add(row);
      }
    }
    return rows.stream().mapToLong(Long::longValue).toArray();
  }
}
