package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pegbook.calc.asmarked.AsMarked.Move;
import pegbook.calc.asmarked.AsMarked.NewTape;
import pegbook.calc.asmarked.AsMarked.Step;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Way;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Puts the move of a mark into two steps that a helper can make with a ruler: toward or away from a
 * mark of the baseline, and toward or away from the baseline's line. Where these two ways are
 * nearly one, the first is along the baseline. A mark on the line moves toward the baseline's other
 * mark, and to the left or right as one looks there.
 */
final class MoveSearch {
  /** Sine of 45°, at which two ways must cross at least, so that neither step grows long. */
  private static final double LEAST_CROSSING = 0.7071067811865476 - 1e-9;

  private static final int MOST_TAPES = 3;

  private final Placement placement;
  private final PlacedMark first;
  private final PlacedMark second;
  private final Length division;
  private final Length tolerance;

  MoveSearch(Placement placement, String first, String second, Length division, Length tolerance) {
    this.placement = placement;
    this.first = placement.mark(first);
    this.second = placement.mark(second);
    this.division = division;
    this.tolerance = tolerance;
  }

  Move of(Suspect suspect, List<String> tapedTo) {
    PlacedMark mark = placement.mark(suspect.mark().orElseThrow());
    Point painted = mark.at().plus(suspect.eastMetres(), suspect.northMetres());
    return new Move(
        mark.id(),
        suspect.size(),
        suspect.deviation(),
        tolerance,
        steps(mark, painted),
        tapes(mark, tapedTo));
  }

  private List<Step> steps(PlacedMark mark, Point painted) {
    Segment line = new Segment(first.at(), second.at());
    boolean isEnd = mark.equals(first) || mark.equals(second);
    double off = line.offsetMetres(painted);
    boolean onLine =
        isEnd || Math.abs(off) < Math.max(3 * tolerance.metres(), line.length().metres() / 20);
    return onLine ? onLine(mark, painted) : beside(mark, painted, line, Math.signum(off));
  }

  private List<Step> onLine(PlacedMark mark, Point painted) {
    PlacedMark other = mark.equals(second) ? first : second;
    Direction toward = Direction.from(painted, other.at());
    Direction left = new Direction(-toward.north(), toward.east());
    double along = toward.times(painted, mark.at());
    double across = left.times(painted, mark.at());
    List<Step> steps = new ArrayList<>();
    add(steps, along, Way.TOWARD, Way.AWAY, other.id(), other.id());
    add(steps, across, Way.LEFT, Way.RIGHT, other.id(), other.id());
    return steps;
  }

  private List<Step> beside(PlacedMark mark, Point painted, Segment line, double side) {
    Direction along = Direction.from(line.from(), line.to());
    Direction away = new Direction(-along.north() * side, along.east() * side);
    Direction toFirst = Direction.from(painted, first.at());
    Direction toSecond = Direction.from(painted, second.at());
    boolean useFirst = toFirst.crossing(away) >= toSecond.crossing(away) - 1e-9;
    Direction toward = useFirst ? toFirst : toSecond;
    PlacedMark end = useFirst ? first : second;
    List<Step> steps = new ArrayList<>();
    if (toward.crossing(away) >= LEAST_CROSSING) {
      // Both steps one after the other make the whole move.
      double east = mark.at().east() - painted.east();
      double north = mark.at().north() - painted.north();
      double area = toward.east() * away.north() - toward.north() * away.east();
      add(
          steps,
          (east * away.north() - north * away.east()) / area,
          Way.TOWARD,
          Way.AWAY,
          end.id(),
          end.id());
      add(
          steps,
          (toward.east() * north - toward.north() * east) / area,
          Way.FROM_LINE,
          Way.TO_LINE,
          first.id(),
          second.id());
      return steps;
    }
    double forward = along.times(painted, mark.at());
    boolean back = forward < 0;
    add(
        steps,
        Math.abs(forward),
        Way.ALONG,
        Way.ALONG,
        back ? second.id() : first.id(),
        back ? first.id() : second.id());
    add(steps, away.times(painted, mark.at()), Way.FROM_LINE, Way.TO_LINE, first.id(), second.id());
    return steps;
  }

  private void add(
      List<Step> steps, double metres, Way forward, Way back, String one, String other) {
    Length amount = new Length(Math.abs(metres)).setTo(division, Rounding.NEAREST);
    if (amount.metres() > 0) {
      steps.add(new Step(amount, metres < 0 ? back : forward, one, other));
    }
  }

  /** From the baseline, and from the marks that cross best of those that were taped. */
  private List<NewTape> tapes(PlacedMark mark, List<String> tapedTo) {
    List<PlacedMark> from = new ArrayList<>();
    for (PlacedMark end : List.of(first, second)) {
      if (!end.equals(mark)) {
        from.add(end);
      }
    }
    List<PlacedMark> others = new ArrayList<>(tapedTo.stream().map(placement::mark).toList());
    others.removeAll(from);
    while (from.size() < MOST_TAPES && !others.isEmpty()) {
      PlacedMark best =
          others.stream()
              .max(Comparator.comparingDouble(other -> squareness(mark, other, from)))
              .orElseThrow();
      from.add(best);
      others.remove(best);
    }
    return from.stream()
        .map(
            end ->
                new NewTape(
                    end.id(), end.at().distanceTo(mark.at()).setTo(division, Rounding.NEAREST)))
        .toList();
  }

  private static double squareness(PlacedMark mark, PlacedMark other, List<PlacedMark> from) {
    return from.stream()
        .mapToDouble(
            end -> StrictMath.sin(Swing.angleAt(mark.at(), end.at(), other.at()).radians()))
        .min()
        .orElse(1);
  }

  /** A direction of length 1. */
  private record Direction(double east, double north) {
    static Direction from(Point from, Point to) {
      double metres = from.distanceTo(to).metres();
      return new Direction(
          (to.east() - from.east()) / metres, (to.north() - from.north()) / metres);
    }

    /** How far one must go this way to get from one point to another. */
    double times(Point from, Point to) {
      return east * (to.east() - from.east()) + north * (to.north() - from.north());
    }

    /** Sine of the angle with another way. */
    double crossing(Direction other) {
      return Math.abs(east * other.north - north * other.east);
    }
  }
}
