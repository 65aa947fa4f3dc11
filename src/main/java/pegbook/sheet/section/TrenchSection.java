package pegbook.sheet.section;

import static pegbook.sheet.section.SectionFrame.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.lettering.Lettering;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * Draws the section through the trench of the power line, to scale: cover and depth on its left,
 * the names of what lies in it on its right.
 */
public final class TrenchSection {
  /** Height of type, points. */
  private static final double SIZE = 9;

  private static final double LEFT_MM = 30;
  private static final double RIGHT_MM = 42;
  private static final double OVER_MM = 9;
  private static final double BELOW_MM = 11;
  private static final double SOIL_MM = 5;
  private static final double FIRST_LINE_MM = 9;
  private static final double NEXT_LINE_MM = 17;
  private static final double ACROSS_LINE_MM = 7;
  private static final double FILL_SPACING_MM = 3.5;
  private static final double LEAST_PIPE_MM = 0.8;
  private static final double WORDS_MM = 34;

  /** How far over the ground the line to the data pipe's name ends. */
  private static final double DATA_MM = 3;

  /**
   * What is drawn.
   *
   * @param width of the trench
   * @param cover from the ground to the top of the pipe
   * @param depth to the bare bottom
   * @param pipe outside diameter
   * @param data outside diameter of the data pipe, where there is one
   * @param apart ground between the two
   * @param sand under the pipe and over it
   * @param tape depth of the warning tape
   */
  public record Sizes(
      Length width,
      Length cover,
      Length depth,
      Length pipe,
      Optional<Length> data,
      Length apart,
      Length sand,
      Length tape) {}

  /** Its words, finished; empty ones are left out. */
  public record Words(
      String width,
      String cover,
      String depth,
      String pipe,
      String data,
      String sand,
      String tape,
      String fill) {}

  private final Sizes sizes;
  private final Words words;
  private final DrawingScale scale;
  private final Canvas canvas;
  private final LabelPlacer placer;
  private final List<String> leftOver = new ArrayList<>();

  private TrenchSection(Sizes sizes, Words words, DrawingScale scale, Canvas canvas) {
    this.sizes = sizes;
    this.words = words;
    this.scale = scale;
    this.canvas = canvas;
    this.placer = new LabelPlacer(canvas);
  }

  /**
   * Draws it.
   *
   * @param widthMm of the drawing
   * @param heightMm the most that it may be high
   */
  public static HoleSection.Picture draw(
      UnitSystem units,
      Sizes sizes,
      Words words,
      Lettering lettering,
      double widthMm,
      double heightMm,
      String description) {
    DrawingScale scale =
        DrawingScale.largestThatFits(
                units,
                new Extent(0, 0, sizes.width().metres(), sizes.depth().metres()),
                widthMm - LEFT_MM - RIGHT_MM,
                heightMm - OVER_MM - BELOW_MM)
            .orElseThrow(() -> new IllegalArgumentException("a trench too large for every scale"));
    double height = OVER_MM + BELOW_MM + scale.millimetres(sizes.depth());
    Canvas canvas = new Canvas(widthMm, height, lettering);
    TrenchSection section = new TrenchSection(sizes, words, scale, canvas);
    section.fills();
    section.edges();
    section.contents();
    section.dimensions();
    return new HoleSection.Picture(canvas.drawing("trench-section", description), section.leftOver);
  }

  /** The scale in which a trench is drawn, for its caption. */
  public static String scale(UnitSystem units, Sizes sizes, double widthMm, double heightMm) {
    return DrawingScale.largestThatFits(
            units,
            new Extent(0, 0, sizes.width().metres(), sizes.depth().metres()),
            widthMm - LEFT_MM - RIGHT_MM,
            heightMm - OVER_MM - BELOW_MM)
        .map(DrawingScale::text)
        .orElse("");
  }

  private double left() {
    double room = canvas.widthMm() - LEFT_MM - RIGHT_MM;
    return LEFT_MM + (room - scale.millimetres(sizes.width())) / 2;
  }

  private double right() {
    return left() + scale.millimetres(sizes.width());
  }

  private double bottom() {
    return BELOW_MM;
  }

  private double ground() {
    return BELOW_MM + scale.millimetres(sizes.depth());
  }

  private double below(Length depth) {
    return ground() - scale.millimetres(depth);
  }

  private double sandTop() {
    return Math.min(ground(), below(sizes.cover()) + scale.millimetres(sizes.sand()));
  }

  private void fills() {
    Fills.soil(
        canvas,
        List.of(
            new Spot(left() - SOIL_MM, ground()),
            new Spot(left(), ground()),
            new Spot(left(), bottom()),
            new Spot(right(), bottom()),
            new Spot(right(), ground()),
            new Spot(right() + SOIL_MM, ground()),
            new Spot(right() + SOIL_MM, bottom() - SOIL_MM),
            new Spot(left() - SOIL_MM, bottom() - SOIL_MM)));
    canvas.under(
        new Element.Hatch(
            box(left(), sandTop(), right(), ground()), 135, FILL_SPACING_MM, Pen.HAIR));
    Fills.gravel(canvas, box(left(), bottom(), right(), sandTop()));
  }

  private void edges() {
    Fills.groundLine(canvas, new Spot(1, ground()), new Spot(left(), ground()));
    Fills.groundLine(
        canvas, new Spot(right(), ground()), new Spot(right() + SOIL_MM + 4, ground()));
    canvas.line(new Spot(left(), ground()), new Spot(right(), ground()), Pen.THIN.dashed());
    canvas.path(
        List.of(
            new Spot(left(), ground()),
            new Spot(left(), bottom()),
            new Spot(right(), bottom()),
            new Spot(right(), ground())),
        false,
        Pen.THICK);
    canvas.line(new Spot(left(), sandTop()), new Spot(right(), sandTop()), Pen.THIN);
  }

  /** Power in the middle, or beside the data pipe; both tops at the cover. */
  private void contents() {
    double middle = (left() + right()) / 2;
    double pipe = Math.max(LEAST_PIPE_MM, scale.millimetres(sizes.pipe()) / 2);
    double shift =
        sizes.data().map(data -> scale.millimetres(sizes.apart().plus(data)) / 2).orElse(0.0);
    Spot power = new Spot(middle + shift, below(sizes.cover().plus(sizes.pipe().times(0.5))));
    canvas.circle(power, pipe, Pen.THICK);
    canvas.dot(power, pipe * 0.45);
    name(words.tape(), new Spot(right() - 1, below(sizes.tape())));
    canvas.line(
        new Spot(left() + 1, below(sizes.tape())),
        new Spot(right() - 1, below(sizes.tape())),
        Pen.HEAVY.dashed());
    name(words.fill(), new Spot(right() - 1, below(sizes.tape().times(0.45))));
    name(words.pipe(), power);
    name(words.sand(), new Spot(right() - 1, (bottom() + below(sizes.cover())) / 2 - 1.5));
    sizes
        .data()
        .ifPresent(
            data -> {
              double radius = Math.max(LEAST_PIPE_MM, scale.millimetres(data) / 2);
              Spot at =
                  new Spot(
                      power.x() - scale.millimetres(sizes.apart()) - pipe - radius,
                      below(sizes.cover()) - radius);
              canvas.circle(at, radius, Pen.MEDIUM);
              Spot over = new Spot(at.x(), ground() + DATA_MM);
              canvas.line(at, over, Pen.HAIR);
              place(words.data(), over, 90);
            });
  }

  /** A line from a thing to beyond the soil on the right, and its name at the line's end. */
  private void name(String word, Spot thing) {
    Spot end = new Spot(right() + SOIL_MM + 3, thing.y());
    canvas.line(thing, end, Pen.HAIR);
    place(word, end, 0);
  }

  private void place(String word, Spot end, double degrees) {
    Wording wording = Wording.wrapped(word, SIZE, WORDS_MM, canvas.lettering());
    if (!placer.place(wording, end, 0.8, degrees)) {
      leftOver.add(word);
    }
  }

  private void dimensions() {
    upright(below(sizes.cover()), -FIRST_LINE_MM, words.cover());
    upright(bottom(), -NEXT_LINE_MM, words.depth());
    Spot from = new Spot(left(), bottom());
    if (!Dimension.draw(
        canvas, from, new Spot(right(), bottom()), -ACROSS_LINE_MM, words.width(), SIZE)) {
      leftOver.add(words.width());
    }
  }

  private void upright(double to, double besideMm, String value) {
    if (!Dimension.draw(
        canvas, new Spot(left(), ground()), new Spot(left(), to), besideMm, value, SIZE)) {
      leftOver.add(value);
    }
  }
}
