package pegbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Quantities count as their numbers do, whatever unit they come from. */
class QuantitiesTest {
  static List<Class<? extends Quantity>> all() {
    return List.of(
        Angle.class,
        Area.class,
        Count.class,
        Current.class,
        Density.class,
        Duration.class,
        Force.class,
        FreezingIndex.class,
        Length.class,
        LineResistance.class,
        Mass.class,
        Pressure.class,
        Ratio.class,
        Resistivity.class,
        Speed.class,
        Temperature.class,
        Voltage.class,
        Volume.class,
        WorkRate.class);
  }

  private static Quantity of(Class<? extends Quantity> kind, double number) {
    try {
      return kind.getConstructor(double.class).newInstance(number);
    } catch (InvocationTargetException e) {
      throw (RuntimeException) e.getCause();
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  /** What a method gives; nothing where the kind has no such method. */
  private static Optional<Object> call(Quantity one, String name, Object... with) {
    for (Method method : one.getClass().getMethods()) {
      Class<?>[] types = method.getParameterTypes();
      boolean fits =
          method.getName().equals(name)
              && !method.isBridge()
              && types.length == with.length
              && Arrays.equals(types, kinds(with));
      if (fits) {
        try {
          return Optional.of(method.invoke(one, with));
        } catch (ReflectiveOperationException e) {
          throw new LinkageError(e.getMessage(), e);
        }
      }
    }
    return Optional.empty();
  }

  private static Class<?>[] kinds(Object... values) {
    return Arrays.stream(values)
        .map(value -> value instanceof Double ? double.class : value.getClass())
        .toArray(Class<?>[]::new);
  }

  private static void gives(double wanted, Optional<Object> result) {
    result.ifPresent(
        value ->
            assertThat(value instanceof Quantity quantity ? quantity.si() : (double) value)
                .isCloseTo(wanted, withinPercentage(1e-12)));
  }

  @ParameterizedTest
  @MethodSource("all")
  void sumsAndMultiplesAreThoseOfTheNumbers(Class<? extends Quantity> kind) {
    Quantity more = of(kind, 7.25);
    Quantity less = of(kind, 2.5);
    double unit = less.si() / 2.5;
    boolean counted = kind != Temperature.class;
    gives(9.75 * unit, call(more, "plus", less));
    gives(4.75 * unit, call(more, "minus", less));
    gives(21.75 * unit, call(more, "times", 3.0));
    gives(-7.25 * unit, call(more, "negated"));
    gives(2.9, call(more, "dividedBy", less));
    if (counted && call(more, "abs").isPresent()) {
      gives(7.25 * unit, call(of(kind, -7.25), "abs"));
      gives(7.25 * unit, call(more, "abs"));
    }
    assertThat(unit).as("SI of one").isPositive();
    assertThat(more.si()).isCloseTo(7.25 * unit, withinPercentage(1e-12));
  }

  @ParameterizedTest
  @MethodSource("all")
  void orderIsThatOfTheNumbers(Class<? extends Quantity> kind) {
    Quantity more = of(kind, 7.25);
    Quantity less = of(kind, 2.5);
    Quantity same = of(kind, 2.5);
    call(more, "compareTo", less).ifPresent(order -> assertThat((int) order).isPositive());
    call(less, "compareTo", more).ifPresent(order -> assertThat((int) order).isNegative());
    call(less, "compareTo", same).ifPresent(order -> assertThat((int) order).isZero());
    call(more, "isMoreThan", less).ifPresent(answer -> assertThat(answer).isEqualTo(true));
    call(less, "isMoreThan", more).ifPresent(answer -> assertThat(answer).isEqualTo(false));
    call(less, "isMoreThan", same).ifPresent(answer -> assertThat(answer).isEqualTo(false));
    call(less, "isLessThan", more).ifPresent(answer -> assertThat(answer).isEqualTo(true));
    call(more, "isLessThan", less).ifPresent(answer -> assertThat(answer).isEqualTo(false));
    call(less, "isLessThan", same).ifPresent(answer -> assertThat(answer).isEqualTo(false));
    for (Quantity other : List.of(less, more)) {
      call(more, "max", other).ifPresent(most -> assertThat(most).isEqualTo(more));
      call(other, "max", more).ifPresent(most -> assertThat(most).isEqualTo(more));
      call(less, "min", other).ifPresent(least -> assertThat(least).isEqualTo(less));
      call(other, "min", less).ifPresent(least -> assertThat(least).isEqualTo(less));
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void stepsAreSetInTheDirectionNamed(Class<? extends Quantity> kind) {
    Quantity value = of(kind, 7.25);
    Quantity step = of(kind, 2.5);
    double unit = step.si() / 2.5;
    gives(7.5 * unit, call(value, "setTo", step, Rounding.UP));
    gives(5.0 * unit, call(value, "setTo", step, Rounding.DOWN));
    gives(7.5 * unit, call(value, "setTo", step, Rounding.NEAREST));
  }

  @ParameterizedTest
  @MethodSource("all")
  void onlyNumbersAreTaken(Class<? extends Quantity> kind) {
    for (double none : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> of(kind, none)).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void ratesAboveZeroAndTemperaturesFromZeroOn() {
    assertThatThrownBy(() -> new WorkRate(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WorkRate(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Temperature(-0.01)).isInstanceOf(IllegalArgumentException.class);
    assertThat(new Temperature(0).celsius()).isEqualTo(-273.15);
  }

  /** Units read and written, beside the units of workings, whose factors have a second road. */
  record Way(String name, DoubleFunction<Quantity> of, ToDoubleFunction<Quantity> in, Unit unit) {
    @SuppressWarnings("unchecked")
    static <Q extends Quantity> Way of(
        String name, DoubleFunction<Q> of, ToDoubleFunction<Q> in, Unit unit) {
      return new Way(name, number -> of.apply(number), one -> in.applyAsDouble((Q) one), unit);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Way> ways() {
    return Stream.of(
        Way.of("mm", Length::ofMillimetres, Length::millimetres, Unit.MILLIMETRE),
        Way.of("in", Length::ofInches, Length::inches, Unit.INCH),
        Way.of("ft", Length::ofFeet, Length::feet, Unit.FOOT),
        Way.of("ft2", Area::ofSquareFeet, Area::squareFeet, Unit.SQUARE_FOOT),
        Way.of("in2", Area::ofSquareInches, Area::squareInches, Unit.SQUARE_INCH),
        Way.of("mm2", Area::ofSquareMillimetres, Area::squareMillimetres, Unit.SQUARE_MILLIMETRE),
        Way.of("L", Volume::ofLitres, Volume::litres, Unit.LITRE),
        Way.of("ft3", Volume::ofCubicFeet, Volume::cubicFeet, Unit.CUBIC_FOOT),
        Way.of("yd3", Volume::ofCubicYards, Volume::cubicYards, Unit.CUBIC_YARD),
        Way.of("lb", Mass::ofPounds, Mass::pounds, Unit.POUND),
        Way.of(
            "pcf",
            Density::ofPoundsPerCubicFoot,
            Density::poundsPerCubicFoot,
            Unit.POUND_PER_CUBIC_FOOT),
        Way.of("kN", Force::ofKilonewtons, Force::kilonewtons, Unit.KILONEWTON),
        Way.of("lbf", Force::ofPoundsForce, Force::poundsForce, Unit.POUND_FORCE),
        Way.of("kPa", Pressure::ofKilopascals, Pressure::kilopascals, Unit.KILOPASCAL),
        Way.of("MPa", Pressure::ofMegapascals, Pressure::megapascals, Unit.MEGAPASCAL),
        Way.of("psf", Pressure::ofPsf, Pressure::psf, Unit.PSF),
        Way.of("psi", Pressure::ofPsi, Pressure::psi, Unit.PSI),
        Way.of("deg", Angle::ofDegrees, Angle::degrees, Unit.DEGREE),
        Way.of("%", Ratio::ofPercent, Ratio::percent, Unit.PERCENT),
        Way.of("min", Duration::ofMinutes, Duration::minutes, Unit.MINUTE),
        Way.of("h", Duration::new, Duration::hours, Unit.HOUR),
        Way.of(
            "°F d",
            FreezingIndex::ofFahrenheitDays,
            FreezingIndex::fahrenheitDays,
            Unit.FAHRENHEIT_DAY),
        Way.of("°C d", FreezingIndex::new, FreezingIndex::celsiusDays, Unit.CELSIUS_DAY),
        Way.of(
            "Ω/kft",
            LineResistance::ofOhmsPerThousandFeet,
            Unit.OHM_PER_THOUSAND_FEET::in,
            Unit.OHM_PER_THOUSAND_FEET),
        Way.of(
            "Ω·mm²/m",
            Resistivity::ofOhmSquareMillimetresPerMetre,
            Unit.OHM_SQUARE_MILLIMETRE_PER_METRE::in,
            Unit.OHM_SQUARE_MILLIMETRE_PER_METRE),
        Way.of("ft/s", Speed::ofFeetPerSecond, Unit.FOOT_PER_SECOND::in, Unit.FOOT_PER_SECOND),
        Way.of("mph", Speed::ofMilesPerHour, Unit.MILE_PER_HOUR::in, Unit.MILE_PER_HOUR),
        Way.of("m³/h", WorkRate::new, Unit.CUBIC_METRE_PER_HOUR::in, Unit.CUBIC_METRE_PER_HOUR));
  }

  @ParameterizedTest
  @MethodSource("ways")
  void aUnitIsReadAndWrittenWithOneFactor(Way way) {
    Quantity three = way.of().apply(3);
    assertThat(three.si()).isCloseTo(way.unit().toSi(3), withinPercentage(1e-10));
    assertThat(way.in().applyAsDouble(three)).isCloseTo(3, withinPercentage(1e-10));
  }

  /** Water boils and ice melts (SI brochure, degree Celsius; the Fahrenheit degree is 5/9 K). */
  @Test
  void temperaturesHaveTwoZeros() {
    assertThat(Temperature.ofFahrenheit(212).si()).isCloseTo(373.15, within(1e-9));
    assertThat(Temperature.ofFahrenheit(32).celsius()).isCloseTo(0, within(1e-9));
    assertThat(Temperature.ofCelsius(100).fahrenheit()).isCloseTo(212, within(1e-9));
    assertThat(Temperature.ofCelsius(-40).fahrenheit()).isCloseTo(-40, within(1e-9));
  }

  @Test
  void kindsMakeOtherKinds() {
    assertThat(new Length(3).times(new Length(4))).isEqualTo(new Area(12));
    assertThat(new Area(12).times(new Length(0.5))).isEqualTo(new Volume(6));
    assertThat(new Force(12).dividedBy(new Area(3))).isEqualTo(new Pressure(4));
    assertThat(new Pressure(4).times(new Area(3))).isEqualTo(new Force(12));
    // Standard gravity (CGPM 1901).
    assertThat(new Mass(2).weight().newtons()).isCloseTo(19.6133, within(1e-9));
  }

  @Test
  void directionsComeRound() {
    assertThat(Angle.ofDegrees(370).normalized().degrees()).isCloseTo(10, within(1e-9));
    assertThat(Angle.ofDegrees(-10).normalized().degrees()).isCloseTo(350, within(1e-9));
    assertThat(Angle.ofDegrees(350).normalized().degrees()).isCloseTo(350, within(1e-9));
    assertThat(Angle.ofDegrees(360).normalized().degrees()).isZero();
    assertThat(new Angle(0).normalized().degrees()).isZero();
    // So little below zero that a whole turn more is a whole turn.
    assertThat(new Angle(-1e-20).normalized().degrees()).isZero();
  }

  @ParameterizedTest
  @EnumSource
  void aDivisionIsFoundByItsStep(TapeDivision division) {
    assertThat(TapeDivision.ofStep(division.step())).contains(division);
    assertThat(TapeDivision.ofStep(division.step().times(1.0005))).contains(division);
    assertThat(TapeDivision.ofStep(division.step().times(1.002))).isEmpty();
    assertThat(Notation.LENGTHS.read(division.text()).taken()).isPresent();
    assertThat(Notation.LENGTHS.read(division.text()).taken().orElseThrow().metres())
        .isCloseTo(division.step().metres(), withinPercentage(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void aTieIsWithinAMillionthOfAStep(Rounding direction) {
    assertThat(direction.steps(3 + 0.9e-6, 1)).isEqualTo(3);
    assertThat(direction.steps(3 - 0.9e-6, 1)).isEqualTo(3);
    assertThat(direction.steps(3 + 2e-6, 1)).isEqualTo(direction == Rounding.UP ? 4 : 3);
    assertThat(direction.steps(3 - 2e-6, 1)).isEqualTo(direction == Rounding.DOWN ? 2 : 3);
    assertThatThrownBy(() -> direction.steps(1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> direction.steps(1e16, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThat(direction.steps(1e15, 1)).isEqualTo(1_000_000_000_000_000L);
  }

  @Test
  void moneyKeepsItsDigitsUntilItIsPaid() {
    Money price = new Money(new BigDecimal("4.375"), "USD");
    assertThat(price.times(3)).isEqualTo(new Money(new BigDecimal("13.125"), "USD"));
    assertThat(price.times(new BigDecimal("0.5")).amount()).isEqualByComparingTo("2.1875");
    assertThat(price.plus(price).payable().amount()).isEqualTo(new BigDecimal("8.75"));
    assertThat(price.payable().amount()).isEqualTo(new BigDecimal("4.38"));
    // ISO 4217: a yen has no smaller coin, a dinar of Kuwait a thousand.
    assertThat(new Money(BigDecimal.ONE, "JPY").digits()).isZero();
    assertThat(new Money(BigDecimal.ONE, "KWD").digits()).isEqualTo(3);
    assertThatThrownBy(() -> price.plus(new Money(BigDecimal.ONE, "EUR")))
        .hasMessageContaining("EUR");
    assertThatThrownBy(() -> new Money(BigDecimal.ONE, "usd"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void smallAndLargeUnitsAreRead() {
    assertThat(Notation.CURRENTS.read("250 mA").taken()).contains(new Current(0.25));
    assertThat(Notation.VOLTAGES.read("2 kV").taken()).contains(new Voltage(2000));
  }
}
