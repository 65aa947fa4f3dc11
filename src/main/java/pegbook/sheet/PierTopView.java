package pegbook.sheet;

import java.util.Map;
import java.util.Optional;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.NorthArrow;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A pier from above, cut under its top, to scale: concrete, steel, bolts, sleeve, opening. */
final class PierTopView {
  private static final double TYPE = 9;
  private static final double SIDE_MM = 12;
  private static final double ABOVE_MM = 5;
  private static final double BELOW_MM = 18;

  private final Writing writing;
  private final PierElevation.Content content;
  private final DrawingScale scale;
  private final Canvas canvas;
  private final Spot centre;
  private final LabelPlacer placer;

  private PierTopView(Writing writing, PierElevation.Content content, double widthMm) {
    this.writing = writing;
    this.content = content;
    Length wide = opening().orElse(content.hole().headAcross());
    double room = widthMm - 2 * SIDE_MM;
    this.scale =
        DrawingScale.largestThatFits(
                writing.formats().units(),
                new Extent(0, 0, wide.metres(), wide.metres()),
                room,
                room)
            .orElseThrow(() -> new IllegalStateException("no scale for " + wide));
    double diameter = scale.millimetres(wide);
    this.canvas =
        new Canvas(widthMm, Math.max(diameter, 26) + ABOVE_MM + BELOW_MM, writing.lettering());
    this.centre = new Spot(widthMm / 2, BELOW_MM + Math.max(diameter, 26) / 2);
    this.placer = new LabelPlacer(canvas);
  }

  /** The floor's opening, where the pier comes up through the floor. */
  private Optional<Length> opening() {
    return content.floor().map(over -> content.gap().opening());
  }

  /** The view of a pier, so wide on paper. */
  static Drawing of(Writing writing, PierElevation.Content content, String id, double widthMm) {
    PierTopView view = new PierTopView(writing, content, widthMm);
    view.draw();
    return view.canvas.drawing(id, view.description());
  }

  private double radius(Length diameter) {
    return scale.millimetres(diameter) / 2;
  }

  private void draw() {
    canvas.writeFixed(
        new Element.Label(
            new Spot(2, 2),
            writing.texts().say("pier.drawing.top", Map.of("scale", scale.text())),
            TYPE,
            Element.Anchor.LEFT,
            0,
            false,
            false));
    NorthArrow.draw(
        canvas,
        new Spot(canvas.widthMm() - 5, canvas.heightMm() - NorthArrow.HEIGHT_MM),
        writing.texts().say("pier.template.north"));
    double side = radius(content.hole().formAbove());
    canvas.circle(centre, side, Pen.THICK);
    content.hole().widenings().cap().ifPresent(this::cap);
    opening().ifPresent(wide -> canvas.circle(centre, radius(wide), Pen.MEDIUM.dashed()));
    content.cage().ifPresent(this::steel);
    content.pier().sleeve().ifPresent(this::sleeve);
    content.pier().anchors().ifPresent(this::bolts);
    Dimension.draw(
        canvas,
        Spots.shifted(centre, -side, 0),
        Spots.shifted(centre, side, 0),
        -opening().map(this::radius).orElse(Math.max(side, radius(content.hole().headWidth()))) - 6,
        writing.formats().size(content.hole().formAbove()),
        TYPE);
    opening()
        .ifPresent(
            wide ->
                placer.place(
                    Wording.wrapped(
                        writing
                            .texts()
                            .say(
                                "pier.drawing.opening",
                                Map.of("opening", writing.formats().size(wide))),
                        TYPE,
                        20,
                        writing.lettering()),
                    Spots.towards(centre, 155, radius(wide)),
                    1,
                    155));
  }

  /** A square one with its sides to the north and east; how it is turned, the job does not say. */
  private void cap(Cap cap) {
    double half = radius(cap.width());
    if (cap.shape() == Shape.ROUND) {
      canvas.circle(centre, half, Pen.THICK);
    } else {
      canvas.path(
          PierPlaces.box(
              centre.x() - half, centre.y() - half, centre.x() + half, centre.y() + half),
          true,
          Pen.THICK);
    }
  }

  private void steel(Cage cage) {
    cage.rings().ifPresent(rings -> canvas.circle(centre, radius(rings.outside()), Pen.HAIR));
    double circle = cage.bars() == 1 ? 0 : radius(cage.barCircle());
    for (int i = 0; i < cage.bars(); i++) {
      canvas.under(
          new Element.Circle(
              Spots.towards(centre, 90 - 360.0 * i / cage.bars(), circle),
              Math.max(0.4, radius(cage.diameter())),
              Optional.of(Pen.THIN),
              Optional.empty()));
    }
  }

  private void sleeve(Sleeve pipe) {
    Spot at =
        Spots.towards(centre, 90 - pipe.towards().degrees(), scale.millimetres(pipe.offset()));
    canvas.circle(at, radius(pipe.outside()), Pen.MEDIUM);
    double edge = radius(content.hole().formAbove());
    canvas.line(
        Spots.towards(at, 90 - pipe.towards().degrees(), radius(pipe.outside())),
        Spots.towards(centre, 90 - pipe.towards().degrees(), edge),
        Pen.THIN.dashed());
  }

  private void bolts(Anchors anchors) {
    double circle = radius(anchors.circle());
    canvas.circle(centre, circle, Pen.HAIR.centre());
    for (int i = 0; i < anchors.count(); i++) {
      double azimuth = anchors.first().degrees() + 360.0 * i / anchors.count();
      canvas.dot(
          Spots.towards(centre, 90 - azimuth, circle), Math.max(0.5, radius(anchors.size())));
    }
  }

  private String description() {
    return writing
        .texts()
        .say(
            "pier.drawing.top-description",
            Map.of(
                "mark", content.hole().mark(),
                "size", writing.formats().size(content.hole().formAbove())));
  }
}
