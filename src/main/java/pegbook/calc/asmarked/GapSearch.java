package pegbook.calc.asmarked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked.Gaps;
import pegbook.calc.asmarked.AsMarked.Pair;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.geometry.Swing;
import pegbook.measure.Length;

/**
 * Which marks too few tapes reach, and which distances would bring them to three: from the marks
 * whose tapes cross those that are there most squarely, one that helps two marks before one that
 * helps one.
 */
final class GapSearch {
  private final Placement placement;
  private final Length reach;
  private final Map<String, List<String>> neighbours = new LinkedHashMap<>();

  GapSearch(Placement placement, Length reach, List<Pair> taped) {
    this.placement = placement;
    this.reach = reach;
    placement.marks().forEach(mark -> neighbours.put(mark.id(), new ArrayList<>()));
    taped.forEach(this::join);
  }

  private void join(Pair pair) {
    of(pair.from()).add(pair.to());
    of(pair.to()).add(pair.from());
  }

  private List<String> of(String mark) {
    return Optional.ofNullable(neighbours.get(mark)).orElseThrow();
  }

  Gaps gaps() {
    List<String> never = withTapes(0);
    List<String> once = withTapes(1);
    List<String> twice = withTapes(2);
    return new Gaps(never, once, twice, missing());
  }

  private List<String> withTapes(int count) {
    return placement.marks().stream()
        .map(PlacedMark::id)
        .filter(mark -> of(mark).size() == count)
        .toList();
  }

  private List<Pair> missing() {
    List<Pair> missing = new ArrayList<>();
    for (PlacedMark mark : placement.marks()) {
      while (of(mark.id()).size() < Judgement.TAPES_TO_CHECK) {
        Optional<String> best = best(mark);
        if (best.isEmpty()) {
          break;
        }
        Pair pair = new Pair(mark.id(), best.get());
        join(pair);
        missing.add(pair);
      }
    }
    return missing;
  }

  private Optional<String> best(PlacedMark mark) {
    String best = "";
    double most = -1;
    for (PlacedMark other : placement.marks()) {
      if (other.equals(mark)
          || of(mark.id()).contains(other.id())
          || mark.at().distanceTo(other.at()).isMoreThan(reach)) {
        continue;
      }
      boolean helps = of(other.id()).size() < Judgement.TAPES_TO_CHECK;
      double worth = (helps ? 2 : 0) + squareness(mark, other.at());
      if (worth > most + 1e-9) {
        most = worth;
        best = other.id();
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /** Sine of the weakest crossing with the tapes that are there; a first tape does not cross. */
  private double squareness(PlacedMark mark, Point other) {
    return of(mark.id()).stream()
        .map(name -> placement.mark(name).at())
        .mapToDouble(at -> StrictMath.sin(Swing.angleAt(mark.at(), at, other).radians()))
        .min()
        .orElse(0);
  }
}
