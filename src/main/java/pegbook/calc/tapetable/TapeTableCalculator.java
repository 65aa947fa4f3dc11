package pegbook.calc.tapetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.tapetable.TapeTable.BetterPair;
import pegbook.calc.tapetable.TapeTable.Check;
import pegbook.calc.tapetable.TapeTable.Row;
import pegbook.calc.tapetable.TapeTable.Shift;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Task;
import pegbook.geometry.BaselineChoice;
import pegbook.geometry.Compass;
import pegbook.geometry.Crossings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.measure.Angle;
import pegbook.measure.Duration;
import pegbook.measure.Length;

/**
 * Works out how the marks are taped.
 *
 * <p>Two marks are the baseline: those that the job names, or the best pair of all (see {@link
 * BaselineChoice}). Every other mark gets a tape from each, set to the nearest mark of the tape's
 * division, the side on which to stand, the angle at which the tapes cross, and a third distance as
 * a check. Marks on the baseline's own line get a string line and one tape. Marks whose tapes cross
 * too weakly come last, and get another pair of marks where one crosses better.
 */
public final class TapeTableCalculator {
  /** Person-hours for the baseline, and for each further mark; common practice, two people. */
  private static final Duration BASELINE_LEAST = Duration.ofMinutes(30);

  private static final Duration BASELINE_MOST = Duration.ofMinutes(80);
  private static final Duration MARK_LEAST = Duration.ofMinutes(6);
  private static final Duration MARK_MOST = Duration.ofMinutes(16);
  private static final Duration CHECK_LEAST = Duration.ofMinutes(3);
  private static final Duration CHECK_MOST = Duration.ofMinutes(8);

  private final Job job;
  private final Placement placement;
  private final Layout layout;
  private final Crossings crossings;

  private TapeTableCalculator(Job job, Placement placement) {
    this.job = job;
    this.placement = placement;
    this.layout = job.layout();
    this.crossings = Crossings.onTape(layout.tape().division());
  }

  /**
   * Works out the tapes of a job's marks.
   *
   * @throws IllegalArgumentException when there are fewer than two marks or the baseline names one
   *     that is not there; the reader of the job file refuses both
   */
  public static TapeTable calculate(Job job, Placement placement) {
    if (placement.marks().size() < 2) {
      throw new IllegalArgumentException("a tape table needs two marks");
    }
    return new TapeTableCalculator(job, placement).table();
  }

  private TapeTable table() {
    List<PlacedMark> marks = placement.marks();
    BaselineChoice best = BaselineChoice.among(places(), crossings, layout.tape().length());
    BaselineChoice choice = named().orElse(best);
    PlacedMark first = marks.get(choice.first());
    PlacedMark second = marks.get(choice.second());
    TapeTableFormulas formulas = TapeTableFormulas.in(job.heading().units());
    Taping taping = new Taping(formulas, layout, crossings, first, second);
    List<PlacedMark> firm = new ArrayList<>(List.of(first, second));
    List<PlacedMark> weak = new ArrayList<>();
    marks.stream()
        .filter(mark -> !mark.equals(first) && !mark.equals(second))
        .forEach(mark -> (isWeak(taping.baseline(), mark) ? weak : firm).add(mark));
    List<Row> rows = taping.rows(ordered(taping.baseline(), firm.subList(2, firm.size()), weak));
    List<BetterPair> pairs = new BetterPairs(placement, taping, crossings, firm).of(rows);
    Optional<Shift> largest = taping.largestShift(rows);
    TapeTableFindings findings = new TapeTableFindings(layout, marks, choice, best, rows);
    return new TapeTable(
        baseline(first, second, taping),
        rows,
        pairs,
        largest,
        layout.tolerance(),
        findings.all(pairs, largest, longest(taping, rows, pairs)),
        taping.workings(),
        tasks(rows.size()));
  }

  private List<Point> places() {
    return placement.marks().stream().map(PlacedMark::at).toList();
  }

  private Optional<BaselineChoice> named() {
    if (!(layout.baseline() instanceof Layout.Baseline.Named named)) {
      return Optional.empty();
    }
    List<PlacedMark> marks = placement.marks();
    int first = marks.indexOf(placement.mark(named.first()));
    int second = marks.indexOf(placement.mark(named.second()));
    return Optional.of(
        BaselineChoice.of(places(), first, second, crossings, layout.tape().length()));
  }

  private boolean isWeak(Segment baseline, PlacedMark mark) {
    return Crossings.isWeak(crossings.weakness(baseline.from(), baseline.to(), mark.at()));
  }

  /** Firm marks round the site, then the weak ones round the site. */
  private List<PlacedMark> ordered(Segment baseline, List<PlacedMark> firm, List<PlacedMark> weak) {
    WalkingOrder order = new WalkingOrder(baseline, crossings);
    return Stream.concat(order.of(firm).stream(), order.of(weak).stream()).toList();
  }

  private TapeTable.Baseline baseline(PlacedMark first, PlacedMark second, Taping taping) {
    Angle azimuth = first.at().azimuthTo(second.at());
    Angle quarter = Angle.ofDegrees(90);
    return new TapeTable.Baseline(
        first.id(),
        second.id(),
        taping.set(),
        azimuth,
        Compass.of(azimuth.minus(quarter)),
        Compass.of(azimuth.plus(quarter)),
        layout.baseline() instanceof Layout.Baseline.Choose);
  }

  private static Length longest(Taping taping, List<Row> rows, List<BetterPair> pairs) {
    Stream<Length> ofRows =
        rows.stream()
            .flatMap(
                row ->
                    Stream.concat(
                        Stream.of(row.fromFirst(), row.fromSecond()),
                        row.check().map(Check::tape).stream()));
    Stream<Length> ofPairs =
        pairs.stream().flatMap(pair -> Stream.of(pair.fromFirst(), pair.fromSecond()));
    return Stream.concat(ofRows, ofPairs).reduce(taping.set(), Length::max);
  }

  private static List<Task> tasks(int marks) {
    return List.of(
        new Task(
            Task.Kind.MARK_OUT,
            Optional.empty(),
            BASELINE_LEAST.plus(MARK_LEAST.times(marks)),
            BASELINE_MOST.plus(MARK_MOST.times(marks))),
        new Task(
            Task.Kind.PROVE, Optional.empty(), CHECK_LEAST.times(marks), CHECK_MOST.times(marks)));
  }
}
