package pegbook.calc.depthtargets;

import java.util.List;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.published.Citation;

/** Marks whose height is not known. */
final class LevelFindings {
  private LevelFindings() {}

  static List<Finding> of(Placement placement) {
    List<String> unknown =
        placement.marks().stream()
            .filter(mark -> mark.level().isEmpty())
            .map(PlacedMark::id)
            .toList();
    if (unknown.isEmpty()) {
      return List.of();
    }
    boolean none = unknown.size() == placement.marks().size();
    Finding finding =
        Finding.of(
            Kind.NOTE,
            none ? "levels-none" : "levels-missing",
            "ground.levels",
            Decider.CREW,
            Citation.COMMON_PRACTICE);
    return List.of(none ? finding : finding.about(unknown));
  }
}
