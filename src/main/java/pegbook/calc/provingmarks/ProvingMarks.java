package pegbook.calc.provingmarks;

import java.util.List;
import java.util.Optional;
import pegbook.figures.Finding;
import pegbook.figures.MarkPair;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;

/**
 * The distances that prove the marks.
 *
 * @param checks distances between marks: the smallest set that shows what distances can show
 * @param ties distances from fixed things, for what distances between marks cannot show
 * @param hidden for each mark the largest mistake that all its distances would let pass
 * @param size how small the set is
 * @param tried mistakes that were tried one by one
 * @param unseen those of them that neither a distance nor a tie shows
 * @param joined true when parts mirrored by themselves were ruled out by joining all marks, false
 *     when such parts were tried one by one
 * @param tolerance radius a mark may be off
 * @param division of the tape
 */
public record ProvingMarks(
    List<Check> checks,
    List<Tie> ties,
    List<Hidden> hidden,
    Size size,
    List<Tried> tried,
    List<Unseen> unseen,
    boolean joined,
    Length tolerance,
    Length division,
    List<Finding> findings,
    List<Working> workings)
    implements Result {
  public ProvingMarks {
    checks = List.copyOf(checks);
    ties = List.copyOf(ties);
    hidden = List.copyOf(hidden);
    tried = List.copyOf(tried);
    unseen = List.copyOf(unseen);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * One distance between marks.
   *
   * @param pair its marks
   * @param planned as the plan has it
   * @param expected the same, set to the tape's division
   * @param limit how far a good reading may be from {@code expected}, whole divisions
   * @param held true when the job's tolerance holds the limit below what tape and marks would give
   * @param alarm chance that a reading is beyond its limit though nothing is wrong
   */
  public record Check(
      MarkPair pair, Length planned, Length expected, Length limit, boolean held, double alarm) {
    /** The shortest reading that passes. */
    public Length least() {
      return expected.minus(limit);
    }

    /** The longest reading that passes. */
    public Length most() {
      return expected.plus(limit);
    }
  }

  /**
   * One distance from a fixed thing.
   *
   * @param station which fixed thing, counted from 0 in the order of the site plan's ties
   * @param mark to which mark
   * @param expected the distance, set to the tape's division
   * @param limit how far a good reading may be from it, whole divisions
   * @param mirrored what it reads when the whole figure is mirrored across the baseline; nothing
   *     where that is the same within the limit
   */
  public record Tie(
      int station, String mark, Length expected, Length limit, Optional<Length> mirrored) {
    /** The shortest reading that passes. */
    public Length least() {
      return expected.minus(limit);
    }

    /** The longest reading that passes. */
    public Length most() {
      return expected.plus(limit);
    }
  }

  /**
   * The largest mistake of one mark that passes, every other mark being right.
   *
   * @param mark its name
   * @param distances how many distances and ties reach it
   * @param radius of the mistake, in the direction in which most passes; nothing when no distance
   *     reaches it, so that everything passes
   * @param within true when the radius is no more than the job's tolerance
   */
  public record Hidden(String mark, int distances, Optional<Length> radius, boolean within) {}

  /**
   * How small the set is.
   *
   * @param smallest true when no set with fewer distances does the same: all were ruled out
   * @param least as many distances any such set has, at least
   * @param possible how many distances were looked at
   * @param all true when these are all that could be taped
   */
  public record Size(boolean smallest, int least, int possible, boolean all) {}

  /** A kind of mistake that concerns more than one mark. */
  public enum Kind {
    /** Two marks exchanged. */
    SWAPPED,
    /** Some marks, not all, on the wrong side of the baseline. */
    MIRRORED_PART,
    /** One tape of the setting out misread by a round amount. */
    SLIPPED,
    /** The whole figure on the wrong side of the baseline. */
    MIRRORED_WHOLE,
    /** The whole figure turned end for end. */
    TURNED_WHOLE,
    /** Both. */
    TURNED_AND_MIRRORED
  }

  /**
   * How many mistakes of a kind were tried.
   *
   * @param kind the kind
   * @param count how many
   * @param byDistances how many of them the distances between marks show
   * @param byTies how many more the ties show
   */
  public record Tried(Kind kind, int count, int byDistances, int byTies) {}

  /**
   * A mistake that nothing shows.
   *
   * @param kind the kind
   * @param marks which marks it is about: the two exchanged, those on the wrong side, the ends of
   *     the tape; none for the whole figure
   */
  public record Unseen(Kind kind, List<String> marks) {
    public Unseen {
      marks = List.copyOf(marks);
    }
  }

  /** The mark whose largest hidden mistake is largest; one that nothing reaches comes first. */
  public Hidden worst() {
    return hidden.stream()
        .reduce((before, each) -> ProvingMarksCalculator.isWorse(each, before) ? each : before)
        .orElseThrow();
  }

  /** True when no single mark can be off by more than the tolerance and pass. */
  public boolean isWithinTolerance() {
    return hidden.stream().allMatch(Hidden::within);
  }

  /** How many of the distances are beyond their limits by chance, on average. */
  public double falseAlarms() {
    return checks.stream().mapToDouble(Check::alarm).sum();
  }
}
