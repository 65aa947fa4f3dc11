package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Further;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Point;
import pegbook.geometry.network.Suppositions;
import pegbook.measure.Length;
import pegbook.measure.Rounding;

/**
 * Which distances, not taped yet, would tell suspects apart.
 *
 * <p>Each suspect foretells every distance: as planned, or changed by the move of its mark. The
 * distance is looked for whose foretold readings lie furthest apart, in standard deviations of such
 * a reading; then the next for those it leaves undecided.
 */
final class FurtherTapes {
  private static final int MOST = 3;

  /** Readings this many deviations apart are told apart. */
  private static final double APART = 4;

  private final Placement placement;
  private final Suppositions suppositions;
  private final TapeAccuracy accuracy;
  private final Length reach;
  private final List<Pair> taped;

  /**
   * Takes what it rests on.
   *
   * @param reach length of the tape
   * @param taped distances that are taped already
   */
  FurtherTapes(
      Placement placement,
      Suppositions suppositions,
      TapeAccuracy accuracy,
      Length reach,
      List<Pair> taped) {
    this.placement = placement;
    this.suppositions = suppositions;
    this.accuracy = accuracy;
    this.reach = reach;
    this.taped = List.copyOf(taped);
  }

  private record Candidate(Pair pair, double worth) {}

  /**
   * The distances that tell the leading suspect from its rivals.
   *
   * @param rivals may be empty, for the rival that no mark moved
   */
  List<Further> telling(Suspect leading, List<Suspect> rivals) {
    List<Optional<Suspect>> open = new ArrayList<>();
    rivals.forEach(rival -> open.add(Optional.of(rival)));
    if (rivals.isEmpty()) {
      open.add(Optional.empty());
    }
    List<Further> found = new ArrayList<>();
    List<Pair> used = new ArrayList<>(taped);
    while (!open.isEmpty() && found.size() < MOST) {
      Optional<Candidate> best = best(leading, open, used);
      if (best.isEmpty()) {
        break;
      }
      Pair pair = best.get().pair();
      used.add(pair);
      Optional<Suspect> told =
          open.stream()
              .reduce((a, b) -> apart(leading, b, pair) > apart(leading, a, pair) ? b : a)
              .orElseThrow();
      found.add(new Further(pair, foretold(Optional.of(leading), pair), foretold(told, pair)));
      open.removeIf(rival -> apart(leading, rival, pair) >= APART);
    }
    return found;
  }

  private Optional<Candidate> best(Suspect leading, List<Optional<Suspect>> open, List<Pair> used) {
    Optional<Candidate> best = Optional.empty();
    List<PlacedMark> marks = placement.marks();
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        Pair pair = new Pair(marks.get(i).id(), marks.get(j).id());
        if (isUsed(pair, used) || planned(pair).isMoreThan(reach)) {
          continue;
        }
        double worth = worth(leading, open, pair);
        double most = best.map(Candidate::worth).orElse(0.0);
        if (worth > most * (1 + 1e-9)) {
          best = Optional.of(new Candidate(pair, worth));
        }
      }
    }
    return best;
  }

  /** Only what it tells for certain counts, and no more than enough for each rival. */
  private double worth(Suspect leading, List<Optional<Suspect>> open, Pair pair) {
    double worth = 0;
    for (Optional<Suspect> rival : open) {
      double apart = apart(leading, rival, pair);
      // Beyond enough, further apart is only a little better.
      worth += apart < APART ? 0 : 1 + Math.min(apart, 100 * APART) * 1e-3;
    }
    return worth;
  }

  private static boolean isUsed(Pair pair, List<Pair> used) {
    return used.stream().anyMatch(other -> other.ends(pair.from()) && other.ends(pair.to()));
  }

  private double apart(Suspect leading, Optional<Suspect> rival, Pair pair) {
    double sigma = accuracy.sigma(planned(pair)).metres();
    double variance = sigma * sigma + suppositions.placeVariance(pair.from(), pair.to());
    double change = changed(Optional.of(leading), pair) - changed(rival, pair);
    return Math.abs(change) / Math.sqrt(variance);
  }

  private Length planned(Pair pair) {
    return at(pair.from()).distanceTo(at(pair.to()));
  }

  private Point at(String mark) {
    return placement.mark(mark).at();
  }

  /** By how much a suspect changes a distance, metres. */
  private double changed(Optional<Suspect> suspect, Pair pair) {
    Optional<String> mark = suspect.flatMap(Suspect::mark).filter(pair::ends);
    if (mark.isEmpty()) {
      return 0;
    }
    String moved = mark.get();
    Point other = at(pair.from().equals(moved) ? pair.to() : pair.from());
    Point there =
        at(moved).plus(suspect.orElseThrow().eastMetres(), suspect.orElseThrow().northMetres());
    return other.distanceTo(there).metres() - other.distanceTo(at(moved)).metres();
  }

  private Length foretold(Optional<Suspect> suspect, Pair pair) {
    return new Length(planned(pair).metres() + changed(suspect, pair))
        .setTo(accuracy.division(), Rounding.NEAREST);
  }
}
