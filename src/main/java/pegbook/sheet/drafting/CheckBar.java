package pegbook.sheet.drafting;

import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A bar of a known length on paper, by which a reader sees whether the print was shrunk. */
public final class CheckBar {
  public static final double HEIGHT_MM = 9;

  private static final double TICK_MM = 2;
  private static final double END_TICK_MM = 3.5;
  private static final double SIZE = 8;

  private CheckBar() {}

  /** How long the bar is: 100 mm, or 4 in. */
  public static Length length(UnitSystem units) {
    return units == UnitSystem.METRIC ? Length.ofMillimetres(100) : Length.ofInches(4);
  }

  /**
   * Draws the bar with its words over it.
   *
   * @param left its left end, on its lower edge
   */
  public static void draw(Canvas canvas, Spot left, UnitSystem units, String words) {
    double longMm = length(units).millimetres();
    int parts = units == UnitSystem.METRIC ? 10 : 4;
    canvas.line(left, Spots.shifted(left, longMm, 0), Pen.MEDIUM);
    for (int i = 0; i <= parts; i++) {
      Spot foot = Spots.shifted(left, longMm * i / parts, 0);
      boolean end = i == 0 || i == parts;
      canvas.line(foot, Spots.shifted(foot, 0, end ? END_TICK_MM : TICK_MM), Pen.THIN);
    }
    Spot over = Spots.shifted(left, longMm / 2, END_TICK_MM + 1);
    canvas.writeFixed(new Element.Label(over, words, SIZE, Element.Anchor.CENTRE, 0, false, false));
  }
}
