package pegbook.calc.powerline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.powerline.PowerLine.Leg;
import pegbook.calc.powerline.PowerLine.Line;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SafePeg;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;

/**
 * The trench among what is on the ground: holes and the bearing lines of their footings, the floor,
 * features with their keep-clear distances, lot lines, heaps, safe pegs. Distances are to the
 * trench's edge.
 *
 * <p>A footing's load spreads down and outwards from the edge of its underside, one in one: nothing
 * is dug below that line (common practice; weak soils want a flatter one).
 */
final class RouteGround {
  private static final String PLACE = "power.route";

  /** Closer than this counts as touching. */
  private static final Length TOLERANCE = Length.ofMillimetres(1);

  /** A peg nearer to the trench than this is soon kicked out: common practice. */
  private static final Length PEG_CLEAR = Length.ofMillimetres(300);

  private final Job job;
  private final Placement placement;
  private final Line line;
  private final List<Hole> holes;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Working> workings = new ArrayList<>();

  RouteGround(Job job, Placement placement, Line line, List<Hole> holes) {
    this.job = job;
    this.placement = placement;
    this.line = line;
    this.holes = holes;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Working> workings() {
    return workings;
  }

  private static Finding finding(Kind kind, String id, Decider decides) {
    return Finding.of(kind, id, PLACE, decides, Citation.COMMON_PRACTICE);
  }

  private static Segment segment(Leg leg) {
    return new Segment(leg.start(), leg.end());
  }

  private List<Leg> legs() {
    return line.route().legs();
  }

  private List<Segment> segments() {
    return legs().stream().map(RouteGround::segment).toList();
  }

  private Length half() {
    return line.trench().width().times(0.5);
  }

  /** From the trench's edge to a place. */
  private Length fromEdge(Point place) {
    return Gap.between(place, segments()).length().minus(half());
  }

  void holes() {
    List<String> through = new ArrayList<>();
    for (Leg leg : legs()) {
      for (Hole hole : holes) {
        Length reach = hole.diameter().times(0.5).plus(half()).minus(TOLERANCE);
        boolean own = leg.toPier() && hole.mark().equals(leg.to());
        if (!own && segment(leg).distanceTo(hole.centre()).isLessThan(reach)) {
          through.add(hole.mark());
        }
      }
    }
    if (!through.isEmpty()) {
      List<String> marks = through.stream().distinct().toList();
      findings.add(
          finding(Kind.STOP, "power-route-through-hole", Decider.OWNER)
              .about(marks)
              .with("holes", Argument.of(marks)));
    }
    bearingLines(through);
  }

  /** The tightest footing's working, and a stop for every one that the trench undermines. */
  private void bearingLines(List<String> except) {
    PowerLineFormulas formulas = PowerLineFormulas.in(job.heading().units());
    List<String> below = new ArrayList<>();
    Optional<Working> tightest = Optional.empty();
    for (Hole hole : holes) {
      boolean own = legs().get(legs().size() - 1).to().equals(hole.mark());
      if (except.contains(hole.mark())) {
        continue;
      }
      // The line's own pier is met head on: there the trench ends at the hole's edge.
      Length beside =
          own
              ? hole.diameter().plus(line.trench().width()).times(0.5)
              : Gap.between(hole.centre(), segments()).length();
      Working above =
          Working.of(
              formulas.bearingLine(),
              hole.mark(),
              beside,
              hole.diameter(),
              line.trench().width(),
              hole.depth(),
              line.trench().deepest());
      if (above.asLength().isLessThan(TOLERANCE.negated())) {
        below.add(hole.mark());
        workings.add(above);
      } else if (tightest.map(one -> above.si() < one.si()).orElse(true)) {
        tightest = Optional.of(above);
      }
    }
    if (below.isEmpty()) {
      tightest.ifPresent(workings::add);
    } else {
      findings.add(
          finding(Kind.STOP, "power-below-bearing-line", Decider.ENGINEER)
              .about(below)
              .with("holes", Argument.of(below))
              .with("depth", Argument.of(line.trench().deepest())));
    }
  }

  /** The route itself stays outside the floor; only its last leg to a pier runs under it. */
  void floor() {
    Optional<Polygon> inner = placement.outline().inset(TOLERANCE);
    if (inner.isEmpty()) {
      return;
    }
    for (Leg leg : legs()) {
      boolean under =
          inner.get().contains(leg.start())
              || inner.get().contains(leg.end())
              || Gap.between(List.of(segment(leg)), inner.get().sides())
                  .length()
                  .isLessThan(new Length(1e-6));
      if (under && !leg.toPier()) {
        findings.add(
            finding(Kind.STOP, "power-route-under-floor", Decider.OWNER)
                .about(List.of(leg.from(), leg.to()))
                .with("from", Argument.words(leg.from()))
                .with("to", Argument.words(leg.to())));
        return;
      }
    }
  }

  void features() {
    job.site().features().forEach(this::feature);
  }

  private void feature(Feature feature) {
    Length distance = distance(feature);
    Length wanted = feature.keepClear().orElse(Length.ZERO);
    boolean breach = distance.plus(new Length(1e-6)).isLessThan(wanted);
    boolean touches = distance.isLessThan(TOLERANCE);
    if (!breach && !touches) {
      return;
    }
    switch (feature.kind()) {
      case BURIED_LINE ->
          add(Kind.STOP, "power-route-buried-line", Decider.UTILITY_SERVICE, feature, distance);
      case OVERHEAD_WIRE ->
          add(Kind.ASK, "power-route-under-wire", Decider.ELECTRICAL_AUTHORITY, feature, distance);
      case OBJECT -> {
        if (!isSource(feature)) {
          add(Kind.ASK, "power-route-object", Decider.OWNER, feature, distance);
        }
      }
    }
  }

  /** A building from which the line comes is not in its way. */
  private boolean isSource(Feature feature) {
    return feature.shape() instanceof Feature.Shape.Block block
        && toBlock(new Segment(line.route().legs().get(0).start(), placeBeside()), block)
            .isLessThan(Length.ofMillimetres(600));
  }

  private Point placeBeside() {
    return segment(legs().get(0)).at(0.001, 0);
  }

  private void add(Kind kind, String id, Decider decides, Feature feature, Length distance) {
    findings.add(
        finding(kind, id, decides)
            .about(List.of(feature.name()))
            .with("feature", Argument.words(feature.name()))
            .with("distance", Argument.of(distance.max(Length.ZERO)))
            .with("keepClear", Argument.of(feature.keepClear().orElse(Length.ZERO))));
  }

  private Length distance(Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Spot spot) {
      return fromEdge(spot.at());
    }
    if (feature.shape() instanceof Feature.Shape.Line other) {
      return Gap.between(segments(), List.of(other.along())).length().minus(half());
    }
    Feature.Shape.Block block = (Feature.Shape.Block) feature.shape();
    return legs().stream()
        .map(leg -> toBlock(segment(leg), block))
        .reduce(Length::min)
        .orElseThrow()
        .minus(half());
  }

  private static Length toBlock(Segment leg, Feature.Shape.Block block) {
    return block.corners().contains(leg.from())
        ? Length.ZERO
        : Gap.between(List.of(leg), block.corners().sides()).length();
  }

  /** Buildings beside the trench, of whose footings nothing is known. */
  void buildings() {
    Length depth = line.trench().deepest();
    for (Feature feature : job.site().features()) {
      boolean near =
          feature.shape() instanceof Feature.Shape.Block
              && feature.kind() == Feature.Kind.OBJECT
              && distance(feature).isLessThan(depth)
              && !distance(feature).isLessThan(TOLERANCE);
      if (near && !isSource(feature)) {
        findings.add(
            finding(Kind.ASK, "power-beside-building", Decider.ENGINEER)
                .about(List.of(feature.name()))
                .with("feature", Argument.words(feature.name()))
                .with("distance", Argument.of(distance(feature)))
                .with("depth", Argument.of(depth)));
      }
    }
  }

  void lot() {
    job.site()
        .boundary()
        .filter(lot -> line.route().places().stream().anyMatch(place -> !lot.contains(place)))
        .ifPresent(lot -> findings.add(finding(Kind.ASK, "power-route-off-lot", Decider.SURVEYOR)));
  }

  void heaps(List<SpoilHeap> heaps) {
    List<String> over =
        heaps.stream()
            .filter(heap -> fromEdge(heap.centre()).isLessThan(heap.radius()))
            .map(heap -> String.join(", ", heap.holes()))
            .toList();
    if (!over.isEmpty()) {
      findings.add(
          finding(Kind.NOTE, "power-heap-on-route", Decider.CREW)
              .with("heaps", Argument.words(String.join("; ", over))));
    }
  }

  void pegs(List<SafePeg> pegs) {
    List<String> near =
        pegs.stream()
            .filter(peg -> fromEdge(peg.at()).isLessThan(PEG_CLEAR))
            .map(SafePeg::id)
            .toList();
    if (!near.isEmpty()) {
      findings.add(
          finding(Kind.NOTE, "power-peg-on-route", Decider.CREW)
              .about(near)
              .with("pegs", Argument.of(near)));
    }
  }
}
