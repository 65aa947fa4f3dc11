package pegbook.calc.pierstiffness;

import java.util.List;
import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Placement;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Length;

/** How far each pier's concrete stands from the edge of the floor, seen from above. */
final class FloorGaps {
  private final Job job;
  private final Placement placement;
  private final List<Hole> holes;

  private FloorGaps(Job job, Placement placement, List<Hole> holes) {
    this.job = job;
    this.placement = placement;
    this.holes = holes;
  }

  /** One for each pier, in the order of the holes. */
  static List<FloorGap> of(Job job, Placement placement, List<Hole> holes) {
    FloorGaps gaps = new FloorGaps(job, placement, holes);
    return holes.stream()
        .flatMap(
            hole ->
                job.piers().stream()
                    .filter(pier -> pier.id().equals(hole.mark()))
                    .map(pier -> gaps.gap(hole, pier)))
        .toList();
  }

  private FloorGap gap(Hole hole, Pier pier) {
    Length radius = hole.headAcross().times(0.5);
    Length fromEdge = placement.outline().distanceToEdge(hole.centre());
    return new FloorGap(
        hole.mark(),
        placement.outline().contains(hole.centre()),
        fromEdge.minus(radius),
        pier.gap(),
        hole.headAcross().plus(pier.gap().times(2)),
        job.floor().flatMap(Floor::top).map(walking -> above(hole, walking)));
  }

  /**
   * The walking surface is stated above the highest ground under the floor. Where a level is not
   * known, the ground counts as even.
   */
  private Length above(Hole pier, Length walking) {
    List<Hole> supports = holes.stream().filter(hole -> hole.kind() == MarkKind.SUPPORT).toList();
    Optional<Length> ground = pier.level();
    boolean known =
        ground.isPresent() && supports.stream().allMatch(hole -> hole.level().isPresent());
    if (!known) {
      return walking;
    }
    Length highest =
        supports.stream().flatMap(hole -> hole.level().stream()).reduce(ground.get(), Length::max);
    return walking.plus(highest.minus(ground.get()));
  }
}
