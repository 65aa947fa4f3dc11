package pegbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import pegbook.measure.Length;

class SwingTest {
  private static void assertAt(Point point, double east, double north, double tolerance) {
    Offset<Double> off = within(tolerance);
    assertThat(point.east()).isCloseTo(east, off);
    assertThat(point.north()).isCloseTo(north, off);
  }

  private static Swing.Crossing crossing(Segment baseline, Length first, Length second) {
    return (Swing.Crossing) Swing.of(baseline, first, second);
  }

  /** Exact mathematics: two circles. */
  @Test
  void twoCirclesCrossOnBothSides() {
    Segment baseline = new Segment(new Point(-0.1, -0.2), new Point(2, 1));
    Swing.Crossing crossing = crossing(baseline, new Length(2.0), new Length(2.1));
    assertAt(crossing.right(), 1.696964, -1.078021, 0.5e-6);
    assertAt(crossing.left(), 0.055856, 1.793918, 0.5e-6);
    assertThat(baseline.sideOf(crossing.left())).isEqualTo(Segment.Side.LEFT);
    assertThat(baseline.sideOf(crossing.right())).isEqualTo(Segment.Side.RIGHT);
    assertThat(crossing.on(Segment.Side.LEFT)).isEqualTo(crossing.left());
  }

  /** Stations J, K, T of an open surveying course by J. Mahun, distance-distance crossing, feet. */
  @Test
  void stationTFollowsFromJAndK() {
    Point j = new Point(3511.69, 1419.51);
    Point k = new Point(2341.36, 2056.64);
    Swing.Crossing crossing = crossing(new Segment(j, k), new Length(878.915), new Length(738.15));
    assertAt(crossing.right(), 3069.302, 2178.973, 0.6e-3);
  }

  /** Common practice, no source: two marks 29 in apart, tapes of 75 1/2 and 80 in. */
  @Test
  void threeMarksOfTheTrade() {
    Segment baseline = new Segment(Point.ORIGIN, new Point(Length.ofInches(29).metres(), 0));
    Swing.Crossing crossing = crossing(baseline, Length.ofInches(75.5), Length.ofInches(80));
    Length off = new Length(baseline.offsetMetres(crossing.left()));
    assertThat(off.inches()).isCloseTo(75.46, within(0.005));
  }

  @Test
  void tapesThatDoNotCrossSayWhy() {
    Segment baseline = new Segment(Point.ORIGIN, new Point(0, 10));
    assertThat(Swing.of(baseline, new Length(4), new Length(5.99)))
        .isEqualTo(new Swing.Apart(true));
    assertThat(Swing.of(baseline, new Length(16), new Length(5.99)))
        .isEqualTo(new Swing.Apart(false));
    assertThat(Swing.of(baseline, new Length(4), new Length(6)))
        .isEqualTo(new Swing.Touching(new Point(0, 4)));
    assertThat(Swing.of(baseline, new Length(16), new Length(6)))
        .isEqualTo(new Swing.Touching(new Point(0, 16)));
    assertThatThrownBy(() -> Swing.of(baseline, Length.ZERO, new Length(6)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> crossing(baseline, new Length(8), new Length(8)).on(Segment.Side.ON))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anglesAtAMarkRunFromNothingToStraight() {
    Point mark = new Point(3, 3);
    assertThat(Swing.angleAt(mark, new Point(0, 0), new Point(6, 0)).degrees())
        .isCloseTo(90, within(1e-12));
    assertThat(Swing.angleAt(mark, new Point(0, 0), new Point(6, 6)).degrees())
        .isCloseTo(180, within(1e-12));
    assertThat(Swing.angleAt(mark, new Point(4, 4), new Point(6, 6)).degrees()).isZero();
    assertThatThrownBy(() -> Swing.angleAt(mark, mark, new Point(6, 6)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
