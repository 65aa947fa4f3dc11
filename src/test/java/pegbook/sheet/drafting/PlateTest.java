package pegbook.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import pegbook.lettering.Lettering;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.Chance;

class PlateTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Geometry shape(Plate plate) {
    List<Coordinate> ring = new ArrayList<>();
    plate.corners().forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
    ring.add(ring.get(0));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  @Provide
  Arbitrary<Plate> plates() {
    Arbitrary<Double> place = Arbitraries.doubles().between(0, 40);
    Arbitrary<Double> half = Arbitraries.doubles().between(0.5, 12);
    return Combinators.combine(place, place, half, half, Arbitraries.doubles().between(-180, 180))
        .as((x, y, width, height, turn) -> new Plate(new Spot(x, y), width, height, turn));
  }

  @Property(seed = Chance.SEED)
  void overlapAgreesWithTheLibrary(@ForAll("plates") Plate one, @ForAll("plates") Plate other) {
    Geometry shared = shape(one).intersection(shape(other));
    if (shared.getArea() > 1e-6) {
      assertThat(one.overlaps(other)).isTrue();
    } else if (shape(one).distance(shape(other)) > 1e-6) {
      assertThat(one.overlaps(other)).isFalse();
    }
    assertThat(other.overlaps(one)).isEqualTo(one.overlaps(other));
  }

  @Property(seed = Chance.SEED)
  void crossingAgreesWithTheLibrary(@ForAll("plates") Plate plate, @ForAll("plates") Plate ends) {
    Spot from = ends.corners().get(0);
    Spot to = ends.corners().get(2);
    Geometry line =
        FACTORY.createLineString(
            new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
    double inside = shape(plate).intersection(line).getLength();
    if (inside > 1e-6) {
      assertThat(plate.isCrossedBy(from, to)).isTrue();
    } else if (shape(plate).distance(line) > 1e-6) {
      assertThat(plate.isCrossedBy(from, to)).isFalse();
    }
  }

  @Test
  void aLabelTakesTheRoomFromItsDescendersToItsAscenders() {
    Lettering lettering = Lettered.lettering();
    double sizeMm = 10 / Lettering.POINTS_PER_MM;
    Element.Label label =
        new Element.Label(new Spot(50, 20), "gypsum", 10, Element.Anchor.LEFT, 0, false, false);
    Plate plate = Plate.of(label, lettering);
    assertThat(plate.corners().get(0).x()).isCloseTo(50, within(1e-9));
    assertThat(plate.corners().get(2).x())
        .isCloseTo(50 + lettering.widthMm("gypsum", 10, false), within(1e-9));
    assertThat(plate.corners().get(0).y()).isCloseTo(20 - Lettering.DESCENT * sizeMm, within(1e-9));
    assertThat(plate.corners().get(2).y()).isCloseTo(20 + Lettering.ASCENT * sizeMm, within(1e-9));
    Element.Label turned =
        new Element.Label(new Spot(50, 20), "gypsum", 10, Element.Anchor.RIGHT, 90, false, false);
    Plate upwards = Plate.of(turned, lettering);
    assertThat(upwards.centre().y())
        .isCloseTo(20 - lettering.widthMm("gypsum", 10, false) / 2, within(1e-9));
    assertThat(upwards.isInside(Plate.between(40, 0, 60, 20.001))).isTrue();
    assertThat(upwards.isInside(Plate.between(40, 0, 60, 19.9))).isFalse();
  }
}
