package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;

/**
 * Rows of boards side by side over a figure: strips square to x, each as long as the figure is
 * anywhere under it, openings or not. Where the figure has arms, a row has a stretch in each.
 */
final class BoardRows {
  private static final double TOUCH = 1e-6;

  private BoardRows() {}

  /** A row from one x to another. */
  record Row(double from, double to, List<Stretch> stretches) {
    Row {
      stretches = List.copyOf(stretches);
    }

    double middle() {
      return (from + to) / 2;
    }

    double length() {
      return stretches.stream().mapToDouble(Stretch::length).sum();
    }
  }

  /** A stretch of a row, from one y to another. */
  record Stretch(double low, double high) {
    double length() {
      return high - low;
    }
  }

  /**
   * Rows over a figure.
   *
   * @param figure whose y runs along the boards, metres
   * @param step from board to board, metres
   * @param gap of it between two boards, metres: no row is laid where only a gap is left
   */
  static List<Row> over(Polygon figure, double step, double gap) {
    double from = figure.corners().stream().mapToDouble(Point::east).min().orElseThrow();
    double to = figure.corners().stream().mapToDouble(Point::east).max().orElseThrow();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; from + i * step < to - gap - TOUCH; i++) {
      double low = from + i * step;
      double high = Math.min(low + step, to);
      rows.add(new Row(low, high, stretches(figure, low, high)));
    }
    return rows;
  }

  /** Where the figure lies between two lines, seen along x. */
  private static List<Stretch> stretches(Polygon figure, double from, double to) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(from, to));
    figure.corners().stream()
        .map(Point::east)
        .filter(x -> x > from + TOUCH && x < to - TOUCH)
        .forEach(cuts::add);
    List<Double> lines = List.copyOf(cuts);
    List<Stretch> seen = new ArrayList<>();
    for (int i = 0; i + 1 < lines.size(); i++) {
      seen.addAll(between(figure, lines.get(i), lines.get(i + 1)));
    }
    return joined(seen);
  }

  /**
   * No corner lies between the lines, so the figure between them is in pieces with straight ends.
   */
  private static List<Stretch> between(Polygon figure, double from, double to) {
    double middle = (from + to) / 2;
    List<Segment> across = new ArrayList<>();
    for (Segment side : figure.sides()) {
      if (side.from().east() > middle != side.to().east() > middle) {
        across.add(side);
      }
    }
    across.sort((one, other) -> Double.compare(at(one, middle), at(other, middle)));
    List<Stretch> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < across.size(); i += 2) {
      Segment low = across.get(i);
      Segment high = across.get(i + 1);
      pieces.add(
          new Stretch(
              Math.min(at(low, from), at(low, to)), Math.max(at(high, from), at(high, to))));
    }
    return pieces;
  }

  private static double at(Segment side, double x) {
    double part = (x - side.from().east()) / (side.to().east() - side.from().east());
    return side.from().north() + part * (side.to().north() - side.from().north());
  }

  private static List<Stretch> joined(List<Stretch> seen) {
    List<Stretch> sorted = new ArrayList<>(seen);
    sorted.sort((one, other) -> Double.compare(one.low(), other.low()));
    List<Stretch> joined = new ArrayList<>();
    for (Stretch next : sorted) {
      int last = joined.size() - 1;
      if (last >= 0 && next.low() < joined.get(last).high() + TOUCH) {
        Stretch before = joined.get(last);
        joined.set(last, new Stretch(before.low(), Math.max(before.high(), next.high())));
      } else {
        joined.add(next);
      }
    }
    return joined;
  }
}
