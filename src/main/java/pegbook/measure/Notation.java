package pegbook.measure;

import static pegbook.measure.QuantityKind.ANGLE;
import static pegbook.measure.QuantityKind.AREA;
import static pegbook.measure.QuantityKind.CURRENT;
import static pegbook.measure.QuantityKind.DENSITY;
import static pegbook.measure.QuantityKind.DURATION;
import static pegbook.measure.QuantityKind.FORCE;
import static pegbook.measure.QuantityKind.FREEZING_INDEX;
import static pegbook.measure.QuantityKind.LENGTH;
import static pegbook.measure.QuantityKind.MASS;
import static pegbook.measure.QuantityKind.PRESSURE;
import static pegbook.measure.QuantityKind.RATIO;
import static pegbook.measure.QuantityKind.SPEED;
import static pegbook.measure.QuantityKind.TEMPERATURE;
import static pegbook.measure.QuantityKind.VOLTAGE;
import static pegbook.measure.QuantityKind.VOLUME;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import pegbook.measure.SpelledUnit.Joint;

/** The trade's notation of every kind of quantity, with the spellings of its units. */
public final class Notation {
  public static final QuantityNotation<Length> LENGTHS =
      new QuantityNotation<>(
          LENGTH,
          List.of(
              unit("in", Length::ofInches, "in", "in.", "inch", "inches", "\""),
              unit("ft", Length::ofFeet, "ft", "ft.", "foot", "feet", "'"),
              unit("mm", Length::ofMillimetres, "mm", "millimetre", "millimetres", "millimeters"),
              unit("cm", cm -> Length.ofMillimetres(cm * 10), "cm", "centimetre", "centimetres"),
              unit("m", Length::new, "m", "metre", "metres", "meter", "meters")),
          List.of(
              new Joint("ft", "in", 12),
              new Joint("m", "cm", 100),
              new Joint("m", "mm", 1000),
              new Joint("cm", "mm", 10)),
          List.of("mm", "in"));

  public static final QuantityNotation<Area> AREAS =
      new QuantityNotation<>(
          AREA,
          List.of(
              unit("ft2", Area::ofSquareFeet, "ft2", "ft^2", "sq ft", "square feet"),
              unit("in2", Area::ofSquareInches, "in2", "in^2", "sq in", "square inches"),
              unit("m2", Area::new, "m2", "m^2", "sq m", "square metres"),
              unit("mm2", Area::ofSquareMillimetres, "mm2", "mm^2", "sq mm")),
          List.of(),
          List.of("m2", "ft2"));

  public static final QuantityNotation<Volume> VOLUMES =
      new QuantityNotation<>(
          VOLUME,
          List.of(
              unit("ft3", Volume::ofCubicFeet, "ft3", "ft^3", "cu ft", "cubic feet", "cubic foot"),
              unit("yd3", Volume::ofCubicYards, "yd3", "yd^3", "cu yd", "cubic yards"),
              unit("L", Volume::ofLitres, "L", "litre", "litres", "liter", "liters"),
              unit("m3", Volume::new, "m3", "m^3", "cu m", "cubic metres")),
          List.of(),
          List.of("m3", "ft3"));

  public static final QuantityNotation<Mass> MASSES =
      new QuantityNotation<>(
          MASS,
          List.of(
              unit("lb", Mass::ofPounds, "lb", "lb.", "lbs", "lbs.", "pound", "pounds"),
              unit("kg", Mass::new, "kg", "kilogram", "kilograms")),
          List.of(),
          List.of("kg", "lb"));

  public static final QuantityNotation<Force> FORCES =
      new QuantityNotation<>(
          FORCE,
          List.of(
              unit("lbf", Force::ofPoundsForce, "lbf", "pounds-force", "pound-force"),
              unit("kip", kips -> Force.ofPoundsForce(kips * 1000), "kip", "kips"),
              unit("kN", Force::ofKilonewtons, "kN", "kilonewtons"),
              unit("N", Force::new, "N", "newton", "newtons")),
          List.of(),
          List.of("N", "lbf"));

  public static final QuantityNotation<Pressure> PRESSURES =
      new QuantityNotation<>(
          PRESSURE,
          List.of(
              unit("psf", Pressure::ofPsf, "psf", "lb/ft2", "lbf/ft2", "lb/sq ft"),
              unit("psi", Pressure::ofPsi, "psi", "lb/in2", "lbf/in2", "lb/sq in"),
              unit("ksf", ksf -> Pressure.ofPsf(ksf * 1000), "ksf"),
              unit("ksi", ksi -> Pressure.ofPsi(ksi * 1000), "ksi"),
              unit("kPa", Pressure::ofKilopascals, "kPa", "kN/m2"),
              unit("MPa", Pressure::ofMegapascals, "MPa", "N/mm2"),
              unit("Pa", Pressure::new, "Pa", "N/m2")),
          List.of(),
          List.of("kPa", "psf"));

  public static final QuantityNotation<Density> DENSITIES =
      new QuantityNotation<>(
          DENSITY,
          List.of(
              unit("pcf", Density::ofPoundsPerCubicFoot, "pcf", "lb/ft3", "lb/cu ft"),
              unit("kg/m3", Density::new, "kg/m3", "kg/m^3")),
          List.of(),
          List.of("kg/m3", "pcf"));

  public static final QuantityNotation<Angle> ANGLES =
      new QuantityNotation<>(
          ANGLE,
          List.of(
              unit("deg", Angle::ofDegrees, "deg", "deg.", "degree", "degrees", "°"),
              unit("min", minutes -> Angle.ofDegrees(minutes / 60), "min", "minutes", "'"),
              unit("sec", seconds -> Angle.ofDegrees(seconds / 3600), "sec", "seconds", "\"")),
          List.of(new Joint("deg", "min", 60), new Joint("min", "sec", 60)),
          List.of("deg"));

  public static final QuantityNotation<Temperature> TEMPERATURES =
      new QuantityNotation<>(
          TEMPERATURE,
          List.of(
              unit("°F", Temperature::ofFahrenheit, "°F", "° F", "deg F", "degrees F", "F"),
              unit("°C", Temperature::ofCelsius, "°C", "° C", "deg C", "degrees C", "C")),
          List.of(),
          List.of("°C", "°F"));

  public static final QuantityNotation<Ratio> RATIOS =
      new QuantityNotation<>(
          RATIO,
          List.of(unit("%", Ratio::ofPercent, "%", "percent", "per cent")),
          List.of(),
          List.of("%"));

  public static final QuantityNotation<Duration> DURATIONS =
      new QuantityNotation<>(
          DURATION,
          List.of(
              unit("h", Duration::new, "h", "hr", "hrs", "hour", "hours"),
              unit("min", Duration::ofMinutes, "min", "mins", "minute", "minutes")),
          List.of(new Joint("h", "min", 60)),
          List.of("h", "min"));

  public static final QuantityNotation<Speed> SPEEDS =
      new QuantityNotation<>(
          SPEED,
          List.of(
              unit("ft/s", Speed::ofFeetPerSecond, "ft/s", "ft/sec", "fps"),
              unit("m/s", Speed::new, "m/s", "m/sec")),
          List.of(),
          List.of("m/s", "ft/s"));

  /** Wind is told in other units than waves in the ground. */
  public static final QuantityNotation<Speed> WIND_SPEEDS =
      new QuantityNotation<>(
          SPEED,
          List.of(
              unit("mph", Speed::ofMilesPerHour, "mph", "miles per hour"),
              unit("m/s", Speed::new, "m/s", "m/sec"),
              unit("km/h", kmh -> new Speed(kmh / 3.6), "km/h", "kph")),
          List.of(),
          List.of("m/s", "mph"));

  /** Without its base such an index says nothing: both units name it. */
  public static final QuantityNotation<FreezingIndex> FREEZING_INDICES =
      new QuantityNotation<>(
          FREEZING_INDEX,
          List.of(
              unit(
                  "F-days",
                  FreezingIndex::ofFahrenheitDays,
                  "F-days",
                  "F days",
                  "°F-days",
                  "°F days"),
              unit("C-days", FreezingIndex::new, "C-days", "C days", "°C-days", "°C days")),
          List.of(),
          List.of("C-days", "F-days"));

  public static final QuantityNotation<Current> CURRENTS =
      new QuantityNotation<>(
          CURRENT,
          List.of(
              unit("A", Current::new, "A", "amp", "amps", "ampere", "amperes"),
              unit("mA", milli -> new Current(milli / 1000), "mA")),
          List.of(),
          List.of("A"));

  public static final QuantityNotation<Voltage> VOLTAGES =
      new QuantityNotation<>(
          VOLTAGE,
          List.of(
              unit("V", Voltage::new, "V", "volt", "volts"),
              unit("kV", kilo -> new Voltage(kilo * 1000), "kV")),
          List.of(),
          List.of("V"));

  private static final List<QuantityNotation<?>> ALL =
      List.of(
          LENGTHS,
          AREAS,
          VOLUMES,
          MASSES,
          FORCES,
          PRESSURES,
          DENSITIES,
          ANGLES,
          TEMPERATURES,
          RATIOS,
          DURATIONS,
          SPEEDS,
          WIND_SPEEDS,
          FREEZING_INDICES,
          CURRENTS,
          VOLTAGES);

  private Notation() {}

  /** Another kind of which the text is a good quantity; the first when there are several. */
  static Optional<QuantityKind> kindOf(String text, QuantityKind except) {
    return ALL.stream()
        .filter(notation -> notation.kind() != except)
        .filter(notation -> notation.understands(text))
        .map(QuantityNotation::kind)
        .findFirst();
  }

  private static <Q> SpelledUnit<Q> unit(String symbol, DoubleFunction<Q> of, String... spellings) {
    return new SpelledUnit<>(symbol, of, List.of(spellings));
  }
}
