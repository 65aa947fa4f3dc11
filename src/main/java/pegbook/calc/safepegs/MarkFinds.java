package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.safepegs.SafePegs.Find;
import pegbook.calc.safepegs.SafePegs.Spread;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;

/** How each mark is found again from the pegs that see it. */
final class MarkFinds {
  private final PegSite site;
  private final TapedDistances distances;
  private final Sightings sightings;
  private Optional<Spread> weakest = Optional.empty();
  private double most;

  /**
   * Looks from the pegs.
   *
   * @param pegs places of the pegs that are taped from, K1 first
   */
  MarkFinds(PegSite site, List<Point> pegs, TapedDistances distances) {
    this.site = site;
    this.distances = distances;
    this.sightings =
        new Sightings(
            pegs, site.marks(), site.sight(), site.rules().tape(), site.reach(), site.accuracy());
  }

  List<Find> all() {
    List<Find> finds = new ArrayList<>();
    for (int mark = 0; mark < site.marks().size(); mark++) {
      find(mark).ifPresent(finds::add);
    }
    return finds;
  }

  Optional<Spread> weakest() {
    return weakest;
  }

  /** How many pegs see every mark. */
  long seeingAll() {
    return seeing().stream().filter(sightings::seesAll).count();
  }

  private List<Integer> seeing() {
    List<Integer> pegs = new ArrayList<>();
    for (int peg = 0; peg < sightings.places(); peg++) {
      pegs.add(peg);
    }
    return pegs;
  }

  List<Integer> seeing(int mark) {
    return seeing().stream().filter(peg -> sightings.sees(peg, mark)).toList();
  }

  private Optional<Find> find(int mark) {
    List<Integer> pegs = seeing(mark);
    int first = -1;
    int second = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < pegs.size(); i++) {
      for (int j = i + 1; j < pegs.size(); j++) {
        double spread = sightings.spread(pegs.get(i), pegs.get(j), mark);
        if (spread < least * (1 - 1e-9)) {
          least = spread;
          first = pegs.get(i);
          second = pegs.get(j);
        }
      }
    }
    return first < 0 ? Optional.empty() : Optional.of(find(mark, first, second, least));
  }

  private Find find(int mark, int first, int second, double spread) {
    String name = site.names().get(mark);
    String one = PegSetting.name(first);
    String other = PegSetting.name(second);
    Segment line = new Segment(sightings.place(first), sightings.place(second));
    boolean left = line.offsetMetres(site.marks().get(mark)) > 0;
    Find find =
        new Find(
            name,
            new Tape(one, distances.set(one, name)),
            new Tape(other, distances.set(other, name)),
            left,
            PegSetting.side(line, left),
            distances.crossing(name, one, other),
            sightings.isWeak(first, second, mark),
            check(mark, first, second)
                .map(
                    peg ->
                        new Tape(PegSetting.name(peg), distances.set(PegSetting.name(peg), name))));
    if (spread > most * (1 + 1e-9)) {
      most = spread;
      weakest = Optional.of(new Spread(name, spread(find)));
    }
    return find;
  }

  private pegbook.measure.Length spread(Find find) {
    return distances.spread(
        find.mark(),
        site.accuracy().sigma(distances.distance(find.first().name(), find.mark())),
        site.accuracy().sigma(distances.distance(find.second().name(), find.mark())),
        find.crossing());
  }

  /** The peg whose tape crosses best with one of the two. */
  private Optional<Integer> check(int mark, int first, int second) {
    Optional<Integer> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int peg : seeing(mark)) {
      if (peg == first || peg == second) {
        continue;
      }
      double spread =
          Math.min(sightings.spread(first, peg, mark), sightings.spread(second, peg, mark));
      if (spread < least * (1 - 1e-9)) {
        least = spread;
        best = Optional.of(peg);
      }
    }
    return best;
  }
}
