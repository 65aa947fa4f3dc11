package pegbook.calc.safepegs;

import java.util.List;
import pegbook.figures.Hole;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * All that pegs are chosen by.
 *
 * @param names of the marks, in their order
 * @param marks their places
 * @param holes one for each mark, in the same order
 * @param paths strips of cart traffic
 * @param rules distances and heights
 * @param ground where a peg may stand
 * @param sight what a tape or string passes
 * @param axis from the outline's centre to the first mark off it: the figure's own direction
 * @param reach of the tape
 * @param division of the tape
 * @param accuracy of the tape
 */
record PegSite(
    List<String> names,
    List<Point> marks,
    List<Hole> holes,
    List<CartPath> paths,
    PegRules rules,
    PegGround ground,
    Sight sight,
    Segment axis,
    Length reach,
    Length division,
    TapeAccuracy accuracy) {

  static PegSite of(Job job, Placement placement, List<Hole> holes, List<SpoilHeap> heaps) {
    PegRules rules = PegRules.of(job);
    List<CartPath> paths = CartPath.of(holes, heaps, rules.path());
    List<Point> marks = placement.marks().stream().map(PlacedMark::at).toList();
    return new PegSite(
        placement.marks().stream().map(PlacedMark::id).toList(),
        marks,
        placement.marks().stream().map(mark -> hole(mark.id(), holes)).toList(),
        paths,
        rules,
        new PegGround(job, placement, holes, heaps, paths, rules),
        new Sight(job.site().features(), heaps, rules),
        axis(marks),
        job.layout().tape().length(),
        job.layout().tape().division(),
        TapeAccuracy.of(job.layout().tape()));
  }

  private static Hole hole(String mark, List<Hole> holes) {
    return holes.stream()
        .filter(hole -> hole.mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole at " + mark));
  }

  private static Segment axis(List<Point> marks) {
    Point first =
        marks.stream()
            .filter(mark -> Point.ORIGIN.distanceTo(mark).metres() > 1e-3)
            .findFirst()
            .orElse(new Point(0, 1));
    return new Segment(Point.ORIGIN, first);
  }

  double holeRadiusMetres(int mark) {
    return holes.get(mark).diameter().metres() / 2;
  }
}
