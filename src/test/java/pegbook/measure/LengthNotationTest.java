package pegbook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.testing.Chance;

class LengthNotationTest {

  @ParameterizedTest(name = "{0} mm is {1}")
  @CsvFileSource(resources = "imperial-notation.csv", numLinesToSkip = 3)
  void publishedLengthsOnTheSixteenthTape(
      double millimetres, String halfUp, String halfEven, String error, double feet, double tape) {
    Length length = Length.ofMillimetres(millimetres);

    String written = LengthNotation.write(length, TapeDivision.SIXTEENTH_INCH, Length.ZERO);

    assertThat(written).isEqualTo(printed(halfUp));
    assertThat(length.feet()).isCloseTo(feet, within(0.00005));
    double set = TapeDivision.SIXTEENTH_INCH.nearest(length).millimetres();
    assertThat(set - millimetres).isCloseTo(Double.parseDouble(error), within(0.00005001));
  }

  @ParameterizedTest(name = "{0} mm is {5} ft")
  @CsvFileSource(resources = "imperial-notation.csv", numLinesToSkip = 3)
  void publishedLengthsOnTheEngineersTape(
      double millimetres, String halfUp, String halfEven, String error, double feet, String tape) {
    String written =
        LengthNotation.write(Length.ofMillimetres(millimetres), TapeDivision.HUNDREDTH_FOOT);

    assertThat(written).isEqualTo(tape + "\u00a0ft");
  }

  @ParameterizedTest(name = "{0} in")
  @CsvFileSource(resources = "sixteenths.csv", numLinesToSkip = 2)
  void publishedSixteenthsAreReadAndWritten(String inch, double millimetres, double feet) {
    Length length = Notation.LENGTHS.read(inch + " in").taken().orElseThrow();

    assertThat(length.millimetres()).isCloseTo(millimetres, within(1e-9));
    assertThat(length.feet()).isCloseTo(feet, within(0.0000005));
    String written = LengthNotation.write(length, TapeDivision.SIXTEENTH_INCH);
    assertThat(Notation.LENGTHS.read(written).taken()).contains(length);
  }

  @ParameterizedTest(name = "{0} on {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "304.1 mm | SIXTEENTH_INCH | 1′ 0″",
        "3047.3 mm | SIXTEENTH_INCH | 10′ 0″",
        "8/16 in | SIXTEENTH_INCH | ¹⁄₂″",
        "12' 9 3/8\" | SIXTEENTH_INCH | 12′ 9 ³⁄₈″",
        "12' 0 3/8\" | EIGHTH_INCH | 12′ 0 ³⁄₈″",
        "-1 1/2 in | QUARTER_INCH | −1 ¹⁄₂″",
        "-0.1 in | QUARTER_INCH | 0″",
        "11 31/32 in | THIRTY_SECOND_INCH | 11 ³¹⁄₃₂″",
        "11 31/32 in | INCH | 1′ 0″",
        "3 ft 5 1/4 in | HALF_INCH | 3′ 5 ¹⁄₂″",
        "3894.4 mm | MILLIMETRE | 3 894 mm",
        "3893 mm | FIVE_MILLIMETRES | 3 895 mm",
        "900 mm | MILLIMETRE | 900 mm",
        "3894 mm | CENTIMETRE | 3.89 m",
        "12345 mm | MILLIMETRE | 12 345 mm",
      })
  void writesAsABuilderDoes(String length, TapeDivision division, String expected) {
    assertThat(LengthNotation.write(read(length), division).replace('\u00a0', ' '))
        .isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} on {1}, the small unit alone below {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "42 in | HALF_INCH | 6 ft | 42″",
        "71 3/4 in | QUARTER_INCH | 6 ft | 71 ³⁄₄″",
        "71.99 in | QUARTER_INCH | 6 ft | 6′ 0″",
        "6 in | HALF_INCH | 0 ft | 0′ 6″",
        "400 mm | CENTIMETRE | 1 m | 40 cm",
        "1.2 m | MILLIMETRE | 1 m | 1.200 m",
        "999.6 mm | MILLIMETRE | 1 m | 1.000 m",
        "999 mm | MILLIMETRE | 1 m | 999 mm",
      })
  void writesTheSmallUnitAloneBelowALimit(
      String length, TapeDivision division, String limit, String expected) {
    String written = LengthNotation.write(read(length), division, read(limit));

    assertThat(written.replace('\u00a0', ' ')).isEqualTo(expected);
  }

  @Property(seed = Chance.SEED)
  void whatIsWrittenIsReadBackAsTheNearestMark(
      @ForAll @IntRange(min = -40_000_000, max = 40_000_000) int micrometres,
      @ForAll TapeDivision division) {
    Length length = Length.ofMillimetres(micrometres / 1000.0);

    String written = LengthNotation.write(length, division);

    Length read = Notation.LENGTHS.read(written).taken().orElseThrow();
    assertThat(read.metres())
        .as(written)
        .isCloseTo(division.nearest(length).metres(), within(1e-9));
    double halfAMark = division.step().metres() / 2 + 1e-8;
    assertThat(read.minus(length).abs().metres()).as(written).isLessThanOrEqualTo(halfAMark);
  }

  @Property(seed = Chance.SEED)
  void neverTwelveInchesBesideFeetAndNoFractionThatReduces(
      @ForAll @IntRange(min = 0, max = 40_000_000) int micrometres) {
    Length length = Length.ofMillimetres(micrometres / 1000.0);

    String written = LengthNotation.write(length, TapeDivision.SIXTEENTH_INCH);

    String typed = TradeText.plain(written);
    assertThat(typed).matches("(\\d+' )?(\\d|1[01])?( ?(1/2|[13]/4|[1357]/8|\\d{1,2}/16))?\"");
    assertThat(typed).doesNotMatch(".*[02468]/16\"");
  }

  private static Length read(String text) {
    return Notation.LENGTHS.read(text).taken().orElseThrow();
  }

  private static String printed(String reference) {
    Matcher fraction = Pattern.compile("(\\d+)/(\\d+)").matcher(reference);
    return fraction
        .replaceAll(
            found ->
                TradeText.raised(Long.parseLong(found.group(1)))
                    + "⁄"
                    + TradeText.lowered(Long.parseLong(found.group(2))))
        .replace(' ', '\u00a0')
        .replace('\'', '′')
        .replace('"', '″');
  }

  private static org.assertj.core.data.Offset<Double> within(double tolerance) {
    return org.assertj.core.data.Offset.offset(tolerance);
  }
}
