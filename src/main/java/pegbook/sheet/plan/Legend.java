package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import pegbook.job.Feature;
import pegbook.lettering.Lettering;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** What the lines of a plan mean: a sample and a word for each that the plan uses. */
public final class Legend {
  private static final int COLUMNS = 4;
  private static final double ROW_MM = 6;
  private static final double SAMPLE_MM = 12;
  private static final double SIZE = 8;

  private final PlanContent content;
  private final List<Entry> entries = new ArrayList<>();

  /** Names of the lines. */
  public record Names(
      String floor,
      String hole,
      String heap,
      String baseline,
      String route,
      String tie,
      String lotLine,
      String setback,
      String keepClear,
      String buried,
      String overhead,
      String object,
      String benchmark) {}

  private record Entry(String name, BiConsumer<Canvas, Spot> sample) {}

  private Legend(PlanContent content) {
    this.content = content;
  }

  /** Draws the legend of a plan. */
  public static Drawing draw(
      PlanContent content,
      Names names,
      Lettering lettering,
      double widthMm,
      String id,
      String description) {
    Legend legend = new Legend(content);
    legend.figure(names);
    legend.surroundings(names);
    return legend.drawing(lettering, widthMm, id, description);
  }

  private void figure(Names names) {
    line(names.floor(), FigureLayer.FLOOR);
    ring(names.hole(), FigureLayer.HOLE, true);
    if (!content.heaps().isEmpty()) {
      ring(names.heap(), FigureLayer.HEAP, false);
    }
    line(names.baseline(), FigureLayer.BASELINE);
    if (!content.route().isEmpty()) {
      line(names.route(), RouteLayer.ROUTE);
    }
    if (!content.sitePlan().ties().isEmpty()) {
      line(names.tie(), Pen.HAIR.dashed());
    }
  }

  private void surroundings(Names names) {
    if (content.site().boundary().isPresent()) {
      line(names.lotLine(), GroundLayer.LOT_LINE);
      content.site().setback().ifPresent(distance -> line(names.setback(), GroundLayer.SETBACK));
    }
    List<Feature> features = content.site().features();
    if (features.stream().anyMatch(feature -> feature.keepClear().isPresent())) {
      line(names.keepClear(), GroundLayer.ZONE);
    }
    if (has(Feature.Kind.BURIED_LINE)) {
      line(names.buried(), GroundLayer.BURIED);
    }
    if (has(Feature.Kind.OVERHEAD_WIRE)) {
      line(names.overhead(), GroundLayer.OVERHEAD);
    }
    if (has(Feature.Kind.OBJECT)) {
      entries.add(
          new Entry(
              names.object(),
              (canvas, left) -> canvas.dot(Spots.shifted(left, SAMPLE_MM / 2, 0), 1.3)));
    }
    if (content.benchmark().isPresent()) {
      entries.add(
          new Entry(
              names.benchmark(),
              (canvas, left) ->
                  GroundLayer.benchmark(canvas, Spots.shifted(left, SAMPLE_MM / 2, -1.5))));
    }
  }

  private boolean has(Feature.Kind kind) {
    return content.site().features().stream().anyMatch(feature -> feature.kind() == kind);
  }

  private void line(String name, Pen pen) {
    entries.add(
        new Entry(
            name, (canvas, left) -> canvas.line(left, Spots.shifted(left, SAMPLE_MM, 0), pen)));
  }

  private void ring(String name, Pen pen, boolean marked) {
    entries.add(
        new Entry(
            name,
            (canvas, left) -> {
              Spot centre = Spots.shifted(left, SAMPLE_MM / 2, 0);
              canvas.circle(centre, 2, pen);
              if (marked) {
                FigureLayer.cross(canvas, centre, 1.4);
              }
            }));
  }

  private Drawing drawing(Lettering lettering, double widthMm, String id, String description) {
    int rows = (entries.size() + COLUMNS - 1) / COLUMNS;
    Canvas canvas = new Canvas(widthMm, rows * ROW_MM, lettering);
    double column = widthMm / COLUMNS;
    for (int i = 0; i < entries.size(); i++) {
      Spot left =
          new Spot(
              (i % COLUMNS) * column + 1,
              canvas.heightMm() - (Math.floorDiv(i, COLUMNS) + 0.5) * ROW_MM);
      entries.get(i).sample().accept(canvas, left);
      canvas.writeFixed(
          new Element.Label(
              Spots.shifted(left, SAMPLE_MM + 2, 0),
              entries.get(i).name(),
              SIZE,
              Element.Anchor.LEFT_MIDDLE,
              0,
              false,
              false));
    }
    return canvas.drawing(id, description);
  }
}
