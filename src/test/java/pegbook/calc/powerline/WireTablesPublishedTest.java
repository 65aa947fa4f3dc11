package pegbook.calc.powerline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbook.measure.Length;
import pegbook.measure.LineResistance;
import pegbook.measure.Unit;
import pegbook.published.BurialDepth;
import pegbook.published.BurialDepth.Column;
import pegbook.published.DropLimit;
import pegbook.published.MetricCable;
import pegbook.published.Raceway;
import pegbook.published.Wire;

/**
 * The tables of conductors and depths held against a second road each: the gauge's own rule, the
 * metals' resistivity, circles, and the order in which the rows must stand.
 */
class WireTablesPublishedTest {
  private static double ohms(LineResistance resistance) {
    return Unit.OHM_PER_THOUSAND_FEET.in(resistance);
  }

  /** The gauge number of a size: 1/0 is 0, 2/0 is -1. */
  private static int gauge(String size) {
    return size.endsWith("/0")
        ? 1 - Integer.parseInt(size.substring(0, size.length() - 2))
        : Integer.parseInt(size);
  }

  /** ASTM B258: each of 39 steps from 36 (5 mil) to 4/0 (460 mil) is one and the same ratio. */
  @Test
  void areasFollowTheGauge() {
    for (Wire wire : Wire.all()) {
      double mils = 5 * StrictMath.pow(92, (36 - gauge(wire.size())) / 39.0);
      // Printed to tens; the tables keep some old figures that are off by up to a thousandth.
      double off = Math.max(5, 0.001 * mils * mils);
      assertThat(wire.circularMils()).as(wire.size()).isCloseTo(mils * mils, within(off));
    }
  }

  /** Chapter 9, Table 8: K is 12.6 for solid, 12.9 for stranded copper at 75 °C (handbooks). */
  @Test
  void resistancesFollowOneResistivityForEachMake() {
    int rows = 0;
    for (Wire wire : Wire.all()) {
      for (boolean solid : List.of(true, false)) {
        if (wire.resistance(false, solid).isPresent()) {
          rows++;
          double copper = ohms(wire.resistance(false, solid).get()) * wire.circularMils() / 1000;
          double aluminium = ohms(wire.resistance(true, solid).get()) * wire.circularMils() / 1000;
          assertThat(copper).as(wire.size()).isCloseTo(solid ? 12.6 : 12.9, within(0.065));
          assertThat(aluminium).as(wire.size()).isCloseTo(solid ? 20.78 : 21.19, within(0.075));
        }
      }
    }
    assertThat(rows).isEqualTo(21);
  }

  /** NEC Chapter 9, Table 9, resistance in PVC: two figures of the same conductors. */
  @Test
  void tableOfImpedancesAgreesWithTheTableOfResistances() {
    for (String row : List.of("14 3.1", "12 2.0", "8 0.78", "6 0.49", "3 0.25", "1/0 0.12")) {
      String[] cells = row.split(" ", -1);
      double direct = ohms(Wire.find(cells[0]).stranded().orElseThrow().copper());
      assertThat(direct).as(row).isCloseTo(Double.parseDouble(cells[1]), within(0.06));
    }
  }

  /** NEC Chapter 9, Table 5: area of a circle of the printed diameter, to the last digit. */
  @Test
  void insulatedAreasAreCircles() {
    List<Double> diameters =
        List.of(
            0.111, 0.13, 0.164, 0.216, 0.254, 0.324, 0.352, 0.384, 0.446, 0.486, 0.532, 0.584,
            0.642);
    List<Wire> wires = Wire.all().stream().filter(wire -> wire.insulated().isPresent()).toList();
    assertThat(wires).hasSameSizeAs(diameters);
    for (int i = 0; i < wires.size(); i++) {
      double circle = Math.PI * diameters.get(i) * diameters.get(i) / 4;
      assertThat(wires.get(i).insulated().orElseThrow().squareInches())
          .as(wires.get(i).size())
          .isCloseTo(circle, within(0.00011));
    }
  }

  /** NEC Chapter 9, Table 4, from memory: area and 40 % column from the inside diameter. */
  @Test
  void racewaysAreCircles() {
    for (String kind : List.of("pvc-40", "pvc-80", "metal")) {
      List<Raceway> raceways = Raceway.of(kind);
      assertThat(raceways).hasSize(6);
      Length before = Length.ZERO;
      for (Raceway raceway : raceways) {
        double circle = Math.PI * Math.pow(raceway.inside().inches(), 2) / 4;
        assertThat(raceway.area().squareInches())
            .as(kind + " " + raceway.trade())
            .isCloseTo(circle, within(0.0006));
        assertThat(raceway.inside()).isGreaterThan(before).isLessThan(raceway.outside());
        before = raceway.inside();
      }
    }
    assertThat(0.4 * Raceway.of("pvc-40").get(0).area().squareInches())
        .isCloseTo(0.114, within(0.0005));
    assertThat(Raceway.fillPercent(1)).isEqualTo(53);
    assertThat(Raceway.fillPercent(2)).isEqualTo(31);
    assertThat(Raceway.fillPercent(3)).isEqualTo(40);
  }

  /** NEC 2023 Table 310.16 and 240.4(D). */
  @Test
  void ampacitiesRiseWithSizeAndTemperature() {
    double before = 0;
    for (Wire wire : Wire.all()) {
      if (wire.copper().isEmpty()) {
        continue;
      }
      Wire.Ampacity copper = wire.copper().get();
      assertThat(copper.at60()).isGreaterThan(before).isLessThan(copper.at75());
      assertThat(copper.at75()).isLessThan(copper.at90());
      wire.aluminium()
          .ifPresent(aluminium -> assertThat(aluminium.at60()).isLessThan(copper.at60()));
      before = copper.at60();
    }
    assertThat(Wire.find("12").copper().orElseThrow()).isEqualTo(new Wire.Ampacity(20, 25, 30));
    assertThat(Wire.find("4/0").aluminium().orElseThrow())
        .isEqualTo(new Wire.Ampacity(150, 180, 205));
    assertThat(Wire.find("14").aluminium()).isEmpty();
    assertThat(Wire.find("10").breaker().orElseThrow().copper()).isEqualTo(30);
    assertThat(Wire.find("12").breaker().orElseThrow().aluminium()).hasValue(15.0);
    assertThat(Wire.find("8").breaker()).isEmpty();
  }

  /** NEC Table 250.122, in two texts that agree. */
  @Test
  void groundingConductorsFollowTheBreaker() {
    assertThat(Wire.grounding(15, false).orElseThrow().size()).isEqualTo("14");
    assertThat(Wire.grounding(20, true).orElseThrow().size()).isEqualTo("10");
    assertThat(Wire.grounding(21, false).orElseThrow().size()).isEqualTo("10");
    assertThat(Wire.grounding(100, false).orElseThrow().size()).isEqualTo("8");
    assertThat(Wire.grounding(200, true).orElseThrow().size()).isEqualTo("4");
    assertThat(Wire.grounding(201, false)).isEmpty();
  }

  /** NEC Table 300.5, every row and column, inches. */
  @Test
  void burialDepths() {
    check("open-ground", 24, 6, 18, 12, 12, 6, 6);
    check("concrete-cap", 18, 6, 12, 6, 6, 6, 6);
    check("building", 0, 0, 0, 0, 0, 0, 0);
    check("exterior-slab", 18, 4, 4, 6, 4, 6, 4);
    check("street", 24, 24, 24, 24, 24, 24, 24);
    check("dwelling-driveway", 18, 18, 18, 12, 12, 18, 18);
    check("airport", 18, 18, 18, 18, 18, 18, 18);
    assertThat(BurialDepth.all()).hasSize(7);
  }

  private static void check(String location, double... inches) {
    BurialDepth row = BurialDepth.find(location);
    assertThat(
            List.of(
                row.cover(Column.DIRECT, false).inches(),
                row.cover(Column.METAL, true).inches(),
                row.cover(Column.CONDUIT, true).inches(),
                row.cover(Column.RESIDENTIAL, false).inches(),
                row.cover(Column.RESIDENTIAL, true).inches(),
                row.cover(Column.LOW_VOLTAGE, false).inches(),
                row.cover(Column.LOW_VOLTAGE, true).inches()))
        .as(location)
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(
            inches[0], inches[1], inches[2], inches[3], inches[4], inches[5], inches[6]);
  }

  /** IEC 60364-5-52, Annex G; sizes of IEC 60228 (recalled). */
  @Test
  void metricValues() {
    assertThat(Unit.OHM_SQUARE_MILLIMETRE_PER_METRE.in(MetricCable.COPPER))
        .isCloseTo(0.0225, within(1e-12));
    assertThat(Unit.OHM_SQUARE_MILLIMETRE_PER_METRE.in(MetricCable.ALUMINIUM))
        .isCloseTo(0.036, within(1e-12));
    // Copper at 20 °C (IEC 60028: 1/58) times 1.25, as the annex says.
    assertThat(1.25 / 58).isCloseTo(0.0225, within(0.0011));
    assertThat(MetricCable.all().stream().map(cable -> Unit.SQUARE_MILLIMETRE.in(cable.area())))
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0);
    double before = 0;
    for (MetricCable cable : MetricCable.all()) {
      assertThat(cable.copper().orElseThrow().inDuct()).isGreaterThan(before);
      cable
          .aluminium()
          .ifPresent(
              aluminium ->
                  assertThat(aluminium.inDuct()).isLessThan(cable.copper().get().inDuct()));
      before = cable.copper().orElseThrow().inDuct();
    }
    assertThat(DropLimit.find("public-lighting").share().fraction()).isEqualTo(0.03);
    assertThat(DropLimit.find("public-other").share().fraction()).isEqualTo(0.05);
    // Over 100 m 0.005 % a metre more, 0.5 % at most.
    assertThat(DropLimit.find("public-lighting").over(new Length(140)).fraction())
        .isCloseTo(0.032, within(1e-12));
    assertThat(DropLimit.find("public-other").over(new Length(900)).fraction())
        .isCloseTo(0.055, within(1e-12));
    assertThat(DropLimit.find("own-other").share().fraction()).isEqualTo(0.08);
  }
}
