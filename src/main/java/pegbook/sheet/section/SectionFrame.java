package pegbook.sheet.section;

import java.util.List;
import pegbook.measure.Length;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Spot;

/**
 * Where a hole lies on its drawing.
 *
 * @param sizes of the hole
 * @param scale of the drawing
 * @param widthMm of the drawing
 */
record SectionFrame(HoleSizes sizes, DrawingScale scale, double widthMm) {
  /** Soil shown beside and below a hole. */
  static final double SOIL_MM = 5;

  /** Room on the left and right of a hole: soil, dimension lines, their words. */
  static final double LEFT_MM = 24;

  static final double RIGHT_MM = 31;

  /** Room under the bottom and over the top: a dimension line each. */
  static final double BELOW_MM = 12;

  static final double OVER_MM = 12;

  /** A shallow hole still wants room for its words. */
  static final double LEAST_HEIGHT_MM = 66;

  double heightMm() {
    return naturalMm() + 2 * slackMm();
  }

  private double naturalMm() {
    return BELOW_MM + OVER_MM + scale.millimetres(sizes.dug().plus(sizes.above()));
  }

  /** Bare paper more, above and below. */
  private double slackMm() {
    return Math.max(0, (LEAST_HEIGHT_MM - naturalMm()) / 2);
  }

  private double middle() {
    return LEFT_MM + (widthMm - LEFT_MM - RIGHT_MM) / 2;
  }

  double left() {
    return middle() - scale.millimetres(sizes.diameter()) / 2;
  }

  double right() {
    return middle() + scale.millimetres(sizes.diameter()) / 2;
  }

  double shaftLeft() {
    return middle() - scale.millimetres(sizes.shaft()) / 2;
  }

  double shaftRight() {
    return middle() + scale.millimetres(sizes.shaft()) / 2;
  }

  double bottom() {
    return BELOW_MM + slackMm();
  }

  double underside() {
    return bottom() + scale.millimetres(sizes.gravel());
  }

  double ground() {
    return height(Length.ZERO);
  }

  double top() {
    return height(sizes.top());
  }

  /** Height on paper of a place so far above the ground. */
  double height(Length aboveGround) {
    return bottom() + scale.millimetres(sizes.dug().plus(aboveGround));
  }

  /** An upright rectangle. */
  static List<Spot> box(double left, double bottom, double right, double top) {
    return List.of(
        new Spot(left, bottom), new Spot(right, bottom), new Spot(right, top), new Spot(left, top));
  }

  /** The soil round the hole: beside it and under it. */
  List<Spot> soil() {
    return List.of(
        new Spot(left() - SOIL_MM, ground()),
        new Spot(left(), ground()),
        new Spot(left(), bottom()),
        new Spot(right(), bottom()),
        new Spot(right(), ground()),
        new Spot(right() + SOIL_MM, ground()),
        new Spot(right() + SOIL_MM, bottom() - SOIL_MM),
        new Spot(left() - SOIL_MM, bottom() - SOIL_MM));
  }
}
