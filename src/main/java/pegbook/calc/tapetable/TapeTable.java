package pegbook.calc.tapetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.MarkPair;
import pegbook.figures.Result;
import pegbook.figures.Swings;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * How the marks are taped.
 *
 * @param baseline the two marks from which all others are taped
 * @param rows all other marks, in the order of work
 * @param betterPairs for marks whose tapes cross too weakly from the baseline: other marks from
 *     which they cross better
 * @param largestShift how far the set readings alone put the mark that they put furthest off, where
 *     there is any
 * @param tolerance radius a mark may be off
 */
public record TapeTable(
    Baseline baseline,
    List<Row> rows,
    List<BetterPair> betterPairs,
    Optional<Shift> largestShift,
    Length tolerance,
    List<Finding> findings,
    List<Working> workings,
    List<Task> tasks)
    implements Result {
  public TapeTable {
    rows = List.copyOf(rows);
    betterPairs = List.copyOf(betterPairs);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    tasks = List.copyOf(tasks);
  }

  /** Every two marks between which a tape is held, once, in the order of work. */
  public List<MarkPair> pairs() {
    List<MarkPair> pairs = new ArrayList<>();
    add(pairs, baseline.first(), baseline.second());
    for (Row row : rows) {
      add(pairs, baseline.first(), row.mark());
      add(pairs, baseline.second(), row.mark());
      row.check().ifPresent(check -> add(pairs, check.to(), row.mark()));
    }
    for (BetterPair pair : betterPairs) {
      add(pairs, pair.first(), pair.mark());
      add(pairs, pair.second(), pair.mark());
    }
    return List.copyOf(pairs);
  }

  private static void add(List<MarkPair> pairs, String first, String second) {
    MarkPair pair = new MarkPair(first, second);
    if (pairs.stream().noneMatch(pair::joinsTheSame)) {
      pairs.add(pair);
    }
  }

  /** From which two marks every mark is taped, better pairs taken where there are any. */
  public Swings swings() {
    return new Swings(
        baseline.first(),
        baseline.second(),
        betterPairs.stream()
            .map(pair -> new Swings.OwnPair(pair.mark(), pair.first(), pair.second()))
            .toList());
  }

  /**
   * The baseline.
   *
   * @param first the mark of the first tape
   * @param second the mark of the second tape
   * @param tape its length, set to the tape's division
   * @param azimuth from the first mark to the second
   * @param left the wind towards which its left side lies
   * @param right the wind towards which its right side lies
   * @param chosen true when the job left the choice open
   */
  public record Baseline(
      String first,
      String second,
      Length tape,
      Angle azimuth,
      Compass left,
      Compass right,
      boolean chosen) {}

  /** Where a mark lies to the baseline, looking from its first mark to its second. */
  public enum Stand {
    LEFT,
    RIGHT,
    /** On the string line, between the two. */
    BETWEEN,
    /** On the string line, drawn out beyond the first mark. */
    BEYOND_FIRST,
    /** On the string line, drawn out beyond the second mark. */
    BEYOND_SECOND;

    /** True for a mark that a string line and one tape give. */
    public boolean isOnLine() {
      return this != LEFT && this != RIGHT;
    }
  }

  /**
   * One mark.
   *
   * @param order 3 for the first after the two of the baseline
   * @param mark its name
   * @param stand on which side of the line to stand
   * @param fromFirst tape from the baseline's first mark, set to the division
   * @param fromSecond tape from its second mark, set
   * @param crossing angle between the tapes at the mark; none on the baseline's line
   * @param weak true when the tapes cross too weakly
   * @param check a third distance, to a mark that is there by then
   * @param shift how far the set readings alone put the mark off; none when they do not meet
   */
  public record Row(
      int order,
      String mark,
      Stand stand,
      Length fromFirst,
      Length fromSecond,
      Optional<Angle> crossing,
      boolean weak,
      Optional<Check> check,
      Optional<Length> shift) {}

  /**
   * A third distance.
   *
   * @param to the mark it goes to
   * @param tape the distance, set to the division
   * @param seesMirror true when it differs for a mark put on the wrong side of the baseline
   */
  public record Check(String to, Length tape, boolean seesMirror) {}

  /** A mark and two others from which it crosses better than from the baseline. */
  public record BetterPair(
      String mark,
      String first,
      String second,
      Length fromFirst,
      Length fromSecond,
      boolean left,
      Angle crossing) {}

  /** A mark and how far it is off. */
  public record Shift(String mark, Length distance) {}
}
