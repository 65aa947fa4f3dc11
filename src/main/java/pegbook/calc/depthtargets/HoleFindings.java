package pegbook.calc.depthtargets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;

/** What depth itself brings: ground water, and buildings whose ground a hole comes near. */
final class HoleFindings {
  private HoleFindings() {}

  static List<Finding> of(Job job, List<Hole> holes) {
    List<Finding> findings = new ArrayList<>();
    job.ground().waterDepth().flatMap(water -> wet(water, holes)).ifPresent(findings::add);
    for (Feature feature : job.site().features()) {
      if (feature.shape() instanceof Feature.Shape.Block block) {
        near(feature, block, holes).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> wet(Length water, List<Hole> holes) {
    List<Hole> wet = holes.stream().filter(hole -> !DepthChoice.isLess(hole.dug(), water)).toList();
    return wet.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Finding(
                    Kind.ASK,
                    "ground-water",
                    marks(wet),
                    "ground.water",
                    Map.of(),
                    Decider.ENGINEER,
                    List.of(Citation.COMMON_PRACTICE))
                .with("water", Argument.of(water))
                .with("deepest", Argument.of(deepest(wet))));
  }

  /**
   * Holes nearer to a building than they are deep: their bottoms may lie below the line that
   * spreads at 45° from its footing, wherever that is.
   */
  private static Optional<Finding> near(
      Feature feature, Feature.Shape.Block block, List<Hole> holes) {
    List<Hole> near =
        holes.stream()
            .filter(hole -> DepthChoice.isLess(clearance(block, hole), hole.dug()))
            .toList();
    return near.stream()
        .map(hole -> clearance(block, hole))
        .min(Length::compareTo)
        .map(
            clearance ->
                new Finding(
                        Kind.ASK,
                        "building-near",
                        marks(near),
                        "site.features",
                        Map.of(),
                        Decider.ENGINEER,
                        List.of(Citation.COMMON_PRACTICE))
                    .with("name", Argument.words(feature.name()))
                    .with("distance", Argument.of(clearance.max(Length.ZERO)))
                    .with("deepest", Argument.of(deepest(near))));
  }

  /** From a hole's edge to a building; negative where the hole lies in or under it. */
  private static Length clearance(Feature.Shape.Block block, Hole hole) {
    Length edge = block.corners().distanceToEdge(hole.centre());
    Length outside = block.corners().contains(hole.centre()) ? edge.negated() : edge;
    return outside.minus(hole.bottomWidth().times(0.5));
  }

  private static List<String> marks(List<Hole> holes) {
    return holes.stream().map(Hole::mark).toList();
  }

  private static Length deepest(List<Hole> holes) {
    return holes.stream().map(Hole::dug).max(Length::compareTo).orElseThrow();
  }
}
