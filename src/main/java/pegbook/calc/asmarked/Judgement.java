package pegbook.calc.asmarked;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pegbook.calc.asmarked.AsMarked.Reason;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Verdict;

/**
 * Decides whether one thing can be named.
 *
 * <p>The leading suspect is named when it is enough to explain the distances, is ahead of every
 * other by the lead that the level asks for, and the distances could have told otherwise: they are
 * not all from the baseline, there are at least two more than the figure needs, and at least three
 * tapes reach a mark that is named.
 *
 * @param verdict what is wrong
 * @param reason why nothing is named
 * @param tied suspects that the distances do not tell apart, the leading one first
 */
record Judgement(Verdict verdict, Optional<Reason> reason, List<Suspect> tied) {
  /** Two tapes give a place; the third checks it. */
  static final int TAPES_TO_CHECK = 3;

  Judgement {
    tied = List.copyOf(tied);
  }

  /** Judges distances that fit. */
  static Judgement fits() {
    return new Judgement(Verdict.FITS, Optional.empty(), List.of());
  }

  /**
   * Judges distances of which something is wrong.
   *
   * @param suspects best first, at least one
   * @param first the baseline's first mark
   * @param second its second mark
   */
  static Judgement of(
      List<Distances.Distance> distances, List<Suspect> suspects, String first, String second) {
    Suspect leading = suspects.get(0);
    List<Suspect> tied =
        suspects.stream().filter(suspect -> suspect.lead() < TestLevels.lead()).toList();
    Optional<Reason> reason = reason(distances, leading, tied, first, second);
    Verdict verdict =
        reason.isPresent()
            ? Verdict.UNCLEAR
            : leading.mark().isPresent() ? Verdict.MARK_MOVED : Verdict.READING_WRONG;
    return new Judgement(verdict, reason, tied);
  }

  private static Optional<Reason> reason(
      List<Distances.Distance> distances,
      Suspect leading,
      List<Suspect> tied,
      String first,
      String second) {
    boolean baselineOnly =
        distances.stream()
            .allMatch(distance -> distance.pair().ends(first) || distance.pair().ends(second));
    if (baselineOnly) {
      return Optional.of(Reason.BASELINE_ONLY);
    }
    if (redundancy(distances) < 2) {
      return Optional.of(Reason.ONE_REDUNDANCY);
    }
    if (!leading.isEnough()) {
      return Optional.of(Reason.SEVERAL);
    }
    if (tied.size() > 1) {
      return Optional.of(Reason.EQUAL);
    }
    boolean fewTapes =
        leading
            .mark()
            .filter(mark -> tapesTo(mark, distances) < TAPES_TO_CHECK || leading.quantities() < 2)
            .isPresent();
    return fewTapes ? Optional.of(Reason.TWO_TAPES) : Optional.empty();
  }

  /** Distances beyond those that a figure of so many marks needs. */
  static int redundancy(List<Distances.Distance> distances) {
    Set<String> marks = new LinkedHashSet<>();
    distances.forEach(
        distance -> marks.addAll(List.of(distance.pair().from(), distance.pair().to())));
    return distances.size() - Math.max(1, 2 * marks.size() - 3);
  }

  /** How many distances end at a mark. */
  static long tapesTo(String mark, List<Distances.Distance> distances) {
    return distances.stream().filter(distance -> distance.pair().ends(mark)).count();
  }
}
