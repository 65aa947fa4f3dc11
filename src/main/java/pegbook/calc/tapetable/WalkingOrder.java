package pegbook.calc.tapetable;

import java.util.Comparator;
import java.util.List;
import pegbook.figures.PlacedMark;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Angle;

/**
 * The order of work: first the marks on the string line, from the first mark on; then once round
 * the site, clockwise about the baseline's middle, beginning behind its first mark. So one side of
 * the baseline is done before the other, and nobody carries a tape over it.
 */
record WalkingOrder(Segment baseline, Crossings crossings) {
  /** Directions and distances that differ by less than a millionth are alike. */
  private static final double FINE = 1e6;

  List<PlacedMark> of(List<PlacedMark> marks) {
    return marks.stream()
        .sorted(
            Comparator.<PlacedMark>comparingInt(mark -> isOnLine(mark) ? 0 : 1)
                .thenComparingLong(
                    mark -> isOnLine(mark) ? fine(baseline.alongMetres(mark.at())) : 0)
                .thenComparingLong(mark -> isOnLine(mark) ? 0 : fine(round(mark.at())))
                .thenComparingLong(mark -> fine(baseline.middle().distanceTo(mark.at()).metres())))
        .toList();
  }

  private boolean isOnLine(PlacedMark mark) {
    return crossings.isOnLine(baseline, mark.at());
  }

  private double round(Point mark) {
    Angle start = baseline.middle().azimuthTo(baseline.from());
    return baseline.middle().azimuthTo(mark).minus(start).normalized().radians();
  }

  private static long fine(double value) {
    return Math.round(value * FINE);
  }
}
