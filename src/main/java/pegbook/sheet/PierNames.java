package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Hole;
import pegbook.job.Anchors;
import pegbook.job.Side;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Says what is drawn at a pier: lengths along lines, all else by name at the right. */
final class PierNames {
  private static final double TYPE = PierElevation.TYPE;

  private final Writing writing;
  private final Canvas canvas;
  private final LabelPlacer placer;
  private final PierPlaces at;
  private final PierElevation.Content content;
  private final Hole hole;
  private final List<String> leftOver;

  /**
   * Names for a drawing.
   *
   * @param leftOver takes the words that find no room
   */
  PierNames(Writing writing, Canvas canvas, PierPlaces at, List<String> leftOver) {
    this.writing = writing;
    this.canvas = canvas;
    this.placer = new LabelPlacer(canvas);
    this.at = at;
    this.content = at.content();
    this.hole = content.hole();
    this.leftOver = leftOver;
  }

  void draw() {
    dimensions();
    names();
    wideParts();
  }

  private String say(String key, String name, Length value) {
    return writing.texts().say("pier.drawing." + key, Map.of(name, writing.formats().size(value)));
  }

  private void dimensions() {
    double left = at.middle() - at.far();
    upright(left, hole.depth().negated(), Length.ZERO, 5, hole.depth());
    upright(left, Length.ZERO, hole.top(), 5, hole.top());
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      upright(left, hole.dug().negated(), Length.ZERO, 13, hole.dug());
    }
    across(hole.bottomWidth(), at.bottom() - PierPlaces.SOIL_MM, -5);
    if (hole.tube().isPresent() || hole.widenings().cap().isPresent()) {
      double bolts =
          content.pier().anchors().map(Anchors::above).map(at.scale()::millimetres).orElse(0.0);
      across(hole.headWidth(), at.height(hole.top()) + bolts, 4);
    }
  }

  private void upright(double x, Length from, Length to, double offset, Length value) {
    if (to.isMoreThan(from)
        && !Dimension.draw(
            canvas,
            new Spot(x, at.height(from)),
            new Spot(x, at.height(to)),
            offset,
            writing.formats().length(value),
            TYPE)) {
      leftOver.add(writing.formats().length(value));
    }
  }

  private void across(Length diameter, double y, double offset) {
    double side = at.half(diameter);
    if (!Dimension.draw(
        canvas,
        new Spot(at.middle() - side, y),
        new Spot(at.middle() + side, y),
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
                        at.middle() + at.half(anchors.circle()),
                        at.height(hole.top().plus(anchors.above().times(0.5))))));
    content
        .floor()
        .ifPresent(
            over -> {
              double inner = at.half(content.gap().opening());
              point(
                  say("floor", "height", over),
                  new Spot(
                      at.middle() + inner + at.scale().millimetres(PierPlaces.FLOOR_SHOWN) * 0.7,
                      at.height(over)));
              point(
                  say("gap", "gap", content.gap().wanted()),
                  new Spot(
                      (at.middle() + inner + at.middle() + at.half(hole.headWidth())) / 2,
                      at.height(over.minus(PierPlaces.BOARD)) - 1.5));
            });
    at.sleeveInConcrete()
        .ifPresent(
            pipe ->
                point(
                    say("sleeve", "size", pipe.outside()),
                    new Spot(at.middle() + at.far() - 1, at.height(pipe.depth().negated()))));
    content
        .frost()
        .filter(depth -> depth.isMoreThan(Length.ZERO))
        .ifPresent(
            depth -> {
              double y = at.height(depth.negated());
              if (y < at.bottom() - PierPlaces.SOIL_MM) {
                leftOver.add(say("frost", "depth", depth));
                return;
              }
              canvas.line(
                  new Spot(at.middle() - at.far(), y),
                  new Spot(at.middle() + at.far(), y),
                  Pen.MEDIUM.dashed());
              point(say("frost", "depth", depth), new Spot(at.middle() + at.far() - 1, y));
            });
    content
        .side()
        .ifPresent(
            sleeve ->
                point(
                    say("frost-sleeve", "length", sleeve.length()),
                    new Spot(
                        at.middle() + at.half(sleeve.across()) - PierPlaces.FROST_SLEEVE_MM / 2,
                        at.height(sleeve.length().times(-0.75)))));
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      point(
          say("gravel", "thickness", hole.gravel()),
          new Spot(
              at.middle() + at.half(hole.diameter()) - 1.5,
              at.bottom() + at.scale().millimetres(hole.gravel()) / 2));
    }
    if (hole.tubeFromBottom().map(Tube::inside).filter(hole.diameter()::isMoreThan).isPresent()) {
      point(
          writing.texts().say(isInGravel() ? "pier.drawing.side-gravel" : "pier.drawing.backfill"),
          new Spot(
              at.middle() + (at.half(hole.diameter()) + at.half(hole.shaft())) / 2,
              at.height(hole.shaftDepth().times(-0.75))));
    }
  }

  /** Bell, pad and cap, beside their dimension lines. */
  private void wideParts() {
    hole.widenings()
        .bell()
        .ifPresent(
            bell -> {
              Length middle = hole.shaftDepth().plus(bell.flare().times(0.5));
              double edge = (at.half(hole.diameter()) + at.half(bell.diameter())) / 2;
              point(
                  say("bell", "flare", bell.flare()),
                  new Spot(at.middle() + edge, at.height(middle.negated())));
              point(
                  say("hole", "diameter", hole.diameter()),
                  new Spot(
                      at.middle() + at.half(hole.diameter()),
                      at.height(hole.shaftDepth().times(-0.3))));
            });
    hole.widenings()
        .pad()
        .ifPresent(
            pad ->
                point(
                    say("pad", "thickness", pad.thickness()),
                    new Spot(
                        at.middle() + at.half(hole.diameter()) - 1.5,
                        at.height(hole.depth().minus(pad.thickness().times(0.5)).negated()))));
    hole.widenings()
        .cap()
        .ifPresent(
            cap -> {
              point(
                  say("cap", "thickness", cap.thickness()),
                  new Spot(
                      at.middle() + at.half(cap.width()) - 1,
                      at.height(hole.top().minus(cap.thickness().times(0.5)))));
              point(
                  say("shaft", "diameter", hole.formAbove()),
                  new Spot(
                      at.middle() + at.half(hole.formAbove()),
                      at.height(hole.column().times(0.5))));
            });
  }

  private boolean isInGravel() {
    return content.pier().side().equals(Optional.of(Side.GRANULAR_BACKFILL));
  }

  /** A level line from what is named to beyond the soil, and the words at its end. */
  private void point(String words, Spot target) {
    Spot end = new Spot(at.middle() + at.far() + 1.5, target.y());
    canvas.line(target, end, Pen.HAIR);
    Wording wording = Wording.wrapped(words, TYPE, PierElevation.RIGHT_MM - 4, writing.lettering());
    if (!placer.place(wording, end, 0.8, 0)) {
      leftOver.add(words);
    }
  }
}
