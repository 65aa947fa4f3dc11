package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.measure.Length;

/**
 * Beams and joists for one direction of the joists, in its own axes.
 *
 * <p>Beams go round the floor from post to post, and across it where inner posts stand in a row
 * square to the joists that ends over posts of the ring. Joists lie over the beams: one over every
 * beam that lies along them and over the corner post farthest out, and between those at the spacing
 * asked for, set from the middle.
 *
 * @param axes of the joists
 * @param edge the rim's line
 * @param posts that carry something
 * @param idle posts that no beam passes over
 * @param bays beams, post to post
 * @param joists in order across the floor
 */
record JoistLayout(
    Axes axes,
    Polygon edge,
    List<Post> posts,
    List<Post> idle,
    List<Bay> bays,
    List<Joist> joists) {
  /** Inner posts stand in a row when they are so near to one line, metres. */
  private static final double IN_ROW = 0.01;

  /** Joists nearer than this to the next are one, metres. */
  private static final double TOO_NEAR = 0.076;

  /** Posts may stand right under the rim, metres. */
  private static final double AT_RIM = 0.1;

  private static final double TIE = 1e-6;

  JoistLayout {
    posts = List.copyOf(posts);
    idle = List.copyOf(idle);
    bays = List.copyOf(bays);
    joists = List.copyOf(joists);
  }

  /**
   * Lays them out.
   *
   * @param spacing of the joists at most, metres
   * @param ply thickness of the rim and the joists, metres
   */
  static JoistLayout of(FrameSite site, Axes axes, double spacing, double ply) {
    List<Post> ring = site.ring().stream().map(post -> post.in(axes)).toList();
    List<Post> inner = site.inner().stream().map(post -> post.in(axes)).toList();
    Polygon edge = site.edge().map(axes::local);
    List<Bay> bays = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      bays.add(new Bay(ring.get(i), ring.get((i + 1) % ring.size()), false));
    }
    List<Post> idle = new ArrayList<>();
    List<Post> used = new ArrayList<>(ring);
    for (Post post : inner) {
      if (used.contains(post)) {
        continue;
      }
      List<Post> row = row(post, ring, inner);
      boolean ends = ring.contains(row.get(0)) && ring.contains(row.get(row.size() - 1));
      if (row.size() > 2 && ends) {
        for (int i = 0; i + 1 < row.size(); i++) {
          bays.add(new Bay(row.get(i), row.get(i + 1), true));
        }
        row.stream().filter(each -> !used.contains(each)).forEach(used::add);
      } else {
        idle.add(post);
      }
    }
    List<Joist> joists = new Lines(ring, edge, bays, used, spacing, ply, site, axes).joists();
    return new JoistLayout(axes, edge, used, idle, bays, joists);
  }

  /** Posts in line with one, square to the joists, in order. */
  private static List<Post> row(Post post, List<Post> ring, List<Post> inner) {
    List<Post> row = new ArrayList<>(ring);
    row.addAll(inner);
    row.removeIf(each -> Math.abs(each.at().east() - post.at().east()) > IN_ROW);
    row.sort(java.util.Comparator.comparingDouble(each -> each.at().north()));
    return row;
  }

  double longestSpan() {
    return joists.stream().mapToDouble(Joist::longestSpan).max().orElse(0);
  }

  /** Makes the joists. */
  private record Lines(
      List<Post> ring,
      Polygon edge,
      List<Bay> bays,
      List<Post> posts,
      double spacing,
      double ply,
      FrameSite site,
      Axes axes) {
    List<Joist> joists() {
      List<Double> places = places();
      List<Joist> joists = new ArrayList<>();
      for (int i = 0; i < places.size(); i++) {
        double y = places.get(i);
        double low = i == 0 ? -1e3 : (places.get(i - 1) + y) / 2;
        double high = i + 1 == places.size() ? 1e3 : (places.get(i + 1) + y) / 2;
        joists.addAll(joists(i, y, low, high));
      }
      return joists;
    }

    /** Over what must have one, and evenly between. */
    private List<Double> places() {
      TreeSet<Double> fixed = new TreeSet<>();
      fixed.add(ring.stream().mapToDouble(post -> post.at().north()).min().orElseThrow());
      fixed.add(ring.stream().mapToDouble(post -> post.at().north()).max().orElseThrow());
      bays.stream().filter(Bay::isAlong).forEach(bay -> fixed.add(bay.from().at().north()));
      List<Double> apart = new ArrayList<>();
      for (double y : fixed) {
        if (apart.isEmpty() || y - apart.get(apart.size() - 1) > TOO_NEAR) {
          apart.add(y);
        }
      }
      List<Double> places = new ArrayList<>();
      for (int i = 0; i < apart.size(); i++) {
        places.add(apart.get(i));
        if (i + 1 < apart.size()) {
          places.addAll(between(apart.get(i), apart.get(i + 1)));
        }
      }
      return places;
    }

    /** As few as the spacing allows, or one more where that leaves more of them whole. */
    private List<Double> between(double low, double high) {
      int least = Math.max(0, (int) Math.ceil((high - low) / spacing - TIE) - 1);
      List<Double> few = even(low, high, least);
      List<Double> more = even(low, high, least + 1);
      boolean room = more.get(0) - low > TOO_NEAR;
      return room && cut(more) < cut(few) ? more : few;
    }

    private List<Double> even(double low, double high, int count) {
      List<Double> places = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        places.add((low + high) / 2 + (i - (count - 1) / 2.0) * spacing);
      }
      return places;
    }

    private long cut(List<Double> places) {
      return places.stream().filter(y -> !cuts(y, -1e3, 1e3).isEmpty()).count();
    }

    private List<Joist.Cut> cuts(double y, double start, double end) {
      List<Joist.Cut> cuts = new ArrayList<>();
      for (int i = 0; i < site.gaps().size(); i++) {
        Point centre = axes.local(site.gaps().get(i).opening().centre());
        double radius = site.gaps().get(i).opening().radius().metres();
        boolean inWay = Math.abs(y - centre.north()) < radius + ply / 2 - TIE;
        if (inWay && centre.east() + radius > start && centre.east() - radius < end) {
          // A header is two members thick; its near face is flush with the gap.
          cuts.add(
              new Joist.Cut(i, centre.east() - radius - ply, centre.east() + radius + ply, ply));
        }
      }
      cuts.sort(java.util.Comparator.comparingDouble(Joist.Cut::from));
      return cuts;
    }

    /** One for each stretch of the line inside the rim that beams carry. */
    private List<Joist> joists(int line, double y, double low, double high) {
      List<Double> edges = ends(y);
      List<Joist> joists = new ArrayList<>();
      List<Node> nodes = nodes(y);
      for (int i = 0; i + 1 < edges.size(); i += 2) {
        double from = edges.get(i) - AT_RIM;
        double to = edges.get(i + 1) + AT_RIM;
        List<Node> here = nodes.stream().filter(node -> node.x() > from && node.x() < to).toList();
        double start =
            Math.min(edges.get(i), here.stream().mapToDouble(Node::x).min().orElse(edges.get(i)));
        double end =
            Math.max(
                edges.get(i + 1),
                here.stream().mapToDouble(Node::x).max().orElse(edges.get(i + 1)));
        boolean onBeam =
            here.size() == 1
                || bays.stream()
                    .anyMatch(
                        bay ->
                            bay.isAlong()
                                && Math.abs(bay.from().at().north() - y) < TOO_NEAR
                                && bay.line().middle().east() > start
                                && bay.line().middle().east() < end);
        if (!here.isEmpty()) {
          joists.add(new Joist(line, y, low, high, start, end, here, cuts(y, start, end), onBeam));
        }
      }
      return joists;
    }

    /** Inside of the rim at both ends, where the joist is longest: its ends follow the rim. */
    private List<Double> ends(double y) {
      Polygon inside = edge.inset(new Length(ply)).orElse(edge);
      List<Double> middle = crossings(inside, y);
      List<Double> low = crossings(inside, y - ply / 2);
      List<Double> high = crossings(inside, y + ply / 2);
      List<Double> ends = new ArrayList<>();
      for (int i = 0; i < middle.size(); i++) {
        double end = middle.get(i);
        if (low.size() == middle.size() && high.size() == middle.size()) {
          double one = low.get(i);
          double other = high.get(i);
          end = i % 2 == 0 ? Math.min(one, other) : Math.max(one, other);
        }
        ends.add(end);
      }
      return ends;
    }

    /** Where a line across crosses a closed figure, in order; just beside a corner it passes. */
    private static List<Double> crossings(Polygon figure, double y) {
      List<Double> crossings = new ArrayList<>();
      double beside = y + 1e-9;
      for (Segment side : figure.sides()) {
        double from = side.from().north() - beside;
        double to = side.to().north() - beside;
        if (from > 0 != to > 0) {
          double part = from / (from - to);
          crossings.add(side.from().east() + part * (side.to().east() - side.from().east()));
        }
      }
      crossings.sort(Double::compare);
      return crossings;
    }

    private List<Node> nodes(double y) {
      List<Node> nodes = new ArrayList<>();
      for (Post post : posts) {
        if (Math.abs(post.at().north() - y) < Post.SAME) {
          nodes.add(new Node(post.at().east(), new Node.OnPost(post)));
        }
      }
      for (int i = 0; i < bays.size(); i++) {
        Bay bay = bays.get(i);
        double from = bay.from().at().north() - y;
        double to = bay.to().at().north() - y;
        if (from * to < 0 && Math.min(Math.abs(from), Math.abs(to)) >= Post.SAME) {
          double part = from / (from - to);
          double x =
              bay.from().at().east() + part * (bay.to().at().east() - bay.from().at().east());
          nodes.add(new Node(x, new Node.OnBay(i, part * bay.length())));
        }
      }
      nodes.sort(java.util.Comparator.comparingDouble(Node::x));
      return nodes;
    }
  }
}
