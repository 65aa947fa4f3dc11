package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.calc.siteplan.SitePlan.Keeper;
import pegbook.calc.siteplan.SitePlan.Size;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.Hole;
import pegbook.figures.SpoilHeap;
import pegbook.geometry.Point;
import pegbook.job.Feature;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Names and measures what a plan shows. What finds no room is remembered. */
final class PlanLabels {
  private static final double CLEAR_MM = 1.2;
  private static final double FEATURE_WIDTH_MM = 34;
  private static final double SIDE_OFFSET_MM = 9;

  /** A heap smaller than this on paper goes without a name. */
  private static final double LEAST_HEAP_MM = 3;

  /** As many heaps have names. */
  private static final int MOST_HEAPS = 12;

  /** How far along a line a text is tried. */
  private static final double[] PARTS = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  private final PlanView view;
  private final PlanContent content;
  private final PlanWords words;
  private final double size;
  private final LabelPlacer placer;
  private final List<String> unnamed = new ArrayList<>();

  PlanLabels(PlanView view, PlanContent content, PlanWords words, double size) {
    this.view = view;
    this.content = content;
    this.words = words;
    this.size = size;
    this.placer = view.placer();
  }

  /** Names that found no room. */
  List<String> unnamed() {
    return unnamed;
  }

  /**
   * The marks' names, away from the centre where there is room, each beside its own mark.
   *
   * @param first names that are placed before the others
   */
  void marks(List<String> first) {
    List<Spot> all = content.holes().stream().map(hole -> view.spot(hole.centre())).toList();
    LabelPlacer beside = placer.among(all);
    for (Hole hole : inOrder(first)) {
      Spot centre = view.spot(hole.centre());
      double clear = view.millimetres(hole.diameter()) / 2 + CLEAR_MM;
      if (!beside.place(
          Wording.bold(hole.mark(), size + 1), centre, clear, outwards(hole.centre()))) {
        unnamed.add(hole.mark());
      }
    }
  }

  private List<Hole> inOrder(List<String> first) {
    return Stream.concat(
            first.stream()
                .flatMap(mark -> content.holes().stream().filter(hole -> hole.mark().equals(mark))),
            content.holes().stream().filter(hole -> !first.contains(hole.mark())))
        .toList();
  }

  private double outwards(Point place) {
    boolean central = Point.ORIGIN.distanceTo(place).metres() < 1e-3;
    return central ? 45 : Spots.directionDegrees(view.spot(Point.ORIGIN), view.spot(place));
  }

  private void name(Wording wording, Spot at, double clearMm, double firstDegrees) {
    if (!placer.place(wording, at, clearMm, firstDegrees)) {
      unnamed.add(String.join(" ", wording.lines()));
    }
  }

  /** The outline's sizes: sides beside them, overall sizes beyond the figure. */
  void sizes() {
    for (Size each : content.sitePlan().sizes()) {
      Spot from = view.spot(each.from());
      Spot to = view.spot(each.to());
      double offset = each.across() ? beyond(from, to) + SIDE_OFFSET_MM : SIDE_OFFSET_MM;
      String value = words.length().apply(each.length());
      if (!Dimension.draw(view.canvas(), from, to, offset, value, size)
          && !Dimension.draw(view.canvas(), to, from, offset, value, size)) {
        unnamed.add(value);
      }
    }
  }

  /** How far the floor reaches to the left of a line across it. */
  private double beyond(Spot from, Spot to) {
    double across = Spots.directionDegrees(from, to) + 90;
    double x = StrictMath.cos(StrictMath.toRadians(across));
    double y = StrictMath.sin(StrictMath.toRadians(across));
    return content.placement().outline().corners().stream()
        .map(view::spot)
        .mapToDouble(corner -> (corner.x() - from.x()) * x + (corner.y() - from.y()) * y)
        .max()
        .orElse(0);
  }

  /** Ties as thin lines with number and length. */
  void ties() {
    for (Tie tie : content.sitePlan().ties()) {
      Optional<ClipWindow.Part> part =
          view.window().cut(view.spot(tie.from()), view.spot(tie.to()));
      part.ifPresent(
          seen -> {
            view.canvas().line(seen.from(), seen.to(), Pen.HAIR.dashed());
            along(seen, "T" + tie.number() + " " + words.tape().apply(tie.tape()));
          });
    }
  }

  /** The shortest way from the floor's edge to each lot line. */
  void lotDistances() {
    for (Clearance clearance : content.sitePlan().clearances()) {
      boolean lot = clearance.keeper() == Keeper.FLOOR && clearance.feature().isEmpty();
      if (lot && view.isSeen(clearance.gap().from()) && view.isSeen(clearance.gap().to())) {
        Dimension.between(
            view.canvas(),
            view.spot(clearance.gap().from()),
            view.spot(clearance.gap().to()),
            words.distance().apply(clearance.distance()),
            size);
      }
    }
  }

  /** Writes along a line, where there is room on it, else beside its middle with a leader. */
  private void along(ClipWindow.Part line, String text) {
    LineText writer = new LineText(view.canvas(), line.from(), line.to(), size);
    for (double part : PARTS) {
      if (writer.write(text, part)) {
        return;
      }
    }
    placer.place(Wording.of(text, size), Spots.middle(line.from(), line.to()), CLEAR_MM);
  }

  /** Features, the benchmark with a feature that stands at the same place. */
  void features() {
    Optional<Spot> benchmark =
        content.benchmark().map(mark -> view.spot(mark.at())).filter(view.window()::contains);
    boolean named = false;
    for (Feature feature : content.site().features()) {
      Optional<Spot> anchor = anchor(feature);
      if (anchor.isEmpty()) {
        continue;
      }
      boolean both = benchmark.filter(mark -> Spots.distanceMm(mark, anchor.get()) < 1).isPresent();
      named |= both;
      String text = both ? feature.name() + ", " + words.benchmark() : feature.name();
      name(wrapped(text), anchor.get(), 2 * CLEAR_MM, 0);
    }
    if (benchmark.isPresent() && !named) {
      name(wrapped(words.benchmark()), benchmark.get(), 2 * CLEAR_MM, 0);
    }
  }

  private Wording wrapped(String text) {
    return Wording.wrapped(text, size, FEATURE_WIDTH_MM, view.canvas().lettering());
  }

  /** Where a feature's name points: the place itself, or the middle of the longest part seen. */
  private Optional<Spot> anchor(Feature feature) {
    List<Spot> spots = PlanContent.places(feature.shape()).stream().map(view::spot).toList();
    if (spots.size() == 1) {
      return spots.stream().filter(view.window()::contains).findFirst();
    }
    Optional<ClipWindow.Part> longest = Optional.empty();
    for (int i = 0; i < (spots.size() == 2 ? 1 : spots.size()); i++) {
      Optional<ClipWindow.Part> part =
          view.window().cut(spots.get(i), spots.get((i + 1) % spots.size()));
      if (longest.map(PlanLabels::length).orElse(0.0) < part.map(PlanLabels::length).orElse(0.0)) {
        longest = part;
      }
    }
    return longest.map(part -> Spots.middle(part.from(), part.to()));
  }

  private static double length(ClipWindow.Part part) {
    return Spots.distanceMm(part.from(), part.to());
  }

  /** Names the first lot line and the setback beside it that have room. */
  void lotLines() {
    content
        .site()
        .boundary()
        .ifPresent(
            lot -> {
              alongRing(view.frame().spots(lot), words.lotLine());
              content
                  .site()
                  .setback()
                  .flatMap(lot::inset)
                  .ifPresent(inner -> alongRing(view.frame().spots(inner), words.setback()));
            });
  }

  private void alongRing(List<Spot> ring, String text) {
    for (int i = 0; i < ring.size(); i++) {
      Optional<ClipWindow.Part> part =
          view.window().cut(ring.get(i), ring.get((i + 1) % ring.size()));
      if (part.isPresent() && isWritten(part.get(), text)) {
        return;
      }
    }
  }

  private boolean isWritten(ClipWindow.Part line, String text) {
    LineText writer = new LineText(view.canvas(), line.from(), line.to(), size);
    for (double part : PARTS) {
      if (writer.write(text, part)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Heaps large enough to be seen; they are told apart by their pattern where no name fits. Many
   * names would hide the marks: then the table of heaps says where each lies.
   */
  void heaps() {
    if (content.heaps().size() > MOST_HEAPS) {
      return;
    }
    for (SpoilHeap heap : content.heaps()) {
      double radius = view.millimetres(heap.radius());
      Spot centre = view.spot(heap.centre());
      if (radius >= LEAST_HEAP_MM && view.window().contains(centre)) {
        placer.placeOver(
            Wording.of(words.heap().apply(heap.holes()), size),
            centre,
            radius + CLEAR_MM,
            outwards(heap.centre()));
      }
    }
  }
}
