package pegbook.calc.pierstiffness;

import java.util.List;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.job.Pier;
import pegbook.measure.Length;

/** How far each pier's concrete stands from the edge of the floor, seen from above. */
final class FloorGaps {
  private FloorGaps() {}

  static FloorGap of(Placement placement, Hole hole, Pier pier) {
    Length radius = hole.formAbove().times(0.5);
    Length fromEdge = placement.outline().distanceToEdge(hole.centre());
    return new FloorGap(
        hole.mark(),
        placement.outline().contains(hole.centre()),
        fromEdge.minus(radius),
        pier.gap(),
        hole.formAbove().plus(pier.gap().times(2)));
  }

  static List<FloorGap> of(Placement placement, List<Hole> holes, List<Pier> piers) {
    return holes.stream()
        .flatMap(
            hole ->
                piers.stream()
                    .filter(pier -> pier.id().equals(hole.mark()))
                    .map(pier -> of(placement, hole, pier)))
        .toList();
  }
}
