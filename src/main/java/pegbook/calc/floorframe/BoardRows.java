package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.floorframe.FloorFrame.BoardPlan;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Frame.Boards;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.measure.Ratio;

/**
 * Lays boards over the floor and counts those to buy: each row is as long as the floor is anywhere
 * under it, opening or not; a row longer than a board goes on over a joist; what is cut off serves
 * the next row that it is long enough for, longest rows first.
 */
final class BoardRows {
  private static final double HALF = Math.sqrt(0.5);

  private BoardRows() {}

  /** Rows laid one way. */
  record Rows(int count, double laid, int stock, double waste, double covered) {}

  static BoardPlan plan(Boards boards, JoistLayout layout, double spacing) {
    Axes square = layout.axes();
    Axes slanting =
        new Axes((square.east() - square.north()) * HALF, (square.east() + square.north()) * HALF);
    Polygon ground = layout.edge().map(layout.axes()::ground);
    Rows straight = rows(boards, ground.map(square::local), spacing);
    Rows diagonal = rows(boards, ground.map(slanting::local), spacing / HALF);
    Rows laid = boards.diagonal() ? diagonal : straight;
    Rows other = boards.diagonal() ? straight : diagonal;
    return new BoardPlan(
        laid.count(),
        new Length(laid.laid()),
        laid.stock(),
        boards.sold(),
        new Ratio(laid.waste()),
        other.stock(),
        new Ratio(other.waste()),
        new Area(laid.covered()));
  }

  /**
   * Rows across a figure whose x runs square to the boards.
   *
   * @param spacing of the joists along a board, metres; a board ends over one
   */
  static Rows rows(Boards boards, Polygon figure, double spacing) {
    double step = boards.width().plus(boards.gap()).metres();
    double from = figure.corners().stream().mapToDouble(Point::east).min().orElseThrow();
    double to = figure.corners().stream().mapToDouble(Point::east).max().orElseThrow();
    double sold = boards.sold().metres();
    double most = Math.max(Math.min(sold, spacing), Math.floor(sold / spacing + 1e-9) * spacing);
    List<Double> pieces = new ArrayList<>();
    int count = 0;
    double laid = 0;
    for (double x = from; x < to - boards.gap().metres() - 1e-6; x += step) {
      double length = reach(figure, x, Math.min(x + step, to));
      count++;
      laid += length;
      double left = length;
      while (left > sold + 1e-9) {
        pieces.add(most);
        left -= most;
      }
      pieces.add(left);
    }
    int stock = stock(pieces, sold);
    return new Rows(count, laid, stock, stock == 0 ? 0 : 1 - laid / (stock * sold), laid * step);
  }

  /** How far the figure reaches across between two lines. */
  private static double reach(Polygon figure, double from, double to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Segment side : figure.sides()) {
      double one = side.from().east();
      double other = side.to().east();
      double start = Math.max(Math.min(one, other), from);
      double end = Math.min(Math.max(one, other), to);
      if (start <= end) {
        for (double x : new double[] {start, end}) {
          double part = other == one ? 0 : (x - one) / (other - one);
          double y = side.from().north() + part * (side.to().north() - side.from().north());
          low = Math.min(low, y);
          high = Math.max(high, y);
        }
        if (one == other) {
          low = Math.min(low, side.to().north());
          high = Math.max(high, side.to().north());
        }
      }
    }
    return Math.max(0, high - low);
  }

  private static int stock(List<Double> pieces, double sold) {
    List<Double> sorted = new ArrayList<>(pieces);
    sorted.sort((one, other) -> Double.compare(other, one));
    List<Double> left = new ArrayList<>();
    for (double piece : sorted) {
      int fits = -1;
      for (int i = 0; i < left.size(); i++) {
        boolean room = left.get(i) >= piece - 1e-9;
        fits = room && (fits < 0 || left.get(i) < left.get(fits)) ? i : fits;
      }
      if (fits < 0) {
        left.add(sold - piece);
      } else {
        left.set(fits, left.get(fits) - piece);
      }
    }
    return left.size();
  }
}
