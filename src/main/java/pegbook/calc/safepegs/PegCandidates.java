package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;

/**
 * Places tried for pegs: rings round the figure, and a grid inside them for tight sites. They lie
 * in the figure's own frame, so that a figure that is turned with its site turns its pegs too.
 *
 * @param axis from the outline's centre to the first mark
 * @param ground which of them are free
 */
record PegCandidates(Segment axis, PegGround ground) {
  /** How far the rings lie from the figure, metres. */
  private static final double[] RINGS = {0.7, 1.2, 1.9, 2.8, 4.0, 5.5};

  private static final int RING_PLACES = 40;
  private static final int GRID_PLACES = 14;

  /** More than this are thinned out evenly. */
  private static final int MOST = 140;

  /** Those outside the floor. */
  List<Point> outside() {
    return places(ground::isFree);
  }

  /** Those that are free until the floor comes. */
  List<Point> anywhere() {
    return places(ground::isFreeUnderTheFloor);
  }

  private List<Point> places(Predicate<Point> wanted) {
    double[] box = ground.reach(axis);
    List<Point> places = new ArrayList<>();
    for (double ring : RINGS) {
      ring(places, box[0] - ring, box[1] + ring, box[2] - ring, box[3] + ring);
    }
    double most = RINGS[RINGS.length - 1];
    grid(places, box[0] - most, box[1] + most, box[2] - most, box[3] + most);
    List<Point> free = places.stream().filter(wanted).toList();
    return thinned(free);
  }

  /** A rectangle's edge, evenly, its corners among them. */
  private void ring(List<Point> places, double back, double front, double right, double left) {
    double length = front - back;
    double width = left - right;
    int along = Math.max(2, (int) Math.round(RING_PLACES / 2.0 * length / (length + width)));
    int across = Math.max(2, RING_PLACES / 2 - along);
    for (int i = 0; i < along; i++) {
      places.add(axis.at(back + length * i / along, left));
      places.add(axis.at(front - length * i / along, right));
    }
    for (int i = 0; i < across; i++) {
      places.add(axis.at(front, left - width * i / across));
      places.add(axis.at(back, right + width * i / across));
    }
  }

  private void grid(List<Point> places, double back, double front, double right, double left) {
    for (int i = 0; i <= GRID_PLACES; i++) {
      for (int j = 0; j <= GRID_PLACES; j++) {
        places.add(
            axis.at(
                back + (front - back) * i / GRID_PLACES, right + (left - right) * j / GRID_PLACES));
      }
    }
  }

  private static List<Point> thinned(List<Point> places) {
    if (places.size() <= MOST) {
      return places;
    }
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < MOST; i++) {
      kept.add(places.get((int) ((long) i * places.size() / MOST)));
    }
    return kept;
  }
}
