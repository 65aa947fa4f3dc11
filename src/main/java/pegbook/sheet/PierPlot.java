package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import pegbook.calc.pierstiffness.PierStiffness.Other;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Tilt under the push against a size of the pier: dots for the base alone, rings for soil tight all
 * the way down, the pier as planned in a square. The tilt's scale grows by powers.
 */
final class PierPlot {
  private static final double TYPE = 8.5;
  private static final double LEFT_MM = 15;
  private static final double RIGHT_MM = 5;
  private static final double BELOW_MM = 12;
  private static final double ABOVE_MM = 7;
  private static final double HEIGHT_MM = 62;
  private static final double DOT_MM = 0.9;
  private static final double[] STEPS = {1, 2, 5};

  private final Writing writing;
  private final Canvas canvas;
  private final double least;
  private final double most;

  private PierPlot(Writing writing, double widthMm, List<Other> range) {
    this.writing = writing;
    this.canvas = new Canvas(widthMm, HEIGHT_MM, writing.lettering());
    double[] tilts =
        range.stream().flatMap(PierPlot::tilts).mapToDouble(PierPlot::seconds).toArray();
    this.least = below(DoubleStream.of(tilts).min().orElse(1));
    this.most = above(DoubleStream.of(tilts).max().orElse(10));
  }

  private static Stream<Angle> tilts(Other other) {
    return Stream.concat(Stream.of(other.alone()), other.held().stream());
  }

  private static double seconds(Angle angle) {
    return Unit.ARC_SECOND.in(angle);
  }

  /**
   * The plot.
   *
   * @param others the piers shown, in the order of their sizes
   * @param range all piers of the sheet's plots, so that these share one scale
   * @param size the planned pier's own
   * @param words what the size is
   */
  static Drawing of(
      Writing writing,
      String id,
      double widthMm,
      List<Other> others,
      List<Other> range,
      Length size,
      String words) {
    PierPlot plot = new PierPlot(writing, widthMm, range);
    plot.grid();
    plot.sizes(others, size, words);
    plot.curve(others, other -> Optional.of(other.alone()), Pen.MEDIUM, true);
    plot.curve(others, Other::held, Pen.MEDIUM.dashed(), false);
    return plot.canvas.drawing(
        id, writing.texts().say("pier.plot.description", Map.of("what", words)));
  }

  /** The next 1, 2 or 5 at or below a number. */
  private static double below(double number) {
    return rows(number / 100, number).max().orElse(number);
  }

  private static double above(double number) {
    return rows(number, number * 100).min().orElse(number);
  }

  /** All 1, 2, 5, 10… from one number to another. */
  private static DoubleStream rows(double from, double to) {
    DoubleStream.Builder rows = DoubleStream.builder();
    double power = 1e-6;
    for (int i = 0; i < 14; i++) {
      for (double step : STEPS) {
        double row = step * power;
        if (row >= from * (1 - 1e-9) && row <= to * (1 + 1e-9)) {
          rows.add(row);
        }
      }
      power *= 10;
    }
    return rows.build();
  }

  private double height(double seconds) {
    double share = StrictMath.log(seconds / least) / StrictMath.log(Math.max(2, most / least));
    return BELOW_MM + share * (HEIGHT_MM - BELOW_MM - ABOVE_MM);
  }

  private double place(int index, int count) {
    double width = canvas.widthMm() - LEFT_MM - RIGHT_MM - 4;
    return LEFT_MM + 2 + (count == 1 ? width / 2 : width * index / (count - 1));
  }

  private void grid() {
    double right = canvas.widthMm() - RIGHT_MM;
    rows(least, most)
        .forEach(
            row -> {
              double y = height(row);
              canvas.line(new Spot(LEFT_MM, y), new Spot(right, y), Pen.HAIR.grey());
              canvas.write(
                  label(
                      new Spot(LEFT_MM - 1.2, y),
                      SmallNumbers.plain(row),
                      Element.Anchor.RIGHT_MIDDLE));
            });
    canvas.line(new Spot(LEFT_MM, BELOW_MM), new Spot(LEFT_MM, height(most)), Pen.THIN);
    canvas.line(new Spot(LEFT_MM, BELOW_MM), new Spot(right, BELOW_MM), Pen.THIN);
    canvas.write(
        label(
            new Spot(1, HEIGHT_MM - 3.6),
            writing.texts().say("pier.plot.tilt"),
            Element.Anchor.LEFT));
  }

  private void sizes(List<Other> others, Length size, String words) {
    canvas.writeFixed(
        label(
            new Spot((LEFT_MM + canvas.widthMm() - RIGHT_MM) / 2, 1.4),
            words,
            Element.Anchor.CENTRE));
    // The planned size first: the others step aside for it.
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      order.add(others.get(i).isThis() ? 0 : order.size(), i);
    }
    for (int i : order) {
      double x = place(i, others.size());
      canvas.line(new Spot(x, BELOW_MM), new Spot(x, BELOW_MM - 1.2), Pen.THIN);
      canvas.write(
          label(
              new Spot(x, BELOW_MM - 5),
              writing.formats().size(size.plus(others.get(i).change())),
              Element.Anchor.CENTRE));
    }
  }

  private void curve(
      List<Other> others, Function<Other, Optional<Angle>> tilt, Pen pen, boolean filled) {
    Optional<Spot> before = Optional.empty();
    for (int i = 0; i < others.size(); i++) {
      Optional<Angle> value = tilt.apply(others.get(i));
      if (value.isPresent()) {
        Spot spot = new Spot(place(i, others.size()), height(seconds(value.get())));
        before.ifPresent(last -> canvas.line(last, spot, pen));
        before = Optional.of(spot);
        mark(spot, filled, others.get(i).isThis());
      } else {
        before = Optional.empty();
      }
    }
  }

  private void mark(Spot spot, boolean filled, boolean isThis) {
    if (filled) {
      canvas.dot(spot, DOT_MM);
    } else {
      canvas.under(new Element.Circle(spot, DOT_MM, Optional.of(Pen.THIN), Optional.of(Ink.WHITE)));
    }
    if (isThis) {
      double half = 2 * DOT_MM;
      canvas.path(
          List.of(
              Spots.shifted(spot, -half, -half),
              Spots.shifted(spot, half, -half),
              Spots.shifted(spot, half, half),
              Spots.shifted(spot, -half, half)),
          true,
          Pen.MEDIUM);
    }
  }

  private static Element.Label label(Spot at, String words, Element.Anchor anchor) {
    return new Element.Label(at, words, TYPE, anchor, 0, false, true);
  }
}
