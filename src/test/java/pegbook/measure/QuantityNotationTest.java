package pegbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.testing.Chance;

class QuantityNotationTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "3 ft 6 in | 1066.8",
        "3ft 6in | 1066.8",
        "3 feet 6 inches | 1066.8",
        "3 FT 6 IN | 1066.8",
        "3 ft. 6 in. | 1066.8",
        "42 in | 1066.8",
        "3' 6\" | 1066.8",
        "3'-6\" | 1066.8",
        "3 ft, 6 in | 1066.8",
        "3'6\" | 1066.8",
        "3′ 6″ | 1066.8",
        "3’ 6” | 1066.8",
        "3' 6'' | 1066.8",
        "3.5 ft | 1066.8",
        "5 1/2 in | 139.7",
        "5-1/2 in | 139.7",
        "5½ in | 139.7",
        "5 ½ in | 139.7",
        "5 1⁄2 in | 139.7",
        "5¹⁄₂ in | 139.7",
        "5.5in | 139.7",
        "1/2 in | 12.7",
        "⅜\" | 9.525",
        "12' 9 3/8\" | 3895.725",
        "12′ 9 3⁄8″ | 3895.725",
        "12'-9⅜\" | 3895.725",
        "-1 1/2 in | -38.1",
        "−1½ in | -38.1",
        "- 1 1/2 in | -38.1",
        "-1' 6\" | -457.2",
        "+4 in | 101.6",
        "12.75 in | 323.85",
        ".5 in | 12.7",
        "1.2 m | 1200",
        "900 mm | 900",
        "3 894 mm | 3894",
        "3\u00a0894\u2009mm | 3894",
        "1 m 20 cm | 1200",
        "40 cm | 400",
        "0 in | 0",
      })
  void readsLengths(String text, double millimetres) {
    assertThat(Notation.LENGTHS.read(text)).isInstanceOf(Reading.Taken.class);
    assertThat(Notation.LENGTHS.read(text).taken().orElseThrow().millimetres())
        .isCloseTo(millimetres, within(1e-9));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "8 deg | 8",
        "8° | 8",
        "8° 30′ | 8.5",
        "8°30' | 8.5",
        "8 deg 30 min | 8.5",
        "-91.4 deg | -91.4",
        "8° 30' 36\" | 8.51",
      })
  void readsAngles(String text, double degrees) {
    assertThat(Notation.ANGLES.read(text).taken().orElseThrow().degrees())
        .isCloseTo(degrees, within(1e-12));
  }

  @Test
  void readsTheOtherKinds() {
    assertThat(Notation.PRESSURES.read("1500 psf").taken()).contains(Pressure.ofPsf(1500));
    assertThat(Notation.PRESSURES.read("4 000 PSI").taken()).contains(Pressure.ofPsi(4000));
    assertThat(Notation.PRESSURES.read("75 kPa").taken()).contains(Pressure.ofKilopascals(75));
    assertThat(Notation.PRESSURES.read("25 MPa").taken()).contains(Pressure.ofMegapascals(25));
    assertThat(Notation.MASSES.read("80 lb").taken()).contains(Mass.ofPounds(80));
    assertThat(Notation.MASSES.read("25kg").taken()).contains(new Mass(25));
    assertThat(Notation.FORCES.read("10 lbf").taken()).contains(Force.ofPoundsForce(10));
    assertThat(Notation.FORCES.read("1.5 kN").taken()).contains(Force.ofKilonewtons(1.5));
    assertThat(Notation.FORCES.read("50 N").taken()).contains(new Force(50));
    assertThat(Notation.VOLUMES.read("0.6 ft³").taken()).contains(Volume.ofCubicFeet(0.6));
    assertThat(Notation.VOLUMES.read("0.6 ft3").taken()).contains(Volume.ofCubicFeet(0.6));
    assertThat(Notation.VOLUMES.read("1/4 yd3").taken()).contains(Volume.ofCubicYards(0.25));
    assertThat(Notation.VOLUMES.read("12 L").taken()).contains(Volume.ofLitres(12));
    assertThat(Notation.VOLUMES.read("1.2 m³").taken()).contains(new Volume(1.2));
    assertThat(Notation.AREAS.read("9 sq ft").taken()).contains(Area.ofSquareFeet(9));
    assertThat(Notation.DENSITIES.read("145 pcf").taken())
        .contains(Density.ofPoundsPerCubicFoot(145));
    assertThat(Notation.DENSITIES.read("2400 kg/m³").taken()).contains(new Density(2400));
    assertThat(Notation.TEMPERATURES.read("40 °F").taken()).contains(Temperature.ofFahrenheit(40));
    assertThat(Notation.TEMPERATURES.read("40 deg F").taken())
        .contains(Temperature.ofFahrenheit(40));
    assertThat(Notation.TEMPERATURES.read("-5 ℃").taken()).contains(Temperature.ofCelsius(-5));
    assertThat(Notation.RATIOS.read("10 %").taken()).contains(Ratio.ofPercent(10));
    assertThat(Notation.RATIOS.read("10%").taken()).contains(Ratio.ofPercent(10));
    assertThat(Notation.DURATIONS.read("1 h 30 min").taken()).contains(new Duration(1.5));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "900 | NO_UNIT | 900 mm, 900 in",
        "3' 6 | NO_UNIT | 3' 6 in",
        "1 m 20 | NO_UNIT | 1 m 20 mm, 1 m 20 cm",
        "3,5 m | DECIMAL_COMMA | 3.5 m",
        "1,500 mm | DECIMAL_COMMA | 1500 mm, 1.500 mm",
        "42 inchs | UNKNOWN_UNIT | 42 in",
        "42 yd | UNKNOWN_UNIT | ",
        "42 foots | UNKNOWN_UNIT | 42 ft",
        "42 lb | OTHER_KIND | ",
        "42 m3 | OTHER_KIND | ",
        "3 ft 14 in | PARTS | 50 in",
        "3.5 ft 6 in | PARTS | 48 in",
        "6 in 3 ft | PARTS | ",
        "3 ft 20 cm | PARTS | ",
        "5 9/8 in | FRACTION | ",
        "5/0 in | FRACTION | ",
        "below frost | NO_NUMBER | ",
        "NaN ft | NO_NUMBER | ",
        "Infinity | NO_NUMBER | ",
        "3 ft or so | STRAY | ",
        "3 ft -6 | NO_UNIT | 3 ft -6 in",
        "1e3 mm | UNKNOWN_UNIT | ",
        "--3 ft | NO_NUMBER | ",
        "1.2.3 m | UNKNOWN_UNIT | ",
        "- | NO_NUMBER | ",
        "12 34 ft | UNKNOWN_UNIT | ",
      })
  void refusesWithTheReasonAndWhatWasProbablyMeant(
      String text, Reading.Fault fault, String mended) {
    Reading<Length> reading = Notation.LENGTHS.read(text);

    assertThat(reading).isInstanceOf(Reading.Unclear.class);
    Reading.Unclear<Length> unclear = (Reading.Unclear<Length>) reading;
    assertThat(unclear.fault()).isEqualTo(fault);
    assertThat(String.join(", ", unclear.mended())).isEqualTo(mended == null ? "" : mended);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\u00a0"})
  void refusesNothing(String text) {
    assertThat(Notation.LENGTHS.read(text))
        .isEqualTo(new Reading.Unclear<>(Reading.Fault.EMPTY, "", java.util.List.of()));
  }

  @Test
  void refusesALongText() {
    assertThat(Notation.LENGTHS.read("1".repeat(61)))
        .isEqualTo(new Reading.Unclear<>(Reading.Fault.TOO_LONG, "", java.util.List.of()));
  }

  @Property(tries = 2000, seed = Chance.SEED)
  void anyTextIsTakenOrRefusedAndEveryMendedTextIsTaken(
      @ForAll @StringLength(max = 12) String text) {
    if (Notation.LENGTHS.read(text) instanceof Reading.Unclear<Length> unclear) {
      assertThat(unclear.mended())
          .allSatisfy(mended -> assertThat(Notation.LENGTHS.read(mended).taken()).isPresent());
    }
  }
}
