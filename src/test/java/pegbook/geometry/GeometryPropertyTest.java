package pegbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.algorithm.Centroid;
import org.locationtech.jts.geom.Coordinate;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;

class GeometryPropertyTest {
  /** Shift, turn and scale in one. */
  record Change(double east, double north, double degrees, double scale) {
    Point of(Point point) {
      Point turned = point.turned(Angle.ofDegrees(degrees));
      return new Point(turned.east() * scale + east, turned.north() * scale + north);
    }
  }

  @Provide
  Arbitrary<Change> changes() {
    Arbitrary<Double> shift = Arbitraries.doubles().between(-50, 50);
    return Combinators.combine(
            shift,
            shift,
            Arbitraries.doubles().between(-360, 360),
            Arbitraries.doubles().between(0.1, 20))
        .as(Change::new);
  }

  /** Polygons whose corners go round the origin once, at any distance: simple, rarely convex. */
  @Provide
  Arbitrary<Polygon> polygons() {
    return Arbitraries.doubles()
        .between(0.5, 12)
        .list()
        .ofMinSize(3)
        .ofMaxSize(14)
        .map(
            radii ->
                new Polygon(
                    java.util.stream.IntStream.range(0, radii.size())
                        .mapToObj(
                            i ->
                                Point.ORIGIN.moved(
                                    Angle.ofDegrees(360.0 * i / radii.size()),
                                    new Length(radii.get(i))))
                        .toList()));
  }

  @Property(seed = Chance.SEED)
  void swingFollowsItsBaseline(
      @ForAll("changes") Change change,
      @ForAll @DoubleRange(min = 1, max = 20) double baselineMetres,
      @ForAll @DoubleRange(min = -15, max = 30) double along,
      @ForAll @DoubleRange(min = 0.05, max = 20) double offset) {
    Segment baseline = new Segment(Point.ORIGIN, new Point(0, baselineMetres));
    Point mark = baseline.at(along, offset);
    Segment changed = new Segment(change.of(baseline.from()), change.of(baseline.to()));
    Swing.Crossing crossing =
        (Swing.Crossing)
            Swing.of(
                changed,
                baseline.from().distanceTo(mark).times(change.scale()),
                baseline.to().distanceTo(mark).times(change.scale()));
    assertThat(crossing.left().distanceTo(change.of(mark)).metres())
        .isCloseTo(0, within(1e-6 * change.scale()));
    assertThat(changed.sideOf(crossing.left())).isEqualTo(Segment.Side.LEFT);
  }

  @Property(seed = Chance.SEED)
  void areaAndCentroidAgreeWithTheLibrary(
      @ForAll("polygons") Polygon polygon, @ForAll("changes") Change change) {
    Polygon changed = polygon.map(change::of);
    double area = changed.shape().getArea();
    assertThat(changed.area().squareMetres()).isCloseTo(area, within(1e-9 * (area + 2500)));
    Coordinate centroid = Centroid.getCentroid(changed.shape());
    assertThat(changed.centroid().east()).isCloseTo(centroid.x, within(1e-6));
    assertThat(changed.centroid().north()).isCloseTo(centroid.y, within(1e-6));
    assertThat(changed.area().squareMetres())
        .isCloseTo(
            polygon.area().squareMetres() * change.scale() * change.scale(),
            within(1e-9 * (area + 2500)));
  }

  @Property(seed = Chance.SEED)
  void figuresTurnAsAWhole(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 0, max = 359.99) double azimuth,
      @ForAll @DoubleRange(min = -180, max = 180) double turn) {
    Length across = new Length(5);
    Length inset = new Length(0.1);
    Figure before = Outlines.regular(sides, across, inset, Angle.ofDegrees(azimuth)).orElseThrow();
    Figure after =
        Outlines.regular(sides, across, inset, Angle.ofDegrees(azimuth + turn)).orElseThrow();
    List<Point> turned =
        before.supports().stream().map(at -> at.turned(Angle.ofDegrees(turn))).toList();
    for (int i = 0; i < sides; i++) {
      assertThat(after.supports().get(i).distanceTo(turned.get(i)).metres())
          .isCloseTo(0, within(1e-9));
    }
  }

  @Property(seed = Chance.SEED)
  void insetOfAPolygonHoldsOrIsRefused(
      @ForAll("polygons") Polygon polygon, @ForAll @DoubleRange(min = 0.01, max = 1) double inset) {
    Inset.of(polygon.clockwise(), inset)
        .ifPresent(
            places ->
                assertThat(places)
                    .allSatisfy(
                        place -> {
                          assertThat(polygon.contains(place)).isTrue();
                          assertThat(polygon.distanceToEdge(place).metres())
                              .isGreaterThan(inset - 1e-8);
                        }));
  }
}
