package pegbook.calc.levels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.Levels.Post;
import pegbook.calc.levels.Levels.Row;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.published.Citation;

/** What the reader of the levels must act on. */
final class LevelsFindings {
  private LevelsFindings() {}

  static List<Finding> of(Job job, List<Row> rows, FloorHeights heights) {
    List<Finding> findings = new ArrayList<>();
    if (!rows.isEmpty() && job.ground().benchmark().isEmpty()) {
      findings.add(
          Finding.of(
              Kind.ASK,
              "levels-no-benchmark",
              "ground.benchmark",
              Decider.OWNER,
              Citation.COMMON_PRACTICE));
    }
    highLine(job, rows).ifPresent(findings::add);
    if (!heights.missing().isEmpty()) {
      findings.add(note("levels-floor-unknown", "ground.levels").about(heights.missing()));
    }
    heights.floor().flatMap(LevelsFindings::noRoom).ifPresent(findings::add);
    return findings;
  }

  private static Finding note(String id, String place) {
    return Finding.of(Kind.NOTE, id, place, Decider.CREW, Citation.COMMON_PRACTICE);
  }

  /** A line higher over the ground than a person reads a stick; common practice. */
  private static Optional<Finding> highLine(Job job, List<Row> rows) {
    boolean imperial = job.heading().units() == UnitSystem.IMPERIAL;
    Length reach = imperial ? Length.ofFeet(5) : new Length(1.5);
    Length drop = imperial ? Length.ofFeet(4) : new Length(1.2);
    List<Row> high = rows.stream().filter(row -> row.toGround().isMoreThan(reach)).toList();
    return high.stream()
        .max(Comparator.comparing(Row::toGround))
        .map(
            highest ->
                note("levels-line-high", "ground.levels")
                    .about(high.stream().map(Row::mark).toList())
                    .with("reach", Argument.of(reach))
                    .with("highest", Argument.of(highest.toGround()))
                    .with("drop", Argument.of(drop)));
  }

  /** Supports whose concrete leaves no room for a post. */
  private static Optional<Finding> noRoom(LevelFloor floor) {
    List<Post> none =
        floor.posts().stream()
            .filter(post -> !post.cut().orElse(post.toFloor()).isMoreThan(Length.ZERO))
            .toList();
    return none.stream()
        .min(Comparator.comparing(Post::toFloor))
        .map(
            least ->
                Finding.of(
                        Kind.ASK,
                        "levels-no-post",
                        "floor.top",
                        Decider.OWNER,
                        Citation.COMMON_PRACTICE)
                    .about(none.stream().map(Post::mark).toList())
                    .with("mark", Argument.words(least.mark()))
                    .with("room", Argument.of(least.toFloor()))
                    .with("buildUp", Argument.of(floor.buildUp().orElse(Length.ZERO))));
  }
}
