package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A joist from rim to rim, cut where an opening lies in its way.
 *
 * @param line which line of joists, counted across the floor
 * @param y place across, metres
 * @param low from here to {@code high} across it carries the floor
 * @param high the other edge of what it carries
 * @param start inside of the rim at its first end, along it
 * @param end inside of the rim at its other end
 * @param nodes where beams carry it, in order
 * @param cuts openings that cut it, in order
 * @param isOnBeam lies on a beam along its length, or over a corner post
 */
record Joist(
    int line,
    double y,
    double low,
    double high,
    double start,
    double end,
    List<Node> nodes,
    List<Cut> cuts,
    boolean isOnBeam) {
  Joist {
    nodes = List.copyOf(nodes);
    cuts = List.copyOf(cuts);
  }

  /**
   * What an opening takes out of a joist.
   *
   * @param gap which opening
   * @param from middle of the near header
   * @param to middle of the far header
   * @param half from a header's middle to its face
   */
  record Cut(int gap, double from, double to, double half) {}

  /**
   * A piece of it.
   *
   * @param start its first end
   * @param end its other end
   * @param nodes what carries it, in order
   */
  record Part(double start, double end, List<Node> nodes) {
    Part {
      nodes = List.copyOf(nodes);
    }

    double length() {
      return end - start;
    }
  }

  /** The pieces that openings leave of it. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    double from = start;
    List<Node> begun = new ArrayList<>();
    double nodesFrom = Double.NEGATIVE_INFINITY;
    for (Cut cut : cuts) {
      List<Node> here = new ArrayList<>(begun);
      here.addAll(between(nodesFrom, cut.from()));
      here.add(new Node(cut.from(), new Node.OnHeader(cut.gap(), false)));
      parts.add(new Part(from, cut.from() - cut.half(), here));
      from = cut.to() + cut.half();
      nodesFrom = cut.to();
      begun = List.of(new Node(cut.to(), new Node.OnHeader(cut.gap(), true)));
    }
    List<Node> here = new ArrayList<>(begun);
    here.addAll(between(nodesFrom, Double.POSITIVE_INFINITY));
    parts.add(new Part(from, end, here));
    return parts;
  }

  private List<Node> between(double from, double to) {
    return nodes.stream()
        .filter(node -> node.x() > from && node.x() < to)
        .sorted(Comparator.comparingDouble(Node::x))
        .toList();
  }

  /** Whether there is wood of it at a place, which there is not in an opening. */
  boolean reaches(double x) {
    return parts().stream().anyMatch(part -> part.start() < x && x < part.end());
  }

  boolean isCut() {
    return !cuts.isEmpty();
  }

  /** The longest distance from one beam to the next. */
  double longestSpan() {
    double longest = 0;
    for (Part part : parts()) {
      for (int i = 0; i + 1 < part.nodes().size(); i++) {
        longest = Math.max(longest, part.nodes().get(i + 1).x() - part.nodes().get(i).x());
      }
    }
    return longest;
  }
}
