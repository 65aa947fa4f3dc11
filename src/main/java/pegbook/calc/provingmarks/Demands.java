package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What a set of distances has to show.
 *
 * <p>Of each mark, that it is off by more than its bound: the job's tolerance, where all distances
 * together show so much; otherwise a quarter more than what they let pass, or the tolerance more.
 * And every mistake of several marks that any distance shows. More distances never show less.
 */
final class Demands {
  /** How much more than all distances a set may let pass, where they let pass too much. */
  private static final double NEARLY = 1.25;

  private final CheckLines lines;
  private final List<HiddenPlaces> hidden = new ArrayList<>();
  private final List<Double> bounds = new ArrayList<>();
  private final List<long[]> rows = new ArrayList<>();
  private final List<Mistake> seen = new ArrayList<>();
  private final List<Mistake> unseen = new ArrayList<>();
  private final List<BitSet> shownBy = new ArrayList<>();

  /**
   * The demands of single marks.
   *
   * @param tolerance of a mark, metres
   */
  Demands(CheckLines lines, double tolerance) {
    this.lines = lines;
    BitSet all = new BitSet();
    all.set(0, lines.all().size());
    for (int i = 0; i < lines.marks(); i++) {
      HiddenPlaces places = HiddenPlaces.of(lines.at(i), lines.rings(i), lines.tie());
      double least = places.radius(lines.bits(all, i));
      double bound =
          least <= tolerance + lines.tie()
              ? tolerance
              : Math.min(least * NEARLY, least + tolerance);
      hidden.add(places);
      bounds.add(bound);
      rows.add(
          lines.linesAt(i).isEmpty() ? new long[0] : orAny(places.rows(bound + lines.tie()), i));
    }
  }

  /** Where every distance alone is enough, one of them is still needed. */
  private long[] orAny(long[] found, int mark) {
    return found.length > 0 ? found : new long[] {(1L << lines.linesAt(mark).size()) - 1};
  }

  /** Adds mistakes of several marks; one that no distance shows makes no demand. */
  void add(List<Mistake> mistakes) {
    for (Mistake mistake : mistakes) {
      BitSet shown = shown(mistake);
      if (shown.isEmpty()) {
        unseen.add(mistake);
      } else {
        seen.add(mistake);
        shownBy.add(shown);
      }
    }
  }

  private BitSet shown(Mistake mistake) {
    BitSet shown = new BitSet();
    for (int mark : mistake.places().keySet()) {
      for (CheckLine line : lines.linesAt(mark)) {
        if (mistake.isShownBy(line, lines)) {
          shown.set(line.number());
        }
      }
    }
    return shown;
  }

  /** True when a mistake moves a mark by more than it may be off and pass. */
  boolean isGross(Mistake mistake) {
    return mistake.places().entrySet().stream()
        .anyMatch(
            place ->
                lines.at(place.getKey()).distanceTo(place.getValue()).metres()
                    > bound(place.getKey()) + lines.tie());
  }

  CheckLines lines() {
    return lines;
  }

  /** What a mark may be off and pass at most, metres. */
  double bound(int mark) {
    return bounds.get(mark);
  }

  /** What a set lets pass at a mark, metres. */
  double radius(int mark, long bits) {
    return hidden.get(mark).radius(bits);
  }

  /** True when a set lets no more pass at a mark than it may. */
  boolean isMet(int mark, long bits) {
    for (long row : rows.get(mark)) {
      if ((row & bits) == 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * The same demand as sets of a mark's distances, of each of which one must be taped; bits as in
   * {@link CheckLines#bits}.
   */
  long[] rows(int mark) {
    return rows.get(mark);
  }

  /** Mistakes of several marks that some distance shows. */
  List<Mistake> seen() {
    return seen;
  }

  /** For each of them, the distances that show it. */
  List<BitSet> shownBy() {
    return shownBy;
  }

  /** Mistakes that no distance shows. */
  List<Mistake> unseen() {
    return unseen;
  }

  /** The first demand of several marks that a set does not meet, or -1. */
  int firstUnmet(BitSet chosen) {
    for (int i = 0; i < shownBy.size(); i++) {
      if (!shownBy.get(i).intersects(chosen)) {
        return i;
      }
    }
    return -1;
  }
}
