package pegbook.calc.markaccuracy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PairError;
import pegbook.calc.markaccuracy.MarkAccuracy.PegPlace;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.calc.markaccuracy.MarkAccuracy.Verdict;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Layout;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.published.Citation;

/**
 * What the reader must act on when marks may be off by more than the tolerance.
 *
 * @param step to which radii are set up, so that one over the tolerance never prints as one on it
 */
record MarkAccuracyFindings(
    Layout layout,
    Length step,
    List<MarkError> marks,
    PairError bestPair,
    Optional<PeggedBaseline> pegged) {

  List<Finding> of(Optional<Remedy> remedy) {
    return remedy.map(this::of).map(List::of).orElse(List.of());
  }

  private Finding of(Remedy remedy) {
    if (remedy instanceof Remedy.OtherPair) {
      return otherPair();
    } else if (remedy instanceof Remedy.ThirdTapes thirds) {
      return thirdTapes(thirds.tapes());
    }
    return remedy instanceof Remedy.Pegs ? pegs(pegged.orElseThrow()) : none();
  }

  private Finding otherPair() {
    return about(finding(Kind.ASK, "mark-accuracy-other-pair", "layout.baseline"))
        .with("first", Argument.words(bestPair.first()))
        .with("second", Argument.words(bestPair.second()))
        .with("better", up(bestPair.radius().orElseThrow()));
  }

  private Finding thirdTapes(List<ThirdTape> tapes) {
    Length worst =
        tapes.stream().map(ThirdTape::radius).max(Comparator.naturalOrder()).orElseThrow();
    return about(finding(Kind.ASK, "mark-accuracy-third-tape", "layout.baseline"))
        .with("from", Argument.of(tapes.stream().map(ThirdTape::from).distinct().toList()))
        .with("better", up(worst));
  }

  private Finding pegs(PeggedBaseline pegs) {
    PegPlace first = pegs.places().get(0);
    PegPlace second = pegs.places().get(1);
    return about(finding(Kind.ASK, "mark-accuracy-pegs", "layout.baseline"))
        .with("better", up(pegs.radius()))
        .with("firstFrom", Argument.words(first.firstMark()))
        .with("firstTape", Argument.of(first.fromFirst()))
        .with("firstOther", Argument.words(first.secondMark()))
        .with("firstOtherTape", Argument.of(first.fromSecond()))
        .with("secondFrom", Argument.words(second.firstMark()))
        .with("secondTape", Argument.of(second.fromFirst()))
        .with("secondOther", Argument.words(second.secondMark()))
        .with("secondOtherTape", Argument.of(second.fromSecond()));
  }

  private Finding none() {
    return about(finding(Kind.ASK, "mark-accuracy-none", "layout.tolerance"))
        .with("best", up(least()));
  }

  /** The smallest worst radius that any of the baselines gives. */
  private Length least() {
    Length worst =
        marks.stream().map(MarkError::radius).max(Comparator.naturalOrder()).orElseThrow();
    Length pair = bestPair.radius().orElse(worst);
    return pegged.map(pegs -> pegs.radius().min(pair)).orElse(pair);
  }

  private Argument up(Length radius) {
    return Argument.of(radius.setTo(step, Rounding.UP));
  }

  private static Finding finding(Kind kind, String id, String place) {
    return Finding.of(kind, id, place, Decider.OWNER, Citation.GEOMETRY);
  }

  private Finding about(Finding finding) {
    List<MarkError> bad = marks.stream().filter(MarkError::isBad).toList();
    MarkError worst =
        bad.stream()
            .max(
                Comparator.comparing((MarkError mark) -> mark.verdict() == Verdict.NOT_TOLD)
                    .thenComparing(MarkError::radius))
            .orElseThrow();
    return finding
        .about(bad.stream().map(MarkError::mark).toList())
        .with("mark", Argument.words(worst.mark()))
        .with(
            "radius",
            worst.verdict() == Verdict.NOT_TOLD
                ? Argument.entry("mark-accuracy.beyond-telling")
                : up(worst.radius()))
        .with("tolerance", Argument.of(layout.tolerance()));
  }
}
