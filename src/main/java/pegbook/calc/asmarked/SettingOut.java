package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.List;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Swing;
import pegbook.geometry.network.Network;
import pegbook.geometry.network.NetworkPoint;
import pegbook.geometry.network.Spread;
import pegbook.geometry.network.TapedDistance;
import pegbook.measure.Length;

/**
 * How well the marks were set out before anything went wrong: with two tapes from the baseline, as
 * the tape table says, by the same tape. Without this a mark set out as well as the tape allows
 * would count as moved.
 */
final class SettingOut {
  /** Holds the frame, which no distance sees; wide enough to say nothing of any distance. */
  private static final Length FRAME = new Length(0.3);

  /** Below this sine of the crossing two tapes say little across; a string line does. */
  private static final double WEAK = 0.2;

  private final Placement placement;
  private final PlacedMark first;
  private final PlacedMark second;
  private final TapeAccuracy accuracy;
  private final Length tolerance;

  /**
   * Takes what it rests on.
   *
   * @param first the baseline's first mark
   * @param second its second mark
   * @param tolerance how well a mark is set out whose tapes cross too weakly to say so
   */
  SettingOut(
      Placement placement, String first, String second, TapeAccuracy accuracy, Length tolerance) {
    this.placement = placement;
    this.first = placement.mark(first);
    this.second = placement.mark(second);
    this.accuracy = accuracy;
    this.tolerance = tolerance;
  }

  /** The marks where the plan has them, and the tapes by which they were set out. */
  Network network() {
    List<NetworkPoint> points = new ArrayList<>();
    List<TapedDistance> tapes = new ArrayList<>();
    tapes.add(tape(first, second));
    for (PlacedMark mark : placement.marks()) {
      boolean isEnd = mark.equals(first) || mark.equals(second);
      points.add(
          NetworkPoint.expected(
              mark.id(), mark.at(), Spread.round(!isEnd && isWeak(mark) ? tolerance : FRAME)));
      if (!isEnd) {
        tapes.add(tape(first, mark));
        tapes.add(tape(second, mark));
      }
    }
    return new Network(points, tapes);
  }

  private boolean isWeak(PlacedMark mark) {
    double crossing = Swing.angleAt(mark.at(), first.at(), second.at()).radians();
    return StrictMath.sin(crossing) < WEAK;
  }

  private TapedDistance tape(PlacedMark from, PlacedMark to) {
    Length distance = from.at().distanceTo(to.at());
    return new TapedDistance(from.id(), to.id(), distance, accuracy.sigma(distance));
  }
}
