package pegbook.calc.markaccuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.markaccuracy.MarkAccuracy.Lean;
import pegbook.calc.markaccuracy.MarkAccuracy.MarkError;
import pegbook.calc.markaccuracy.MarkAccuracy.PegPlace;
import pegbook.calc.markaccuracy.MarkAccuracy.PegTape;
import pegbook.calc.markaccuracy.MarkAccuracy.PeggedBaseline;
import pegbook.calc.markaccuracy.MarkAccuracy.Remedy;
import pegbook.calc.markaccuracy.MarkAccuracy.ThirdTape;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.BaselineErrors;
import pegbook.figures.Diggings;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.PlanErrors;
import pegbook.figures.Swings;
import pegbook.figures.TapeAccuracy;
import pegbook.figures.Working;
import pegbook.geometry.Crossings;
import pegbook.geometry.ErrorEllipse;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.LayoutJob;

/** Ground for pegs, the way an error leans, tapes of a class and third tapes, worked by hand. */
class MarksByHandTest {
  private static final Diggings UNTOUCHED = new Diggings(List.of(), List.of());

  private static List<Point> points(double... eastNorth) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < eastNorth.length; i += 2) {
      points.add(new Point(eastNorth[i], eastNorth[i + 1]));
    }
    return points;
  }

  /**
   * A floor of 5 m by 3 m with its middle at the origin and its first mark straight north of it.
   */
  private static LayoutJob floor() {
    LayoutJob job =
        LayoutJob.of(
            new Outline.Free(
                points(-2.5, -1.5, -2.5, 1.5, 2.5, 1.5, 2.5, -1.5),
                Optional.of(points(0, 1.5, 2.5, -0.5, -0.5, -0.5, -1.5, 0))));
    job.azimuth = Optional.empty();
    job.inset = Length.ZERO;
    return job;
  }

  private static List<Point> ground(LayoutJob layout) {
    Job job = layout.job();
    return new PegGround(job, PlacementCalculator.calculate(job), UNTOUCHED).places();
  }

  /**
   * 4 m across and 3 m beyond are 10 m: 0.25 and 0.5 m would be more than 18 steps, so every metre,
   * from 4 m west to 5 m east and from 3 m south to 4 m north. Of these 80 lie on the floor or
   * within 2 ft of it all up to 3 m east and west and 2 m north and south, 35, but for the four
   * corners of these, which are 0.71 m off.
   */
  @Test
  void theGridOfFreeGround() {
    List<Point> free = ground(floor());
    assertThat(free).hasSize(80 - 35 + 4);
    assertThat(free.get(0).east()).isCloseTo(-4, within(1e-9));
    assertThat(free.get(0).north()).isCloseTo(-3, within(1e-9));
    assertThat(free.get(48).east()).isCloseTo(5, within(1e-9));
    assertThat(free.get(48).north()).isCloseTo(4, within(1e-9));
    for (Point place : free) {
      double beside = Math.max(0, Math.abs(place.east()) - 2.5);
      double before = Math.max(0, Math.abs(place.north()) - 1.5);
      assertThat(Math.hypot(beside, before)).isGreaterThan(0.6096);
    }
  }

  /**
   * In feet: 10 m are 16.4 steps of 2 ft, from 7 west to 9 east and from 5 south to 7 north. Of
   * these 221 the floor and 2 ft round it hold 11 by 7 but for their corners, 0.64 m off.
   */
  @Test
  void theGridInFeet() {
    LayoutJob job = floor();
    job.units = UnitSystem.IMPERIAL;
    List<Point> free = ground(job);
    assertThat(free).hasSize(17 * 13 - 11 * 7 + 4);
    assertThat(free.get(0).east()).isCloseTo(-7 * 0.6096, within(1e-9));
    assertThat(free.get(0).north()).isCloseTo(-5 * 0.6096, within(1e-9));
    assertThat(free.get(free.size() - 1).east()).isCloseTo(9 * 0.6096, within(1e-9));
    assertThat(free.get(free.size() - 1).north()).isCloseTo(7 * 0.6096, within(1e-9));
  }

  /** Half the figure's width beyond the marks, never more than 10 m; larger steps, still 18. */
  @Test
  void howFarBeyondAWideFigure() {
    LayoutJob job =
        LayoutJob.of(
            new Outline.Free(
                points(-15, -1, -15, 1, 15, 1, 15, -1), Optional.of(points(0, 1, 14, 0, -14, 0))));
    job.azimuth = Optional.empty();
    job.inset = Length.ZERO;
    // 28 m across, 10 m beyond on both sides: 48 m, every 4 m; 24 m west to 24 m east.
    List<Point> free = ground(job);
    double east = free.stream().mapToDouble(Point::east).max().orElseThrow();
    double west = free.stream().mapToDouble(Point::east).min().orElseThrow();
    double south = free.stream().mapToDouble(Point::north).min().orElseThrow();
    assertThat(east).isCloseTo(24, within(1e-9));
    assertThat(west).isCloseTo(-24, within(1e-9));
    assertThat(south).isCloseTo(-8, within(1e-9));
  }

  /** The grid turns with the figure: its first mark lies straight along it. */
  @Test
  void theGridTurnsWithTheFigure() {
    LayoutJob job = LayoutJob.of(new Outline.Regular(6, new Length(4)));
    job.azimuth = Optional.of(Angle.ofDegrees(30));
    List<Point> turned = ground(job);
    job.azimuth = Optional.of(Angle.ZERO);
    List<Point> still = ground(job);
    assertThat(turned).hasSameSizeAs(still);
    for (int i = 0; i < still.size(); i++) {
      Point expected = still.get(i).turned(Angle.ofDegrees(30));
      assertThat(turned.get(i).distanceTo(expected).metres()).isLessThan(1e-9);
    }
  }

  /** A shed without a distance of its own keeps pegs 1 ft off, inside it there is none. */
  @Test
  void noPegInAShed() {
    LayoutJob job =
        floor()
            .feature(
                "shed",
                Feature.Kind.OBJECT,
                new Feature.Shape.Block(new Polygon(points(4.6, -2.4, 4.6, 9, 9, 9, 9, -2.4))),
                Optional.empty());
    List<Point> free = ground(job);
    // 5 m east all from 2 m south on, 7; at 3 m south, 0.6 m off, there is room, and 4 m east too.
    assertThat(free).hasSize(49 - 7);
    assertThat(free).anyMatch(place -> place.east() > 4.9 && place.north() < -2.9);
  }

  private static PlacedMark mark(String id, double east, double north) {
    return new PlacedMark(id, MarkKind.SUPPORT, new Point(east, north), Optional.empty());
  }

  /**
   * An ellipse of 3 by 2 mm at M, in the middle of the string from A, 2 m west, to B, 2 m east, its
   * long axis so many degrees from north: along the string, square to it, towards C, 45° east of
   * north, or told by its azimuth. A line up to 15° off stands for it.
   */
  @ParameterizedTest
  @CsvSource({
    "90, Towards[mark=A]",
    "76, Towards[mark=A]",
    "104, Towards[mark=A]",
    "0, SquareTo[mark=A]",
    "14, SquareTo[mark=A]",
    "166, SquareTo[mark=A]",
    "31, Towards[mark=C]",
    "59, Towards[mark=C]",
    "45, Towards[mark=C]",
    "29, Azimuth",
    "61, Azimuth",
    "135, Azimuth"
  })
  void whichWayAnErrorLeans(double azimuth, String lean) {
    PlacedMark m = mark("M", 0, 0);
    PlacedMark a = mark("A", -2, 0);
    PlacedMark b = mark("B", 2, 0);
    PlacedMark c = mark("C", 2, 2);
    ErrorEllipse ellipse =
        new ErrorEllipse(
            Length.ofMillimetres(3), Length.ofMillimetres(2), Angle.ofDegrees(azimuth));
    Lean told = new Leaning(List.of(m, a, b, c)).of(ellipse, m, a, b);
    assertThat(told.toString()).startsWith(lean);
  }

  /** The nearest line of two: to B, 1° off, though A, 4° off, comes first. */
  @Test
  void theNearestLineTells() {
    PlacedMark m = mark("M", 0, 0);
    PlacedMark a = mark("A", -2, 0.14);
    PlacedMark b = mark("B", 2, 0.035);
    ErrorEllipse ellipse =
        new ErrorEllipse(Length.ofMillimetres(3), Length.ofMillimetres(2), Angle.ofDegrees(90));
    assertThat(new Leaning(List.of(m, a, b)).of(ellipse, m, a, b)).isEqualTo(new Lean.Towards("B"));
    // As good as round up to 1.2 times its width; beyond that it leans.
    ErrorEllipse round =
        new ErrorEllipse(Length.ofMillimetres(2.4), Length.ofMillimetres(2), Angle.ofDegrees(90));
    assertThat(new Leaning(List.of(m, a, b)).of(round, m, a, b)).isEqualTo(new Lean.AllRound());
    ErrorEllipse longer =
        new ErrorEllipse(Length.ofMillimetres(2.41), Length.ofMillimetres(2), Angle.ofDegrees(90));
    assertThat(new Leaning(List.of(m, a, b)).of(longer, m, a, b)).isEqualTo(new Lean.Towards("B"));
    // The baseline's second mark is told by the first alone: its own name is no direction.
    assertThat(new Leaning(List.of(m, b)).of(ellipse, m, m, b)).isEqualTo(new Lean.Towards("B"));
  }

  /**
   * Published: Directive 2014/32/EU, annex X, class II: 0.3 mm + 0.2 mm a metre, 0.2 mm more from
   * the end. Over 6 m 1.7 mm, over 6.01 m, 7 whole metres, 1.9 mm; an error anywhere within is √3
   * less.
   */
  @ParameterizedTest
  @CsvSource({"6, 1.7", "6.01, 1.9", "0.4, 0.7"})
  void aTapeOfAClass(double metres, double limit) {
    LayoutJob job =
        LayoutJob.of(
            new Outline.Free(
                points(-9, -9, -9, 9, 9, 9, 9, -9),
                Optional.of(points(0, 0, metres, 0, metres / 2, 0.9 * metres))));
    job.azimuth = Optional.empty();
    job.inset = Length.ZERO;
    job.accuracy =
        new Layout.Accuracy(
            Length.ofMillimetres(1), new Layout.TapeItself.OfClass(Layout.TapeClass.II));
    MarkAccuracy accuracy = accuracy(job, "S1", "S2");
    Working part =
        accuracy.workings().stream()
            .filter(working -> working.formula().id().equals("mark-accuracy.tape-part"))
            .filter(working -> working.subject().equals("S1–S2"))
            .findFirst()
            .orElseThrow();
    assertThat(part.asLength().millimetres()).isCloseTo(limit / Math.sqrt(3), within(1e-9));
    assertThat(accuracy.sources()).hasSize(1);
    assertThat(accuracy.sources().get(0).publication()).isEqualTo("eu-2014-32");
  }

  private static MarkAccuracy accuracy(LayoutJob layout, String first, String second) {
    Job job = layout.job();
    return MarkAccuracyCalculator.calculate(
        job, PlacementCalculator.calculate(job), new Swings(first, second, List.of()), UNTOUCHED);
  }

  /** Of all good marks the third tape comes from the one that helps most. */
  @Test
  void theThirdTapeThatHelpsMost() {
    LayoutJob layout = LayoutJob.of(new Outline.Circle(new Length(18), 24)).pier("P1", 0, 0);
    layout.tolerance = Length.ofMillimetres(12);
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    Swings swings = new Swings("S1", "S13", List.of());
    MarkAccuracy accuracy = MarkAccuracyCalculator.calculate(job, placement, swings, UNTOUCHED);
    PlanErrors plan =
        new PlanErrors(
            new BaselineErrors(
                TapeAccuracy.of(job.layout().tape()), Crossings.onTape(layout.division)),
            placement,
            swings);
    Remedy.ThirdTapes thirds = (Remedy.ThirdTapes) accuracy.remedy().orElseThrow();
    assertThat(thirds.tapes())
        .extracting(ThirdTape::mark)
        .containsExactlyElementsOf(
            accuracy.marks().stream().filter(MarkError::isBad).map(MarkError::mark).toList());
    for (ThirdTape third : thirds.tapes()) {
      double least = Double.POSITIVE_INFINITY;
      for (MarkError from : accuracy.marks()) {
        if (!from.isBad() && !from.mark().equals("S1") && !from.mark().equals("S13")) {
          ErrorEllipse ellipse =
              ErrorEllipse.of(plan.withThird(third.mark(), from.mark()).covariance());
          least = Math.min(least, ellipse.radiusHolding(0.95).metres());
        }
      }
      assertThat(third.radius().metres()).isCloseTo(least, within(1e-9));
    }
    // A tape of 8 m reaches no mark across the ring from the good ones beside the baseline's ends.
    layout.tape = new Length(8);
    assertThat(accuracy(layout, "S1", "S13").remedy().orElseThrow())
        .isNotInstanceOf(Remedy.ThirdTapes.class);
  }

  /** Pegs: which side each mark lies on, and the two marks that cross nearest to square there. */
  @Test
  void whatIsWrittenOfPegs() {
    LayoutJob layout = floor();
    Placement placement = PlacementCalculator.calculate(layout.job());
    PeggedBaseline pegs = accuracy(layout, "S1", "S2").pegged().orElseThrow();
    double east = pegs.second().east() - pegs.first().east();
    double north = pegs.second().north() - pegs.first().north();
    for (PegTape tape : pegs.tapes()) {
      Point at = placement.mark(tape.mark()).at();
      double left =
          east * (at.north() - pegs.first().north()) - north * (at.east() - pegs.first().east());
      assertThat(tape.left()).isEqualTo(left > 0);
    }
    List<Point> places = List.of(pegs.first(), pegs.second());
    for (int i = 0; i < 2; i++) {
      PegPlace place = pegs.places().get(i);
      double strongest = 0;
      for (PlacedMark one : placement.marks()) {
        for (PlacedMark other : placement.marks()) {
          strongest = Math.max(strongest, sine(places.get(i), one.at(), other.at()));
        }
      }
      assertThat(
              sine(
                  places.get(i),
                  placement.mark(place.firstMark()).at(),
                  placement.mark(place.secondMark()).at()))
          .isCloseTo(strongest, within(1e-8));
    }
    // With 3 m of tape no two pegs reach all four marks.
    layout.tape = new Length(3);
    assertThat(accuracy(layout, "S1", "S2").pegged()).isEmpty();
  }

  private static double sine(Point peg, Point one, Point other) {
    double ax = one.east() - peg.east();
    double ay = one.north() - peg.north();
    double bx = other.east() - peg.east();
    double by = other.north() - peg.north();
    return Math.abs(ax * by - ay * bx) / Math.hypot(ax, ay) / Math.hypot(bx, by);
  }
}
