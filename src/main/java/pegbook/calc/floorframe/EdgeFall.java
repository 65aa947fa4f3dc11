package pegbook.calc.floorframe;

import java.util.List;
import java.util.Optional;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * How far one may fall from the floor's edge: to the lowest ground within 36 in of it, not to that
 * at the posts. Ground is known at the marks inside the edge and so near to it; between and beyond
 * them it is taken as the plane that fits them best, and no lower one of them is left out.
 *
 * @param height of the floor over that ground
 * @param working the step
 */
record EdgeFall(Length height, Working working) {
  /** So far from the edge the ground counts (IRC R312.1.1). */
  static final Length BESIDE = Length.ofInches(36);

  private static final Length TOLERANCE = Length.ofMillimetres(1);

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
    List<PlacedMark> near = known.stream().filter(mark -> isNear(mark, placement)).toList();
    Length ground = new Length(Math.min(lowest(near), beyond(near, placement)));
    Working working = Working.of(new BeamFormulas(job.heading().units()).fall(), "", floor, ground);
    return Optional.of(new EdgeFall(working.asLength(), working));
  }

  private static double level(PlacedMark mark) {
    return mark.level().map(Length::metres).orElse(0.0);
  }

  private static boolean isNear(PlacedMark mark, Placement placement) {
    return placement.outline().contains(mark.at())
        || !placement.outline().distanceToEdge(mark.at()).isMoreThan(BESIDE.plus(TOLERANCE));
  }

  private static double lowest(List<PlacedMark> near) {
    return near.stream().mapToDouble(EdgeFall::level).min().orElseThrow();
  }

  /**
   * The plane's lowest height a step outside the edge; nothing lower with fewer than three marks.
   */
  private static double beyond(List<PlacedMark> near, Placement placement) {
    if (near.size() < PLANE) {
      return Double.POSITIVE_INFINITY;
    }
    double count = near.size();
    double east = near.stream().mapToDouble(mark -> mark.at().east()).sum() / count;
    double north = near.stream().mapToDouble(mark -> mark.at().north()).sum() / count;
    double level = near.stream().mapToDouble(EdgeFall::level).sum() / count;
    double ee = 0;
    double en = 0;
    double nn = 0;
    double el = 0;
    double nl = 0;
    for (PlacedMark mark : near) {
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
    // The lowest place so near to the edge lies straight down the slope from a corner.
    double down = StrictMath.hypot(perEast, perNorth) * BESIDE.metres();
    return placement.outline().corners().stream()
            .mapToDouble(
                corner ->
                    level + perEast * (corner.east() - east) + perNorth * (corner.north() - north))
            .min()
            .orElseThrow()
        - down;
  }
}
