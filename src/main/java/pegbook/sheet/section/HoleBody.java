package pegbook.sheet.section;

import static pegbook.sheet.section.SectionFrame.box;

import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.Fills;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** What there is in the section through a hole, without a word: soil, concrete, gravel, sleeve. */
record HoleBody(SectionFrame at, Canvas canvas) {
  /** A sleeve against frost is drawn thicker than it is, or nobody would see it. */
  static final double SLEEVE_MM = 1.1;

  private static final double BACKFILL_SPACING_MM = 3.5;

  void draw() {
    fillings();
    edges();
    sleeve();
  }

  private void fillings() {
    HoleSizes sizes = at.sizes();
    Fills.soil(canvas, at.soil());
    if (sizes.gravel().isMoreThan(Length.ZERO)) {
      Fills.gravel(canvas, box(at.bottomLeft(), at.bottom(), at.bottomRight(), at.underside()));
    }
    double low = Math.min(at.ground(), at.top());
    if (sizes.tubeFromBottom()) {
      if (sizes.wide().pad()) {
        Fills.concrete(canvas, box(at.left(), at.underside(), at.right(), at.wideTop()));
      }
      Fills.concrete(canvas, box(at.shaftLeft(), at.wideTop(), at.shaftRight(), low));
      backfill(at.left(), at.shaftLeft());
      backfill(at.shaftRight(), at.right());
    } else {
      Fills.concrete(canvas, at.againstWall(low));
    }
    if (at.top() > at.ground()) {
      Fills.concrete(canvas, box(at.shaftLeft(), at.ground(), at.shaftRight(), at.capBottom()));
    }
    if (sizes.wide().isCapped()) {
      Fills.concrete(canvas, box(at.capLeft(), at.capBottom(), at.capRight(), at.top()));
    }
  }

  private void backfill(double from, double to) {
    if (to > from) {
      canvas.under(
          new Element.Hatch(
              box(from, at.wideTop(), to, at.ground()), 135, BACKFILL_SPACING_MM, Pen.HAIR));
    }
  }

  private void edges() {
    Fills.groundLine(canvas, new Spot(1, at.ground()), new Spot(at.left(), at.ground()));
    Fills.groundLine(
        canvas, new Spot(at.right(), at.ground()), new Spot(canvas.widthMm() - 1, at.ground()));
    canvas.path(at.wall(), false, Pen.THICK);
    if (at.sizes().gravel().isMoreThan(Length.ZERO)) {
      canvas.line(
          new Spot(at.bottomLeft(), at.underside()),
          new Spot(at.bottomRight(), at.underside()),
          Pen.MEDIUM);
    }
    boolean tube = at.sizes().tube().isPresent();
    double foot = at.sizes().tubeFromBottom() ? at.wideTop() : Math.min(at.ground(), at.top());
    Pen pen = tube ? Pen.HEAVY : Pen.MEDIUM;
    canvas.line(new Spot(at.shaftLeft(), foot), new Spot(at.shaftLeft(), at.capBottom()), pen);
    canvas.line(new Spot(at.shaftRight(), foot), new Spot(at.shaftRight(), at.capBottom()), pen);
    if (at.sizes().wide().isCapped()) {
      canvas.path(box(at.capLeft(), at.capBottom(), at.capRight(), at.top()), true, Pen.MEDIUM);
    } else {
      canvas.line(
          new Spot(at.shaftLeft(), at.top()), new Spot(at.shaftRight(), at.top()), Pen.MEDIUM);
    }
    if (at.sizes().wide().pad()) {
      canvas.line(
          new Spot(at.left(), at.wideTop()), new Spot(at.shaftLeft(), at.wideTop()), Pen.MEDIUM);
      canvas.line(
          new Spot(at.shaftRight(), at.wideTop()), new Spot(at.right(), at.wideTop()), Pen.MEDIUM);
    }
  }

  /** Round the concrete, from the ground down: inside the wall of the hole, or round the tube. */
  private void sleeve() {
    Length length = at.sizes().sleeve();
    if (!length.isMoreThan(Length.ZERO)) {
      return;
    }
    boolean tube = at.sizes().tubeFromBottom();
    double left = tube ? at.shaftLeft() - SLEEVE_MM : at.left();
    double right = tube ? at.shaftRight() : at.right() - SLEEVE_MM;
    double foot = at.height(length.negated());
    canvas.area(box(left, foot, left + SLEEVE_MM, at.ground()), Ink.BLACK);
    canvas.area(box(right, foot, right + SLEEVE_MM, at.ground()), Ink.BLACK);
  }
}
