package pegbook.sheet;

import java.util.List;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.figures.FrostSleeve;
import pegbook.figures.Hole;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** Draws what stands at a pier, from the soil up to the floor, each over what lies behind it. */
final class PierParts {
  private final Canvas canvas;
  private final PierPlaces at;
  private final PierElevation.Content content;
  private final Hole hole;

  PierParts(Canvas canvas, PierPlaces at) {
    this.canvas = canvas;
    this.at = at;
    this.content = at.content();
    this.hole = content.hole();
  }

  void draw() {
    soil();
    concrete();
    content.side().ifPresent(this::frostSleeve);
    content.cage().ifPresent(this::steel);
    at.sleeveInConcrete().ifPresent(this::sleeve);
    content.pier().anchors().ifPresent(this::bolts);
    content.floor().ifPresent(this::floor);
  }

  private void soil() {
    double edge = at.half(hole.diameter());
    for (int side = -1; side <= 1; side += 2) {
      double from = at.middle() + side * edge;
      double to = at.middle() + side * at.far();
      Fills.soil(canvas, at.outline().soil(side, at.far()));
      Fills.groundLine(
          canvas,
          new Spot(Math.min(from, to), at.ground()),
          new Spot(Math.max(from, to), at.ground()));
    }
    Fills.soil(
        canvas,
        PierPlaces.box(
            at.middle() - at.far(),
            at.bottom() - PierPlaces.SOIL_MM,
            at.middle() + at.far(),
            at.bottom()));
    canvas.path(at.outline().wall(), false, Pen.THIN);
    if (hole.gravel().isMoreThan(Length.ZERO)) {
      Fills.gravel(
          canvas,
          PierPlaces.box(
              at.middle() - at.half(hole.bottomWidth()),
              at.bottom(),
              at.middle() + at.half(hole.bottomWidth()),
              at.height(hole.depth().negated())));
    }
  }

  private void concrete() {
    canvas.path(at.outline().concrete(), true, Pen.THICK);
  }

  /** Drawn thicker than it is, or nobody would see it. */
  private void frostSleeve(FrostSleeve sleeve) {
    double edge = at.half(sleeve.across());
    double foot = at.height(sleeve.length().negated());
    double inside = hole.tubeFromBottom().isPresent() ? 0 : PierPlaces.FROST_SLEEVE_MM;
    for (int side = -1; side <= 1; side += 2) {
      double from = at.middle() + side * (edge - inside);
      double to = from + side * PierPlaces.FROST_SLEEVE_MM;
      canvas.area(
          PierPlaces.box(Math.min(from, to), foot, Math.max(from, to), at.ground()), Ink.BLACK);
    }
  }

  private void steel(Cage cage) {
    new CageBars(canvas, at.scale(), cage, at.middle(), at.height(hole.depth().negated()))
        .draw(Pen.MEDIUM, Pen.THIN, 2 * at.half(cage.concrete()));
  }

  /** Down from the top, then out to the right, wherever it really leaves. */
  private void sleeve(Sleeve pipe) {
    double axis = at.middle() + at.scale().millimetres(pipe.offset());
    double side = at.half(pipe.outside());
    double turn = at.height(pipe.depth().negated());
    double end = at.middle() + at.far();
    canvas.area(
        PierPlaces.box(axis - side, turn - side, axis + side, at.height(hole.top())), Ink.WHITE);
    canvas.area(PierPlaces.box(axis - side, turn - side, end, turn + side), Ink.WHITE);
    canvas.path(
        List.of(
            new Spot(axis - side, at.height(hole.top())),
            new Spot(axis - side, turn - side),
            new Spot(end, turn - side)),
        false,
        Pen.MEDIUM);
    canvas.path(
        List.of(
            new Spot(axis + side, at.height(hole.top())),
            new Spot(axis + side, turn + side),
            new Spot(end, turn + side)),
        false,
        Pen.MEDIUM);
  }

  private void bolts(Anchors anchors) {
    double reach = at.half(anchors.circle());
    double head = at.height(hole.top().plus(anchors.above()));
    double foot = at.height(hole.top().minus(anchors.embedded()));
    double hook = at.scale().millimetres(anchors.size()) * 3;
    for (int side = -1; side <= 1; side += 2) {
      double x = at.middle() + side * reach;
      canvas.path(
          List.of(new Spot(x, head), new Spot(x, foot), new Spot(x - side * hook, foot)),
          false,
          Pen.HEAVY);
    }
  }

  private void floor(Length over) {
    double high = at.height(over);
    double low = at.height(over.minus(PierPlaces.BOARD));
    double inner = at.half(content.gap().opening());
    for (int side = -1; side <= 1; side += 2) {
      double from = at.middle() + side * inner;
      double to = at.middle() + side * (inner + at.scale().millimetres(PierPlaces.FLOOR_SHOWN));
      canvas.path(
          PierPlaces.box(Math.min(from, to), low, Math.max(from, to), high), true, Pen.MEDIUM);
      canvas.under(
          new Element.Hatch(
              PierPlaces.box(Math.min(from, to), low, Math.max(from, to), high),
              45,
              1.2,
              Pen.HAIR));
    }
  }
}
