package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pegbook.calc.floorframe.BoardJoints.Crossing;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.figures.CutPiece;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Frame.Boards;
import pegbook.job.Job;
import pegbook.job.Stock;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;

/**
 * Lays the boards: rows over the floor, joints over joists, pieces for the cut plan. Pieces are set
 * up to a whole step and trimmed where they lie.
 */
final class BoardLaying {
  private static final double HALF = Math.sqrt(0.5);

  /**
   * A joist ends inside the rim; a row over the rim is joined where its line would go on, metres.
   */
  private static final double AT_RIM = 0.06;

  /** Letter of the pieces. */
  private static final String LETTER = "F";

  private final JoistLayout layout;
  private final Axes axes;
  private final double longest;
  private final Length step;
  private final List<BoardRows.Row> rows;
  private final Map<Length, Set<Integer>> rowsOf = new TreeMap<>(Comparator.reverseOrder());
  private final Map<Length, Integer> counts = new LinkedHashMap<>();
  private int joints;
  private int aligned;
  private int crossings;

  private BoardLaying(
      Boards boards, JoistLayout layout, boolean diagonal, Length longest, Length step) {
    this.layout = layout;
    Axes own = layout.axes();
    this.axes =
        diagonal
            ? new Axes((own.east() - own.north()) * HALF, (own.east() + own.north()) * HALF)
            : own;
    this.longest = longest.metres();
    this.step = step;
    Polygon ground = layout.edge().map(own::ground);
    this.rows =
        BoardRows.over(
            ground.map(axes::local),
            boards.width().plus(boards.gap()).metres(),
            boards.gap().metres());
    lay();
  }

  /**
   * The boards of a floor.
   *
   * @param job its boards in stock and its units
   */
  static BoardPlan plan(Job job, Boards boards, JoistLayout layout) {
    Length longest = longest(job, boards);
    Length step =
        job.heading().units() == UnitSystem.IMPERIAL
            ? Length.ofInches(1)
            : Length.ofMillimetres(20);
    BoardLaying laid = new BoardLaying(boards, layout, boards.diagonal(), longest, step);
    BoardLaying other = new BoardLaying(boards, layout, !boards.diagonal(), longest, step);
    double metres = laid.rows.stream().mapToDouble(BoardRows.Row::length).sum();
    return new BoardPlan(
        laid.rows.size(),
        new Length(metres),
        laid.pieces(),
        laid.joints,
        laid.aligned,
        laid.crossings,
        laid.first(),
        new Ratio((double) other.roughly() / Math.max(1, laid.roughly()) - 1),
        new Area(metres * boards.width().plus(boards.gap()).metres()));
  }

  /** The longest board that can be had as often as wanted; else the longest. */
  private static Length longest(Job job, Boards boards) {
    List<Stock.Bar> listed = job.stock().boards();
    List<Stock.Bar> endless = listed.stream().filter(each -> each.count().isEmpty()).toList();
    return (endless.isEmpty() ? listed : endless)
        .stream().map(Stock.Bar::length).reduce(Length::max).orElse(boards.sold());
  }

  private void lay() {
    Set<Integer> beside = Set.of();
    for (int i = 0; i < rows.size(); i++) {
      BoardRows.Row row = rows.get(i);
      List<Crossing> across = across(row);
      Set<Integer> here = new LinkedHashSet<>();
      for (BoardRows.Stretch stretch : row.stretches()) {
        List<Crossing> over =
            across.stream()
                .filter(
                    each -> each.at() > stretch.low() + 0.01 && each.at() < stretch.high() - 0.01)
                .toList();
        List<Crossing> on = BoardJoints.of(stretch, over, longest, beside);
        crossings += over.size() + 2 + on.size();
        joints += on.size();
        for (Crossing joint : on) {
          aligned += beside.contains(joint.line()) ? 1 : 0;
          here.add(joint.line());
        }
        double from = stretch.low();
        for (Crossing joint : on) {
          piece(joint.at() - from, i + 1);
          from = joint.at();
        }
        piece(stretch.high() - from, i + 1);
      }
      beside = here;
    }
  }

  private void piece(double metres, int row) {
    Length whole = new Length(metres).setTo(step, Rounding.UP);
    Length length = metres <= longest ? whole.min(new Length(longest)) : whole;
    rowsOf.computeIfAbsent(length, any -> new LinkedHashSet<>()).add(row);
    counts.merge(length, 1, Integer::sum);
  }

  /** Joists under the middle of a row, where it crosses them. */
  private List<Crossing> across(BoardRows.Row row) {
    Point start = local(row.middle(), 0);
    Point end = local(row.middle(), 1);
    double along = end.east() - start.east();
    double rise = end.north() - start.north();
    List<Crossing> crossings = new ArrayList<>();
    for (Joist joist : layout.joists()) {
      double at = (joist.y() - start.north()) / rise;
      double x = start.east() + at * along;
      boolean isCut = joist.cuts().stream().anyMatch(cut -> x > cut.from() && x < cut.to());
      if (x >= joist.start() - AT_RIM && x <= joist.end() + AT_RIM && !isCut) {
        crossings.add(new Crossing(at, joist.line()));
      }
    }
    crossings.sort(Comparator.comparingDouble(Crossing::at));
    return crossings;
  }

  /** In the joists' axes. */
  private Point local(double x, double y) {
    return layout.axes().local(axes.ground(new Point(x, y)));
  }

  /** A step on the ground from the last row towards the first. */
  private Point first() {
    return new Point(-axes.east(), -axes.north());
  }

  private List<CutPiece> pieces() {
    List<CutPiece> pieces = new ArrayList<>();
    rowsOf.forEach(
        (length, of) ->
            pieces.add(
                new CutPiece(
                    Stock.BOARDS,
                    LETTER + (pieces.size() + 1),
                    length,
                    counts.getOrDefault(length, 0),
                    of.stream().sorted().map(String::valueOf).toList(),
                    true)));
    return pieces;
  }

  /** Longest boards for all pieces, each into the one that it leaves least of. */
  private int roughly() {
    List<Double> left = new ArrayList<>();
    rowsOf
        .keySet()
        .forEach(
            length -> {
              for (int i = 0; i < counts.getOrDefault(length, 0); i++) {
                int fits = -1;
                for (int bar = 0; bar < left.size(); bar++) {
                  boolean room = left.get(bar) >= length.metres() - 1e-9;
                  fits = room && (fits < 0 || left.get(bar) < left.get(fits)) ? bar : fits;
                }
                if (fits < 0) {
                  left.add(longest - length.metres());
                } else {
                  left.set(fits, left.get(fits) - length.metres());
                }
              }
            });
    return left.size();
  }
}
