package pegbook.calc.digschedule;

import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Looks for the nearest free ground beside a hole, always in the same order: first clear of the
 * floor's figure, then anywhere; the nearest ring first; on a ring from the outward direction to
 * both sides by turns. Distances are whole steps and directions whole degrees, so that a heap can
 * be found again from what is printed.
 *
 * @param ground where heaps may lie
 * @param step distances are whole steps
 */
record HeapSearch(HeapGround ground, Length step) {
  private static final int TURN_DEGREES = 15;
  private static final double RING_METRES = 0.25;

  /** How far a heap may lie beyond the nearest place, off the floor's figure and on it, metres. */
  private static final double FARTHEST_METRES = 4;

  private static final double FARTHEST_ON_FLOOR_METRES = 2;

  /** A free place for a cone whose size is known and whose centre is not. */
  Optional<HeapSpot> beside(Hole hole, SpoilHeap cone, HeapSpot.Kind kind) {
    return search(hole, cone, kind, true).or(() -> search(hole, cone, kind, false));
  }

  private Optional<HeapSpot> search(
      Hole hole, SpoilHeap cone, HeapSpot.Kind kind, boolean offTheFloor) {
    Length nearest = hole.bottomWidth().times(0.5).plus(ground.edge()).plus(cone.radius());
    double farthest = offTheFloor ? FARTHEST_METRES : FARTHEST_ON_FLOOR_METRES;
    for (double out = 0; out <= farthest; out += RING_METRES) {
      Length distance = nearest.plus(new Length(out)).setTo(step, Rounding.UP);
      for (int turn = 0; turn < 360 / TURN_DEGREES; turn++) {
        Angle direction = direction(hole.centre(), turn);
        Point centre = hole.centre().moved(direction, distance);
        if (ground.isFree(centre, cone.radius())
            && (!offTheFloor || ground.isOffTheFloor(centre, cone.radius()))) {
          SpoilHeap heap =
              new SpoilHeap(cone.holes(), centre, cone.radius(), cone.height(), cone.loose());
          return Optional.of(new HeapSpot(heap, kind, hole.mark(), distance, direction));
        }
      }
    }
    return Optional.empty();
  }

  /** Outwards from the figure's centre in whole degrees, then 15° left, 15° right and so on. */
  private static Angle direction(Point hole, int turn) {
    boolean atCentre = hole.distanceTo(Point.ORIGIN).metres() < 1e-6;
    double outwards = atCentre ? 0 : Math.rint(Point.ORIGIN.azimuthTo(hole).degrees());
    int steps = (turn + 1) / 2 * (turn % 2 == 0 ? 1 : -1);
    return Angle.ofDegrees(outwards + steps * TURN_DEGREES).normalized();
  }
}
