package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Dimension;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drafting.Spots;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A cage cut across, to scale: concrete, ring with its hooks, vertical bars, cover. */
final class CageSection {
  private static final double TYPE = 9;
  private static final double LEFT_MM = 2;
  private static final double LABELS_MM = 14;
  private static final double ABOVE_MM = 5;
  private static final double BELOW_MM = 20;

  /** How far the notes spread in all, in radii, and how near one another they may come. */
  private static final double SPREAD = 1.35;

  private static final double LEAST_STEP_MM = 5.2;

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
    title();
    double outside = scale.millimetres(cage.concrete()) / 2;
    canvas.circle(centre, outside, Pen.THICK);
    cage.rings().ifPresent(this::ring);
    for (int i = 0; i < cage.bars(); i++) {
      canvas.dot(bar(i), scale.millimetres(cage.diameter()) / 2);
    }
    cage.uprights().starters().ifPresent(starters -> starters());
    Dimension.draw(
        canvas,
        Spots.shifted(centre, -outside, 0),
        Spots.shifted(centre, outside, 0),
        -outside - 7,
        writing.formats().size(cage.concrete()),
        TYPE);
    label();
  }

  /** Bars stand evenly round, the first one uppermost. */
  private Spot bar(int number) {
    double radius = cage.bars() == 1 ? 0 : scale.millimetres(cage.barCircle()) / 2;
    return Spots.towards(centre, 90 - 360.0 * number / cage.bars(), radius);
  }

  /** Starters lie beside their bars, drawn hollow. */
  private void starters() {
    for (int i = 0; i < cage.bars(); i++) {
      canvas.circle(starter(i), scale.millimetres(cage.diameter()) / 2, Pen.THIN);
    }
  }

  private Spot starter(int number) {
    double radius = scale.millimetres(cage.barCircle()) / 2;
    double beside = scale.millimetres(cage.diameter());
    return cage.bars() == 1
        ? Spots.shifted(centre, beside, 0)
        : Spots.towards(
            centre,
            90 - 360.0 * number / cage.bars() + StrictMath.toDegrees(beside / radius),
            radius);
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

  /** The marks of the bar list and the cover, each with a line to what it names. */
  private void label() {
    double outside = scale.millimetres(cage.concrete()) / 2;
    List<Consumer<Spot>> notes = new ArrayList<>();
    notes.add(end -> note(cage.pieces().get(0).barMark(), bar(1 % cage.bars()), end, true));
    cage.rings()
        .ifPresent(
            rings -> {
              double middle = scale.millimetres(rings.outside().minus(rings.diameter())) / 2;
              String mark = cage.pieces().get(1).barMark();
              notes.add(end -> note(mark, Spots.towards(centre, 0, middle), end, true));
            });
    if (cage.uprights().starters().isPresent()) {
      String mark = cage.pieces().get(cage.pieces().size() - 1).barMark();
      notes.add(end -> note(mark, starter(cage.bars() > 4 ? 2 : 1 % cage.bars()), end, true));
    }
    Spot cover = Spots.towards(centre, -30, outside - scale.millimetres(cage.cover()) / 2);
    notes.add(end -> note(writing.formats().size(cage.cover()), cover, end, false));
    double step = Math.max(LEAST_STEP_MM, SPREAD * outside / (notes.size() - 1));
    Spot top = Spots.shifted(centre, outside + 3, step * (notes.size() - 1) / 2);
    for (int i = 0; i < notes.size(); i++) {
      notes.get(i).accept(Spots.shifted(top, 0, -i * step));
    }
  }

  private void note(String words, Spot target, Spot end, boolean bold) {
    canvas.line(target, end, Pen.HAIR);
    canvas.writeFixed(
        new Element.Label(
            Spots.shifted(end, 0.8, 0),
            words,
            bold ? TYPE + 1 : TYPE,
            Element.Anchor.LEFT_MIDDLE,
            0,
            bold,
            true));
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
