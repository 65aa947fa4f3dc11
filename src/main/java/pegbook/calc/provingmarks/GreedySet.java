package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * A small set of distances that meets all demands, for figures of many marks. It takes the distance
 * that helps most, one after the other, until every demand is met, and then leaves out every one
 * that is not needed any more, the longest first; at last it exchanges two for one where it can.
 */
final class GreedySet {
  private static final int MOST_ROUNDS = 20;

  private final Demands demands;
  private final CheckLines lines;
  private final MirrorParts parts;
  private final BitSet chosen = new BitSet();
  private final List<Long> bits = new ArrayList<>();
  private final List<List<Integer>> touching = new ArrayList<>();
  private final double span;

  private GreedySet(Demands demands, MirrorParts parts) {
    this.demands = demands;
    this.lines = demands.lines();
    this.parts = parts;
    this.span =
        4
            * lines.all().stream()
                .mapToDouble(line -> line.limit().planned().metres())
                .max()
                .orElse(1);
    for (int i = 0; i < lines.marks(); i++) {
      bits.add(0L);
      touching.add(new ArrayList<>());
    }
    for (int i = 0; i < demands.seen().size(); i++) {
      for (int mark : demands.seen().get(i).places().keySet()) {
        touching.get(mark).add(i);
      }
    }
  }

  static BitSet of(Demands demands, MirrorParts parts) {
    GreedySet set = new GreedySet(demands, parts);
    set.meetMarks();
    set.meetMistakes();
    set.join();
    set.leaveOut();
    set.exchange();
    return set.chosen;
  }

  private void meetMarks() {
    List<Long> gains = new ArrayList<>();
    lines.all().forEach(line -> gains.add(gain(line)));
    for (int mark = unmet(); mark >= 0; mark = unmet()) {
      CheckLine best = null;
      for (CheckLine line : lines.all()) {
        if (!chosen.get(line.number()) && (best == null || isBetter(gains, line, best))) {
          best = line;
        }
      }
      if (best != null && gains.get(best.number()) > 0) {
        take(best);
        refresh(gains, best.from());
        refresh(gains, best.to());
      } else {
        lines.linesAt(mark).forEach(this::take);
        lines.all().forEach(line -> gains.set(line.number(), gain(line)));
      }
    }
  }

  private void refresh(List<Long> gains, int mark) {
    lines.linesAt(mark).forEach(line -> gains.set(line.number(), gain(line)));
  }

  private static boolean isBetter(List<Long> gains, CheckLine line, CheckLine best) {
    int byGain = Long.compare(gains.get(line.number()), gains.get(best.number()));
    return byGain != 0 ? byGain > 0 : line.nanometres() < best.nanometres();
  }

  private int unmet() {
    for (int i = 0; i < lines.marks(); i++) {
      if (!demands.isMet(i, bits.get(i))) {
        return i;
      }
    }
    return -1;
  }

  /** How much nearer to their bounds a distance brings its two marks, in millionths. */
  private long gain(CheckLine line) {
    return chosen.get(line.number()) ? 0 : gain(line, line.from()) + gain(line, line.to());
  }

  private long gain(CheckLine line, int mark) {
    long more = bits.get(mark) | 1L << lines.linesAt(mark).indexOf(line);
    return Math.round(1e6 * (cost(mark, bits.get(mark)) - cost(mark, more)));
  }

  /** Nothing when a mark's demand is met; otherwise how often its bound must be halved. */
  private double cost(int mark, long taped) {
    double radius = Math.min(span, demands.radius(mark, taped));
    return StrictMath.log(Math.max(1, radius / demands.bound(mark)));
  }

  private void take(CheckLine line) {
    chosen.set(line.number());
    for (int mark : List.of(line.from(), line.to())) {
      bits.set(mark, bits.get(mark) | 1L << lines.linesAt(mark).indexOf(line));
    }
  }

  private void drop(CheckLine line) {
    chosen.clear(line.number());
    for (int mark : List.of(line.from(), line.to())) {
      bits.set(mark, bits.get(mark) & ~(1L << lines.linesAt(mark).indexOf(line)));
    }
  }

  /** The shortest distance for each mistake that none shows yet. */
  private void meetMistakes() {
    for (int unmet = demands.firstUnmet(chosen); unmet >= 0; unmet = demands.firstUnmet(chosen)) {
      BitSet shown = demands.shownBy().get(unmet);
      take(
          lines.all().stream()
              .filter(line -> shown.get(line.number()))
              .min(Comparator.comparingLong(CheckLine::nanometres))
              .orElseThrow());
    }
  }

  /** The shortest distances that join what is not joined. */
  private void join() {
    List<CheckLine> joining = new ArrayList<>(parts.joining());
    joining.sort(Comparator.comparingLong(CheckLine::nanometres));
    int left = parts.parts(chosen).size();
    for (CheckLine line : joining) {
      if (left > parts.least() && !chosen.get(line.number())) {
        BitSet more = (BitSet) chosen.clone();
        more.set(line.number());
        int fewer = parts.parts(more).size();
        if (fewer < left) {
          take(line);
          left = fewer;
        }
      }
    }
  }

  /** Leaves out what is not needed, the longest first. */
  private void leaveOut() {
    longestFirst(lines.all()).forEach(this::leaveOut);
  }

  private List<CheckLine> longestFirst(List<CheckLine> some) {
    return some.stream()
        .filter(line -> chosen.get(line.number()))
        .sorted(Comparator.comparingLong(CheckLine::nanometres).reversed())
        .toList();
  }

  private boolean leaveOut(CheckLine line) {
    drop(line);
    if (isMet(line.from()) && isMet(line.to()) && mistakesAreMet(line) && isJoined(line)) {
      return true;
    }
    take(line);
    return false;
  }

  /** True when what a distance shows is also shown without it. */
  private boolean mistakesAreMet(CheckLine line) {
    return touching.get(line.from()).stream().allMatch(i -> isShown(i, line))
        && touching.get(line.to()).stream().allMatch(i -> isShown(i, line));
  }

  private boolean isShown(int mistake, CheckLine without) {
    BitSet shown = demands.shownBy().get(mistake);
    return !shown.get(without.number()) || shown.intersects(chosen);
  }

  private boolean isJoined(CheckLine without) {
    return !parts.joining().contains(without) || parts.isJoined(chosen);
  }

  /** Takes one distance where two others are then not needed any more, until there is none. */
  private void exchange() {
    boolean found = true;
    for (int round = 0; found && round < MOST_ROUNDS; round++) {
      found = false;
      for (CheckLine line : lines.all()) {
        found |= !chosen.get(line.number()) && exchange(line);
      }
    }
  }

  private boolean exchange(CheckLine line) {
    BitSet before = (BitSet) chosen.clone();
    take(line);
    List<CheckLine> near = new ArrayList<>(lines.linesAt(line.from()));
    near.addAll(lines.linesAt(line.to()));
    near.remove(line);
    near.remove(line);
    longestFirst(near).forEach(this::leaveOut);
    if (chosen.cardinality() < before.cardinality()) {
      return true;
    }
    BitSet dropped = (BitSet) before.clone();
    dropped.andNot(chosen);
    dropped.stream().mapToObj(lines.all()::get).forEach(this::take);
    drop(line);
    return false;
  }

  private boolean isMet(int mark) {
    return demands.isMet(mark, bits.get(mark));
  }
}
