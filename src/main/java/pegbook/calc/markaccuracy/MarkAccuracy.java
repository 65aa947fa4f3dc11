package pegbook.calc.markaccuracy;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.TapeAccuracy;
import pegbook.figures.Working;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * How good each mark is.
 *
 * @param tape how far one taped distance may be off
 * @param tolerance radius a mark may be off, 95 %
 * @param marks all marks, in the order of the figure
 * @param asked the baseline that the tape table uses
 * @param bestPair the two marks from which the worst mark is best
 * @param pegged two pegs beside the work from which it is best; none where there is no place
 * @param remedy what brings bad marks inside the tolerance; none where no mark is bad
 */
public record MarkAccuracy(
    TapeAccuracy tape,
    Length tolerance,
    List<MarkError> marks,
    PairError asked,
    PairError bestPair,
    Optional<PeggedBaseline> pegged,
    Optional<Remedy> remedy,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public MarkAccuracy {
    marks = List.copyOf(marks);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  @Override
  public List<Citation> sources() {
    return List.of(tape.source());
  }

  /** How a mark is set. */
  public enum Setting {
    /** The baseline's first mark: right by definition. */
    FIRST,
    /** The baseline's second mark: one tape along a given direction. */
    SECOND,
    /** Two tapes from the baseline's marks. */
    SWING,
    /** A string line along the baseline, and one tape. */
    STRING,
    /** Two tapes from two other marks. */
    OWN_PAIR
  }

  /** How a mark stands to the tolerance. */
  public enum Verdict {
    WITHIN,
    WORSE,
    /** So near to the line of the two marks that its error cannot be told: worse than any. */
    NOT_TOLD
  }

  /**
   * How far one mark may be off.
   *
   * @param mark its name
   * @param setting how it is set
   * @param first the mark of its first tape
   * @param second the mark of its second tape
   * @param ellipse its standard error ellipse
   * @param radius of the circle that holds 95 % of its errors
   * @param verdict how that stands to the tolerance
   * @param lean which way it may be off most
   */
  public record MarkError(
      String mark,
      Setting setting,
      String first,
      String second,
      ErrorEllipse ellipse,
      Length radius,
      Verdict verdict,
      Lean lean) {
    public boolean isBad() {
      return verdict != Verdict.WITHIN;
    }
  }

  /** Which way an error mostly lies. */
  public sealed interface Lean {
    /** None: the mark is where it is. */
    record Nowhere() implements Lean {}

    /** About the same all round. */
    record AllRound() implements Lean {}

    /** Mostly along the line to another mark. */
    record Towards(String mark) implements Lean {}

    /** Mostly square to the line to another mark. */
    record SquareTo(String mark) implements Lean {}

    /** Mostly along a line between two winds; in degrees from true north, 0 to under 180. */
    record Azimuth(pegbook.measure.Angle azimuth) implements Lean {}
  }

  /**
   * A pair of marks as the baseline.
   *
   * @param worst the worst mark
   * @param radius of the worst mark, 95 %; empty where one lies too near the line to tell
   */
  public record PairError(String first, String second, String worst, Optional<Length> radius) {}

  /**
   * Two pegs as the baseline.
   *
   * @param first where the first stands
   * @param second where the second stands
   * @param length from one to the other, set to the division
   * @param places how each is found from two marks
   * @param tapes from both pegs to every mark
   * @param worst the worst mark
   * @param radius of the worst mark, 95 %
   */
  public record PeggedBaseline(
      Point first,
      Point second,
      Length length,
      List<PegPlace> places,
      List<PegTape> tapes,
      String worst,
      Length radius) {
    public PeggedBaseline {
      places = List.copyOf(places);
      tapes = List.copyOf(tapes);
    }
  }

  /**
   * How a peg is found: two tapes, set to the division.
   *
   * @param left true when it lies to the left of the line from the first mark to the second
   */
  public record PegPlace(
      String firstMark, Length fromFirst, String secondMark, Length fromSecond, boolean left) {}

  /**
   * Two tapes from the pegs to a mark, set to the division.
   *
   * @param left true when the mark lies to the left of the line from the first peg to the second
   * @param radius that holds 95 % of its errors
   */
  public record PegTape(
      String mark, Length fromFirst, Length fromSecond, boolean left, Length radius) {}

  /** What brings the bad marks inside the tolerance, the cheapest that works. */
  public sealed interface Remedy {
    /** Another pair of marks as the baseline: see the best pair. */
    record OtherPair() implements Remedy {}

    /** A third tape to each bad mark. */
    record ThirdTapes(List<ThirdTape> tapes) implements Remedy {
      public ThirdTapes {
        tapes = List.copyOf(tapes);
      }
    }

    /** Pegs beside the work as the baseline. */
    record Pegs() implements Remedy {}

    /** Nothing that is tried here. */
    record None() implements Remedy {}
  }

  /**
   * A third tape.
   *
   * @param mark to which mark
   * @param from from which mark
   * @param tape the distance, set to the division
   * @param radius that holds 95 % of the mark's errors with it
   */
  public record ThirdTape(String mark, String from, Length tape, Length radius) {}
}
