package pegbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;
import pegbook.geometry.NearestCells.Opening;
import pegbook.measure.Angle;
import pegbook.measure.Area;
import pegbook.measure.Length;
import pegbook.testing.Chance;

class NearestCellsTest {
  /** An L: 6 by 6 m less its upper right quarter. */
  private static final Polygon L =
      new Polygon(
          List.of(
              new Point(0, 0),
              new Point(0, 6),
              new Point(3, 6),
              new Point(3, 3),
              new Point(6, 3),
              new Point(6, 0)));

  private static final Polygon SQUARE =
      new Polygon(List.of(new Point(0, 0), new Point(0, 4), new Point(4, 4), new Point(4, 0)));

  private static double sum(NearestCells shared) {
    return shared.cells().stream().mapToDouble(cell -> cell.area().squareMetres()).sum();
  }

  @Test
  void onePlaceTakesTheWholeFloorLessItsOpening() {
    NearestCells shared =
        NearestCells.of(
            SQUARE,
            List.of(new Opening(new Point(2, 2), new Length(0.5))),
            List.of(new Point(1, 1)));
    assertThat(shared.cells()).hasSize(1);
    assertThat(shared.cells().get(0).area().squareMetres())
        .isCloseTo(16 - Math.PI / 4, within(1e-12));
    assertThat(shared.cells().get(0).largest().holes()).hasSize(1);
  }

  @Test
  void fourCornersShareASquareInQuarters() {
    List<Point> corners =
        List.of(new Point(0.2, 0.2), new Point(0.2, 3.8), new Point(3.8, 3.8), new Point(3.8, 0.2));
    assertThat(NearestCells.of(SQUARE, List.of(), corners).cells())
        .allSatisfy(cell -> assertThat(cell.area().squareMetres()).isCloseTo(4, within(1e-12)));
  }

  /** A row at 0.5, 1.5 and 3 m: halfway lines at 1 and 2.25 m. */
  @Test
  void placesInOneLineShareAStripByTheirHalfwayLines() {
    List<Point> row = List.of(new Point(0.5, 2), new Point(3, 2), new Point(1.5, 2));
    assertThat(NearestCells.of(SQUARE, List.of(), row).cells())
        .extracting(cell -> Math.round(cell.area().squareMetres() * 1e9) / 1e9)
        .containsExactly(4.0, 7.0, 5.0);
  }

  /** The line halfway between the ends of the L runs through its inner corner. */
  @Test
  void aCornerPointingInwardsCutsCells() {
    List<Point> ends = List.of(new Point(1.5, 5.5), new Point(5.5, 1.5));
    NearestCells shared = NearestCells.of(L, List.of(), ends);
    assertThat(shared.floor().squareMetres()).isCloseTo(27, within(1e-12));
    assertThat(shared.cells())
        .allSatisfy(cell -> assertThat(cell.area().squareMetres()).isCloseTo(13.5, within(1e-9)));
  }

  /** Across the notch of a U the cell of the upper arm's place lies in two parts. */
  @Test
  void theEdgeMayCutACellApart() {
    Polygon comb =
        new Polygon(
            List.of(
                new Point(0, 0),
                new Point(0, 6),
                new Point(1, 6),
                new Point(1, 1),
                new Point(5, 1),
                new Point(5, 6),
                new Point(6, 6),
                new Point(6, 0)));
    List<Point> places = List.of(new Point(3, 0.5), new Point(3, 6.5));
    NearestCells shared = NearestCells.of(comb, List.of(), places);
    assertThat(shared.cells().get(1).pieces()).hasSize(2);
    assertThat(shared.cells().get(1).area().squareMetres()).isCloseTo(5, within(1e-12));
    assertThat(sum(shared)).isCloseTo(comb.area().squareMetres(), within(1e-12));
  }

  @Test
  void aPlaceThatIsNearestToNothingHasNoPart() {
    List<Point> places = List.of(new Point(2, 2), new Point(2, 40));
    NearestCells shared = NearestCells.of(SQUARE, List.of(), places);
    assertThat(shared.cells().get(1).pieces()).isEmpty();
    assertThat(shared.cells().get(1).area()).isEqualTo(Area.ZERO);
  }

  @Test
  void openingsMayReachOverTheEdgeAndOverOneAnother() {
    List<Opening> openings =
        List.of(
            new Opening(new Point(0, 2), new Length(1)),
            new Opening(new Point(0, 2), new Length(0.5)),
            new Opening(new Point(2, 2), Length.ZERO));
    NearestCells shared = NearestCells.of(SQUARE, openings, List.of(new Point(3, 3)));
    assertThat(shared.floor().squareMetres()).isCloseTo(16 - Math.PI / 2, within(1e-9));
  }

  @Test
  void twoPlacesAtOneSpotAreRefused() {
    List<Point> twice = List.of(new Point(1, 1), new Point(1, 1));
    assertThatThrownBy(() -> NearestCells.of(SQUARE, List.of(), twice))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void fiveHundredPlacesShareAFloor() {
    Random random = new Random(7);
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      places.add(new Point(4 * random.nextDouble(), 4 * random.nextDouble()));
    }
    List<Opening> openings = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      openings.add(new Opening(new Point(0.2 * i, 0.1 + 0.19 * i), new Length(0.05)));
    }
    NearestCells shared = NearestCells.of(SQUARE, openings, places);
    assertThat(sum(shared)).isCloseTo(shared.floor().squareMetres(), within(1e-9));
  }

  @Provide
  Arbitrary<List<Point>> places() {
    return Combinators.combine(
            Arbitraries.doubles().between(0.01, 5.99), Arbitraries.doubles().between(0.01, 5.99))
        .as(Point::new)
        .list()
        .uniqueElements()
        .ofMinSize(1)
        .ofMaxSize(40);
  }

  private static final List<Opening> OPENINGS =
      List.of(
          new Opening(new Point(1.5, 1.5), new Length(0.4)),
          new Opening(new Point(3, 2), new Length(0.3)));

  @Property(tries = 200, seed = Chance.SEED)
  void theCellsSumToTheFloorLessItsOpenings(@ForAll("places") List<Point> places) {
    NearestCells shared = NearestCells.of(L, OPENINGS, places);
    assertThat(shared.floor().squareMetres()).isCloseTo(27 - Math.PI * (0.16 + 0.09), within(1e-9));
    assertThat(sum(shared)).isCloseTo(shared.floor().squareMetres(), within(1e-8));
  }

  /** Every place inside a part is nearer to that part's own place than to any other. */
  @Property(tries = 200, seed = Chance.SEED)
  void aCellLiesNearestToItsOwnPlace(@ForAll("places") List<Point> places) {
    for (Cell cell : NearestCells.of(L, OPENINGS, places).cells()) {
      for (Cell.Piece piece : cell.pieces()) {
        double own = piece.inside().distanceTo(cell.place()).metres();
        assertThat(places)
            .allSatisfy(
                place ->
                    assertThat(piece.inside().distanceTo(place).metres())
                        .isGreaterThanOrEqualTo(own - 1e-9));
      }
    }
  }

  @Property(tries = 100, seed = Chance.SEED)
  void turningAndShiftingChangesNoArea(
      @ForAll("places") List<Point> places,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees,
      @ForAll @DoubleRange(min = -50, max = 50) double east) {
    Angle turn = Angle.ofDegrees(degrees);
    List<Cell> before = NearestCells.of(L, OPENINGS, places).cells();
    List<Cell> after =
        NearestCells.of(
                L.map(corner -> corner.turned(turn).plus(east, -3)),
                OPENINGS.stream()
                    .map(
                        opening ->
                            new Opening(
                                opening.centre().turned(turn).plus(east, -3), opening.radius()))
                    .toList(),
                places.stream().map(place -> place.turned(turn).plus(east, -3)).toList())
            .cells();
    for (int i = 0; i < before.size(); i++) {
      // The sides of the polygon that stands for an opening do not turn with the floor.
      assertThat(after.get(i).area().squareMetres())
          .isCloseTo(before.get(i).area().squareMetres(), within(1e-3));
    }
  }

  /**
   * Places on one circle, whose halfway lines all meet in its centre: each corner of a regular
   * figure has an equal share, however the figure is turned and wherever it lies.
   */
  @Property(tries = 3000, seed = Chance.SEED)
  void theCornersOfARegularFigureShareItEqually(
      @ForAll @IntRange(min = 3, max = 48) int sides,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees,
      @ForAll @DoubleRange(min = -500, max = 500) double east,
      @ForAll @DoubleRange(min = 0.5, max = 1) double inset) {
    List<Point> corners = new ArrayList<>();
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      Angle turn = Angle.ofDegrees(degrees + 360.0 * i / sides);
      corners.add(new Point(0, 4.5).turned(turn).plus(east, -7));
      places.add(new Point(0, 4.5 * inset).turned(turn).plus(east, -7));
    }
    NearestCells shared = NearestCells.of(new Polygon(corners), List.of(), places);
    double share = sides * 4.5 * 4.5 / 2 * Math.sin(2 * Math.PI / sides) / sides;
    assertThat(shared.cells())
        .allSatisfy(cell -> assertThat(cell.area().squareMetres()).isCloseTo(share, within(1e-7)));
  }

  /** Without openings nothing but rounding may change. */
  @Property(tries = 100, seed = Chance.SEED)
  void withoutOpeningsTurningChangesNothing(
      @ForAll("places") List<Point> places,
      @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    Angle turn = Angle.ofDegrees(degrees);
    List<Cell> before = NearestCells.of(L, List.of(), places).cells();
    List<Cell> after =
        NearestCells.of(
                L.map(corner -> corner.turned(turn)),
                List.of(),
                places.stream().map(place -> place.turned(turn)).toList())
            .cells();
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).area().squareMetres())
          .isCloseTo(before.get(i).area().squareMetres(), within(1e-8));
    }
  }

  /** Against another way to the same cells: JTS builds them from a triangulation. */
  @Property(tries = 100, seed = Chance.SEED)
  void theCellsAreThoseOfADelaunayTriangulation(@ForAll("places") List<Point> places) {
    List<Coordinate> sites =
        places.stream().map(place -> new Coordinate(place.east(), place.north())).toList();
    VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
    builder.setSites(sites);
    builder.setClipEnvelope(new Envelope(-50, 50, -50, 50));
    Geometry diagram = builder.getDiagram(new GeometryFactory());
    NearestCells shared = NearestCells.of(L, List.of(), places);
    for (int i = 0; i < diagram.getNumGeometries(); i++) {
      Geometry part = diagram.getGeometryN(i);
      Coordinate site = (Coordinate) part.getUserData();
      double expected = part.intersection(L.shape()).getArea();
      Cell cell = shared.cells().get(places.indexOf(new Point(site.getX(), site.getY())));
      assertThat(cell.area().squareMetres()).isCloseTo(expected, within(1e-6));
    }
  }
}
