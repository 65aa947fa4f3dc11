package pegbook.sheet.section;

import java.util.ArrayList;
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

  /** The left side of what is widest: dimension lines stand clear of it. */
  double farLeft() {
    return middle() - scale.millimetres(sizes.widest()) / 2;
  }

  double farRight() {
    return middle() + scale.millimetres(sizes.widest()) / 2;
  }

  double bottomLeft() {
    return middle() - scale.millimetres(sizes.bottomWidth()) / 2;
  }

  double bottomRight() {
    return middle() + scale.millimetres(sizes.bottomWidth()) / 2;
  }

  /** Where bell or pad ends and the shaft begins. */
  double wideTop() {
    return underside() + scale.millimetres(sizes.wide().bottom());
  }

  /** Where the flare of a bell ends and its upright edge begins. */
  double edgeTop() {
    return wideTop() - scale.millimetres(sizes.wide().flare());
  }

  double capBottom() {
    return top() - scale.millimetres(sizes.wide().thickness());
  }

  double capLeft() {
    return middle() - scale.millimetres(sizes.wide().cap()) / 2;
  }

  double capRight() {
    return middle() + scale.millimetres(sizes.wide().cap()) / 2;
  }

  /** The wall of the hole from the ground down to the bottom and up again. */
  List<Spot> wall() {
    return sizes.wide().isBelled()
        ? List.of(
            new Spot(left(), ground()),
            new Spot(left(), wideTop()),
            new Spot(bottomLeft(), edgeTop()),
            new Spot(bottomLeft(), bottom()),
            new Spot(bottomRight(), bottom()),
            new Spot(bottomRight(), edgeTop()),
            new Spot(right(), wideTop()),
            new Spot(right(), ground()))
        : List.of(
            new Spot(left(), ground()),
            new Spot(left(), bottom()),
            new Spot(right(), bottom()),
            new Spot(right(), ground()));
  }

  /** Concrete that stands against the wall, up to a height. */
  List<Spot> againstWall(double to) {
    return sizes.wide().isBelled()
        ? List.of(
            new Spot(left(), to),
            new Spot(left(), wideTop()),
            new Spot(bottomLeft(), edgeTop()),
            new Spot(bottomLeft(), underside()),
            new Spot(bottomRight(), underside()),
            new Spot(bottomRight(), edgeTop()),
            new Spot(right(), wideTop()),
            new Spot(right(), to))
        : box(left(), underside(), right(), to);
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
    List<Spot> soil = new ArrayList<>();
    soil.add(new Spot(farLeft() - SOIL_MM, ground()));
    soil.addAll(wall());
    soil.add(new Spot(farRight() + SOIL_MM, ground()));
    soil.add(new Spot(farRight() + SOIL_MM, bottom() - SOIL_MM));
    soil.add(new Spot(farLeft() - SOIL_MM, bottom() - SOIL_MM));
    return soil;
  }
}
