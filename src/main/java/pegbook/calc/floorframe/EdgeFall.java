package pegbook.calc.floorframe;

import java.util.List;
import java.util.Optional;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * How far one may fall from the floor's edge: to the lowest ground within 36 in of it, not to that
 * at the posts. Ground is known at the marks; between and beyond them it is taken as the plane that
 * fits them best, and no lower mark is left out.
 *
 * @param height of the floor over that ground
 * @param working the step
 */
record EdgeFall(Length height, Working working) {
  /** So far from the edge the ground counts (IRC R312.1.1). */
  static final Length BESIDE = Length.ofInches(36);

  private static final int PLANE = 3;

  static Optional<EdgeFall> of(Job job, Placement placement) {
    List<PlacedMark> known =
        placement.marks().stream().filter(mark -> mark.level().isPresent()).toList();
    List<PlacedMark> under =
        known.stream()
            .filter(
                mark -> mark.kind() == MarkKind.SUPPORT || placement.outline().contains(mark.at()))
            .toList();
    Optional<Length> top = job.floor().flatMap(Floor::top);
    if (top.isEmpty() || under.isEmpty()) {
      return Optional.empty();
    }
    double highest = under.stream().mapToDouble(EdgeFall::level).max().orElseThrow();
    Length floor = top.get().plus(new Length(highest));
    Length ground = new Length(Math.min(lowest(known), beyond(known, placement)));
    Working working = Working.of(new BeamFormulas(job.heading().units()).fall(), "", floor, ground);
    return Optional.of(new EdgeFall(working.asLength(), working));
  }

  private static double level(PlacedMark mark) {
    return mark.level().map(Length::metres).orElse(0.0);
  }

  private static double lowest(List<PlacedMark> known) {
    return known.stream().mapToDouble(EdgeFall::level).min().orElseThrow();
  }

  /**
   * The plane's lowest height a step outside the edge; nothing lower with fewer than three marks.
   */
  private static double beyond(List<PlacedMark> known, Placement placement) {
    if (known.size() < PLANE) {
      return Double.POSITIVE_INFINITY;
    }
    double count = known.size();
    double east = known.stream().mapToDouble(mark -> mark.at().east()).sum() / count;
    double north = known.stream().mapToDouble(mark -> mark.at().north()).sum() / count;
    double level = known.stream().mapToDouble(EdgeFall::level).sum() / count;
    double ee = 0;
    double en = 0;
    double nn = 0;
    double el = 0;
    double nl = 0;
    for (PlacedMark mark : known) {
      double e = mark.at().east() - east;
      double n = mark.at().north() - north;
      double l = level(mark) - level;
      ee += e * e;
      en += e * n;
      nn += n * n;
      el += e * l;
      nl += n * l;
    }
    double whole = ee * nn - en * en;
    if (whole < 1e-9) {
      return Double.POSITIVE_INFINITY;
    }
    double perEast = (el * nn - nl * en) / whole;
    double perNorth = (nl * ee - el * en) / whole;
    double least = Double.POSITIVE_INFINITY;
    for (Point corner : placement.outline().corners()) {
      double away = Point.ORIGIN.distanceTo(corner).metres();
      double scale = (away + BESIDE.metres()) / away;
      double here =
          level
              + perEast * (corner.east() * scale - east)
              + perNorth * (corner.north() * scale - north);
      least = Math.min(least, here);
    }
    return least;
  }
}
