package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * The distances that could be taped: between any two marks within the tape's reach. With more marks
 * than {@link #ALL} only some to each mark, near ones and far ones, or there would be too many to
 * look at.
 */
final class CheckLines {
  /** Up to so many marks every distance is looked at. */
  private static final int ALL = 26;

  /** With more, so many to each mark are wished for. */
  private static final int WISHED = 20;

  /** And so many at most come together at a mark; no fewer than {@link #ALL} allows. */
  private static final int MOST = 30;

  private final List<PlacedMark> marks;
  private final double tie;
  private final List<CheckLine> all = new ArrayList<>();
  private final List<List<CheckLine>> atMark = new ArrayList<>();

  CheckLines(Placement placement, Limits limits, Length reach) {
    this.marks = placement.marks();
    this.tie = limits.tieMetres();
    marks.forEach(mark -> atMark.add(new ArrayList<>()));
    for (Ends ends : wished(reach)) {
      List<CheckLine> one = atMark.get(ends.from());
      List<CheckLine> other = atMark.get(ends.to());
      if (one.size() < MOST && other.size() < MOST) {
        Limits.Limit limit = limits.between(marks.get(ends.from()), marks.get(ends.to()));
        CheckLine line =
            new CheckLine(all.size(), ends.from(), ends.to(), limit, one.size(), other.size());
        all.add(line);
        one.add(line);
        other.add(line);
      }
    }
  }

  private record Ends(int from, int to) {}

  private record Other(int mark, long nanometres) {}

  private List<Ends> wished(Length reach) {
    Set<Ends> wished = new LinkedHashSet<>();
    for (int i = 0; i < marks.size(); i++) {
      for (int other : others(i, reach)) {
        wished.add(new Ends(Math.min(i, other), Math.max(i, other)));
      }
    }
    return wished.stream()
        .sorted(Comparator.comparingInt(Ends::from).thenComparingInt(Ends::to))
        .toList();
  }

  /** The marks wished for at a mark: all, or half of them nearest and half from near to far. */
  private List<Integer> others(int mark, Length reach) {
    List<Other> others = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      Length distance = at(mark).distanceTo(at(i));
      if (i != mark && distance.metres() <= reach.metres() + tie) {
        others.add(new Other(i, Math.round(distance.metres() * 1e9)));
      }
    }
    others.sort(Comparator.comparingLong(Other::nanometres).thenComparingInt(Other::mark));
    if (marks.size() <= ALL || others.size() <= WISHED) {
      return others.stream().map(Other::mark).toList();
    }
    int near = WISHED / 2;
    int far = WISHED - near;
    List<Integer> chosen = new ArrayList<>();
    for (int i = 0; i < near; i++) {
      chosen.add(others.get(i).mark());
    }
    for (int i = 1; i <= far; i++) {
      chosen.add(others.get(near - 1 + i * (others.size() - near) / far).mark());
    }
    return chosen;
  }

  int marks() {
    return marks.size();
  }

  /** False when there are too many marks to look at every distance within the tape's reach. */
  boolean areAll() {
    return marks.size() <= ALL;
  }

  PlacedMark mark(int index) {
    return marks.get(index);
  }

  Point at(int index) {
    return marks.get(index).at();
  }

  double tie() {
    return tie;
  }

  List<CheckLine> all() {
    return all;
  }

  /** The distances of a set that end at a mark, as bits. */
  long bits(BitSet chosen, int mark) {
    long bits = 0;
    List<CheckLine> lines = atMark.get(mark);
    for (int i = 0; i < lines.size(); i++) {
      if (chosen.get(lines.get(i).number())) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  /** The rings of a mark's distances, in the order of {@link #linesAt}. */
  List<HiddenPlaces.Ring> rings(int mark) {
    return atMark.get(mark).stream().map(line -> ring(line, mark)).toList();
  }

  /** The ring in which a distance lets a mark pass. */
  HiddenPlaces.Ring ring(CheckLine line, int mark) {
    return new HiddenPlaces.Ring(
        at(line.other(mark)), line.limit().leastMetres(), line.limit().mostMetres());
  }

  /** Those that end at a mark; a line's place in this list is its bit there. */
  List<CheckLine> linesAt(int mark) {
    return atMark.get(mark);
  }
}
