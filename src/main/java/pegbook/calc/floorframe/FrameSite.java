package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Placement;
import pegbook.geometry.NearestCells.Opening;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Pier;
import pegbook.measure.Length;

/**
 * What the frame is fitted to.
 *
 * @param outline the floor's edge
 * @param edge the figure that the rim follows; for a circle one with straight sides
 * @param ring supports that the beams go round by, in order
 * @param inner the other supports
 * @param gaps piers that come up inside the edge
 * @param isSound false where the ring crosses itself or the edge, or has fewer than three supports
 */
record FrameSite(
    Polygon outline,
    Polygon edge,
    List<Post> ring,
    List<Post> inner,
    List<PierGap> gaps,
    boolean isSound) {
  /** A support so near to the string round all others stands under it, metres. */
  private static final double ON_STRING = 0.01;

  /** A rim in straight pieces stands off a circle by less than 2 % of its radius. */
  private static final int LEAST_SIDES = 16;

  FrameSite {
    ring = List.copyOf(ring);
    inner = List.copyOf(inner);
    gaps = List.copyOf(gaps);
  }

  /** A pier with its gap. */
  record PierGap(String pier, Opening opening) {}

  static FrameSite of(Job job, Placement placement, List<Hole> holes) {
    List<Post> posts =
        placement.marks().stream()
            .filter(mark -> mark.kind() == MarkKind.SUPPORT)
            .map(mark -> new Post(mark.id(), mark.at()))
            .toList();
    Polygon outline = placement.outline();
    List<Post> ring = isConvex(outline) ? string(posts) : round(outline.clockwise(), posts);
    List<Post> inner = posts.stream().filter(post -> !ring.contains(post)).toList();
    Polygon edge = placement.round() ? straight(outline, ring) : outline;
    return new FrameSite(
        outline, edge, ring, inner, gaps(job, outline, holes), isSound(ring, edge));
  }

  private static boolean isConvex(Polygon outline) {
    List<Segment> sides = outline.clockwise().sides();
    return sides.stream()
        .allMatch(
            side ->
                outline.corners().stream().allMatch(corner -> side.offsetMetres(corner) < 1e-6));
  }

  /** The supports that a string pulled tight round all of them touches, clockwise. */
  private static List<Post> string(List<Post> posts) {
    List<Post> sorted = new ArrayList<>(posts);
    sorted.sort(
        Comparator.comparingDouble((Post post) -> post.at().east())
            .thenComparingDouble(post -> post.at().north()));
    List<Post> corners = new ArrayList<>(half(sorted));
    List<Post> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    corners.addAll(half(back));
    List<Post> ring = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Post from = corners.get(i);
      Segment side = new Segment(from.at(), corners.get((i + 1) % corners.size()).at());
      ring.add(from);
      posts.stream()
          .filter(post -> !corners.contains(post) && !ring.contains(post))
          .filter(post -> side.distanceTo(post.at()).metres() < ON_STRING)
          .sorted(Comparator.comparingDouble(post -> side.alongMetres(post.at())))
          .forEach(ring::add);
    }
    return fromFirst(ring, posts);
  }

  /** One side of the string, its last corner left to the other side. */
  private static List<Post> half(List<Post> sorted) {
    List<Post> side = new ArrayList<>();
    for (Post post : sorted) {
      while (side.size() > 1
          && new Segment(side.get(side.size() - 2).at(), post.at())
                  .offsetMetres(side.get(side.size() - 1).at())
              < 1e-9) {
        side.remove(side.size() - 1);
      }
      side.add(post);
    }
    return side.isEmpty() ? side : side.subList(0, side.size() - 1);
  }

  /** The same ring beginning with the support that has the lowest number in it. */
  private static List<Post> fromFirst(List<Post> ring, List<Post> posts) {
    int first = posts.stream().filter(ring::contains).findFirst().map(ring::indexOf).orElse(0);
    List<Post> turned = new ArrayList<>(ring.subList(first, ring.size()));
    turned.addAll(ring.subList(0, first));
    return turned;
  }

  /**
   * Where the edge has corners that point inwards: the supports near it, in order along it,
   * clockwise.
   */
  private static List<Post> round(Polygon outline, List<Post> posts) {
    double nearest =
        posts.stream()
            .mapToDouble(post -> outline.distanceToEdge(post.at()).metres())
            .min()
            .orElse(0);
    double most = 2 * nearest + 0.3;
    List<Post> near =
        posts.stream()
            .filter(post -> outline.distanceToEdge(post.at()).metres() <= most)
            .sorted(Comparator.comparingDouble(post -> along(outline, post.at())))
            .toList();
    return fromFirst(near, posts);
  }

  /** How far along the edge the place of it lies that is nearest to a support. */
  private static double along(Polygon outline, Point at) {
    double before = 0;
    double best = 0;
    Length nearest = new Length(Double.MAX_VALUE);
    for (Segment side : outline.sides()) {
      if (side.distanceTo(at).isLessThan(nearest)) {
        nearest = side.distanceTo(at);
        best = before + side.from().distanceTo(side.nearest(at)).metres();
      }
      before += side.length().metres();
    }
    return best;
  }

  /** Straight sides for a rim round a circle: a corner at each post and evenly between them. */
  private static Polygon straight(Polygon circle, List<Post> ring) {
    double radius = Point.ORIGIN.distanceTo(circle.corners().get(0)).metres();
    int parts = (LEAST_SIDES + ring.size() - 1) / ring.size();
    int sides = ring.size() * parts;
    Point first = ring.get(0).at();
    double scale = radius / Point.ORIGIN.distanceTo(first).metres();
    Point start = new Point(first.east() * scale, first.north() * scale);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      corners.add(start.turned(pegbook.measure.Angle.ofDegrees(360.0 * i / sides)));
    }
    return new Polygon(corners);
  }

  private static List<PierGap> gaps(Job job, Polygon outline, List<Hole> holes) {
    List<PierGap> gaps = new ArrayList<>();
    for (Pier pier : job.piers()) {
      holes.stream()
          .filter(hole -> hole.mark().equals(pier.id()))
          .map(hole -> new Opening(hole.centre(), hole.headAcross().times(0.5).plus(pier.gap())))
          .filter(
              opening ->
                  outline.contains(opening.centre())
                      || outline.distanceToEdge(opening.centre()).isLessThan(opening.radius()))
          .forEach(opening -> gaps.add(new PierGap(pier.id(), opening)));
    }
    return gaps;
  }

  private static boolean isSound(List<Post> ring, Polygon edge) {
    if (ring.size() < 3) {
      return false;
    }
    Polygon string = new Polygon(ring.stream().map(Post::at).toList());
    return string.isSimple()
        && string.sides().stream().allMatch(side -> isInside(edge, side.middle()))
        && ring.stream().allMatch(post -> isInside(edge, post.at()));
  }

  private static boolean isInside(Polygon edge, Point at) {
    return edge.contains(at) || edge.distanceToEdge(at).metres() < ON_STRING;
  }

  Optional<Post> post(String id) {
    return java.util.stream.Stream.concat(ring.stream(), inner.stream())
        .filter(post -> post.id().equals(id))
        .findFirst();
  }
}
