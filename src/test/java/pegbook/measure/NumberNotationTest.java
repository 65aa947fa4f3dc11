package pegbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbook.testing.Chance;

class NumberNotationTest {

  @Test
  void writesNumbers() {
    assertThat(NumberNotation.write(1500, 0)).isEqualTo("1500");
    assertThat(NumberNotation.write(12345.678, 2)).isEqualTo("12\u00a0345.68");
    assertThat(NumberNotation.write(1234567, 0)).isEqualTo("1\u00a0234\u00a0567");
    assertThat(NumberNotation.write(-0.04, 1)).isEqualTo("0.0");
    assertThat(NumberNotation.write(-0.05, 1)).isEqualTo("\u22120.1");
    assertThat(NumberNotation.write(1.005, 2)).isEqualTo("1.01");
    assertThat(NumberNotation.write(0.049, 1)).isEqualTo("0.0");
  }

  @Test
  void writesQuantitiesWithTheirUnit() {
    assertThat(NumberNotation.write(Pressure.ofPsf(1512.4), Unit.PSF)).isEqualTo("1512\u00a0psf");
    assertThat(NumberNotation.write(Pressure.ofKilopascals(3.5), Unit.KILOPASCAL))
        .isEqualTo("3.5\u00a0kPa");
    assertThat(NumberNotation.write(Volume.ofCubicYards(0.75), Unit.CUBIC_YARD))
        .isEqualTo("0.75\u00a0yd³");
    assertThat(NumberNotation.write(Volume.ofCubicFeet(9.996), Unit.CUBIC_FOOT))
        .isEqualTo("10\u00a0ft³");
    assertThat(NumberNotation.write(Mass.ZERO, Unit.POUND)).isEqualTo("0\u00a0lb");
    assertThat(NumberNotation.write(Ratio.ofPercent(10), Unit.PERCENT)).isEqualTo("10%");
    assertThat(NumberNotation.write(Volume.ofCubicYards(1.5), Unit.CUBIC_YARD, 2))
        .isEqualTo("1.50\u00a0yd³");
    assertThat(NumberNotation.write(Temperature.ofCelsius(5), UnitSystem.IMPERIAL))
        .isEqualTo("41\u00a0°F");
    assertThat(NumberNotation.write(Temperature.ofCelsius(-5), UnitSystem.METRIC))
        .isEqualTo("\u22125\u00a0°C");
  }

  @Test
  void writesAngles() {
    assertThat(AngleNotation.write(Angle.ofDegrees(8.5))).isEqualTo("8°\u00a030′");
    assertThat(AngleNotation.write(Angle.ofDegrees(8))).isEqualTo("8°");
    assertThat(AngleNotation.write(Angle.ofDegrees(7.9999))).isEqualTo("8°");
    assertThat(AngleNotation.write(Angle.ofDegrees(8.05))).isEqualTo("8°\u00a003′");
    assertThat(AngleNotation.write(Angle.ofDegrees(-91.4))).isEqualTo("\u221291°\u00a024′");
    assertThat(AngleNotation.write(Angle.ofDegrees(29.96), 1)).isEqualTo("30.0°");
  }

  @Property(seed = Chance.SEED)
  void writtenPressuresAreReadBackWithinHalfTheirLastDigit(
      @ForAll @DoubleRange(min = 0, max = 1e6) double psf) {
    Pressure read =
        Notation.PRESSURES
            .read(NumberNotation.write(Pressure.ofPsf(psf), Unit.PSF, 1))
            .taken()
            .orElseThrow();

    assertThat(read.psf()).isCloseTo(psf, within(0.0501));
  }

  @Property(seed = Chance.SEED)
  void writtenAnglesAreReadBackToTheMinute(
      @ForAll @IntRange(min = -21_600, max = 21_600) int minutes) {
    Angle angle = Angle.ofDegrees(minutes / 60.0);

    Angle read = Notation.ANGLES.read(AngleNotation.write(angle)).taken().orElseThrow();

    assertThat(read.degrees()).isCloseTo(angle.degrees(), within(1e-9));
  }
}
