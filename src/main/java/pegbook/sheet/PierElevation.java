package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.FloorGap;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.job.Side;
import pegbook.job.Sleeve;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * A pier cut upright, to scale: ground, gravel, frost depth, concrete, steel, sleeve, bolts, and
 * the floor with the gap to it. One picture holds all of it, so the file is long.
 */
final class PierElevation {
  private static final double TYPE = 9;
  private static final double LEFT_MM = 25;
  private static final double RIGHT_MM = 33;
  private static final double SOIL_MM = 4;
  private static final double ABOVE_MM = 12;
  private static final double BELOW_MM = 18;
  private static final double FROST_SLEEVE_MM = 1.1;

  /** The floor is shown this far beyond the gap, this thick; its frame is not known. */
  private static final Length FLOOR_SHOWN = Length.ofMillimetres(220);

  private static final Length BOARD = Length.ofMillimetres(28);

  /**
   * What is drawn.
   *
   * @param hole with its depths
   * @param pier as the job has it
   * @param gap to the floor
   * @param cage its steel, where it has any
   * @param frost the authority's frost depth, where it is known
   * @param side sleeve against frost, where there is one
   */
  record Content(
      Hole hole,
      Pier pier,
      FloorGap gap,
      Optional<Cage> cage,
      Optional<Length> frost,
      Optional<FrostSleeve> side) {
    /** The walking surface above the ground, where the floor comes up to the pier. */
    Optional<Length> floor() {
      return gap.inside() ? gap.floor().filter(over -> over.isMoreThan(BOARD)) : Optional.empty();
    }

    Length highest() {
      Length bolts = pier.anchors().map(Anchors::above).orElse(Length.ZERO);
      return hole.top().plus(bolts).max(floor().orElse(Length.ZERO));
    }

    Length halfWidth() {
      Length half = hole.diameter().times(0.5);
      return floor().isPresent() ? half.max(gap.opening().times(0.5).plus(FLOOR_SHOWN)) : half;
    }
  }

  private final Writing writing;
  private final Content content;
  private final Hole hole;
  private final DrawingScale scale;
  private final Canvas canvas;
  private final LabelPlacer placer;
  private final double middle;
  private final double far;
  private final double bottom;
  private final double ground;
  private final List<String> leftOver = new ArrayList<>();

  private PierElevation(Writing writing, Content content, Spot size) {
    this.writing = writing;
    this.content = content;
    this.hole = content.hole();
    Length height = hole.dug().plus(content.highest());
    this.scale =
        DrawingScale.largestThatFits(
                writing.formats().units(),
                new Extent(0, 0, content.halfWidth().times(2).metres(), height.metres()),
                size.x() - LEFT_MM - RIGHT_MM - 2 * SOIL_MM,
                size.y() - ABOVE_MM - BELOW_MM)
            .orElseThrow(() -> new IllegalStateException("no scale for " + height));
    this.canvas =
        new Canvas(size.x(), scale.millimetres(height) + ABOVE_MM + BELOW_MM, writing.lettering());
    this.placer = new LabelPlacer(canvas);
    this.middle = LEFT_MM + (size.x() - LEFT_MM - RIGHT_MM) / 2;
    this.far = half(content.halfWidth().times(2)) + SOIL_MM;
    this.bottom = BELOW_MM;
    this.ground = bottom + scale.millimetres(hole.dug());
  }

  /**
   * A drawn pier.
   *
   * @param leftOver words that found no room, for the caption
   */
  record Picture(Drawing drawing, List<String> leftOver) {
    Picture {
      leftOver = List.copyOf(leftOver);
    }
  }

  /**
   * Draws a pier.
   *
   * @param size width on paper, and the greatest height
   */
  static Picture of(Writing writing, Content content, String id, Spot size) {
    PierElevation elevation = new PierElevation(writing, content, size);
    elevation.draw();
    return new Picture(elevation.canvas.drawing(id, elevation.description()), elevation.leftOver);
  }

  private double half(Length diameter) {
    return scale.millimetres(diameter) / 2;
  }

  private double height(Length aboveGround) {
    return ground + scale.millimetres(aboveGround);
  }

  private String say(String key, String name, Length value) {
    return writing.texts().say("pier.drawing." + key, Map.of(name, writing.formats().size(value)));
  }

  private void draw() {
    canvas.writeFixed(
        new Element.Label(
            new Spot(2, 2),
            writing.texts().say("pier.drawing.elevation", Map.of("scale", scale.text())),
            TYPE,
            Element.Anchor.LEFT,
            0,
            false,
            false));
    soil();
    concrete();
    content.side().ifPresent(this::frostSleeve);
    content.cage().ifPresent(this::steel);
    sleeveInConcrete().ifPresent(this::sleeve);
    content.pier().anchors().ifPresent(this::bolts);
    content.floor().ifPresent(this::floor);
    dimensions();
    names();
  }

  private List<Spot> box(double left, double low, double right, double high) {
    return List.of(
        new Spot(left, low), new Spot(right, low), new Spot(right, high), new Spot(left, high));
  }

  private void soil() {
    double edge = half(hole.diameter());
    for (int side = -1; side <= 1; side += 2) {
      double from = middle + side * edge;
      double to = middle + side * far;
      Fills.soil(canvas, box(from, bottom, to, ground));
      Fills.groundLine(
          canvas, new Spot(Math.min(from, to), ground), new Spot(Math.max(from, to), ground));
    }
    Fills.soil(canvas, box(middle - far, bottom - SOIL_MM, middle + far, bottom));
    canvas.path(
        List.of(
            new Spot(middle - edge, ground),
            new Spot(middle - edge, bottom),
            new Spot(middle + edge, bottom),
            new Spot(middle + edge, ground)),
        false,
        Pen.THIN);
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      Fills.gravel(
          canvas, box(middle - edge, bottom, middle + edge, height(hole.depth().negated())));
    }
  }

  private void concrete() {
    double low = half(hole.standing());
    double high = half(hole.formAbove());
    double underside = height(hole.depth().negated());
    double top = height(hole.top());
    canvas.path(
        List.of(
            new Spot(middle - low, underside),
            new Spot(middle + low, underside),
            new Spot(middle + low, ground),
            new Spot(middle + high, ground),
            new Spot(middle + high, top),
            new Spot(middle - high, top),
            new Spot(middle - high, ground),
            new Spot(middle - low, ground)),
        true,
        Pen.THICK);
  }

  /** Drawn thicker than it is, or nobody would see it. */
  private void frostSleeve(FrostSleeve sleeve) {
    double edge = half(sleeve.across());
    double foot = height(sleeve.length().negated());
    double inside = hole.tubeFromBottom().isPresent() ? 0 : FROST_SLEEVE_MM;
    for (int side = -1; side <= 1; side += 2) {
      double from = middle + side * (edge - inside);
      double to = from + side * FROST_SLEEVE_MM;
      canvas.area(box(Math.min(from, to), foot, Math.max(from, to), ground), Ink.BLACK);
    }
  }

  private void steel(Cage cage) {
    new CageBars(canvas, scale, cage, middle, height(hole.depth().negated()))
        .draw(Pen.MEDIUM, Pen.THIN, 2 * half(cage.concrete()));
  }

  /** One that leaves below the concrete has its finding, and no picture. */
  private Optional<Sleeve> sleeveInConcrete() {
    return content
        .pier()
        .sleeve()
        .filter(pipe -> pipe.depth().plus(pipe.outside()).isLessThan(hole.depth()));
  }

  /** Down from the top, then out to the right, wherever it really leaves. */
  private void sleeve(Sleeve pipe) {
    double at = middle + scale.millimetres(pipe.offset());
    double side = half(pipe.outside());
    double turn = height(pipe.depth().negated());
    double end = middle + far;
    canvas.area(box(at - side, turn - side, at + side, height(hole.top())), Ink.WHITE);
    canvas.area(box(at - side, turn - side, end, turn + side), Ink.WHITE);
    canvas.path(
        List.of(
            new Spot(at - side, height(hole.top())),
            new Spot(at - side, turn - side),
            new Spot(end, turn - side)),
        false,
        Pen.MEDIUM);
    canvas.path(
        List.of(
            new Spot(at + side, height(hole.top())),
            new Spot(at + side, turn + side),
            new Spot(end, turn + side)),
        false,
        Pen.MEDIUM);
  }

  private void bolts(Anchors anchors) {
    double reach = half(anchors.circle());
    double head = height(hole.top().plus(anchors.above()));
    double foot = height(hole.top().minus(anchors.embedded()));
    double hook = scale.millimetres(anchors.size()) * 3;
    for (int side = -1; side <= 1; side += 2) {
      double x = middle + side * reach;
      canvas.path(
          List.of(new Spot(x, head), new Spot(x, foot), new Spot(x - side * hook, foot)),
          false,
          Pen.HEAVY);
    }
  }

  private void floor(Length over) {
    double high = height(over);
    double low = height(over.minus(BOARD));
    double inner = half(content.gap().opening());
    for (int side = -1; side <= 1; side += 2) {
      double from = middle + side * inner;
      double to = middle + side * (inner + scale.millimetres(FLOOR_SHOWN));
      canvas.path(box(Math.min(from, to), low, Math.max(from, to), high), true, Pen.MEDIUM);
      canvas.under(
          new Element.Hatch(
              box(Math.min(from, to), low, Math.max(from, to), high), 45, 1.2, Pen.HAIR));
    }
  }

  private void dimensions() {
    double left = middle - far;
    upright(left, hole.depth().negated(), Length.ZERO, 5, hole.depth());
    upright(left, Length.ZERO, hole.top(), 5, hole.top());
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      upright(left, hole.dug().negated(), Length.ZERO, 13, hole.dug());
    }
    across(hole.diameter(), bottom - SOIL_MM, -5);
    if (hole.tube().isPresent()) {
      double bolts =
          content.pier().anchors().map(Anchors::above).map(scale::millimetres).orElse(0.0);
      across(hole.formAbove(), height(hole.top()) + bolts, 4);
    }
  }

  private void upright(double x, Length from, Length to, double offset, Length value) {
    if (to.isMoreThan(from)
        && !Dimension.draw(
            canvas,
            new Spot(x, height(from)),
            new Spot(x, height(to)),
            offset,
            writing.formats().length(value),
            TYPE)) {
      leftOver.add(writing.formats().length(value));
    }
  }

  private void across(Length diameter, double y, double offset) {
    double side = half(diameter);
    if (!Dimension.draw(
        canvas,
        new Spot(middle - side, y),
        new Spot(middle + side, y),
        offset,
        writing.formats().size(diameter),
        TYPE)) {
      leftOver.add(writing.formats().size(diameter));
    }
  }

  /** What is not measured by a line is named at the right, from the top down. */
  private void names() {
    content
        .pier()
        .anchors()
        .ifPresent(
            anchors ->
                point(
                    writing
                        .texts()
                        .say(
                            "pier.drawing.bolts",
                            Map.of(
                                "count", writing.formats().count(anchors.count()),
                                "size", writing.formats().size(anchors.size()))),
                    new Spot(
                        middle + half(anchors.circle()),
                        height(hole.top().plus(anchors.above().times(0.5))))));
    content
        .floor()
        .ifPresent(
            over -> {
              double inner = half(content.gap().opening());
              point(
                  say("floor", "height", over),
                  new Spot(middle + inner + scale.millimetres(FLOOR_SHOWN) * 0.7, height(over)));
              point(
                  say("gap", "gap", content.gap().wanted()),
                  new Spot(
                      (middle + inner + middle + half(hole.formAbove())) / 2,
                      height(over.minus(BOARD)) - 1.5));
            });
    sleeveInConcrete()
        .ifPresent(
            pipe ->
                point(
                    say("sleeve", "size", pipe.outside()),
                    new Spot(middle + far - 1, height(pipe.depth().negated()))));
    content
        .frost()
        .filter(depth -> depth.isMoreThan(Length.ZERO))
        .ifPresent(
            depth -> {
              double y = height(depth.negated());
              if (y < bottom - SOIL_MM) {
                leftOver.add(say("frost", "depth", depth));
                return;
              }
              canvas.line(
                  new Spot(middle - far, y), new Spot(middle + far, y), Pen.MEDIUM.dashed());
              point(say("frost", "depth", depth), new Spot(middle + far - 1, y));
            });
    content
        .side()
        .ifPresent(
            sleeve ->
                point(
                    say("frost-sleeve", "length", sleeve.length()),
                    new Spot(
                        middle + half(sleeve.across()) - FROST_SLEEVE_MM / 2,
                        height(sleeve.length().times(-0.75)))));
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      point(
          say("gravel", "thickness", hole.gravel()),
          new Spot(
              middle + half(hole.diameter()) - 1.5, bottom + scale.millimetres(hole.gravel()) / 2));
    }
    if (hole.tubeFromBottom().map(Tube::inside).filter(hole.diameter()::isMoreThan).isPresent()) {
      point(
          writing.texts().say(isInGravel() ? "pier.drawing.side-gravel" : "pier.drawing.backfill"),
          new Spot(
              middle + (half(hole.diameter()) + half(hole.standing())) / 2,
              height(hole.depth().times(-0.75))));
    }
  }

  private boolean isInGravel() {
    return content.pier().side().equals(Optional.of(Side.GRANULAR_BACKFILL));
  }

  /** A level line from what is named to beyond the soil, and the words at its end. */
  private void point(String words, Spot target) {
    Spot end = new Spot(middle + far + 1.5, target.y());
    canvas.line(target, end, Pen.HAIR);
    Wording wording = Wording.wrapped(words, TYPE, RIGHT_MM - 4, writing.lettering());
    if (!placer.place(wording, end, 0.8, 0)) {
      leftOver.add(words);
    }
  }

  private String description() {
    return writing
        .texts()
        .say(
            "pier.drawing.elevation-description",
            Map.of(
                "mark", hole.mark(),
                "depth", writing.formats().length(hole.depth()),
                "top", writing.formats().length(hole.top())));
  }
}
