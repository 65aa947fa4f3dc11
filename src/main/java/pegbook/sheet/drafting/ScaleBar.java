package pegbook.sheet.drafting;

import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A bar in four parts, by turns black and white, that shows lengths on the ground. */
public final class ScaleBar {
  public static final double HEIGHT_MM = 8;

  private static final int PARTS = 4;
  private static final double BAR_MM = 2;
  private static final double SIZE = 8;
  private static final double[] STEPS = {1, 2, 5};

  private ScaleBar() {}

  /**
   * Draws the bar.
   *
   * @param corner its lower left corner
   * @param longestMm the length it may have
   * @param write a length in words
   * @return its length in millimetres
   */
  public static double draw(
      Canvas canvas,
      Spot corner,
      DrawingScale scale,
      double longestMm,
      Function<Length, String> write) {
    Length part = part(scale, longestMm);
    double partMm = scale.millimetres(part);
    for (int i = 0; i < PARTS; i++) {
      List<Spot> box = box(Spots.shifted(corner, i * partMm, 0), partMm);
      canvas.path(box, true, Pen.THIN);
      if (i % 2 == 0) {
        canvas.area(box, Ink.BLACK);
      }
    }
    for (int i = 0; i <= PARTS; i += 2) {
      Spot over = Spots.shifted(corner, i * partMm, BAR_MM + 1);
      Element.Anchor anchor = i == 0 ? Element.Anchor.LEFT : Element.Anchor.CENTRE;
      canvas.write(
          new Element.Label(
              over, i == 0 ? "0" : write.apply(part.times(i)), SIZE, anchor, 0, false, false));
    }
    return PARTS * partMm;
  }

  private static List<Spot> box(Spot corner, double widthMm) {
    return List.of(
        corner,
        Spots.shifted(corner, widthMm, 0),
        Spots.shifted(corner, widthMm, BAR_MM),
        Spots.shifted(corner, 0, BAR_MM));
  }

  /**
   * The longest of 1, 2, 5, 10, ... feet or decimetres whose four parts are no longer than asked.
   */
  private static Length part(DrawingScale scale, double longestMm) {
    Length unit = scale.units() == UnitSystem.METRIC ? Length.ofMillimetres(100) : Length.ofFeet(1);
    Length least =
        scale.units() == UnitSystem.METRIC ? Length.ofMillimetres(10) : Length.ofInches(3);
    return DoubleStream.of(1, 10, 100, 1000, 10000)
        .flatMap(power -> DoubleStream.of(STEPS).map(step -> step * power))
        .mapToObj(unit::times)
        .filter(part -> PARTS * scale.millimetres(part) <= longestMm)
        .reduce((shorter, longer) -> longer)
        .orElse(least);
  }
}
