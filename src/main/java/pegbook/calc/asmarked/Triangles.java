package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Triangle;
import pegbook.calc.asmarked.Distances.Distance;
import pegbook.measure.Length;

/** Finds three distances of which one is longer than both others end to end. */
final class Triangles {
  private final Map<String, Map<String, Distance>> byEnds = new LinkedHashMap<>();

  private Triangles(List<Distance> distances) {
    for (Distance distance : distances) {
      put(distance.pair().from(), distance.pair().to(), distance);
      put(distance.pair().to(), distance.pair().from(), distance);
    }
  }

  private void put(String from, String to, Distance distance) {
    byEnds.computeIfAbsent(from, none -> new LinkedHashMap<>()).put(to, distance);
  }

  /** Those whose gap is more than tapes may be off, widest first. */
  static List<Triangle> impossible(List<Distance> distances) {
    Triangles triangles = new Triangles(distances);
    List<Triangle> found = new ArrayList<>();
    for (Distance longest : distances) {
      String from = longest.pair().from();
      String to = longest.pair().to();
      triangles
          .at(from)
          .forEach(
              (corner, one) ->
                  Optional.ofNullable(triangles.at(to).get(corner))
                      .flatMap(other -> triangle(longest, corner, one, other))
                      .ifPresent(found::add));
    }
    found.sort(Comparator.comparing(Triangle::gap).reversed());
    return found;
  }

  private Map<String, Distance> at(String mark) {
    return byEnds.getOrDefault(mark, Map.of());
  }

  private static Optional<Triangle> triangle(
      Distance longest, String corner, Distance one, Distance other) {
    Length others = one.taped().plus(other.taped());
    double variance = 0;
    for (Distance distance : List.of(longest, one, other)) {
      variance += distance.deviation().metres() * distance.deviation().metres();
    }
    Length limit = new Length(TestLevels.readingFactor() * Math.sqrt(variance));
    Triangle triangle = new Triangle(longest.pair(), corner, longest.taped(), others);
    return triangle.gap().isMoreThan(limit) ? Optional.of(triangle) : Optional.empty();
  }
}
