package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.floorframe.JoistSizes.Overhang;
import pegbook.job.Frame;

/**
 * Chooses the direction of the joists: that of the job, else among those along and square to the
 * beams round the floor and square to rows of posts through its middle, the one that leaves no post
 * idle, has no short joist with a long overhang where that can be, and the least longest span.
 */
final class LayoutChoice {
  /** An overhang of more than this part of the span next to it is long (DCA 6, Table 2). */
  static final double QUARTER = 0.25;

  /** Spans that differ by less are equal, metres; then the first direction stays. */
  private static final double SAME_SPAN = 0.01;

  private LayoutChoice() {}

  static JoistLayout of(FrameSite site, Frame frame, double ply) {
    double spacing = frame.joistSpacing().metres();
    List<Axes> directions =
        frame
            .along()
            .flatMap(along -> named(site, along))
            .map(List::of)
            .orElseGet(() -> directions(site));
    JoistLayout best = JoistLayout.of(site, directions.get(0), spacing, ply);
    for (Axes axes : directions.subList(1, directions.size())) {
      JoistLayout other = JoistLayout.of(site, axes, spacing, ply);
      best = isBetter(other, best) ? other : best;
    }
    return best;
  }

  private static Optional<Axes> named(FrameSite site, Frame.Along along) {
    return site.post(along.first())
        .flatMap(
            first -> site.post(along.second()).map(second -> Axes.along(first.at(), second.at())));
  }

  private static List<Axes> directions(FrameSite site) {
    List<Axes> directions = new ArrayList<>();
    for (int i = 0; i < site.ring().size(); i++) {
      Axes side =
          Axes.along(site.ring().get(i).at(), site.ring().get((i + 1) % site.ring().size()).at());
      add(directions, side);
      add(directions, side.square());
    }
    for (Post inner : site.inner()) {
      for (Post post : site.ring()) {
        add(directions, Axes.along(inner.at(), post.at()).square());
      }
    }
    return directions;
  }

  private static void add(List<Axes> directions, Axes axes) {
    if (directions.stream().noneMatch(axes::isLike)) {
      directions.add(axes);
    }
  }

  private static boolean isBetter(JoistLayout other, JoistLayout best) {
    if (other.idle().size() != best.idle().size()) {
      return other.idle().size() < best.idle().size();
    }
    int over = longOverhangs(other) - longOverhangs(best);
    return over != 0 ? over < 0 : other.longestSpan() < best.longestSpan() - SAME_SPAN;
  }

  /** Ends of joists that hang over by more than a quarter of the span next to them. */
  static int longOverhangs(JoistLayout layout) {
    return (int)
        Overhang.all(layout).stream().filter(end -> end.length() > QUARTER * end.span()).count();
  }
}
