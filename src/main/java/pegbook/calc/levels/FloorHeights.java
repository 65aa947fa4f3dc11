package pegbook.calc.levels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.Levels.PierTop;
import pegbook.calc.levels.Levels.Post;
import pegbook.figures.DatumLine;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Working;
import pegbook.job.Floor;
import pegbook.job.Job;
import pegbook.measure.Length;

/**
 * Heights of a level floor: its walking surface stands so far above the highest ground under it.
 *
 * @param floor where the ground is known at every mark under the floor
 * @param missing marks under the floor whose ground must be read first; empty where the job gives
 *     the floor no height
 */
record FloorHeights(Optional<LevelFloor> floor, List<String> missing) {
  static FloorHeights of(
      Job job,
      Placement placement,
      List<Hole> holes,
      Optional<DatumLine> line,
      List<Working> workings) {
    Optional<Length> top = job.floor().flatMap(Floor::top);
    if (top.isEmpty() || line.isEmpty()) {
      return new FloorHeights(Optional.empty(), List.of());
    }
    List<PlacedMark> under = under(placement);
    List<String> missing =
        under.stream().filter(mark -> mark.level().isEmpty()).map(PlacedMark::id).toList();
    if (!missing.isEmpty() || under.isEmpty()) {
      return new FloorHeights(Optional.empty(), missing);
    }
    PlacedMark highest =
        under.stream().max(Comparator.comparing(mark -> mark.level().orElseThrow())).orElseThrow();
    LevelsFormulas formulas = LevelsFormulas.in(job.heading().units());
    Working height =
        Working.of(
            formulas.floor(), highest.id(), highest.level().orElseThrow(), top.orElseThrow());
    Working over =
        Working.of(formulas.floorOverLine(), "", height.asLength(), line.orElseThrow().height());
    workings.addAll(List.of(height, over));
    Optional<Length> buildUp = job.floor().flatMap(Floor::buildUp);
    Posts posts = new Posts(job, height.asLength(), buildUp, workings);
    return new FloorHeights(
        Optional.of(
            new LevelFloor(
                height.asLength(),
                over.asLength(),
                highest.id(),
                buildUp,
                posts.posts(holes),
                piers(holes, height.asLength()))),
        List.of());
  }

  /** Supports, and piers that stand inside the floor's edge. */
  private static List<PlacedMark> under(Placement placement) {
    return placement.marks().stream()
        .filter(mark -> mark.kind() == MarkKind.SUPPORT || placement.outline().contains(mark.at()))
        .toList();
  }

  private static List<PierTop> piers(List<Hole> holes, Length floor) {
    List<PierTop> tops = new ArrayList<>();
    for (Hole hole : holes) {
      if (hole.kind() == MarkKind.PIER && hole.level().isPresent()) {
        tops.add(new PierTop(hole.mark(), hole.level().get().plus(hole.top()).minus(floor)));
      }
    }
    return tops;
  }

  /** Cuts the posts. */
  private record Posts(Job job, Length floor, Optional<Length> buildUp, List<Working> workings) {
    List<Post> posts(List<Hole> holes) {
      return holes.stream()
          .filter(hole -> hole.kind() == MarkKind.SUPPORT)
          .map(this::post)
          .toList();
    }

    private Post post(Hole hole) {
      LevelsFormulas formulas = LevelsFormulas.in(job.heading().units());
      Length level = hole.level().orElseThrow();
      Length division = job.layout().tape().division();
      Working whole =
          Working.of(formulas.toFloor(), hole.mark(), floor, level, hole.top(), division);
      workings.add(whole);
      Optional<Working> cut =
          buildUp.map(
              depth ->
                  Working.of(
                      formulas.cut(), hole.mark(), floor, level, hole.top(), depth, division));
      cut.ifPresent(workings::add);
      return new Post(hole.mark(), whole.asLength(), cut.map(Working::asLength));
    }
  }
}
