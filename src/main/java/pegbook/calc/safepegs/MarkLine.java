package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * A straight line over marks, on which a string can be stretched.
 *
 * @param marks indices of the marks on it, from its first to its last
 * @param axis from the first mark towards the last, or any way for a single mark
 */
record MarkLine(List<Integer> marks, Segment axis) {
  /** Directions tried through a mark that shares no line. */
  private static final int DIRECTIONS = 12;

  MarkLine {
    marks = List.copyOf(marks);
  }

  boolean isShared() {
    return marks.size() > 1;
  }

  /** How far a mark lies from the first. */
  double alongMetres(Point mark) {
    return axis.alongMetres(mark);
  }

  int end(boolean last) {
    return marks.get(last ? marks.size() - 1 : 0);
  }

  /** The place past an end by a distance. */
  Point past(boolean last, List<Point> places, double metres) {
    double from = axis.alongMetres(places.get(end(last)));
    return axis.at(last ? from + metres : from - metres, 0);
  }

  /** Sine of the angle at which it crosses another. */
  double sineTo(MarkLine other) {
    return Math.abs(eastUnit() * other.northUnit() - northUnit() * other.eastUnit());
  }

  private double eastUnit() {
    return (axis.to().east() - axis.from().east()) / axis.length().metres();
  }

  private double northUnit() {
    return (axis.to().north() - axis.from().north()) / axis.length().metres();
  }

  /**
   * Every line over two marks or more, in the order of the marks.
   *
   * @param onLine how far off a line a mark counts as on it
   */
  static List<MarkLine> shared(List<Point> places, Length onLine) {
    Map<List<Integer>, MarkLine> lines = new LinkedHashMap<>();
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        Segment through = new Segment(places.get(i), places.get(j));
        List<Integer> on = new ArrayList<>();
        for (int mark = 0; mark < places.size(); mark++) {
          if (Math.abs(through.offsetMetres(places.get(mark))) <= onLine.metres()) {
            on.add(mark);
          }
        }
        on.sort(Comparator.comparingDouble(mark -> through.alongMetres(places.get(mark))));
        Segment axis = new Segment(places.get(on.get(0)), places.get(on.get(on.size() - 1)));
        lines.putIfAbsent(on.stream().sorted().toList(), new MarkLine(on, axis));
      }
    }
    return List.copyOf(lines.values());
  }

  /**
   * Lines over one mark alone, in directions counted from the figure's own axis.
   *
   * @param figure from the outline's centre to the first mark
   */
  static List<MarkLine> alone(int mark, Point place, Segment figure) {
    List<MarkLine> lines = new ArrayList<>();
    for (int i = 0; i < DIRECTIONS; i++) {
      double turn = Math.PI * i / DIRECTIONS;
      Point to =
          figure.at(
              figure.alongMetres(place) + StrictMath.cos(turn),
              figure.offsetMetres(place) + StrictMath.sin(turn));
      lines.add(new MarkLine(List.of(mark), new Segment(place, to)));
    }
    return lines;
  }
}
