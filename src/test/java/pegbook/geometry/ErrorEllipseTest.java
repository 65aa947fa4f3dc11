package pegbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;

class ErrorEllipseTest {
  private static final int DRAWS = 100_000;

  /** Two tapes of one standard deviation, by the angle of their crossing, to the printed digit. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/markaccuracy/ellipse-by-angle.csv", numLinesToSkip = 3)
  void ellipseOfTwoTapesByTheirAngle(
      double angle,
      double sineFactor,
      double drms,
      double major,
      double minor,
      double ratio,
      String direction) {
    Point first = Point.ORIGIN.moved(Angle.ofDegrees(180 - angle / 2), new Length(5));
    Point second = Point.ORIGIN.moved(Angle.ofDegrees(180 + angle / 2), new Length(5));
    List<Length> sigmas = List.of(new Length(0.001), new Length(0.001));
    Covariance covariance = new TapeFix(Point.ORIGIN, List.of(first, second)).covariance(sigmas);
    ErrorEllipse ellipse = ErrorEllipse.of(covariance);

    assertThat(ellipse.semiMajor().millimetres()).isCloseTo(major, within(0.00005));
    assertThat(ellipse.semiMinor().millimetres()).isCloseTo(minor, within(0.00005));
    assertThat(ellipse.semiMajor().dividedBy(ellipse.semiMinor())).isCloseTo(ratio, within(0.0005));
    assertThat(Math.sqrt(covariance.east() + covariance.north()) * 1000)
        .isCloseTo(drms, within(0.00005));
    assertThat(Math.sqrt(2) * sineFactor).isCloseTo(drms, within(0.0001));
    // The tapes come from the south, so their bisector runs north and south.
    if (angle != 90) {
      double expected = direction.startsWith("across") ? 90 : 0;
      assertThat(ellipse.azimuth().degrees()).isCloseTo(expected, within(1e-6));
    }
  }

  /** Two and three tapes from given places, to the printed digit. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/markaccuracy/two-and-three-tapes.csv", numLinesToSkip = 3)
  void covarianceOfTwoAndThreeTapes(
      double x,
      double y,
      double tapeA,
      double tapeB,
      double angle,
      double varianceX,
      double varianceY,
      double covariance,
      double major,
      double minor,
      double theta,
      double tapeC,
      double majorOfThree,
      double minorOfThree,
      double thetaOfThree) {
    Point mark = new Point(x, y);
    List<Point> three = List.of(Point.ORIGIN, new Point(6, 0), new Point(3, 6));
    Length sigma = Length.ofMillimetres(2);
    Covariance two = new TapeFix(mark, three.subList(0, 2)).covariance(List.of(sigma, sigma));

    assertThat(mark.distanceTo(three.get(0)).metres()).isCloseTo(tapeA, within(0.00005));
    assertThat(mark.distanceTo(three.get(1)).metres()).isCloseTo(tapeB, within(0.00005));
    assertThat(mark.distanceTo(three.get(2)).metres()).isCloseTo(tapeC, within(0.00005));
    assertThat(Swing.angleAt(mark, three.get(0), three.get(1)).degrees())
        .isCloseTo(angle, within(0.005));
    assertThat(two.east() * 1e6).isCloseTo(varianceX, within(0.00005));
    assertThat(two.north() * 1e6).isCloseTo(varianceY, within(0.00005));
    assertThat(two.eastNorth() * 1e6).isCloseTo(covariance, within(0.00005));
    assertEllipse(ErrorEllipse.of(two), major, minor, theta);
    Covariance all = new TapeFix(mark, three).covariance(List.of(sigma, sigma, sigma));
    assertEllipse(ErrorEllipse.of(all), majorOfThree, minorOfThree, thetaOfThree);
  }

  private static void assertEllipse(ErrorEllipse ellipse, double major, double minor, double ccw) {
    assertThat(ellipse.semiMajor().millimetres()).isCloseTo(major, within(0.0005));
    assertThat(ellipse.semiMinor().millimetres()).isCloseTo(minor, within(0.0005));
    if (major - minor > 0.001) {
      double apart = 90 - ellipse.azimuth().degrees() - ccw;
      assertThat(apart - 180 * Math.rint(apart / 180)).isCloseTo(0, within(0.05));
    }
  }

  /** The same axes from another library's eigenvalues. */
  @Property(seed = Chance.SEED)
  void axesAreThePrincipalOnes(
      @ForAll @Scale(8) @DoubleRange(min = 1e-8, max = 1) double east,
      @ForAll @Scale(8) @DoubleRange(min = 1e-8, max = 1) double north,
      @ForAll @DoubleRange(min = -0.99, max = 0.99) double correlation) {
    double cross = correlation * Math.sqrt(east * north);
    ErrorEllipse ellipse = ErrorEllipse.of(new Covariance(east, cross, north));
    EigenDecompositionSymmetric eigen =
        new EigenDecompositionSymmetric(
            MatrixUtils.createRealMatrix(new double[][] {{east, cross}, {cross, north}}));

    double largest = eigen.getEigenvalue(0);
    assertThat(square(ellipse.semiMajor())).isCloseTo(largest, within(1e-12));
    assertThat(square(ellipse.semiMinor())).isCloseTo(eigen.getEigenvalue(1), within(1e-12));
    double along = Math.sin(ellipse.azimuth().radians());
    double up = Math.cos(ellipse.azimuth().radians());
    assertThat(east * along * along + 2 * cross * along * up + north * up * up)
        .isCloseTo(largest, within(1e-10));
    assertThat(ellipse.azimuth().degrees()).isBetween(0.0, 180.0);
  }

  private static double square(Length length) {
    return length.metres() * length.metres();
  }

  /** Factors of the circle, to the printed digit. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/markaccuracy/circle-factors.csv", numLinesToSkip = 3)
  void radiusOfACircularError(double share, double factor) {
    assertThat(ErrorEllipse.radius(share, 3, 3)).isCloseTo(3 * factor, within(5e-6));
    assertThat(ellipse(1, 1).shareWithin(new Length(factor))).isCloseTo(share, within(5e-5));
  }

  /** An error along a line only: the error function of another library. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.6827, 0.9, 0.95, 0.99})
  void radiusOfAnErrorAlongALine(double share) {
    assertThat(ErrorEllipse.radius(share, 1, 0))
        .isCloseTo(Math.sqrt(2) * Erf.erfInv(share), within(1e-9));
  }

  /**
   * Radii of 95 % for half axes from a line to a circle, in the long half axis. From memory of
   * tables of the circular error of an ellipse: 1.960, 2.447 at the ends; the rest by adding up the
   * density over a fine grid of the disc.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 1})
  void radiusHoldsItsShareOfTheDensity(double ratio) {
    double radius = ErrorEllipse.radius(0.95, 1, ratio);

    assertThat(disc(radius, ratio)).isCloseTo(0.95, within(1e-6));
    assertThat(radius).isBetween(ErrorEllipse.LEAST_FACTOR, ErrorEllipse.MOST_FACTOR);
  }

  /** Chords of the disc: the density along each, times the error function across it. */
  private static double disc(double radius, double ratio) {
    int steps = 200_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double x = radius * (2 * (i + 0.5) / steps - 1);
      double half = Math.sqrt(radius * radius - x * x);
      sum += Math.exp(-x * x / 2) * Erf.erf(half / ratio / Math.sqrt(2));
    }
    return sum * 2 * radius / steps / Math.sqrt(2 * Math.PI);
  }

  /** Drawn errors, fixed seed: the share inside stays within four standard deviations of 95 %. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.2, 0.6, 1})
  void drawnErrorsKeepTheShare(double ratio) {
    double radius = ErrorEllipse.radius(0.95, 1, ratio);
    Random random = new Random(20261125);
    int inside = 0;
    for (int i = 0; i < DRAWS; i++) {
      inside += Math.hypot(random.nextGaussian(), ratio * random.nextGaussian()) <= radius ? 1 : 0;
    }
    assertThat(inside / (double) DRAWS).isCloseTo(0.95, within(4 * Math.sqrt(0.95 * 0.05 / DRAWS)));
  }

  @Property(seed = Chance.SEED)
  void radiusGrowsWithEachAxisAndWithTheirScale(
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1) double minor,
      @ForAll @DoubleRange(min = 0, max = 1) double more,
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1000) double scale) {
    double radius = ErrorEllipse.radius(0.95, 1, minor);

    assertThat(ErrorEllipse.radius(0.95, scale, minor * scale))
        .isCloseTo(radius * scale, within(1e-9 * scale));
    assertThat(ErrorEllipse.radius(0.95, 1 + more, minor)).isGreaterThanOrEqualTo(radius - 1e-12);
    assertThat(ErrorEllipse.radius(0.95, 1, minor + more * (1 - minor)))
        .isGreaterThanOrEqualTo(radius - 1e-12);
    assertThat(ellipse(1, minor).shareWithin(new Length(radius))).isCloseTo(0.95, within(1e-10));
  }

  @Test
  void noShareOfAllErrors() {
    assertThat(ErrorEllipse.radius(0, 1, 1)).isZero();
    assertThat(ErrorEllipse.radius(0.95, 0, 0)).isZero();
    assertThatThrownBy(() -> ErrorEllipse.radius(1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("share 1.0");
  }

  private static ErrorEllipse ellipse(double major, double minor) {
    return new ErrorEllipse(new Length(major), new Length(minor), Angle.ZERO);
  }
}
