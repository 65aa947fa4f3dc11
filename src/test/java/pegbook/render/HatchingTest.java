package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

class HatchingTest {
  private static List<Hatching.Stroke> hatch(List<Spot> polygon, double angle, double spacing) {
    return Hatching.strokes(new Element.Hatch(polygon, angle, spacing, Pen.HAIR));
  }

  private static double length(List<Hatching.Stroke> strokes) {
    return strokes.stream()
        .mapToDouble(
            stroke ->
                Math.hypot(
                    stroke.to().x() - stroke.from().x(), stroke.to().y() - stroke.from().y()))
        .sum();
  }

  private static final List<Spot> SQUARE =
      List.of(new Spot(0.5, 0.5), new Spot(10.5, 0.5), new Spot(10.5, 10.5), new Spot(0.5, 10.5));

  @Test
  void levelStrokesFillASquareFromEdgeToEdge() {
    List<Hatching.Stroke> strokes = hatch(SQUARE, 0, 1);
    assertThat(strokes).hasSize(10);
    assertThat(strokes.get(0)).isEqualTo(new Hatching.Stroke(new Spot(0.5, 1), new Spot(10.5, 1)));
  }

  @Test
  void strokesTimesSpacingGiveTheArea() {
    for (double angle : new double[] {0, 30, 45, 90, 135}) {
      assertThat(length(hatch(SQUARE, angle, 0.2)) * 0.2).isCloseTo(100, within(2.0));
    }
  }

  @Test
  void aNotchStaysFree() {
    List<Spot> notched =
        List.of(
            new Spot(0, 0),
            new Spot(10, 0),
            new Spot(10, 10),
            new Spot(6, 10),
            new Spot(6, 5),
            new Spot(4, 5),
            new Spot(4, 10),
            new Spot(0, 10));
    List<Hatching.Stroke> strokes = hatch(notched, 0, 1);
    assertThat(strokes.stream().filter(stroke -> stroke.from().y() == 7)).hasSize(2);
    assertThat(strokes.stream().filter(stroke -> stroke.from().y() == 2)).hasSize(1);
  }

  @Test
  void neighboursShareOneGrid() {
    List<Spot> right = SQUARE.stream().map(spot -> new Spot(spot.x() + 10, spot.y())).toList();
    List<Double> left = hatch(SQUARE, 0, 0.7).stream().map(stroke -> stroke.from().y()).toList();
    assertThat(hatch(right, 0, 0.7).stream().map(stroke -> stroke.from().y()).toList())
        .isEqualTo(left);
  }

  @Test
  void curvesStayOnTheirCircle() {
    Spot centre = new Spot(3, 4);
    List<Curves.Piece> pieces = Curves.arc(centre, 100, 30, 300);
    assertThat(pieces).hasSize(7);
    for (Curves.Piece piece : pieces) {
      for (double t = 0; t <= 1; t += 0.05) {
        double x =
            cubic(t, piece.from().x(), piece.leaving().x(), piece.arriving().x(), piece.to().x());
        double y =
            cubic(t, piece.from().y(), piece.leaving().y(), piece.arriving().y(), piece.to().y());
        assertThat(Math.hypot(x - 3, y - 4)).isCloseTo(100, within(0.001));
      }
    }
    assertThat(pieces.get(0).from().x()).isCloseTo(3 + 100 * Math.cos(Math.PI / 6), within(1e-9));
    assertThat(pieces.get(6).to().y())
        .isCloseTo(4 + 100 * Math.sin(Math.toRadians(330)), within(1e-9));
    assertThat(Curves.arc(centre, 1, 0, -90).get(1).to().y()).isCloseTo(3, within(1e-9));
  }

  private static double cubic(double t, double a, double b, double c, double d) {
    double s = 1 - t;
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  }
}
