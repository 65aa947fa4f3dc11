package pegbook.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pegbook.job.Steel;
import pegbook.job.Tube;
import pegbook.job.Widenings;
import pegbook.measure.Length;

/**
 * Holes that are dug and filled alike, so that one working, one drawing and one row of a list serve
 * them all.
 *
 * @param holes at least one, in the order of the marks
 */
public record AlikeHoles(List<Hole> holes) {
  public AlikeHoles {
    holes = List.copyOf(holes);
    if (holes.isEmpty()) {
      throw new IllegalArgumentException("no holes");
    }
  }

  /** What makes holes alike; lengths in whole micrometres. */
  private record Shape(
      MarkKind kind,
      List<Long> lengths,
      Optional<Tube> tube,
      Optional<Steel> steel,
      Widenings widenings) {
    static Shape of(Hole hole) {
      return new Shape(
          hole.kind(),
          List.of(
              micrometres(hole.diameter()),
              micrometres(hole.depth()),
              micrometres(hole.gravel()),
              micrometres(hole.top())),
          hole.tube(),
          hole.steel(),
          hole.widenings());
    }

    private static long micrometres(Length length) {
      return Math.round(length.metres() * 1e6);
    }
  }

  /** Groups holes by what they are, in the order in which each kind first comes. */
  public static List<AlikeHoles> of(List<Hole> holes) {
    Map<Shape, List<Hole>> byShape = new LinkedHashMap<>();
    holes.forEach(
        hole -> byShape.computeIfAbsent(Shape.of(hole), shape -> new ArrayList<>()).add(hole));
    return byShape.values().stream().map(AlikeHoles::new).toList();
  }

  /** The same, where holes must also be alike in something that they do not tell themselves. */
  public static List<AlikeHoles> of(List<Hole> holes, Function<Hole, ?> also) {
    List<AlikeHoles> finer = new ArrayList<>();
    for (AlikeHoles alike : of(holes)) {
      Map<Object, List<Hole>> parts = new LinkedHashMap<>();
      alike
          .holes()
          .forEach(
              hole -> parts.computeIfAbsent(also.apply(hole), key -> new ArrayList<>()).add(hole));
      parts.values().forEach(part -> finer.add(new AlikeHoles(part)));
    }
    return List.copyOf(finer);
  }

  /** The hole that stands for them all. */
  public Hole first() {
    return holes.get(0);
  }

  public List<String> marks() {
    return holes.stream().map(Hole::mark).toList();
  }

  public int count() {
    return holes.size();
  }

  /** Their marks, for the subject of a working. */
  public String subject() {
    return MarkRuns.brief(marks());
  }
}
