package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.provingmarks.ProvingMarks.Hidden;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.provingmarks.ProvingMarks.Unseen;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.published.Citation;

/** What the distances that prove the marks do not prove. */
final class ProvingMarksFindings {
  private ProvingMarksFindings() {}

  static List<Finding> of(ProvingMarks proving) {
    List<Finding> findings = new ArrayList<>();
    coarse(findings, proving);
    unseen(findings, proving, "proving-marks-swap-hidden", List.of(Kind.SWAPPED));
    unseen(findings, proving, "proving-marks-part-hidden", List.of(Kind.MIRRORED_PART));
    unseen(findings, proving, "proving-marks-slip-hidden", List.of(Kind.SLIPPED));
    if (!proving.ties().isEmpty()) {
      unseen(
          findings,
          proving,
          "proving-marks-whole-hidden",
          List.of(Kind.MIRRORED_WHOLE, Kind.TURNED_WHOLE, Kind.TURNED_AND_MIRRORED));
    }
    return findings;
  }

  private static Finding note(String id, String place) {
    return Finding.of(Finding.Kind.NOTE, id, place, Decider.CREW, Citation.COMMON_PRACTICE);
  }

  private static void coarse(List<Finding> findings, ProvingMarks proving) {
    List<String> never =
        proving.hidden().stream()
            .filter(hidden -> hidden.radius().isEmpty())
            .map(Hidden::mark)
            .toList();
    if (!never.isEmpty()) {
      findings.add(
          note("proving-marks-out-of-reach", "layout.tape.length")
              .about(never)
              .with("marks", Argument.of(never)));
    }
    List<Hidden> coarse =
        proving.hidden().stream()
            .filter(hidden -> !hidden.within() && hidden.radius().isPresent())
            .toList();
    if (!coarse.isEmpty()) {
      Hidden worst =
          coarse.stream()
              .reduce((a, b) -> ProvingMarksCalculator.isWorse(b, a) ? b : a)
              .orElseThrow();
      Length radius = worst.radius().orElseThrow().setTo(proving.division(), Rounding.UP);
      List<String> marks = coarse.stream().map(Hidden::mark).toList();
      findings.add(
          note("proving-marks-coarse", "layout.tape")
              .about(marks)
              .with("marks", Argument.of(marks))
              .with("worst", Argument.words(worst.mark()))
              .with("radius", Argument.of(radius))
              .with("tolerance", Argument.of(proving.tolerance())));
    }
  }

  private static void unseen(
      List<Finding> findings, ProvingMarks proving, String id, List<Kind> kinds) {
    List<Unseen> unseen =
        proving.unseen().stream().filter(some -> kinds.contains(some.kind())).toList();
    if (!unseen.isEmpty()) {
      List<String> names =
          unseen.stream().map(some -> String.join("–", some.marks())).distinct().toList();
      findings.add(
          note(id, "site.features")
              .with("which", Argument.of(names))
              .with("count", Argument.of(names.size())));
    }
  }
}
