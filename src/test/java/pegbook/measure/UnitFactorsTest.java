package pegbook.measure;

import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Every unit's factor a second way: a general units library composes it from the inch, the
 * avoirdupois pound and standard gravity alone.
 */
class UnitFactorsTest {
  private static final javax.measure.Unit<?> INCH = Units.METRE.multiply(0.0254);
  private static final javax.measure.Unit<?> FOOT = INCH.multiply(12);
  private static final javax.measure.Unit<?> YARD = FOOT.multiply(3);
  private static final javax.measure.Unit<?> POUND = Units.KILOGRAM.multiply(0.45359237);
  private static final javax.measure.Unit<?> POUND_FORCE =
      POUND.multiply(Units.METRE_PER_SQUARE_SECOND).multiply(9.80665);

  private static final javax.measure.Unit<?> KIP = POUND_FORCE.multiply(1000);

  /** By the steam tables of 1956: 2326 J/kg for a Btu a pound. */
  private static final javax.measure.Unit<?> BTU =
      POUND.multiply(Units.JOULE).divide(Units.KILOGRAM).multiply(2326);

  private static final Map<Unit, javax.measure.Unit<?>> COMPOSED =
      Map.ofEntries(
          Map.entry(Unit.NONE, AbstractUnit.ONE),
          Map.entry(Unit.PERCENT, Units.PERCENT),
          Map.entry(Unit.METRE, Units.METRE),
          Map.entry(Unit.MILLIMETRE, MILLI(Units.METRE)),
          Map.entry(Unit.INCH, INCH),
          Map.entry(Unit.FOOT, FOOT),
          Map.entry(Unit.SQUARE_METRE, Units.SQUARE_METRE),
          Map.entry(Unit.SQUARE_MILLIMETRE, MILLI(Units.METRE).pow(2)),
          Map.entry(Unit.SQUARE_INCH, INCH.pow(2)),
          Map.entry(Unit.SQUARE_FOOT, FOOT.pow(2)),
          Map.entry(Unit.CUBIC_METRE, Units.CUBIC_METRE),
          Map.entry(Unit.LITRE, Units.LITRE),
          Map.entry(Unit.CUBIC_FOOT, FOOT.pow(3)),
          Map.entry(Unit.CUBIC_YARD, YARD.pow(3)),
          // A United States gallon is 231 cubic inches, a pint an eighth of it.
          Map.entry(Unit.US_PINT, INCH.pow(3).multiply(231).divide(8)),
          Map.entry(Unit.KILOGRAM, Units.KILOGRAM),
          Map.entry(Unit.POUND, POUND),
          Map.entry(Unit.KILOGRAM_PER_METRE, Units.KILOGRAM.divide(Units.METRE)),
          Map.entry(Unit.POUND_PER_FOOT, POUND.divide(FOOT)),
          Map.entry(Unit.KILOGRAM_PER_CUBIC_METRE, Units.KILOGRAM.divide(Units.CUBIC_METRE)),
          Map.entry(Unit.POUND_PER_CUBIC_FOOT, POUND.divide(FOOT.pow(3))),
          Map.entry(Unit.NEWTON, Units.NEWTON),
          Map.entry(Unit.KILONEWTON, KILO(Units.NEWTON)),
          Map.entry(Unit.POUND_FORCE, POUND_FORCE),
          Map.entry(Unit.PASCAL, Units.PASCAL),
          Map.entry(Unit.KILOPASCAL, KILO(Units.PASCAL)),
          Map.entry(Unit.MEGAPASCAL, MEGA(Units.PASCAL)),
          Map.entry(Unit.PSF, POUND_FORCE.divide(FOOT.pow(2))),
          Map.entry(Unit.PSI, POUND_FORCE.divide(INCH.pow(2))),
          Map.entry(Unit.KILOGRAM_SQUARE_METRE, Units.KILOGRAM.multiply(Units.SQUARE_METRE)),
          Map.entry(Unit.POUND_SQUARE_FOOT, POUND.multiply(FOOT.pow(2))),
          Map.entry(Unit.KILONEWTON_METRE, KILO(Units.NEWTON).multiply(Units.METRE)),
          Map.entry(Unit.KIP_FOOT, KIP.multiply(FOOT)),
          Map.entry(Unit.KILONEWTON_PER_MILLIMETRE, KILO(Units.NEWTON).divide(MILLI(Units.METRE))),
          Map.entry(Unit.KIP_PER_INCH, KIP.divide(INCH)),
          Map.entry(Unit.MICROMETRE_PER_KILONEWTON, MICRO(Units.METRE).divide(KILO(Units.NEWTON))),
          Map.entry(Unit.MIL_PER_KIP, INCH.divide(1000).divide(KIP)),
          Map.entry(
              Unit.MICRORADIAN_PER_KILONEWTON, MICRO(Units.RADIAN).divide(KILO(Units.NEWTON))),
          Map.entry(Unit.MICRORADIAN_PER_KIP, MICRO(Units.RADIAN).divide(KIP)),
          Map.entry(
              Unit.MICRORADIAN_PER_KILONEWTON_METRE,
              MICRO(Units.RADIAN).divide(KILO(Units.NEWTON).multiply(Units.METRE))),
          Map.entry(Unit.MICRORADIAN_PER_KIP_FOOT, MICRO(Units.RADIAN).divide(KIP.multiply(FOOT))),
          Map.entry(Unit.MICROMETRE, MICRO(Units.METRE)),
          Map.entry(Unit.MIL, INCH.divide(1000)),
          Map.entry(Unit.METRE_PER_SECOND, Units.METRE_PER_SECOND),
          Map.entry(Unit.FOOT_PER_SECOND, FOOT.divide(Units.SECOND)),
          Map.entry(Unit.MILE_PER_HOUR, FOOT.multiply(5280).divide(Units.HOUR)),
          Map.entry(Unit.HERTZ, Units.HERTZ),
          Map.entry(Unit.ARC_SECOND, Units.RADIAN.multiply(Math.PI).divide(180 * 3600)),
          Map.entry(Unit.DEGREE, Units.RADIAN.multiply(Math.PI).divide(180)),
          Map.entry(Unit.CELSIUS_STEP, Units.KELVIN),
          Map.entry(Unit.FAHRENHEIT_STEP, Units.KELVIN.multiply(5).divide(9)),
          Map.entry(Unit.MILLIONTH_PER_KELVIN, Units.KELVIN.inverse().divide(1e6)),
          Map.entry(
              Unit.MILLIONTH_PER_FAHRENHEIT,
              Units.KELVIN.multiply(5).divide(9).inverse().divide(1e6)),
          Map.entry(Unit.FAHRENHEIT_DAY, Units.KELVIN.multiply(5).divide(9).multiply(Units.DAY)),
          Map.entry(Unit.CELSIUS_DAY, Units.KELVIN.multiply(Units.DAY)),
          Map.entry(
              Unit.BTU_PER_FOOT_HOUR_FAHRENHEIT,
              BTU.divide(FOOT).divide(Units.HOUR).divide(Units.KELVIN.multiply(5).divide(9))),
          Map.entry(
              Unit.WATT_PER_METRE_KELVIN, Units.WATT.divide(Units.METRE).divide(Units.KELVIN)),
          Map.entry(Unit.BTU_PER_CUBIC_FOOT, BTU.divide(FOOT.pow(3))),
          Map.entry(Unit.MEGAJOULE_PER_CUBIC_METRE, MEGA(Units.JOULE).divide(Units.METRE.pow(3))),
          Map.entry(Unit.DAY, Units.DAY),
          Map.entry(Unit.HOUR, Units.HOUR),
          Map.entry(Unit.MINUTE, Units.MINUTE),
          Map.entry(Unit.CUBIC_METRE_PER_HOUR, Units.CUBIC_METRE.divide(Units.HOUR)),
          Map.entry(Unit.CUBIC_FOOT_PER_HOUR, FOOT.pow(3).divide(Units.HOUR)),
          Map.entry(Unit.HOUR_PER_METRE, Units.HOUR.divide(Units.METRE)),
          Map.entry(Unit.HOUR_PER_FOOT, Units.HOUR.divide(FOOT)),
          Map.entry(Unit.AMPERE, Units.AMPERE),
          Map.entry(Unit.VOLT, Units.VOLT),
          Map.entry(Unit.OHM_PER_METRE, Units.OHM.divide(Units.METRE)),
          Map.entry(Unit.OHM_PER_THOUSAND_FEET, Units.OHM.divide(FOOT.multiply(1000))),
          Map.entry(
              Unit.OHM_SQUARE_MILLIMETRE_PER_METRE,
              Units.OHM.multiply(MILLI(Units.METRE).pow(2)).divide(Units.METRE)),
          Map.entry(Unit.CIRCULAR_MIL, INCH.divide(1000).pow(2).multiply(Math.PI).divide(4)));

  @TestFactory
  List<DynamicTest> everyUnitOfTheWorkings() {
    return List.of(Unit.values()).stream()
        .map(unit -> DynamicTest.dynamicTest(unit.name(), () -> compare(unit)))
        .toList();
  }

  private static void compare(Unit unit) {
    javax.measure.Unit<?> composed = COMPOSED.get(unit);
    assertThat(composed).as("%s has a second road", unit).isNotNull();
    double factor = toSystemUnit(composed);
    assertThat(unit.toSi(1)).isCloseTo(factor, withinPercentage(1e-10));
  }

  @TestFactory
  List<DynamicTest> everyUnitThatIsRead() {
    return List.of(
        read(Notation.LENGTHS, "1 in", INCH),
        read(Notation.LENGTHS, "1 ft", FOOT),
        read(Notation.LENGTHS, "100 cm", Units.METRE),
        read(Notation.AREAS, "1 ft2", FOOT.pow(2)),
        read(Notation.AREAS, "1 in2", INCH.pow(2)),
        read(Notation.AREAS, "1 mm2", MILLI(Units.METRE).pow(2)),
        read(Notation.VOLUMES, "1 ft3", FOOT.pow(3)),
        read(Notation.VOLUMES, "1 yd3", YARD.pow(3)),
        read(Notation.VOLUMES, "1 L", Units.LITRE),
        read(Notation.MASSES, "1 lb", POUND),
        read(Notation.FORCES, "1 lbf", POUND_FORCE),
        read(Notation.FORCES, "1 kip", POUND_FORCE.multiply(1000)),
        read(Notation.FORCES, "1 kN", KILO(Units.NEWTON)),
        read(Notation.PRESSURES, "1 psf", COMPOSED.get(Unit.PSF)),
        read(Notation.PRESSURES, "1 psi", COMPOSED.get(Unit.PSI)),
        read(Notation.PRESSURES, "1 ksf", COMPOSED.get(Unit.PSF).multiply(1000)),
        read(Notation.PRESSURES, "1 ksi", COMPOSED.get(Unit.PSI).multiply(1000)),
        read(Notation.PRESSURES, "1 kPa", KILO(Units.PASCAL)),
        read(Notation.PRESSURES, "1 MPa", MEGA(Units.PASCAL)),
        read(Notation.DENSITIES, "1 pcf", COMPOSED.get(Unit.POUND_PER_CUBIC_FOOT)),
        read(Notation.ANGLES, "1 deg", COMPOSED.get(Unit.DEGREE)),
        read(Notation.ANGLES, "1 min", COMPOSED.get(Unit.DEGREE).divide(60)),
        read(Notation.RATIOS, "1 %", Units.PERCENT),
        read(Notation.SPEEDS, "1 ft/s", FOOT.divide(Units.SECOND)),
        read(Notation.WIND_SPEEDS, "1 mph", FOOT.multiply(5280).divide(Units.HOUR)),
        read(Notation.WIND_SPEEDS, "3.6 km/h", Units.METRE.divide(Units.SECOND)),
        read(Notation.SPEEDS, "1 m/s", Units.METRE.divide(Units.SECOND)),
        read(Notation.DURATIONS, "1 h", Units.HOUR),
        read(Notation.DURATIONS, "1 min", Units.MINUTE));
  }

  private static DynamicTest read(
      QuantityNotation<? extends Quantity> notation, String text, javax.measure.Unit<?> composed) {
    return DynamicTest.dynamicTest(
        text,
        () ->
            assertThat(notation.read(text).taken().orElseThrow().si())
                .isCloseTo(toSystemUnit(composed), withinPercentage(1e-10)));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double toSystemUnit(javax.measure.Unit<?> unit) {
    javax.measure.Unit raw = unit;
    return raw.getConverterTo(raw.getSystemUnit()).convert(1.0);
  }
}
