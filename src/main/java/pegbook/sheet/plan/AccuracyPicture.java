package pegbook.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import pegbook.calc.markaccuracy.MarkAccuracy;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.Verdict;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.PlanFrame;
import pegbook.sheet.drafting.Plate;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * How far each mark may be off: the figure, and at every mark an oval in the shape of its error
 * ellipse that reaches as far as the radius of 95 %, with the tolerance as a circle, both drawn
 * many times larger than the figure. North is up.
 *
 * @param drawing the picture
 * @param times how many times larger than the figure the ovals are
 */
public record AccuracyPicture(Drawing drawing, int times) {
  private static final double MARGIN_MM = 14;
  private static final double LEAST_HEIGHT_MM = 66;

  /** Room for a line of the key above the picture; two lines where the picture is narrow. */
  private static final double FOOT_MM = 9;

  private static final double NARROW_MM = 130;
  private static final double LINE_MM = 6;
  private static final double DOT_MM = 0.6;
  private static final double SIZE = 8;
  private static final int PARTS = 48;

  /** The largest an oval or circle is drawn, and its share of the way to the next mark. */
  private static final double LARGEST_MM = 12;

  private static final double SHARE_OF_GAP = 0.42;

  /** An oval that reaches beyond this many circles is left out: it would hide the others. */
  private static final double MOST_CIRCLES = 4;

  private static final double[] STEPS = {1, 2, 3, 4, 5, 6, 8};

  /** Line of an oval, of the tolerance, of the baseline. */
  private static final Pen OVAL = Pen.MEDIUM;

  private static final Pen TOLERANCE = Pen.THIN.dashed();
  private static final Pen BASELINE = Pen.THIN.centre();

  /**
   * The words on the picture.
   *
   * @param north letter of north
   * @param bar a length written beside the bar
   * @param tolerance what the circle means
   */
  public record Words(String north, Function<Length, String> bar, String tolerance) {}

  /** What is drawn, and with what. */
  private record Painter(
      Placement placement, MarkAccuracy accuracy, Canvas canvas, PlanFrame frame, double times) {
    double millimetres(Length error) {
      return frame.millimetres(error) * times;
    }

    Spot spot(String mark) {
      return frame.spot(placement.mark(mark).at());
    }

    void draw(Words words) {
      double below = footMm(canvas.widthMm()) + 2;
      NorthArrow.draw(canvas, new Spot(NorthArrow.WIDTH_MM / 2, below), words.north());
      foot(words);
      floor();
      canvas.line(spot(accuracy.asked().first()), spot(accuracy.asked().second()), BASELINE);
      accuracy.marks().forEach(this::mark);
      LabelPlacer placer = new LabelPlacer(canvas);
      accuracy.marks().forEach(mark -> name(placer, mark));
    }

    private void floor() {
      if (placement.round()) {
        Point edge = placement.outline().corners().get(0);
        canvas.circle(
            frame.spot(Point.ORIGIN),
            frame.millimetres(Point.ORIGIN.distanceTo(edge)),
            Pen.THIN.grey());
      } else {
        canvas.path(frame.spots(placement.outline()), true, Pen.THIN.grey());
      }
    }

    private void mark(MarkError mark) {
      Spot at = spot(mark.mark());
      canvas.dot(at, DOT_MM);
      canvas.circle(at, millimetres(accuracy.tolerance()), TOLERANCE);
      if (hasOval(accuracy, mark) && mark.ellipse().semiMajor().metres() > 0) {
        canvas.path(oval(at, mark), true, OVAL);
      }
      canvas.keepFree(new Plate(at, DOT_MM + 0.4, DOT_MM + 0.4, 0));
    }

    /** The ellipse's shape, its long half as long as the radius that holds 95 %. */
    private List<Spot> oval(Spot at, MarkError mark) {
      ErrorEllipse ellipse = mark.ellipse();
      double major = millimetres(mark.radius());
      double minor = major * ellipse.semiMinor().dividedBy(ellipse.semiMajor());
      double degrees = 90 - ellipse.azimuth().degrees();
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i < PARTS; i++) {
        double turn = 2 * Math.PI * i / PARTS;
        Spot along = Spots.towards(at, degrees, major * StrictMath.cos(turn));
        spots.add(Spots.towards(along, degrees + 90, minor * StrictMath.sin(turn)));
      }
      return spots;
    }

    private void name(LabelPlacer placer, MarkError mark) {
      Spot at = spot(mark.mark());
      Spot centre = frame.paper();
      double outwards =
          Spots.distanceMm(at, centre) < 0.5 ? 45 : Spots.directionDegrees(centre, at);
      double clear = Math.min(millimetres(accuracy.tolerance()), LARGEST_MM) + 0.8;
      placer.place(Wording.bold(mark.mark(), SIZE), at, clear, outwards);
    }

    /** A bar for the ovals, and what the circle is. */
    private void foot(Words words) {
      Length bar = barLength();
      Spot from = new Spot(2, 3);
      Spot to = Spots.shifted(from, millimetres(bar), 0);
      canvas.line(from, to, Pen.THICK);
      canvas.line(Spots.shifted(from, 0, -1.2), Spots.shifted(from, 0, 1.2), Pen.MEDIUM);
      canvas.line(Spots.shifted(to, 0, -1.2), Spots.shifted(to, 0, 1.2), Pen.MEDIUM);
      write(Spots.shifted(to, 2, 0), words.bar().apply(bar));
      boolean narrow = canvas.widthMm() < NARROW_MM;
      Spot sample = narrow ? new Spot(11, 3 + LINE_MM) : new Spot(canvas.widthMm() / 2, 3);
      canvas.line(Spots.shifted(sample, -9, 0), Spots.shifted(sample, 0, 0), TOLERANCE);
      write(Spots.shifted(sample, 2, 0), words.tolerance());
    }

    private void write(Spot at, String text) {
      canvas.writeFixed(
          new Element.Label(at, text, SIZE, Element.Anchor.LEFT_MIDDLE, 0, false, false));
    }

    /** The longest of 1/4, 1/2, 1, 2 … in, or 5, 10, 20 … mm, that is no longer than 30 mm. */
    private Length barLength() {
      boolean imperial = frame.scale().units() == UnitSystem.IMPERIAL;
      Length least = imperial ? Length.ofInches(0.25) : Length.ofMillimetres(5);
      Length bar = least;
      while (millimetres(bar.times(2)) <= 30) {
        bar = bar.times(2);
      }
      return bar;
    }
  }

  /**
   * Draws the picture.
   *
   * @param widthMm its width
   * @param mostMm the most it may be high
   */
  public static AccuracyPicture draw(
      Placement placement,
      MarkAccuracy accuracy,
      Words words,
      UnitSystem units,
      Lettering lettering,
      double widthMm,
      double mostMm,
      Function<Integer, String> description) {
    Extent extent = Extent.of(placement.outline().corners()).with(marks(placement));
    double foot = footMm(widthMm);
    double wide = widthMm - 2 * MARGIN_MM;
    double high = mostMm - 2 * MARGIN_MM - foot;
    double ratio =
        Math.max(extent.widthMetres() * 1000 / wide, extent.heightMetres() * 1000 / high);
    DrawingScale scale =
        new DrawingScale(units, Length.ofMillimetres(1), Length.ofMillimetres(ratio));
    double shown = scale.millimetres(new Length(extent.heightMetres()));
    double height = Math.max(LEAST_HEIGHT_MM, shown + 2 * MARGIN_MM + foot);
    Canvas canvas = new Canvas(widthMm, Math.min(mostMm, height), lettering);
    Spot middle = new Spot(canvas.widthMm() / 2, (canvas.heightMm() + foot) / 2);
    PlanFrame frame = new PlanFrame(extent.centre(), middle, scale);
    double times = times(placement, accuracy, frame);
    new Painter(placement, accuracy, canvas, frame, times).draw(words);
    int whole = (int) Math.round(times);
    return new AccuracyPicture(
        canvas.drawing("mark-accuracy-picture", description.apply(whole)), whole);
  }

  private static double footMm(double widthMm) {
    return widthMm < NARROW_MM ? FOOT_MM + LINE_MM : FOOT_MM;
  }

  /** Whether a mark's oval is drawn. */
  public static boolean hasOval(MarkAccuracy accuracy, MarkError mark) {
    return mark.verdict() != Verdict.NOT_TOLD
        && mark.radius().dividedBy(accuracy.tolerance()) <= MOST_CIRCLES;
  }

  private static Extent marks(Placement placement) {
    return Extent.of(placement.marks().stream().map(PlacedMark::at).toList());
  }

  /**
   * The largest of 1, 2 … 8, 10, 20 … that keeps ovals and circles apart, as far as there is one.
   */
  private static double times(Placement placement, MarkAccuracy accuracy, PlanFrame frame) {
    Length largest =
        accuracy.marks().stream()
            .filter(mark -> hasOval(accuracy, mark))
            .map(MarkError::radius)
            .reduce(accuracy.tolerance(), Length::max);
    double room = Math.min(LARGEST_MM, SHARE_OF_GAP * frame.millimetres(leastGap(placement)));
    return DoubleStream.of(1, 10, 100, 1000)
        .flatMap(power -> DoubleStream.of(STEPS).map(step -> step * power))
        .filter(times -> frame.millimetres(largest) * times <= Math.max(room, 2))
        .reduce((smaller, larger) -> larger)
        .orElse(1);
  }

  private static Length leastGap(Placement placement) {
    List<Point> marks = placement.marks().stream().map(PlacedMark::at).toList();
    Length least = marks.get(0).distanceTo(marks.get(1));
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        least = least.min(marks.get(i).distanceTo(marks.get(j)));
      }
    }
    return least;
  }
}
