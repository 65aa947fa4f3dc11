package pegbook.calc.markaccuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbook.figures.BaselineErrors;
import pegbook.figures.ErrorForm;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Covariance;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Length;

/**
 * The propagated errors against drawn ones: 100 000 times, with a fixed seed, every distance is
 * taped with its error and the marks are set by the true crossing of the tapes, no tangents.
 */
class DrawnErrorsTest {
  private static final int DRAWS = 100_000;

  /** Four standard deviations of a drawn variance, and what the bend of the arcs may add. */
  private static final double CLOSE = 4 * Math.sqrt(2.0 / DRAWS) + 0.005;

  private static final TapeAccuracy TAPE =
      new TapeAccuracy(
          Length.ofMillimetres(1.5), new TapeItself.CommonPractice(), Length.ofMillimetres(1));
  private static final BaselineErrors ERRORS =
      new BaselineErrors(TAPE, Crossings.onTape(Length.ofMillimetres(1)));

  private static final Point FIRST = new Point(-1, -2);
  private static final Point SECOND = new Point(3.5, -1.2);
  private static final Point MARK = new Point(0.7, 2.4);
  private static final Point FAR = new Point(6.4, -0.2);
  private static final Point OWN = new Point(-2.5, 1.5);

  private static Placement placement() {
    List<Point> places = List.of(FIRST, SECOND, MARK, FAR, OWN);
    List<PlacedMark> marks = new java.util.ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      marks.add(new PlacedMark("S" + (i + 1), MarkKind.SUPPORT, places.get(i), Optional.empty()));
    }
    return new Placement(
        new Polygon(List.of(FIRST, MARK, SECOND)), false, marks, List.of(), List.of());
  }

  private static final PlanErrors PLAN =
      new PlanErrors(
          ERRORS,
          placement(),
          new Swings("S1", "S2", List.of(new Swings.OwnPair("S5", "S1", "S3"))));

  private final Random random = new Random(20_261_125);

  private Length taped(Point from, Point to) {
    Length distance = from.distanceTo(to);
    return distance.plus(TAPE.sigma(distance).times(random.nextGaussian()));
  }

  /** The second mark where the baseline's tape puts it, in the given direction. */
  private Point second() {
    return new Segment(FIRST, SECOND).at(taped(FIRST, SECOND).metres(), 0);
  }

  /** Where tapes of these lengths really cross, on the true side. */
  private static Point crossing(Point first, Point second, Length a, Length b, Point near) {
    Segment line = new Segment(first, second);
    return ((Swing.Crossing) Swing.of(line, a, b)).on(line.sideOf(near));
  }

  private Point swung(Point second, Point mark) {
    return crossing(FIRST, second, taped(FIRST, mark), taped(SECOND, mark), mark);
  }

  private interface Draw {
    Point place();
  }

  private void holds(ErrorForm form, Point mark, Draw draw) {
    Covariance expected = form.covariance();
    Length radius = ErrorEllipse.of(expected).radiusHolding(0.95);
    double eastEast = 0;
    double eastNorth = 0;
    double northNorth = 0;
    int inside = 0;
    for (int i = 0; i < DRAWS; i++) {
      Point place = draw.place();
      double east = place.east() - mark.east();
      double north = place.north() - mark.north();
      eastEast += east * east;
      eastNorth += east * north;
      northNorth += north * north;
      inside += Math.hypot(east, north) <= radius.metres() ? 1 : 0;
    }
    double scale = (expected.east() + expected.north()) * CLOSE;
    assertThat(eastEast / DRAWS).isCloseTo(expected.east(), within(scale));
    assertThat(eastNorth / DRAWS).isCloseTo(expected.eastNorth(), within(scale));
    assertThat(northNorth / DRAWS).isCloseTo(expected.north(), within(scale));
    assertThat(inside / (double) DRAWS).isCloseTo(0.95, within(0.004));
  }

  @Test
  void aMarkOnceSwung() {
    holds(PLAN.of("S3"), MARK, () -> swung(second(), MARK));
  }

  /** Tapes that cross at 17 degrees: a long ellipse. */
  @Test
  void aMarkThatCrossesWeakly() {
    holds(PLAN.of("S4"), FAR, () -> swung(second(), FAR));
  }

  @Test
  void theBaselinesSecondMark() {
    holds(PLAN.of("S2"), SECOND, this::second);
  }

  /** Taped from the first mark and from one that was itself swung. */
  @Test
  void aMarkWithAPairOfItsOwn() {
    holds(
        PLAN.of("S5"),
        OWN,
        () -> {
          Point third = swung(second(), MARK);
          return crossing(FIRST, third, taped(FIRST, OWN), taped(MARK, OWN), OWN);
        });
  }

  /** A third tape from a swung mark: the place whose three tapes are off least. */
  @Test
  void aMarkWithAThirdTape() {
    holds(
        PLAN.withThird("S4", "S3"),
        FAR,
        () -> {
          Point second = second();
          Point third = swung(second, MARK);
          return leastSquares(
              FAR,
              List.of(FIRST, second, third),
              List.of(taped(FIRST, FAR), taped(SECOND, FAR), taped(MARK, FAR)));
        });
  }

  /** Gauss and Newton's rounds, written out for themselves. */
  private static Point leastSquares(Point start, List<Point> from, List<Length> tapes) {
    Point at = start;
    for (int round = 0; round < 5; round++) {
      double ee = 0;
      double en = 0;
      double nn = 0;
      double e = 0;
      double n = 0;
      for (int i = 0; i < from.size(); i++) {
        double distance = from.get(i).distanceTo(at).metres();
        double east = (at.east() - from.get(i).east()) / distance;
        double north = (at.north() - from.get(i).north()) / distance;
        double miss = tapes.get(i).metres() - distance;
        ee += east * east;
        en += east * north;
        nn += north * north;
        e += east * miss;
        n += north * miss;
      }
      double determinant = ee * nn - en * en;
      at = at.plus((nn * e - en * n) / determinant, (ee * n - en * e) / determinant);
    }
    return at;
  }
}
