package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Polygon;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Site;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Draws what is there already: lot lines, setback, features with their zones, the benchmark. */
final class GroundLayer {
  static final Pen LOT_LINE = Pen.MEDIUM.boundary();
  static final Pen SETBACK = Pen.THIN.dashed();
  static final Pen ZONE = Pen.THIN.dotted();
  static final Pen BURIED = Pen.THICK.dashed();
  static final Pen OVERHEAD = Pen.MEDIUM.centre();
  static final Pen OBJECT = Pen.MEDIUM;

  private static final double SPOT_MM = 1.3;
  private static final double BENCHMARK_MM = 1.8;

  private final PlanView view;

  GroundLayer(PlanView view) {
    this.view = view;
  }

  void draw(Site site, Optional<Benchmark> benchmark) {
    site.boundary()
        .ifPresent(
            lot -> {
              view.ring(view.frame().spots(lot), LOT_LINE);
              site.setback()
                  .flatMap(lot::inset)
                  .ifPresent(inner -> view.ring(view.frame().spots(inner), SETBACK));
            });
    site.features().forEach(this::feature);
    benchmark.ifPresent(mark -> benchmark(view.spot(mark.at())));
  }

  private void feature(Feature feature) {
    List<Spot> ring = ring(feature);
    feature.keepClear().ifPresent(distance -> zone(ring, distance));
    if (ring.size() == 1) {
      spot(ring.get(0));
    } else if (ring.size() == 2) {
      view.line(ring.get(0), ring.get(1), pen(feature.kind()));
    } else {
      view.ring(ring, pen(feature.kind()));
    }
  }

  private void zone(List<Spot> ring, Length distance) {
    double millimetres = view.millimetres(distance);
    if (ring.size() == 1) {
      view.circle(ring.get(0), millimetres, ZONE);
    } else if (millimetres > 0) {
      view.ring(Zones.around(ring, millimetres), ZONE);
    }
  }

  /** One place, two ends or the corners, anticlockwise. */
  private List<Spot> ring(Feature feature) {
    if (feature.shape() instanceof Feature.Shape.Spot spot) {
      return List.of(view.spot(spot.at()));
    }
    if (feature.shape() instanceof Feature.Shape.Line line) {
      return List.of(view.spot(line.along().from()), view.spot(line.along().to()));
    }
    Polygon corners = ((Feature.Shape.Block) feature.shape()).corners().clockwise();
    List<Spot> spots = new ArrayList<>(view.frame().spots(corners));
    Collections.reverse(spots);
    return spots;
  }

  private static Pen pen(Feature.Kind kind) {
    return switch (kind) {
      case BURIED_LINE -> BURIED;
      case OVERHEAD_WIRE -> OVERHEAD;
      case OBJECT -> OBJECT;
    };
  }

  private void spot(Spot at) {
    if (view.window().contains(at, SPOT_MM)) {
      view.canvas().dot(at, SPOT_MM);
      view.canvas().keepFree(new Plate(at, SPOT_MM, SPOT_MM, 0));
    }
  }

  private void benchmark(Spot at) {
    if (view.window().contains(at, 2 * BENCHMARK_MM)) {
      benchmark(view.canvas(), at);
    }
  }

  /** A triangle on its tip over the place, as on levelling plans. */
  static void benchmark(Canvas canvas, Spot at) {
    double top = BENCHMARK_MM * 1.7;
    canvas.path(
        List.of(at, Spots.shifted(at, BENCHMARK_MM, top), Spots.shifted(at, -BENCHMARK_MM, top)),
        true,
        Pen.THIN);
    canvas.keepFree(
        Plate.between(at.x() - BENCHMARK_MM, at.y(), at.x() + BENCHMARK_MM, at.y() + top));
  }
}
