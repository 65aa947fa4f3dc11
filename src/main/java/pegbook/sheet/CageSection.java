package pegbook.sheet;

import java.util.List;
import java.util.Map;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.figures.BarPiece;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.LabelPlacer;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drafting.Wording;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A cage cut across, to scale: concrete, ring with its hooks, vertical bars, cover. */
final class CageSection {
  private static final double TYPE = 9;
  private static final double LEFT_MM = 6;
  private static final double LABELS_MM = 34;
  private static final double ABOVE_MM = 8;
  private static final double BELOW_MM = 24;

  private final Writing writing;
  private final Cage cage;
  private final DrawingScale scale;
  private final Canvas canvas;
  private final Spot centre;

  private CageSection(Writing writing, Cage cage, double widthMm) {
    this.writing = writing;
    this.cage = cage;
    double room = widthMm - LEFT_MM - LABELS_MM;
    this.scale = scale(writing, cage.concrete(), room);
    double diameter = scale.millimetres(cage.concrete());
    this.canvas = new Canvas(widthMm, diameter + ABOVE_MM + BELOW_MM, writing.lettering());
    this.centre = new Spot(LEFT_MM + diameter / 2, BELOW_MM + diameter / 2);
  }

  private static DrawingScale scale(Writing writing, Length size, double roomMm) {
    double metres = size.metres();
    Extent square = Extent.of(List.of(Point.ORIGIN, new Point(metres, metres)));
    return DrawingScale.largestThatFits(writing.formats().units(), square, roomMm, roomMm)
        .orElseThrow(() -> new IllegalStateException("no scale for " + size));
  }

  /** The section of a cage, so wide on paper. */
  static Drawing of(Writing writing, Cage cage, String id, double widthMm) {
    CageSection section = new CageSection(writing, cage, widthMm);
    section.draw();
    return section.canvas.drawing(id, section.description());
  }

  private void draw() {
    double outside = scale.millimetres(cage.concrete()) / 2;
    canvas.circle(centre, outside, Pen.THICK);
    cage.rings().ifPresent(this::ring);
    for (int i = 0; i < cage.bars(); i++) {
      canvas.dot(bar(i), scale.millimetres(cage.diameter()) / 2);
    }
    Dimension.draw(
        canvas,
        Spots.shifted(centre, -outside, 0),
        Spots.shifted(centre, outside, 0),
        -outside - 7,
        writing.formats().size(cage.concrete()),
        TYPE);
    label();
    title();
  }

  /** Bars stand evenly round, the first one uppermost. */
  private Spot bar(int number) {
    double radius = cage.bars() == 1 ? 0 : scale.millimetres(cage.barCircle()) / 2;
    return Spots.towards(centre, 90 - 360.0 * number / cage.bars(), radius);
  }

  private void ring(Rings rings) {
    double outer = scale.millimetres(rings.outside()) / 2;
    canvas.circle(centre, outer, Pen.THIN);
    canvas.circle(centre, outer - scale.millimetres(rings.diameter()), Pen.THIN);
    double hook = scale.millimetres(rings.hookExtension());
    double beside = scale.millimetres(cage.diameter()) / 2 + 0.4;
    Spot first = bar(0);
    for (int side = -1; side <= 1; side += 2) {
      Spot bend = Spots.shifted(first, side * beside, 0);
      canvas.under(new Element.Line(bend, Spots.towards(bend, -90 - side * 45, hook), Pen.MEDIUM));
    }
  }

  private void label() {
    LabelPlacer placer = new LabelPlacer(canvas);
    String cover =
        writing
            .texts()
            .say("steel-plan.drawing.cover", Map.of("cover", writing.formats().size(cage.cover())));
    double outside = scale.millimetres(cage.concrete()) / 2;
    double middle = outside - scale.millimetres(cage.cover()) / 2;
    placer.place(
        Wording.of(cover, TYPE), Spots.towards(centre, -35, middle), outside - middle + 1, -20);
    BarPiece vertical = cage.pieces().get(0);
    placer.place(Wording.bold(piece(vertical), TYPE), bar(1 % cage.bars()), 4, 20);
    cage.rings()
        .ifPresent(
            rings ->
                placer.place(
                    Wording.bold(piece(cage.pieces().get(1)), TYPE),
                    Spots.towards(centre, 0, scale.millimetres(rings.outside()) / 2),
                    4,
                    0));
  }

  private String piece(BarPiece piece) {
    return writing
        .texts()
        .say(
            "steel-plan.drawing.piece",
            Map.of(
                "mark", piece.barMark(),
                "count", writing.formats().count(piece.count()),
                "size", piece.size()));
  }

  private void title() {
    canvas.writeFixed(
        new Element.Label(
            new Spot(LEFT_MM, 2),
            writing.texts().say("steel-plan.drawing.section", Map.of("scale", scale.text())),
            TYPE,
            Element.Anchor.LEFT,
            0,
            false,
            false));
  }

  private String description() {
    return writing
        .texts()
        .say(
            "steel-plan.drawing.section-description",
            Map.of(
                "marks", writing.formats().names(cage.marks()),
                "bars", writing.formats().count(cage.bars()),
                "size", cage.size(),
                "concrete", writing.formats().size(cage.concrete()),
                "cover", writing.formats().size(cage.cover())));
  }
}
