package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pegbook.geometry.Point;
import pegbook.measure.Rounding;

/**
 * Which strings cross over the centres.
 *
 * <p>Lines over several marks come first, those that serve the most marks before others. A figure
 * whose marks lie in a ring has rings of lines too, all equally far from the centre (the sides, the
 * next longer chords, and so on), whose ends meet outside and share pegs; each such ring is tried
 * as a beginning. The plan that leaves the fewest marks without a crossing, then the one with the
 * fewest pegs, then with the least string is taken. Marks that are still without get strings of
 * their own.
 *
 * @param cover which strings cross where
 * @param pegs what they are tied to
 * @param tooMany how many pegs strings over every centre would take, where that is too many; else 0
 */
record StringPlan(StringCover cover, LinePegs pegs, int tooMany) {
  private static final int MOST_RINGS = 6;

  /**
   * With more pegs than this only strings over whole rows are worth their pegs: common practice.
   */
  static final int MOST_PEGS = 60;

  private static final double LENGTH_WEIGHT = 0.01;
  private static final double RING_STEP_METRES = 1e-3;

  /** Two chords of a circle cross at a right angle on it when they lie so far from its centre. */
  private static final double SQUARE_SHARE = 0.7071;

  static StringPlan of(PegSite site) {
    return new Search(site).best();
  }

  private double metres() {
    return pegs.strings().stream()
        .mapToDouble(
            string -> string.before() + string.line().axis().length().metres() + string.after())
        .sum();
  }

  private boolean isBetterThan(StringPlan other) {
    if (cover.uncrossed() != other.cover.uncrossed()) {
      return cover.uncrossed() < other.cover.uncrossed();
    }
    if (pegs.carriers().size() != other.pegs.carriers().size()) {
      return pegs.carriers().size() < other.pegs.carriers().size();
    }
    return metres() < other.metres() - 1e-6;
  }

  private static final class Search {
    private final PegSite site;
    private final List<MarkLine> lines;
    private final List<List<Integer>> over;
    private final double[] lengths;
    private final Strung.Finder finder;
    private final Map<Integer, Optional<Strung>> strung = new TreeMap<>();
    private final Map<Integer, List<Strung>> alone = new TreeMap<>();

    Search(PegSite site) {
      this.site = site;
      this.lines = MarkLine.shared(site.marks(), site.division().times(0.5));
      this.over = LineGains.over(lines, site.marks().size());
      this.lengths = lines.stream().mapToDouble(line -> line.axis().length().metres()).toArray();
      this.finder = new Strung.Finder(site);
    }

    StringPlan best() {
      StringPlan best = plan(List.of());
      for (List<Integer> ring : rings()) {
        StringPlan next = plan(ring);
        if (next.isBetterThan(best)) {
          best = next;
        }
      }
      return best;
    }

    /** Lines equally far from the centre: large groups, those that cross most squarely first. */
    private List<List<Integer>> rings() {
      Map<Long, List<Integer>> rings = new TreeMap<>();
      for (int line = 0; line < lines.size(); line++) {
        double offset = Math.abs(lines.get(line).axis().offsetMetres(Point.ORIGIN));
        long step = Rounding.NEAREST.steps(offset, RING_STEP_METRES);
        rings.computeIfAbsent(step, key -> new ArrayList<>()).add(line);
      }
      double reach =
          site.marks().stream()
              .mapToDouble(mark -> Point.ORIGIN.distanceTo(mark).metres())
              .max()
              .orElse(0);
      long square = Rounding.NEAREST.steps(reach * SQUARE_SHARE, RING_STEP_METRES);
      return rings.entrySet().stream()
          .filter(ring -> ring.getValue().size() >= Math.max(3, site.marks().size() / 3))
          .sorted(Comparator.comparingLong(ring -> Math.abs(ring.getKey() - square)))
          .limit(MOST_RINGS)
          .map(Map.Entry::getValue)
          .toList();
    }

    private StringPlan plan(List<Integer> ring) {
      StringCover cover = new StringCover(site.marks().size());
      LineGains gains = new LineGains(cover, lines, over);
      for (int line : ring) {
        if (gains.of(line) > 0.5) {
          strung(line).ifPresent(gains::take);
        }
      }
      while (takeBest(gains)) {
        // Each round takes one string.
      }
      for (int mark = 0; mark < site.marks().size(); mark++) {
        alone(cover, mark);
      }
      StringPlan plan = of(cover, 0);
      int pegs = plan.pegs.carriers().size();
      return pegs <= MOST_PEGS ? plan : of(cover.overRows(), pegs);
    }

    private StringPlan of(StringCover cover, int tooMany) {
      StringCover pruned = cover.pruned();
      return new StringPlan(pruned, LinePegs.of(site, pruned.strings()), tooMany);
    }

    private Optional<Strung> strung(int line) {
      return strung.computeIfAbsent(line, key -> finder.string(lines.get(key)));
    }

    private boolean takeBest(LineGains gains) {
      int best = -1;
      double most = 0.4;
      for (int line = 0; line < lines.size(); line++) {
        double gain = gains.of(line) - LENGTH_WEIGHT * lengths[line];
        if (gain > most + 1e-6 && strung(line).isPresent()) {
          most = gain;
          best = line;
        }
      }
      if (best >= 0) {
        gains.take(strung(best).orElseThrow());
      }
      return best >= 0;
    }

    /** Strings over a mark that no shared line serves: the first free, then the squarest to it. */
    private void alone(StringCover cover, int mark) {
      for (int round = 0; round < 2 && !cover.isCrossed(mark); round++) {
        Optional<Strung> best = Optional.empty();
        double most = 1e-6;
        for (Strung next : alone(mark)) {
          double gain = cover.gain(next.line());
          if (gain > most + 1e-6) {
            most = gain;
            best = Optional.of(next);
          }
        }
        best.ifPresent(cover::take);
      }
    }

    private List<Strung> alone(int mark) {
      return alone.computeIfAbsent(
          mark,
          key ->
              MarkLine.alone(key, site.marks().get(key), site.axis()).stream()
                  .flatMap(line -> finder.string(line).stream())
                  .toList());
    }
  }
}
