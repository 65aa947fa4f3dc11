package pegbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.published.Table;

class OutlinesTest {
  private static final Angle NORTH = Angle.ZERO;

  /** A regular polygon of side 1 m, from the circumradius 1 / (2 sin(180°/n)). */
  private static Figure unitSide(int sides) {
    Length across = new Length(1 / StrictMath.sin(Math.PI / sides));
    return Outlines.regular(sides, across, Length.ZERO, NORTH).orElseThrow();
  }

  private static List<Point> corners(Figure figure) {
    return figure.outline().corners();
  }

  static Stream<Table.Row> unitSideRows() {
    return Table.read("/pegbook/geometry/polygons-unit-side").rows().stream();
  }

  @ParameterizedTest
  @MethodSource("unitSideRows")
  void regularPolygonsHaveTheirExactMeasures(Table.Row row) {
    int sides = (int) row.number("n");
    String quantity = row.text("quantity");
    double tolerance = quantity.startsWith("interior") ? 0.5e-6 : 0.5e-10;
    assertThat(measured(unitSide(sides), sides, quantity))
        .as("%d corners, %s", sides, quantity)
        .isCloseTo(row.number("value_for_side_1"), within(tolerance + 1e-13));
  }

  private static double measured(Figure figure, int sides, String quantity) {
    List<Point> corners = corners(figure);
    Segment side = figure.outline().sides().get(0);
    double circumradius = Point.ORIGIN.distanceTo(corners.get(0)).metres();
    double inradius = Math.abs(side.offsetMetres(Point.ORIGIN));
    return switch (quantity.substring(0, 1)) {
      case "R" -> circumradius;
      case "r" -> inradius;
      case "F" -> Math.abs(side.offsetMetres(corners.get(sides / 2)));
      case "C" -> corners.get(0).distanceTo(corners.get(sides / 2)).metres();
      case "w" -> Math.abs(side.offsetMetres(corners.get(sides / 2 + 1)));
      case "d" -> corners.get(0).distanceTo(corners.get(quantity.charAt(1) - '0')).metres();
      case "a" -> figure.outline().area().squareMetres();
      case "i" -> Swing.angleAt(corners.get(1), corners.get(0), corners.get(2)).degrees();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  @Test
  void regularPolygonsKeepTheirRatios() {
    for (Table.Row row : Table.read("/pegbook/geometry/polygons-factors").rows()) {
      int sides = (int) row.number("n");
      Figure figure = Outlines.regular(sides, new Length(2), Length.ZERO, NORTH).orElseThrow();
      Segment side = figure.outline().sides().get(0);
      double inradius = Math.abs(side.offsetMetres(Point.ORIGIN));
      double flats = 2 * inradius;
      assertThat(side.length().metres() / flats)
          .isCloseTo(row.number("side_by_flats"), within(0.6e-10));
      assertThat(2 / flats).isCloseTo(row.number("corners_by_flats"), within(0.6e-10));
      assertThat(side.length().metres())
          .isCloseTo(row.number("side_by_circumradius"), within(0.6e-10));
      assertThat(inradius).isCloseTo(row.number("inradius_by_circumradius"), within(0.6e-10));
    }
  }

  @Test
  void everyNumberOfSidesKeepsTheFormulas() {
    for (int sides = 3; sides <= 24; sides++) {
      Figure figure = unitSide(sides);
      double half = Math.PI / sides;
      assertThat(figure.outline().sides())
          .allSatisfy(side -> assertThat(side.length().metres()).isCloseTo(1, within(1e-12)));
      assertThat(figure.outline().area().squareMetres())
          .isCloseTo(sides / (4 * StrictMath.tan(half)), within(1e-12));
      assertThat(figure.outline().isClockwise()).isTrue();
    }
    assertThatThrownBy(() -> Outlines.regular(2, new Length(1), Length.ZERO, NORTH))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Outlines.regular(25, new Length(1), Length.ZERO, NORTH))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void insetIsSquareToTheEdgeAndOnTheBisector() {
    Length inset = Length.ofInches(8);
    for (Figure figure : some(inset, Angle.ofDegrees(37))) {
      List<Segment> sides = figure.outline().sides();
      for (int i = 0; i < sides.size() && figure.supports().size() == sides.size(); i++) {
        Point support = figure.supports().get(i);
        Segment after = sides.get(i);
        Segment before = sides.get((i + sides.size() - 1) % sides.size());
        assertThat(-after.offsetMetres(support)).isCloseTo(inset.metres(), within(1e-12));
        assertThat(-before.offsetMetres(support)).isCloseTo(inset.metres(), within(1e-12));
      }
      assertThat(figure.supports())
          .allSatisfy(
              support ->
                  assertThat(figure.outline().distanceToEdge(support).metres())
                      .isGreaterThan(inset.metres() - (figure.round() ? 2e-4 : 1e-12)));
    }
  }

  @Test
  void theMarkAndNotTheCornerHoldsTheAzimuth() {
    for (double degrees : new double[] {0, 8, 90, 233.25, 359}) {
      for (Figure figure : some(Length.ofInches(8), Angle.ofDegrees(degrees))) {
        assertThat(Point.ORIGIN.azimuthTo(figure.supports().get(0)).minus(Angle.ofDegrees(degrees)))
            .satisfies(off -> assertThat(off.radians()).isCloseTo(0, within(1e-12)));
        assertThat(figure.outline().isClockwise()).isTrue();
        assertThat(Point.ORIGIN.distanceTo(figure.outline().centroid()).metres())
            .isCloseTo(0, within(1e-12));
      }
    }
  }

  /** One of each outline. */
  private static List<Figure> some(Length inset, Angle azimuth) {
    Length four = new Length(4);
    Length six = new Length(6);
    List<Point> free =
        Stream.of("0 0", "5 0", "5 3", "2 3", "2 6", "0 6")
            .map(text -> text.split(" "))
            .map(xy -> new Point(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))
            .toList();
    return Stream.of(
            Outlines.regular(6, four, inset, azimuth),
            Outlines.rectangle(six, four, new Grid(4, 3), inset, azimuth),
            Outlines.chamferedRectangle(six, four, new Length(1), inset, azimuth),
            Outlines.circle(six, 9, inset, azimuth),
            Outlines.free(free, Optional.empty(), inset, Optional.of(azimuth)))
        .map(Optional::orElseThrow)
        .toList();
  }

  @Test
  void gridRunsClockwiseRoundTheEdgeThenInside() {
    Length inset = new Length(0.5);
    Angle corner = new Angle(StrictMath.atan2(-3.5, 1.5)).normalized();
    Figure figure =
        Outlines.rectangle(new Length(8), new Length(4), new Grid(4, 3), inset, corner)
            .orElseThrow();
    assertThat(figure.supports().stream().map(OutlinesTest::rounded))
        .containsExactly(
            "-3500 1500",
            "-1167 1500",
            "1167 1500",
            "3500 1500",
            "3500 0",
            "3500 -1500",
            "1167 -1500",
            "-1167 -1500",
            "-3500 -1500",
            "-3500 0",
            "-1167 0",
            "1167 0");
  }

  private static String rounded(Point point) {
    return Math.round(point.east() * 1000) + " " + Math.round(point.north() * 1000);
  }

  @Test
  void chamferTakesItsCutOffEverySide() {
    Figure figure =
        Outlines.chamferedRectangle(new Length(8), new Length(6), new Length(2), Length.ZERO, NORTH)
            .orElseThrow();
    List<Long> millimetres =
        figure.outline().sides().stream()
            .map(side -> Math.round(side.length().millimetres()))
            .toList();
    assertThat(millimetres).containsExactly(4000L, 2828L, 2000L, 2828L, 4000L, 2828L, 2000L, 2828L);
    assertThat(figure.outline().area().squareMetres()).isCloseTo(8 * 6 - 2 * 2 * 2, within(1e-9));
  }

  @Test
  void noFigureComesBackWhenTheInsetLeavesNoRoom() {
    Length wide = new Length(2.1);
    Length four = new Length(4);
    assertThat(Outlines.regular(4, new Length(5.6), wide, NORTH)).isEmpty();
    assertThat(Outlines.rectangle(four, four, new Grid(2, 2), wide, NORTH)).isEmpty();
    assertThat(Outlines.circle(four, 5, wide, NORTH)).isEmpty();
    assertThat(Outlines.chamferedRectangle(four, four, new Length(1), wide, NORTH)).isEmpty();
  }

  @Test
  void freeCornersAreShiftedToTheirCentroidAndLieAsDrawnWithoutAnAzimuth() {
    List<Point> anticlockwise =
        List.of(new Point(10, 20), new Point(14, 20), new Point(14, 23), new Point(10, 23));
    Figure figure =
        Outlines.free(anticlockwise, Optional.empty(), Length.ZERO, Optional.empty()).orElseThrow();
    assertThat(figure.supports().stream().map(OutlinesTest::rounded))
        .containsExactly("-2000 -1500", "-2000 1500", "2000 1500", "2000 -1500");
    List<Point> given = List.of(new Point(12, 21.5));
    assertThat(Outlines.free(anticlockwise, Optional.of(given), Length.ZERO, Optional.of(NORTH)))
        .as("S1 at the centre has no azimuth")
        .isEmpty();
    assertThatThrownBy(
            () ->
                Outlines.free(
                    List.of(new Point(0, 0), new Point(2, 2), new Point(2, 0), new Point(0, 2)),
                    Optional.empty(),
                    Length.ZERO,
                    Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void postsStandEvenlyOnTheirCircle() {
    Figure figure =
        Outlines.circle(new Length(6), 60, new Length(0.25), Angle.ofDegrees(359)).orElseThrow();
    IntStream.range(0, 60)
        .forEach(
            i -> {
              Point post = figure.supports().get(i);
              assertThat(Point.ORIGIN.distanceTo(post).metres()).isCloseTo(2.75, within(1e-12));
              assertThat(Point.ORIGIN.azimuthTo(post).degrees())
                  .isCloseTo((359 + 6 * i) % 360, within(1e-9));
            });
    assertThat(figure.outline().area().squareMetres()).isCloseTo(Math.PI * 9, within(0.002));
  }
}
