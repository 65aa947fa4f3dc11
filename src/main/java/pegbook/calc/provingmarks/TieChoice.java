package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;

/**
 * Which distances are taped from fixed things. Distances between marks cannot show that the whole
 * figure is shifted, turned or mirrored, nor what comes to the same, such as two corners of a
 * square exchanged. Ties to both marks of the baseline always; further ones only for what these
 * leave open.
 */
final class TieChoice {
  /**
   * A tie that leaves a mark less than this share of its largest hidden mistake is worth taping.
   */
  private static final double WORTH = 0.5;

  private final CheckLines lines;
  private final Limits limits;
  private final List<Point> stations;
  private final List<TieLine> possible = new ArrayList<>();
  private final List<TieLine> chosen = new ArrayList<>();

  /** A distance from a fixed thing to a mark. */
  record TieLine(int station, int mark, Limits.Limit limit) {
    long nanometres() {
      return Math.round(limit.planned().metres() * 1e9);
    }
  }

  TieChoice(CheckLines lines, Limits limits, List<Point> stations, double reach) {
    this.lines = lines;
    this.limits = limits;
    this.stations = stations;
    for (int i = 0; i < stations.size(); i++) {
      for (int j = 0; j < lines.marks(); j++) {
        double metres = stations.get(i).distanceTo(lines.at(j)).metres();
        if (metres <= reach + lines.tie() && metres > limits.nearestMetres()) {
          possible.add(new TieLine(i, j, limits.tie(stations.get(i), lines.mark(j), name(i, j))));
        }
      }
    }
  }

  /** As its working is named: "T" with the station, and the mark. */
  private String name(int station, int mark) {
    return "T" + (station + 1) + "–" + lines.mark(mark).id();
  }

  /** Takes the ties to the marks of the baseline. */
  void toBaseline(int first, int second) {
    possible.stream()
        .filter(tie -> tie.mark() == first || tie.mark() == second)
        .forEach(chosen::add);
  }

  /** Takes what shows mistakes that nothing shows yet: the tie that shows most of them first. */
  void toShow(List<Mistake> mistakes) {
    List<Mistake> left = new ArrayList<>(mistakes.stream().filter(some -> !isShown(some)).toList());
    while (!left.isEmpty()) {
      Optional<TieLine> best =
          possible.stream()
              .filter(tie -> left.stream().anyMatch(mistake -> shows(tie, mistake)))
              .min(
                  Comparator.comparingLong(
                          (TieLine tie) ->
                              -left.stream().filter(mistake -> shows(tie, mistake)).count())
                      .thenComparingLong(TieLine::nanometres)
                      .thenComparingInt(TieLine::mark));
      if (best.isEmpty()) {
        return;
      }
      chosen.add(best.get());
      left.removeIf(mistake -> shows(best.get(), mistake));
    }
  }

  /** Takes ties to a mark while each of them leaves much less of a mistake hidden. */
  void toMark(int mark, List<HiddenPlaces.Ring> rings, double bound) {
    for (TieLine tie : possible) {
      if (tie.mark() == mark && !chosen.contains(tie)) {
        double before = radius(mark, with(rings, mark));
        List<HiddenPlaces.Ring> more = new ArrayList<>(with(rings, mark));
        more.add(ring(tie));
        if (before > bound + lines.tie() && radius(mark, more) < WORTH * before) {
          chosen.add(tie);
        }
      }
    }
  }

  private double radius(int mark, List<HiddenPlaces.Ring> rings) {
    return HiddenPlaces.of(lines.at(mark), rings, lines.tie()).radius((1L << rings.size()) - 1);
  }

  /** The rings of a mark's distances and of the ties to it. */
  List<HiddenPlaces.Ring> with(List<HiddenPlaces.Ring> rings, int mark) {
    List<HiddenPlaces.Ring> all = new ArrayList<>(rings);
    chosen.stream()
        .filter(tie -> tie.mark() == mark)
        .limit(HiddenPlaces.MOST_RINGS - rings.size())
        .forEach(tie -> all.add(ring(tie)));
    return all;
  }

  private HiddenPlaces.Ring ring(TieLine tie) {
    return new HiddenPlaces.Ring(
        stations.get(tie.station()), tie.limit().leastMetres(), tie.limit().mostMetres());
  }

  /** What a tie reads after a mistake, metres. */
  double reads(TieLine tie, Mistake mistake) {
    return stations.get(tie.station()).distanceTo(mistake.at(tie.mark(), lines)).metres();
  }

  boolean shows(TieLine tie, Mistake mistake) {
    return tie.limit().shows(reads(tie, mistake), limits.tieMetres());
  }

  /** True when one of the ties taken shows a mistake. */
  boolean isShown(Mistake mistake) {
    return chosen.stream().anyMatch(tie -> shows(tie, mistake));
  }

  /** The ties taken, by fixed thing and mark. */
  List<TieLine> chosen() {
    return chosen.stream()
        .sorted(Comparator.comparingInt(TieLine::station).thenComparingInt(TieLine::mark))
        .toList();
  }
}
