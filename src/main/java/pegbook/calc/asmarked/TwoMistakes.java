package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Together;
import pegbook.geometry.Point;
import pegbook.geometry.network.Network;
import pegbook.geometry.network.NetworkPoint;
import pegbook.geometry.network.Suppositions;
import pegbook.geometry.network.TapedDistance;
import pegbook.measure.Length;

/**
 * Looks for two mistakes where one does not explain the distances: two marks with their names
 * swapped, or two of the single suppositions together.
 *
 * <p>A swap chooses no quantity: the distances are read with the two names exchanged. For two
 * suppositions the first mark is put where it explains most (a first reading is left out), the
 * second is sought with that, and each is sought again with the other until both stand. Only the
 * leading single suspects are tried as the first; what they miss is not named.
 *
 * <p>Both are named only where they are enough, ahead of every other two by the same lead as a
 * single suspect, and checked: at least four spare distances, and three tapes to each mark from
 * others than the two.
 */
final class TwoMistakes {
  private static final int FIRST_TRIED = 8;
  private static final int SECOND_TRIED = 3;
  private static final int SWAPS_TRIED = 6;
  private static final int ROUNDS = 5;
  private static final int SPARE = 4;

  private final Network places;
  private final List<Distances.Distance> distances;
  private final double squares;

  TwoMistakes(Network places, List<Distances.Distance> distances, double squares) {
    this.places = places;
    this.distances = distances;
    this.squares = squares;
  }

  /** Two suspects with what they leave of the sum of squares. */
  private record Try(Together.Kind kind, List<Suspect> both, int quantities, double left) {
    double worth() {
      return -left - TestLevels.COST * quantities;
    }

    boolean isOf(List<Suspect> others) {
      return both.stream()
          .allMatch(one -> others.stream().anyMatch(other -> other.name().equals(one.name())));
    }
  }

  /**
   * The two that explain the distances, where they can be told.
   *
   * @param ranked single suspects, best first
   */
  Optional<Together> find(List<Suspect> ranked) {
    if (Judgement.redundancy(distances) < SPARE) {
      return Optional.empty();
    }
    List<Try> tries = new ArrayList<>(swaps());
    ranked.stream().limit(FIRST_TRIED).forEach(first -> tries.addAll(withSecond(first)));
    tries.sort(Comparator.comparingDouble(Try::worth).reversed());
    if (tries.isEmpty()) {
      return Optional.empty();
    }
    Try best = tries.get(0);
    double lead =
        tries.stream()
            .filter(other -> !other.isOf(best.both()))
            .mapToDouble(other -> best.worth() - other.worth())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double limit = TestLevels.leftLimit(distances.size() - best.quantities());
    boolean told = best.left() <= limit && lead >= TestLevels.lead() && isChecked(best);
    return told
        ? Optional.of(new Together(best.kind(), best.both(), best.left(), limit, lead))
        : Optional.empty();
  }

  private boolean isChecked(Try best) {
    List<String> marks = best.both().stream().flatMap(one -> one.mark().stream()).toList();
    return marks.stream()
        .allMatch(
            mark ->
                distances.stream()
                        .map(Distances.Distance::pair)
                        .filter(pair -> pair.ends(mark))
                        .filter(pair -> marks.stream().filter(pair::ends).count() == 1)
                        .count()
                    >= Judgement.TAPES_TO_CHECK);
  }

  // Swapped names.

  /** The likeliest swaps by the plan alone, each then weighed in full. */
  private List<Try> swaps() {
    Map<String, Point> at = new LinkedHashMap<>();
    places.points().forEach(point -> at.put(point.name(), point.start()));
    List<String> names = new ArrayList<>(at.keySet());
    List<List<String>> pairs = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        pairs.add(List.of(names.get(i), names.get(j)));
      }
    }
    return pairs.stream()
        .sorted(Comparator.comparingDouble(pair -> gain(pair.get(0), pair.get(1), at)))
        .limit(SWAPS_TRIED)
        .map(pair -> swap(pair.get(0), pair.get(1), at))
        .toList();
  }

  /** By how much the plain squares grow when two names are exchanged; below zero they fall. */
  private double gain(String one, String other, Map<String, Point> at) {
    double gain = 0;
    for (Distances.Distance distance : distances) {
      Pair pair = distance.pair();
      if (pair.ends(one) != pair.ends(other)) {
        Pair exchanged = exchanged(pair, one, other);
        gain += square(distance.taped().minus(planned(exchanged, at)));
        gain -= square(distance.taped().minus(planned(pair, at)));
      }
    }
    return gain;
  }

  private static double square(Length length) {
    return length.metres() * length.metres();
  }

  private static Length planned(Pair pair, Map<String, Point> at) {
    Point from = at.get(pair.from());
    Point to = at.get(pair.to());
    return from == null || to == null ? Length.ZERO : from.distanceTo(to);
  }

  private static Pair exchanged(Pair pair, String one, String other) {
    return new Pair(exchanged(pair.from(), one, other), exchanged(pair.to(), one, other));
  }

  private static String exchanged(String name, String one, String other) {
    return name.equals(one) ? other : name.equals(other) ? one : name;
  }

  private Try swap(String one, String other, Map<String, Point> at) {
    List<TapedDistance> read =
        distances.stream()
            .map(distance -> taped(distance, exchanged(distance.pair(), one, other)))
            .toList();
    double left = Suppositions.of(places, read).weightedSquares();
    Point first = at.getOrDefault(one, Point.ORIGIN);
    Point second = at.getOrDefault(other, Point.ORIGIN);
    return new Try(
        Together.Kind.SWAPPED,
        List.of(moved(one, first, second, left), moved(other, second, first, left)),
        0,
        left);
  }

  private Suspect moved(String mark, Point from, Point to, double left) {
    return new Suspect(
        Optional.of(mark),
        Optional.empty(),
        0,
        to.east() - from.east(),
        to.north() - from.north(),
        from.distanceTo(to),
        Length.ZERO,
        squares - left,
        left,
        TestLevels.leftLimit(distances.size()),
        0);
  }

  // Two suppositions together.

  private List<Try> withSecond(Suspect first) {
    List<Suspect> seconds =
        suspects(List.of(first)).stream()
            .filter(second -> !second.name().equals(first.name()))
            .limit(SECOND_TRIED)
            .toList();
    return seconds.stream().map(second -> settled(first, second)).toList();
  }

  /** Each sought again with the other until both stand. */
  private Try settled(Suspect first, Suspect second) {
    Suspect one = first;
    Suspect other = second;
    for (int i = 0; i < ROUNDS; i++) {
      one = again(one, other);
      other = again(other, one);
    }
    return new Try(
        Together.Kind.TWO,
        List.of(one, other),
        one.quantities() + other.quantities(),
        other.left());
  }

  private Suspect again(Suspect sought, Suspect given) {
    return suspects(List.of(given)).stream()
        .filter(suspect -> suspect.name().equals(sought.name()))
        .findFirst()
        .orElse(sought);
  }

  /** Single suspects where something is given to be wrong already. */
  private List<Suspect> suspects(List<Suspect> given) {
    Network shifted = places;
    List<Distances.Distance> kept = distances;
    for (Suspect known : given) {
      shifted = shifted(shifted, known);
      kept =
          kept.stream()
              .filter(distance -> !known.reading().equals(Optional.of(distance.pair())))
              .toList();
    }
    List<TapedDistance> read =
        kept.stream().map(distance -> taped(distance, distance.pair())).toList();
    return new Suspects(Suppositions.of(shifted, read), kept).ranked();
  }

  private static Network shifted(Network network, Suspect known) {
    Network shifted = network;
    for (NetworkPoint point : network.points()) {
      if (known.mark().equals(Optional.of(point.name()))) {
        Point there = point.start().plus(known.eastMetres(), known.northMetres());
        shifted =
            shifted.with(
                NetworkPoint.expected(point.name(), there, point.expected().orElseThrow()));
      }
    }
    return shifted;
  }

  private static TapedDistance taped(Distances.Distance distance, Pair pair) {
    return new TapedDistance(pair.from(), pair.to(), distance.taped(), distance.deviation());
  }
}
