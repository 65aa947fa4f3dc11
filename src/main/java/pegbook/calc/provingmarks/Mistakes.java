package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.figures.Swings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;

/** Makes the mistakes that are tried one by one. A mistake of one mark alone is not among them. */
final class Mistakes {
  /** With more marks not every two are exchanged. */
  private static final int MOST_MARKS = 100;

  private final CheckLines lines;
  private final Segment baseline;
  private final double tolerance;
  private final double onLine;

  /**
   * Takes what it rests on.
   *
   * @param tolerance a mistake that moves no mark by more than this, metres, is none
   * @param onLine a mark no further off the baseline's line than this, metres, is on it
   */
  Mistakes(CheckLines lines, Segment baseline, double tolerance, double onLine) {
    this.lines = lines;
    this.baseline = baseline;
    this.tolerance = tolerance;
    this.onLine = onLine;
  }

  /** Two marks exchanged: any two, or with many marks any two whose distance could be taped. */
  List<Mistake> swaps() {
    List<Mistake> swaps = new ArrayList<>();
    if (lines.marks() > MOST_MARKS) {
      lines.all().forEach(line -> add(swaps, swap(line.from(), line.to())));
      return swaps;
    }
    for (int i = 0; i < lines.marks(); i++) {
      for (int j = i + 1; j < lines.marks(); j++) {
        add(swaps, swap(i, j));
      }
    }
    return swaps;
  }

  private Mistake swap(int one, int other) {
    return new Mistake(
        Kind.SWAPPED,
        List.of(lines.mark(one).id(), lines.mark(other).id()),
        Map.of(one, lines.at(other), other, lines.at(one)));
  }

  /** One tape misread by a round amount while the marks were set out. */
  List<Mistake> slips(Swings swings, List<Double> amounts) {
    List<Mistake> slips = new ArrayList<>();
    for (SlippedTapes.Tape tape : SlippedTapes.tapes(lines, swings, onLine)) {
      for (double amount : amounts) {
        SlippedTapes.places(lines, swings, onLine, tape, amount)
            .map(places -> new Mistake(Kind.SLIPPED, List.of(tape.from(), tape.to()), places))
            .ifPresent(slip -> add(slips, slip));
      }
    }
    return slips;
  }

  /** Some marks on the wrong side of the baseline. */
  Mistake mirrored(List<Integer> wrong) {
    Map<Integer, Point> places = new TreeMap<>();
    wrong.forEach(mark -> places.put(mark, mirror(lines.at(mark))));
    return new Mistake(
        Kind.MIRRORED_PART, wrong.stream().map(mark -> lines.mark(mark).id()).toList(), places);
  }

  /** Every two groups into which the marks beside the baseline fall; for few marks only. */
  List<Mistake> mirroredParts() {
    List<Integer> beside = beside();
    List<Mistake> parts = new ArrayList<>();
    // The last mark stays: the other half of the groups are the same figures, mirrored as a whole.
    for (int bits = 1; bits < 1 << Math.max(0, beside.size() - 1); bits++) {
      List<Integer> wrong = new ArrayList<>();
      for (int i = 0; i < beside.size() - 1; i++) {
        if ((bits & 1 << i) != 0) {
          wrong.add(beside.get(i));
        }
      }
      add(parts, mirrored(wrong));
    }
    return parts;
  }

  /** The whole figure mirrored across the baseline, turned end for end, and both. */
  List<Mistake> whole() {
    List<Mistake> whole = new ArrayList<>();
    add(whole, whole(Kind.MIRRORED_WHOLE, false, true));
    add(whole, whole(Kind.TURNED_WHOLE, true, true));
    add(whole, whole(Kind.TURNED_AND_MIRRORED, true, false));
    return whole;
  }

  /** Marks that lie beside the baseline's line. */
  List<Integer> beside() {
    List<Integer> beside = new ArrayList<>();
    for (int i = 0; i < lines.marks(); i++) {
      if (Math.abs(baseline.offsetMetres(lines.at(i))) > Math.max(onLine, tolerance / 2)) {
        beside.add(i);
      }
    }
    return beside;
  }

  private Mistake whole(Kind kind, boolean ends, boolean sides) {
    Map<Integer, Point> places = new TreeMap<>();
    double length = baseline.length().metres();
    for (int i = 0; i < lines.marks(); i++) {
      double along = baseline.alongMetres(lines.at(i));
      double offset = baseline.offsetMetres(lines.at(i));
      places.put(i, baseline.at(ends ? length - along : along, sides ? -offset : offset));
    }
    return new Mistake(kind, List.of(), places);
  }

  private Point mirror(Point point) {
    return baseline.at(baseline.alongMetres(point), -baseline.offsetMetres(point));
  }

  private void add(List<Mistake> mistakes, Mistake mistake) {
    if (mistake.movesMoreThan(tolerance, lines)) {
      mistakes.add(mistake);
    }
  }
}
