package pegbook.sheet;

import java.util.List;
import java.util.Optional;
import pegbook.job.Sleeve;
import pegbook.measure.Length;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Spot;

/**
 * Where the parts of a pier lie on paper: heights from the ground, widths about a middle line.
 *
 * @param content what is drawn
 * @param middle the pier's axis, in mm from the left
 * @param far from the axis to the outer edge of the soil shown
 * @param bottom of the hole
 * @param ground at the hole
 */
record PierPlaces(
    PierElevation.Content content,
    DrawingScale scale,
    double middle,
    double far,
    double bottom,
    double ground) {
  /** The floor is shown this far beyond the gap, this thick; its frame is not known. */
  static final Length FLOOR_SHOWN = Length.ofMillimetres(220);

  static final Length BOARD = Length.ofMillimetres(28);

  /** The soil that is shown beside and below the hole, and a sleeve thick enough to be seen. */
  static final double SOIL_MM = 4;

  static final double FROST_SLEEVE_MM = 1.1;

  FootingOutline outline() {
    return new FootingOutline(content.hole(), scale, middle, ground);
  }

  double half(Length diameter) {
    return scale.millimetres(diameter) / 2;
  }

  double height(Length aboveGround) {
    return ground + scale.millimetres(aboveGround);
  }

  static List<Spot> box(double left, double low, double right, double high) {
    return List.of(
        new Spot(left, low), new Spot(right, low), new Spot(right, high), new Spot(left, high));
  }

  /** One that leaves below the concrete has its finding, and no picture. */
  Optional<Sleeve> sleeveInConcrete() {
    return content
        .pier()
        .sleeve()
        .filter(pipe -> pipe.depth().plus(pipe.outside()).isLessThan(content.hole().depth()));
  }
}
