package pegbook.calc.levels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.CutPiece;
import pegbook.figures.DatumLine;
import pegbook.figures.Finding;
import pegbook.figures.MarkKind;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.TimberSize;

/**
 * Heights read from the datum line. Heights are above the benchmark, up positive.
 *
 * @param line the datum line, where any level is known
 * @param rows one for each mark whose level is known, in the order of the marks
 * @param unknown marks without a level
 * @param floor the level floor, where its height follows from what is known
 * @param sag how far the line sags, where it has two marks to run between
 */
public record Levels(
    Optional<DatumLine> line,
    List<Row> rows,
    List<String> unknown,
    Optional<LevelFloor> floor,
    Optional<LineSag> sag,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs)
    implements Result {
  public Levels {
    needs = List.copyOf(needs);
    rows = List.copyOf(rows);
    unknown = List.copyOf(unknown);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  /**
   * What a stick held at a mark reads, set to the tape's division.
   *
   * @param mark its name
   * @param kind what stands there
   * @param ground height of the ground
   * @param toGround from the line down to the ground
   * @param toUnderside down to the underside of the concrete
   * @param toBottom down to the bare bottom of the hole
   * @param toTop down to the top of the concrete; negative: up
   */
  public record Row(
      String mark,
      MarkKind kind,
      Length ground,
      Length toGround,
      Length toUnderside,
      Length toBottom,
      Length toTop) {}

  /**
   * A level floor.
   *
   * @param height of the walking surface above the benchmark
   * @param overLine the same above the datum line; negative: below it
   * @param highest the mark under the floor with the highest ground
   * @param buildUp from the posts' tops to the walking surface, where the job says
   * @param posts one for each support
   * @param piers one for each pier whose level is known
   */
  public record LevelFloor(
      Length height,
      Length overLine,
      String highest,
      Optional<Length> buildUp,
      List<Post> posts,
      List<PierTop> piers) {
    public LevelFloor {
      posts = List.copyOf(posts);
      piers = List.copyOf(piers);
    }

    /**
     * What is added to the stick's reading at a real top of concrete to give the post on it, less
     * the build-up where that is known; negative: taken off.
     */
    public Length addToReading() {
      return overLine.minus(buildUp.orElse(Length.ZERO));
    }
  }

  /**
   * A post on a support.
   *
   * @param mark the support
   * @param toFloor from the top of the concrete up to the walking surface
   * @param cut what the post is cut to, set to the division: the same less the floor's build-up,
   *     where that is known
   */
  public record Post(String mark, Length toFloor, Optional<Length> cut) {}

  /** Posts are sawn a little long, then cut to the level line where they stand. */
  private static final Length ROUGH = Length.ofMillimetres(5);

  private static final Length ROUGH_INCHES = Length.ofInches(0.25);

  /**
   * Posts to saw, those alike together, each set up to a whole step.
   *
   * @param size of timber; empty where nobody chose one, and no post is cut
   */
  public List<CutPiece> postPieces(String size) {
    Optional<TimberSize> timber = TimberSize.find(size);
    if (timber.isEmpty()) {
      return List.of();
    }
    Length step = timber.get().units() == UnitSystem.IMPERIAL ? ROUGH_INCHES : ROUGH;
    Map<Long, List<Post>> alike = new LinkedHashMap<>();
    floor.map(LevelFloor::posts).orElse(List.of()).stream()
        .filter(post -> post.cut().filter(cut -> cut.isMoreThan(Length.ZERO)).isPresent())
        .forEach(
            post ->
                alike
                    .computeIfAbsent(
                        Rounding.UP.steps(post.cut().orElseThrow().metres(), step.metres()),
                        any -> new ArrayList<>())
                    .add(post));
    List<CutPiece> pieces = new ArrayList<>();
    alike.forEach(
        (steps, posts) ->
            pieces.add(
                new CutPiece(
                    size,
                    "T" + (pieces.size() + 1),
                    step.times(steps),
                    posts.size(),
                    posts.stream().map(Post::mark).toList(),
                    true)));
    return pieces;
  }

  /**
   * The top of a pier beside the floor.
   *
   * @param mark the pier
   * @param overFloor how far it stands over the walking surface; negative: below
   */
  public record PierTop(String mark, Length overFloor) {}
}
