package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Small sets of distances that meet all demands, without a claim that none is smaller. One is built
 * up: the distance that helps most is taken, one after the other, until every demand is met. Every
 * one that is not needed any more is then left out, the longest first; at last two are exchanged
 * for one where that is possible. Another set can be mended in the same way.
 */
final class GreedySet {
  private static final int MOST_ROUNDS = 20;

  /** So many joining distances are gone through in the time of one step. */
  private static final int JOINS_A_STEP = 100;

  private final Demands demands;
  private final CheckLines lines;
  private final MirrorParts parts;
  private final long[] bits;
  private final List<List<Integer>> touching = new ArrayList<>();
  private final double span;
  private BitSet chosen = new BitSet();
  private long steps;

  GreedySet(Demands demands, MirrorParts parts) {
    this.demands = demands;
    this.lines = demands.lines();
    this.parts = parts;
    this.span =
        4
            * lines.all().stream()
                .mapToDouble(line -> line.limit().planned().metres())
                .max()
                .orElse(1);
    this.bits = new long[lines.marks()];
    for (int i = 0; i < lines.marks(); i++) {
      touching.add(new ArrayList<>());
    }
    for (int i = 0; i < demands.seen().size(); i++) {
      for (int mark : demands.seen().get(i).places().keySet()) {
        touching.get(mark).add(i);
      }
    }
  }

  /** A set built up from nothing. */
  BitSet built() {
    start(new BitSet());
    meetMarks();
    meetMistakes();
    join();
    leaveOut(lines.all());
    exchange();
    return chosen;
  }

  /**
   * A set that meets what another does not and holds nothing that is not needed.
   *
   * @param some meets the demands of every mark
   * @param loose what is left out before anything else
   * @param enough distances are only exchanged where the set is no larger than this
   */
  BitSet mended(BitSet some, BitSet loose, int enough) {
    start(some);
    meetMistakes();
    join();
    leaveOut(lines.all().stream().filter(line -> loose.get(line.number())).toList());
    leaveOut(lines.all());
    if (chosen.cardinality() <= enough) {
      exchange();
    }
    return chosen;
  }

  /** How much was tried so far; a measure of the work that does not depend on the machine. */
  long steps() {
    return steps;
  }

  private void start(BitSet some) {
    chosen = new BitSet();
    Arrays.fill(bits, 0);
    some.stream().mapToObj(lines.all()::get).forEach(this::take);
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
      if (!demands.isMet(i, bits[i])) {
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
    return Math.round(1e6 * (cost(mark, bits[mark]) - cost(mark, bits[mark] | line.bit(mark))));
  }

  /** Nothing when a mark's demand is met; otherwise how often its bound must be halved. */
  private double cost(int mark, long taped) {
    double radius = Math.min(span, demands.radius(mark, taped));
    return StrictMath.log(Math.max(1, radius / demands.bound(mark)));
  }

  private void take(CheckLine line) {
    chosen.set(line.number());
    bits[line.from()] |= line.bit(line.from());
    bits[line.to()] |= line.bit(line.to());
  }

  private void drop(CheckLine line) {
    chosen.clear(line.number());
    bits[line.from()] &= ~line.bit(line.from());
    bits[line.to()] &= ~line.bit(line.to());
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
    if (parts.isJoined(chosen)) {
      return;
    }
    List<CheckLine> joining = new ArrayList<>(parts.joining());
    joining.sort(Comparator.comparingLong(CheckLine::nanometres));
    int left = parts.count(chosen);
    for (CheckLine line : joining) {
      if (left > parts.least() && !chosen.get(line.number())) {
        BitSet more = (BitSet) chosen.clone();
        more.set(line.number());
        int fewer = parts.count(more);
        if (fewer < left) {
          take(line);
          left = fewer;
        }
      }
    }
  }

  /** Leaves out what is not needed, the longest first. */
  private void leaveOut(List<CheckLine> some) {
    longestFirst(some).forEach(this::leaveOut);
  }

  private List<CheckLine> longestFirst(List<CheckLine> some) {
    return some.stream()
        .filter(line -> chosen.get(line.number()))
        .sorted(Comparator.comparingLong(CheckLine::nanometres).reversed())
        .toList();
  }

  private boolean leaveOut(CheckLine line) {
    steps += 1 + (parts.isJoining(line) ? parts.joining().size() / JOINS_A_STEP : 0);
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
    return !parts.isJoining(without) || parts.isJoined(chosen);
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
    return demands.isMet(mark, bits[mark]);
  }
}
