package pegbook.sheet.drafting;

import java.util.List;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** An arrow to true north, which is up on every plan. */
public final class NorthArrow {
  /** Room it takes. */
  public static final double WIDTH_MM = 10;

  public static final double HEIGHT_MM = 20;

  private static final double SHAFT_MM = 14;
  private static final double HALF_HEAD_MM = 2.6;

  private NorthArrow() {}

  /**
   * Draws the arrow with a letter over its tip.
   *
   * @param foot the middle of its lower edge
   * @param letter that of north
   */
  public static void draw(Canvas canvas, Spot foot, String letter) {
    Spot tip = Spots.shifted(foot, 0, SHAFT_MM);
    Spot notch = Spots.shifted(foot, 0, SHAFT_MM - 6);
    Spot left = Spots.shifted(foot, -HALF_HEAD_MM, SHAFT_MM - 8);
    Spot right = Spots.shifted(foot, HALF_HEAD_MM, SHAFT_MM - 8);
    canvas.line(foot, notch, Pen.MEDIUM);
    canvas.area(List.of(tip, left, notch), Ink.BLACK);
    canvas.path(List.of(tip, notch, right), true, Pen.THIN);
    canvas.writeFixed(
        new Element.Label(
            Spots.shifted(tip, 0, 1.5), letter, 11, Element.Anchor.CENTRE, 0, true, false));
    canvas.keepFree(
        Plate.between(
            foot.x() - HALF_HEAD_MM - 1,
            foot.y(),
            foot.x() + HALF_HEAD_MM + 1,
            foot.y() + SHAFT_MM));
  }
}
