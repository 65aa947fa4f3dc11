package pegbook.jobfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.geometry.Figure;
import pegbook.geometry.Point;
import pegbook.measure.Length;

/**
 * Holes against each other, seen from above: marks that fall on one place, and circles of the dug
 * diameter that overlap. Of all supports, and for each pier, the worst pair is told.
 */
final class HoleChecks {
  private record Dug(String mark, Point at, Optional<Length> diameter, Node node) {}

  /** Two holes and the ground left between their edges; negative where they overlap. */
  private record Pair(Dug one, Dug other, Length between) {}

  private HoleChecks() {}

  static void look(JobMarks marks, Report report) {
    List<Dug> supports = supports(marks, report);
    worst(supports, List.of()).ifPresent(pair -> complain(pair, pair.other().node(), report));
    List<Dug> before = new ArrayList<>(supports);
    for (Fields pier : marks.piers()) {
      Optional<Dug> dug = pier(pier);
      dug.flatMap(hole -> worst(List.of(hole), before))
          .ifPresent(pair -> complain(pair, pair.one().node(), report));
      dug.ifPresent(before::add);
    }
  }

  private static List<Dug> supports(JobMarks marks, Report report) {
    List<Point> places = marks.figure().map(Figure::supports).orElse(List.of());
    Optional<Fields> fields = report.object(JobKeys.SUPPORTS.name());
    Optional<Length> diameter = fields.flatMap(some -> some.find(FootingKeys.HOLE));
    List<Dug> supports = new ArrayList<>();
    for (Point place : places) {
      // A supports that is no object was refused itself; then the outline stands for the place.
      Node node =
          fields
              .map(some -> some.node(FootingKeys.HOLE))
              .orElseGet(() -> report.object("layout").orElseThrow().node(LayoutKeys.OUTLINE));
      supports.add(new Dug("S" + (supports.size() + 1), place, diameter, node));
    }
    return supports;
  }

  private static Optional<Dug> pier(Fields pier) {
    return pier.find(PierKeys.AT)
        .map(
            at ->
                new Dug(
                    pier.find(PierKeys.ID).orElse("pier"),
                    at,
                    pier.find(PierKeys.HOLE),
                    pier.node(PierKeys.AT)));
  }

  /** The nearest pair of some holes with others, or among themselves when there are no others. */
  private static Optional<Pair> worst(List<Dug> holes, List<Dug> others) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      List<Dug> with = others.isEmpty() ? holes.subList(0, i) : others;
      for (Dug other : with) {
        pair(holes.get(i), other).ifPresent(pairs::add);
      }
    }
    return pairs.stream().min(Comparator.comparing(Pair::between));
  }

  private static Optional<Pair> pair(Dug one, Dug other) {
    Length distance = one.at().distanceTo(other.at());
    if (distance.isLessThan(Corners.APART)) {
      return Optional.of(new Pair(one, other, distance.minus(Length.ofMillimetres(1e6))));
    }
    if (one.diameter().isEmpty() || other.diameter().isEmpty()) {
      return Optional.empty();
    }
    Length radii = one.diameter().get().plus(other.diameter().get()).times(0.5);
    Length between = distance.minus(radii);
    return between.millimetres() < -1e-3
        ? Optional.of(new Pair(one, other, between))
        : Optional.empty();
  }

  private static void complain(Pair pair, Node at, Report report) {
    boolean onePlace = pair.one().at().distanceTo(pair.other().at()).isLessThan(Corners.APART);
    Map<String, String> words =
        Map.of(
            "one",
            pair.other().mark(),
            "other",
            pair.one().mark(),
            "overlap",
            report.written(pair.between().abs()));
    Complaint complaint = onePlace ? Complaint.MARKS_COINCIDE : Complaint.HOLES_OVERLAP;
    report.complain(at.at(), at.path(), complaint.word("found", words), complaint, words);
  }
}
