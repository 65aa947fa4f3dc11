package pegbook.calc.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.figures.Finding;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.geometry.Figure;
import pegbook.geometry.Grid;
import pegbook.geometry.Outlines;
import pegbook.geometry.Point;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.LayoutJob;

class PlacementCalculatorTest {
  private static final Length SIX = new Length(6);
  private static final Length FOUR = new Length(4);
  private static final List<Point> CORNER =
      List.of(
          new Point(0, 0),
          new Point(5, 0),
          new Point(5, 3),
          new Point(2, 3),
          new Point(2, 6),
          new Point(0, 6));

  static Stream<Outline> outlines() {
    return Stream.of(
        new Outline.Regular(7, FOUR),
        new Outline.Rectangle(SIX, FOUR, 4, 3),
        new Outline.ChamferedRectangle(SIX, FOUR, new Length(1)),
        new Outline.Circle(SIX, 9),
        new Outline.Free(CORNER, Optional.empty()));
  }

  private static Figure figure(Outline outline, Length inset, Angle azimuth) {
    Optional<Figure> figure;
    if (outline instanceof Outline.Regular some) {
      figure = Outlines.regular(some.sides(), some.acrossCorners(), inset, azimuth);
    } else if (outline instanceof Outline.Rectangle some) {
      Grid grid = new Grid(some.columns(), some.rows());
      figure = Outlines.rectangle(some.length(), some.width(), grid, inset, azimuth);
    } else if (outline instanceof Outline.ChamferedRectangle some) {
      figure = Outlines.chamferedRectangle(some.length(), some.width(), some.cut(), inset, azimuth);
    } else if (outline instanceof Outline.Circle some) {
      figure = Outlines.circle(some.diameter(), some.posts(), inset, azimuth);
    } else {
      Outline.Free some = (Outline.Free) outline;
      figure = Outlines.free(some.corners(), some.supports(), inset, Optional.of(azimuth));
    }
    return figure.orElseThrow();
  }

  /** Two roads: the printed workings, and the figure turned as a whole. */
  @ParameterizedTest
  @MethodSource("outlines")
  void theWorkingsAgreeWithTheFigureTurnedAsAWhole(Outline outline) {
    for (UnitSystem units : UnitSystem.values()) {
      for (double degrees : new double[] {0, 8, 179.5, 359}) {
        LayoutJob job = LayoutJob.of(outline);
        job.units = units;
        job.azimuth = Optional.of(Angle.ofDegrees(degrees));
        Placement placement = PlacementCalculator.calculate(job.job());
        Figure figure = figure(outline, job.inset, Angle.ofDegrees(degrees));
        assertThat(placement.outline()).isEqualTo(figure.outline());
        assertThat(placement.marks()).hasSameSizeAs(figure.supports());
        for (int i = 0; i < placement.marks().size(); i++) {
          PlacedMark mark = placement.marks().get(i);
          assertThat(mark.id()).isEqualTo("S" + (i + 1));
          assertThat(mark.at().distanceTo(figure.supports().get(i)).metres())
              .isCloseTo(0, within(1e-12));
        }
      }
    }
  }

  /**
   * By hand: a hexagon 12 ft across flats has corners 83.138 in from its centre; supports 8 in
   * inside stand 8 / cos 30° = 9.238 in nearer.
   */
  @Test
  void supportsOfAHexagon() {
    LayoutJob job = LayoutJob.of(new Outline.Regular(6, Length.ofFeet(12 / Math.cos(Math.PI / 6))));
    job.units = UnitSystem.IMPERIAL;
    job.inset = Length.ofInches(8);
    Placement placement = PlacementCalculator.calculate(job.job());
    assertThat(Point.ORIGIN.distanceTo(placement.mark("S1").at()).inches())
        .isCloseTo(73.901, within(0.0005));
    assertThat(placement.workings().get(0).result()).isCloseTo(73.901, within(0.0005));
    assertThat(Point.ORIGIN.azimuthTo(placement.mark("S4").at()).degrees())
        .isCloseTo(188, within(1e-9));
    // S1 at 8 degrees lies north and a little east, S2 at 68 degrees further east: clockwise.
    assertThat(placement.mark("S1").at().north()).isPositive();
    assertThat(placement.mark("S2").at().east()).isGreaterThan(placement.mark("S1").at().east());
  }

  @Test
  void piersStandEastAndNorthOfTheCentreAndAreNotTurned() {
    LayoutJob job = new LayoutJob().pier("P1", 0, 0).pier("P2", 5.5, -0.5);
    job.levels.put("P2", new Length(-0.04));
    Placement placement = PlacementCalculator.calculate(job.job());
    assertThat(placement.mark("P2"))
        .isEqualTo(
            new PlacedMark(
                "P2", MarkKind.PIER, new Point(5.5, -0.5), Optional.of(new Length(-0.04))));
    assertThat(placement.mark("P1").level()).isEmpty();
    assertThat(placement.mark("S1").kind()).isEqualTo(MarkKind.SUPPORT);
    assertThatThrownBy(() -> placement.mark("S7")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aFreeOutlineSaysWhereItsCentreIsAndAsksForNorth() {
    LayoutJob job = LayoutJob.of(new Outline.Free(CORNER, Optional.empty()));
    job.azimuth = Optional.empty();
    Placement placement = PlacementCalculator.calculate(job.job());
    assertThat(placement.findings())
        .extracting(Finding::id)
        .containsExactly("placement-centre", "placement-north");
    // Two rectangles by hand: 5 x 3 at (2.5, 1.5) and 2 x 3 at (1, 4.5).
    double across = (15 * 2.5 + 6 * 1) / 21;
    double up = (15 * 1.5 + 6 * 4.5) / 21;
    assertThat(placement.mark("S1").at().east()).isCloseTo(0.2 - across, within(1e-12));
    assertThat(placement.mark("S1").at().north()).isCloseTo(0.2 - up, within(1e-12));
    assertThat(placement.workings()).isEmpty();
  }

  @Test
  void noRoomForTheInsetIsRefused() {
    LayoutJob job = new LayoutJob();
    job.inset = new Length(3);
    assertThatThrownBy(() -> PlacementCalculator.calculate(job.job()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 200, seed = Chance.SEED)
  void neighboursKeepTheirDistance(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 0, max = 359.99) double degrees) {
    LayoutJob job = LayoutJob.of(new Outline.Regular(sides, FOUR));
    job.azimuth = Optional.of(Angle.ofDegrees(degrees));
    job.inset = Length.ZERO;
    List<PlacedMark> marks = PlacementCalculator.calculate(job.job()).marks();
    for (int i = 0; i < sides; i++) {
      assertThat(marks.get(i).at().distanceTo(marks.get((i + 1) % sides).at()).metres())
          .isCloseTo(4 * Math.sin(Math.PI / sides), within(1e-12));
    }
  }
}
