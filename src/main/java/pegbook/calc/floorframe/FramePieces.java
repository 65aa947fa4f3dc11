package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.floorframe.BeamSizes.Beam;
import pegbook.calc.floorframe.FloorFrame.Member;
import pegbook.calc.floorframe.FloorFrame.MemberKind;
import pegbook.figures.CutPiece;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.published.TimberSize;

/**
 * Every piece of the frame: lines for the plan, lengths for the saw. Lengths are those at the
 * longer side, set up to a whole step. A beam runs from the middle of its first post to the middle
 * of its second, and on to the rim where another beam meets it there at an angle.
 */
final class FramePieces {
  /** Joists over a longer span are held upright by blocks in its middle: 8 ft (common practice). */
  private static final double BLOCKED_OVER = 2.44;

  private static final double STRAIGHT = 0.02;

  private final JoistLayout layout;
  private final LoadPath path;
  private final TimberSize joist;
  private final Beam beam;
  private final Length step;
  private final Length longestSold;
  private final double ply;
  private final List<Member> members = new ArrayList<>();
  private final Map<Key, Piece> pieces = new LinkedHashMap<>();
  private final Map<Integer, Double> tails = new LinkedHashMap<>();
  private int rimPieces;
  private int blocks;
  private int tailEnds;
  private int restings;

  /** What makes pieces alike; the length in whole micrometres. */
  private record Key(String letter, String size, long micrometres) {}

  private record Piece(String size, Length length, int count) {}

  FramePieces(
      JoistLayout layout,
      LoadPath path,
      TimberSize joist,
      Beam beam,
      Length step,
      Length longestSold) {
    this.layout = layout;
    this.path = path;
    this.joist = joist;
    this.beam = beam;
    this.step = step;
    this.longestSold = longestSold;
    this.ply = joist.width().metres();
    beams();
    joists();
    headers();
    rim();
    blocks();
  }

  private void add(String letter, String size, double metres, int count) {
    Length length = new Length(metres).setTo(step, Rounding.UP);
    pieces.merge(
        new Key(letter, size, Math.round(length.metres() * 1e6)),
        new Piece(size, length, count),
        (one, other) -> new Piece(size, length, one.count() + other.count()));
  }

  private void draw(MemberKind kind, Point from, Point to) {
    members.add(
        new Member(kind, new Segment(layout.axes().ground(from), layout.axes().ground(to))));
  }

  private void beams() {
    for (int i = 0; i < layout.bays().size(); i++) {
      Bay bay = layout.bays().get(i);
      double tail = bay.isInner() ? 0 : tail(bay);
      tails.put(i, tail);
      add("B", beam.size().size(), bay.length() + tail, beam.plies());
      draw(MemberKind.BEAM, bay.from().at(), bay.line().at(bay.length() + tail, 0));
    }
  }

  /**
   * From the second post to the rim; none where the next beam goes straight on, nor at a corner
   * that points inwards: there the way on leads across the floor.
   */
  private double tail(Bay bay) {
    Bay next =
        layout.bays().stream()
            .filter(other -> !other.isInner() && other.from().equals(bay.to()))
            .findFirst()
            .orElse(bay);
    // The ring goes clockwise: at a corner that points outwards the next beam lies to the right.
    boolean outwards = bay.line().offsetMetres(next.to().at()) < -STRAIGHT * next.length();
    if (!outwards) {
      return 0;
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (Segment side : layout.edge().sides()) {
      double from = bay.line().offsetMetres(side.from());
      double to = bay.line().offsetMetres(side.to());
      if (from * to <= 0 && from != to) {
        double part = from / (from - to);
        double along =
            bay.line().alongMetres(side.at(part * side.length().metres(), 0)) - bay.length();
        nearest = along > -1e-6 ? Math.min(nearest, Math.max(0, along)) : nearest;
      }
    }
    return Double.isFinite(nearest) ? nearest : 0;
  }

  private void joists() {
    for (Joist each : layout.joists()) {
      boolean trims = isTrimmer(each);
      for (Joist.Part part : each.parts()) {
        Point from = new Point(part.start(), each.y());
        Point to = new Point(part.end(), each.y());
        // Over an inner beam a joist ends, and the next begins beside it.
        List<Double> cuts = cuts(part);
        for (int i = 0; i + 1 < cuts.size(); i++) {
          add("J", joist.size(), cuts.get(i + 1) - cuts.get(i), trims ? 2 : 1);
        }
        draw(trims ? MemberKind.DOUBLED : MemberKind.JOIST, from, to);
        restings +=
            (int)
                part.nodes().stream().filter(node -> !(node.on() instanceof Node.OnHeader)).count();
        tailEnds +=
            (int) part.nodes().stream().filter(node -> node.on() instanceof Node.OnHeader).count();
      }
    }
  }

  private List<Double> cuts(Joist.Part part) {
    List<Double> cuts = new ArrayList<>(List.of(part.start()));
    List<Node> nodes = part.nodes();
    for (int i = 1; i + 1 < nodes.size(); i++) {
      cuts.add(nodes.get(i).x());
    }
    cuts.add(part.end());
    return cuts;
  }

  private void headers() {
    for (LoadPath.Header header : path.headers()) {
      add("H", joist.size(), header.high() - header.low() - ply, 2);
      draw(
          MemberKind.HEADER,
          new Point(header.x(), header.low()),
          new Point(header.x(), header.high()));
    }
  }

  private void rim() {
    for (Segment side : layout.edge().sides()) {
      double length = side.length().metres();
      int parts = Math.max(1, (int) Math.ceil(length / longestSold.metres() - 1e-9));
      add("R", joist.size(), length / parts, parts);
      rimPieces += parts;
      draw(MemberKind.RIM, side.from(), side.to());
    }
  }

  /** Between neighbours that both span far, and between joists that end over an inner beam. */
  private void blocks() {
    List<Joist> all = layout.joists();
    for (int i = 0; i + 1 < all.size(); i++) {
      Joist one = all.get(i);
      Joist other = all.get(i + 1);
      if (other.line() != one.line() + 1 || other.y() - one.y() < 3 * ply) {
        continue;
      }
      int plies = 1 + (isDoubledOver(one) ? 1 : 0) + (isDoubledUnder(other) ? 1 : 0);
      List<Double> here = blocked(one);
      List<Double> there = blocked(other);
      for (double x : here) {
        if (there.stream().anyMatch(y -> Math.abs(x - y) < 1) && other.reaches(x)) {
          add(FloorFrame.BLOCKS, joist.size(), other.y() - one.y() - plies * ply, 1);
          blocks++;
          draw(MemberKind.BLOCK, new Point(x, one.y()), new Point(x, other.y()));
        }
      }
    }
  }

  /** The second joist of a pair lies away from the opening: here on the side of the next joist. */
  private boolean isDoubledOver(Joist joist) {
    return isTrimmer(joist)
        && path.headers().stream().anyMatch(header -> header.high() == joist.y());
  }

  /** Or on the side of the joist before. */
  private boolean isDoubledUnder(Joist joist) {
    return isTrimmer(joist)
        && path.headers().stream().anyMatch(header -> header.low() == joist.y());
  }

  private boolean isTrimmer(Joist joist) {
    return path.trimmers().stream().anyMatch(trimmer -> trimmer.joist().equals(joist));
  }

  private static List<Double> blocked(Joist joist) {
    List<Double> places = new ArrayList<>();
    for (Joist.Part part : joist.parts()) {
      List<Node> nodes = part.nodes();
      for (int i = 0; i + 1 < nodes.size(); i++) {
        double span = nodes.get(i + 1).x() - nodes.get(i).x();
        if (span > BLOCKED_OVER && !joist.isOnBeam()) {
          places.add((nodes.get(i).x() + nodes.get(i + 1).x()) / 2);
        }
        if (i > 0 && nodes.get(i).on() instanceof Node.OnBay) {
          places.add(nodes.get(i).x());
        }
      }
    }
    return places;
  }

  List<Member> members() {
    return List.copyOf(members);
  }

  double tail(int bay) {
    return tails.getOrDefault(bay, 0.0);
  }

  /** Pieces to cut: beams, joists, headers, rim, blocks, each longest first under its letter. */
  List<CutPiece> pieces() {
    Map<String, List<Piece>> byLetter = new LinkedHashMap<>();
    pieces.forEach(
        (key, piece) ->
            byLetter.computeIfAbsent(key.letter(), any -> new ArrayList<>()).add(piece));
    List<CutPiece> cut = new ArrayList<>();
    byLetter.forEach(
        (letter, of) -> {
          of.sort((one, other) -> other.length().compareTo(one.length()));
          for (int i = 0; i < of.size(); i++) {
            Piece piece = of.get(i);
            cut.add(
                new CutPiece(
                    piece.size(),
                    letter + (i + 1),
                    piece.length(),
                    piece.count(),
                    List.of(),
                    true));
          }
        });
    return cut;
  }

  int rimPieces() {
    return rimPieces;
  }

  int blockCount() {
    return blocks;
  }

  /** Ends of joists that hang on headers. */
  int tailEnds() {
    return tailEnds;
  }

  /** Places where a joist lies on a beam. */
  int restings() {
    return restings;
  }
}
