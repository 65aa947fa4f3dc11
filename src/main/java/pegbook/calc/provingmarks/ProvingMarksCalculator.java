package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import pegbook.calc.provingmarks.ProvingMarks.Check;
import pegbook.calc.provingmarks.ProvingMarks.Hidden;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.provingmarks.ProvingMarks.Size;
import pegbook.calc.provingmarks.ProvingMarks.Tie;
import pegbook.calc.provingmarks.ProvingMarks.Tried;
import pegbook.calc.provingmarks.ProvingMarks.Unseen;
import pegbook.calc.provingmarks.TieChoice.TieLine;
import pegbook.figures.MarkPair;
import pegbook.figures.Placement;
import pegbook.figures.Swings;
import pegbook.figures.Working;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * Chooses the distances that prove the marks.
 *
 * <p>Each distance gets a limit from the error of its reading and of its marks (see {@link
 * Limits}). A set of distances proves a mark when every place further off than the job's tolerance
 * is beyond the limit of one of them, all other marks being right (see {@link HiddenPlaces}).
 * Mistakes of several marks are made and tried one by one: two marks exchanged, some on the wrong
 * side of the baseline, one tape misread. The smallest set that shows all this is searched for (see
 * {@link SmallestSet}).
 *
 * <p>No distance between marks shows the whole figure shifted, turned or mirrored: ties to the
 * fixed things of the site plan do.
 */
public final class ProvingMarksCalculator {
  private static final List<Length> SLIPS_IMPERIAL = List.of(Length.ofFeet(1), Length.ofInches(1));
  private static final List<Length> SLIPS_METRIC =
      List.of(Length.ofMillimetres(100), Length.ofMillimetres(10));

  /** Up to so many marks every part of them is mirrored by itself; with more, they are joined. */
  private static final int MOST_MIRRORED = 9;

  private final Layout layout;
  private final Swings swings;
  private final UnitSystem units;
  private final Limits limits;
  private final CheckLines lines;
  private final Mistakes mistakes;
  private final double tolerance;

  private ProvingMarksCalculator(Job job, Placement placement, Swings swings) {
    this.layout = job.layout();
    this.swings = swings;
    this.units = job.heading().units();
    this.limits = new Limits(job, placement, swings);
    this.lines = new CheckLines(placement, limits, layout.tape().length());
    this.tolerance = layout.tolerance().metres();
    Segment baseline =
        new Segment(placement.mark(swings.first()).at(), placement.mark(swings.second()).at());
    this.mistakes = new Mistakes(lines, baseline, tolerance, onLine());
  }

  /**
   * Chooses a job's check distances.
   *
   * @param swings from which marks each was set out
   * @param stations fixed things to measure from, in the order of the site plan's ties
   */
  public static ProvingMarks calculate(
      Job job, Placement placement, Swings swings, List<Point> stations) {
    return new ProvingMarksCalculator(job, placement, swings).result(stations);
  }

  private double onLine() {
    return Crossings.onTape(layout.tape().division()).onLine().metres();
  }

  private ProvingMarks result(List<Point> stations) {
    boolean few = lines.marks() <= MOST_MIRRORED;
    Demands demands = new Demands(lines, tolerance);
    demands.add(mistakes.swaps());
    demands.add(mistakes.slips(swings, slips()).stream().filter(demands::isGross).toList());
    if (few) {
      demands.add(mistakes.mirroredParts());
    }
    MirrorParts parts = new MirrorParts(lines, mistakes);
    SmallestSet.Found found = SmallestSet.of(demands, new GreedySet(demands, parts));
    List<CheckLine> chosen =
        lines.all().stream().filter(line -> found.chosen().get(line.number())).toList();
    List<Mistake> whole = mistakes.whole();
    List<Mistake> left = new ArrayList<>(demands.unseen());
    if (!few) {
      left.addAll(openParts(parts));
    }
    left.addAll(whole);
    TieChoice ties = ties(stations, demands, chosen, left);
    List<Hidden> hidden = new ArrayList<>();
    for (int i = 0; i < lines.marks(); i++) {
      hidden.add(hidden(i, ties.with(rings(chosen, i), i)));
    }
    List<Unseen> unseen =
        left.stream()
            .filter(mistake -> !ties.isShown(mistake))
            .map(mistake -> new Unseen(mistake.kind(), mistake.about()))
            .distinct()
            .toList();
    ProvingMarks result =
        new ProvingMarks(
            chosen.stream().map(this::check).toList(),
            ties.chosen().stream().map(tie -> tie(tie, ties, whole)).toList(),
            hidden,
            new Size(found.proved(), found.least(), lines.all().size(), lines.areAll()),
            tried(demands, whole, ties),
            unseen,
            !few,
            layout.tolerance(),
            layout.tape().division(),
            List.of(),
            workings(chosen, ties, hidden));
    return new ProvingMarks(
        result.checks(),
        result.ties(),
        result.hidden(),
        result.size(),
        result.tried(),
        result.unseen(),
        result.joined(),
        result.tolerance(),
        result.division(),
        ProvingMarksFindings.of(result),
        result.workings());
  }

  /** Round amounts by which a tape is misread, either way, metres. */
  private List<Double> slips() {
    List<Double> slips = new ArrayList<>();
    for (Length slip : units == UnitSystem.IMPERIAL ? SLIPS_IMPERIAL : SLIPS_METRIC) {
      slips.add(slip.metres());
      slips.add(-slip.metres());
    }
    return slips;
  }

  /** Groups of marks that no distance joins to the others. */
  private List<Mistake> openParts(MirrorParts parts) {
    BitSet all = new BitSet();
    all.set(0, lines.all().size());
    List<List<Integer>> open = parts.parts(all);
    return open.stream().skip(1).map(mistakes::mirrored).toList();
  }

  private TieChoice ties(
      List<Point> stations, Demands demands, List<CheckLine> chosen, List<Mistake> left) {
    TieChoice ties = new TieChoice(lines, limits, stations, layout.tape().length().metres());
    ties.toBaseline(index(swings.first()), index(swings.second()));
    ties.toShow(left);
    for (int i = 0; i < lines.marks(); i++) {
      if (demands.bound(i) > tolerance) {
        ties.toMark(i, rings(chosen, i), tolerance);
      }
    }
    return ties;
  }

  private int index(String mark) {
    for (int i = 0; i < lines.marks(); i++) {
      if (lines.mark(i).id().equals(mark)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no mark " + mark);
  }

  private List<HiddenPlaces.Ring> rings(List<CheckLine> chosen, int mark) {
    return chosen.stream()
        .filter(line -> line.from() == mark || line.to() == mark)
        .map(line -> lines.ring(line, mark))
        .toList();
  }

  private Hidden hidden(int mark, List<HiddenPlaces.Ring> rings) {
    Optional<Length> radius =
        farthest(mark, rings).map(place -> limits.hidden(lines.mark(mark).id(), place).asLength());
    boolean within = radius.isPresent() && radius.get().metres() <= tolerance + limits.tieMetres();
    return new Hidden(lines.mark(mark).id(), rings.size(), radius, within);
  }

  private Optional<HiddenPlaces.Place> farthest(int mark, List<HiddenPlaces.Ring> rings) {
    return HiddenPlaces.of(lines.at(mark), rings, lines.tie()).farthest((1L << rings.size()) - 1);
  }

  private Check check(CheckLine line) {
    Limits.Limit limit = line.limit();
    return new Check(
        new MarkPair(lines.mark(line.from()).id(), lines.mark(line.to()).id()),
        limit.planned(),
        limit.expected(),
        limit.value(),
        limit.held(),
        limit.alarm());
  }

  private Tie tie(TieLine tie, TieChoice ties, List<Mistake> whole) {
    Optional<Length> mirrored =
        whole.stream()
            .filter(mistake -> mistake.kind() == Kind.MIRRORED_WHOLE && ties.shows(tie, mistake))
            .map(mistake -> new Length(ties.reads(tie, mistake)))
            .findFirst();
    return new Tie(
        tie.station(),
        lines.mark(tie.mark()).id(),
        tie.limit().expected(),
        tie.limit().value(),
        mirrored);
  }

  private static List<Tried> tried(Demands demands, List<Mistake> whole, TieChoice ties) {
    List<Tried> tried = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<Mistake> open = new ArrayList<>(demands.unseen());
      open.addAll(whole);
      open.removeIf(mistake -> mistake.kind() != kind);
      int seen = (int) demands.seen().stream().filter(some -> some.kind() == kind).count();
      if (seen + open.size() > 0) {
        int byTies = (int) open.stream().filter(ties::isShown).count();
        tried.add(new Tried(kind, seen + open.size(), seen, byTies));
      }
    }
    return tried;
  }

  private List<Working> workings(List<CheckLine> chosen, TieChoice ties, List<Hidden> hidden) {
    List<Working> workings = new ArrayList<>();
    chosen.forEach(line -> workings.addAll(line.limit().workings()));
    ties.chosen().forEach(tie -> workings.addAll(tie.limit().workings()));
    Hidden worst = hidden.stream().reduce((a, b) -> isWorse(b, a) ? b : a).orElseThrow();
    int mark = index(worst.mark());
    farthest(mark, ties.with(rings(chosen, mark), mark))
        .ifPresent(place -> workings.add(limits.hidden(worst.mark(), place)));
    return workings;
  }

  /** True when a mark's largest hidden mistake is larger than another's, by more than a tie. */
  static boolean isWorse(Hidden one, Hidden other) {
    return nanometres(one) > nanometres(other);
  }

  private static long nanometres(Hidden hidden) {
    return hidden.radius().map(radius -> Math.round(radius.metres() * 1e9)).orElse(Long.MAX_VALUE);
  }
}
