package pegbook.calc.provingmarks;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.geometry.Point;

/**
 * A mistake that puts several marks in wrong places at once.
 *
 * @param kind what went wrong
 * @param about the marks that name it: the two exchanged, the ends of the tape; none for the whole
 *     figure
 * @param places where the wrong marks then are, by index
 */
record Mistake(Kind kind, List<String> about, Map<Integer, Point> places) {
  Mistake {
    about = List.copyOf(about);
    places = Collections.unmodifiableMap(new TreeMap<>(places));
  }

  /** Where a mark then is. */
  Point at(int mark, CheckLines lines) {
    Point wrong = places.get(mark);
    return wrong == null ? lines.at(mark) : wrong;
  }

  /** True when a distance between two marks shows it. */
  boolean isShownBy(CheckLine line, CheckLines lines) {
    if (!places.containsKey(line.from()) && !places.containsKey(line.to())) {
      return false;
    }
    double metres = at(line.from(), lines).distanceTo(at(line.to(), lines)).metres();
    return line.limit().shows(metres, lines.tie());
  }

  /** True when it moves a mark by more than a distance. */
  boolean movesMoreThan(double metres, CheckLines lines) {
    return places.entrySet().stream()
        .anyMatch(place -> lines.at(place.getKey()).distanceTo(place.getValue()).metres() > metres);
  }
}
