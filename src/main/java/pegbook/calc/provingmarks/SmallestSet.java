package pegbook.calc.provingmarks;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import pegbook.calc.provingmarks.SplitPrices.State;

/**
 * The smallest set of distances that meets all demands, and of several one with little to tape.
 *
 * <p>Branch and bound: each distance is once taken and once left out, first those that their two
 * marks disagree on. A branch ends when no set in it can be smaller than the best one found, by the
 * bound of {@link SplitPrices}. What the marks take in a round is also mended to a set for all of
 * them ({@link GreedySet#mended}), and so the best one found grows smaller. The work is counted in
 * steps, never by a clock; when they are used up the best set stands, with its bound.
 */
final class SmallestSet {
  /** What one distance costs in the search for the smallest number. */
  private static final long ONE = 1_000_000_000L;

  /** Of that, what lengths may add up to. */
  private static final long LENGTHS = 1_000_000L;

  /** So many steps for the number. */
  private static final long MOST_STEPS = 20_000_000;

  /** And then so many for the lengths. */
  private static final long LENGTH_STEPS = 2_000_000;

  /** One try of the mending costs as much as so many of the bound's steps. */
  private static final int TRY = 8;

  private static final int FIRST_ROUNDS = 200;
  private static final int ROUNDS = 25;
  private static final int MEND_EVERY = 4;
  private static final int EXCHANGE_EVERY = 16;

  private final Demands demands;
  private final CheckLines lines;
  private final GreedySet greedy;
  private final SplitPrices split;
  private final long[] prices;
  private final long gain;
  private final long purse;
  private final long start;
  private BitSet best;
  private long bestPrice;
  private int round;

  private SmallestSet(
      Demands demands, GreedySet greedy, BitSet start, long[] prices, long gain, long purse) {
    this.demands = demands;
    this.lines = demands.lines();
    this.greedy = greedy;
    this.prices = prices;
    this.gain = gain;
    this.purse = purse;
    this.split = new SplitPrices(demands, prices, Math.max(gain, LENGTHS));
    this.start = greedy.steps();
    this.best = start;
    this.bestPrice = price(start);
  }

  /**
   * What was found.
   *
   * @param chosen the set
   * @param least as many distances any set has at least that meets the demands
   */
  record Found(BitSet chosen, int least) {
    /** True when no set has fewer distances. */
    boolean proved() {
      return chosen.cardinality() <= least;
    }
  }

  /**
   * Searches.
   *
   * @param greedy mends sets; the first one is built up by it
   */
  static Found of(Demands demands, GreedySet greedy) {
    long[] alike = new long[demands.lines().all().size()];
    Arrays.fill(alike, ONE);
    SmallestSet number = new SmallestSet(demands, greedy, greedy.built(), alike, ONE, MOST_STEPS);
    int least = Math.toIntExact((number.search() + ONE - 1) / ONE);
    long together = demands.lines().all().stream().mapToLong(CheckLine::nanometres).sum();
    long[] byLength =
        demands.lines().all().stream()
            .mapToLong(line -> ONE + line.nanometres() / (together / LENGTHS + 1))
            .toArray();
    SmallestSet length = new SmallestSet(demands, greedy, number.best, byLength, 1, LENGTH_STEPS);
    length.search();
    return new Found(length.best, least);
  }

  /** Returns what any set costs at least. */
  private long search() {
    long bound = split.raise(FIRST_ROUNDS, 1, this::enough);
    if (bound < end() && branch()) {
      return bestPrice;
    }
    return Math.min(bound, bestPrice);
  }

  /** A bound of this much leaves no room for a better set. */
  private long end() {
    return bestPrice - gain + 1;
  }

  private long enough() {
    if (round++ % MEND_EVERY == 0 || split.agrees()) {
      boolean patient = round <= FIRST_ROUNDS || round % EXCHANGE_EVERY == 0;
      BitSet found = greedy.mended(split.taken(1), loose(), patient ? best.cardinality() + 1 : 0);
      if (price(found) < bestPrice) {
        best = found;
        bestPrice = price(found);
      }
    }
    return isSpent() ? Long.MIN_VALUE : end();
  }

  private BitSet loose() {
    BitSet loose = split.taken(1);
    loose.andNot(split.taken(2));
    return loose;
  }

  private boolean isSpent() {
    return split.steps() + TRY * (greedy.steps() - start) > purse;
  }

  private long price(BitSet set) {
    return set.stream().mapToLong(number -> prices[number]).sum();
  }

  /** Returns true when everything under this branch was looked at or ruled out. */
  private boolean branch() {
    Optional<CheckLine> next = next();
    if (next.isEmpty()) {
      return true;
    }
    long[][] before = split.split();
    boolean whole = true;
    for (State state : new State[] {State.TAKEN, State.BARRED}) {
      if (isSpent()) {
        return false;
      }
      split.restore(before);
      split.set(next.get(), state);
      if (canMeetMistakes() && split.raise(ROUNDS, 0.5, this::enough) < end()) {
        whole &= branch();
      }
      split.set(next.get(), State.OPEN);
    }
    return whole && !isSpent();
  }

  /** The distance that the marks disagreed on most; else one that shows an open mistake. */
  private Optional<CheckLine> next() {
    CheckLine next = null;
    for (CheckLine line : lines.all()) {
      if (split.state(line) == State.OPEN
          && (next == null || split.apart(line) > split.apart(next))) {
        next = line;
      }
    }
    if (next != null && split.apart(next) == 0) {
      int open = demands.firstUnmet(split.taken(1));
      return open < 0 ? Optional.of(next) : shows(open);
    }
    return Optional.ofNullable(next);
  }

  private Optional<CheckLine> shows(int mistake) {
    return demands.shownBy().get(mistake).stream()
        .mapToObj(lines.all()::get)
        .filter(line -> split.state(line) == State.OPEN)
        .findFirst();
  }

  private boolean canMeetMistakes() {
    BitSet allowed = new BitSet();
    lines.all().forEach(line -> allowed.set(line.number(), split.state(line) != State.BARRED));
    return demands.firstUnmet(allowed) < 0;
  }
}
