package pegbook.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import pegbook.measure.Length;
import pegbook.measure.LengthNotation;
import pegbook.measure.TapeDivision;
import pegbook.measure.UnitSystem;

/**
 * A scale of drawing.
 *
 * <p>Metric scales follow ISO 5455, with 1:25 beside it from common practice; imperial ones are the
 * architect's series up to 1/8 in to the foot, then the engineer's series in feet to the inch.
 *
 * @param units in which it is named
 * @param paper a length on paper
 * @param ground what it stands for
 */
public record DrawingScale(UnitSystem units, Length paper, Length ground) {
  private static final List<DrawingScale> METRIC = metric();
  private static final List<DrawingScale> IMPERIAL = imperial();

  /** The scales in use, the largest first. */
  public static List<DrawingScale> series(UnitSystem units) {
    return units == UnitSystem.METRIC ? METRIC : IMPERIAL;
  }

  /** The largest scale at which a width and height on the ground fit on paper. */
  public static Optional<DrawingScale> largestThatFits(
      UnitSystem units, Extent ground, double widthMm, double heightMm) {
    return series(units).stream()
        .filter(
            scale ->
                scale.millimetres(new Length(ground.widthMetres())) <= widthMm + 1e-9
                    && scale.millimetres(new Length(ground.heightMetres())) <= heightMm + 1e-9)
        .findFirst();
  }

  /** How many times smaller than the ground the drawing is. */
  public double ratio() {
    return ground.dividedBy(paper);
  }

  /** A length on the ground as millimetres on paper. */
  public double millimetres(Length onGround) {
    return onGround.millimetres() / ratio();
  }

  /** The next larger scales are before it, the next smaller after it. */
  public boolean isLargerThan(DrawingScale other) {
    return ratio() < other.ratio();
  }

  /** As a title writes it: {@code 1:50}, or {@code ¹⁄₄″ = 1′ 0″ (1:48)}. */
  public String text() {
    String plain = "1:" + Math.round(ratio());
    return units == UnitSystem.METRIC
        ? plain
        : LengthNotation.write(paper, TapeDivision.SIXTEENTH_INCH)
            + " = "
            + LengthNotation.write(ground, TapeDivision.INCH)
            + " ("
            + plain
            + ")";
  }

  private static List<DrawingScale> metric() {
    return DoubleStream.of(10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10000)
        .mapToObj(
            ratio ->
                new DrawingScale(
                    UnitSystem.METRIC, Length.ofMillimetres(1), Length.ofMillimetres(ratio)))
        .toList();
  }

  private static List<DrawingScale> imperial() {
    List<DrawingScale> scales = new ArrayList<>();
    DoubleStream.of(3, 1.5, 1, 0.75, 0.5, 0.375, 0.25, 0.1875, 0.125)
        .mapToObj(Length::ofInches)
        .forEach(
            inches -> scales.add(new DrawingScale(UnitSystem.IMPERIAL, inches, Length.ofFeet(1))));
    DoubleStream.of(10, 20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 1000)
        .mapToObj(Length::ofFeet)
        .forEach(
            feet -> scales.add(new DrawingScale(UnitSystem.IMPERIAL, Length.ofInches(1), feet)));
    return List.copyOf(scales);
  }
}
