package pegbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.BarAnchorage.Place;
import pegbook.figures.BarAnchorage.Room;
import pegbook.job.Stock.Coating;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Rounding;
import pegbook.measure.UnitSystem;
import pegbook.published.Bars;
import pegbook.testing.Chance;

class BarAnchorageTest {
  private static final Length INCH = Length.ofInches(1);

  private static BarAnchorage imperial(double yield, double concrete) {
    return new BarAnchorage(
        UnitSystem.IMPERIAL, Pressure.ofPsi(concrete), Pressure.ofPsi(yield), Coating.NONE);
  }

  private static BarAnchorage metric(double yield, double concrete) {
    return new BarAnchorage(
        UnitSystem.METRIC,
        Pressure.ofMegapascals(concrete),
        Pressure.ofMegapascals(yield),
        Coating.NONE);
  }

  private static BarAnchorage coated(BarAnchorage plain, Coating coating) {
    return new BarAnchorage(plain.units(), plain.concrete(), plain.yield(), coating);
  }

  private static double development(BarAnchorage of, String bar, Room room, Place place) {
    return of.development("", diameter(bar), room, place).result();
  }

  private static double plain(BarAnchorage of, String bar) {
    return development(of, bar, Room.APART, Place.UPRIGHT_OR_LOW);
  }

  private static double lap(BarAnchorage of, String bar) {
    return of.lap("", diameter(bar), Room.APART, Place.UPRIGHT_OR_LOW).result();
  }

  private static Length diameter(String bar) {
    return Bars.get(bar).diameter();
  }

  // Published

  @ParameterizedTest
  @CsvFileSource(resources = "bar-anchorage.csv", useHeadersInDisplayName = true)
  void barsInTensionReachAsFarAsTheTableSays(
      double yield,
      double concrete,
      String bar,
      double apart,
      double apartUp,
      double close,
      double lap,
      double lapUp,
      double confined) {
    BarAnchorage of = imperial(yield, concrete);
    assertThat(plain(of, bar)).isCloseTo(apart, within(0.0501));
    Length whole = Length.ofInches(plain(of, bar)).setTo(INCH, Rounding.UP);
    assertThat(whole.inches()).isCloseTo(apartUp, within(1e-9));
    assertThat(development(of, bar, Room.CLOSE, Place.UPRIGHT_OR_LOW))
        .isCloseTo(close, within(0.0501));
    assertThat(lap(of, bar)).isCloseTo(lap, within(0.0501));
    assertThat(Length.ofInches(lap(of, bar)).setTo(INCH, Rounding.UP).inches())
        .isCloseTo(lapUp, within(1e-9));
    assertThat(
            of.closely("", diameter(bar), diameter(bar).times(2.5), Place.UPRIGHT_OR_LOW).result())
        .isCloseTo(confined, within(0.0501));
  }

  /**
   * International Residential Code, R608.5.4, development lengths at 2500 psi, as read. The code
   * does not say what it takes for the concrete round the bar; 1.6 bars give all six.
   */
  @ParameterizedTest
  @CsvSource({
    "40000, #4, 15", "40000, #5, 19", "40000, #6, 23",
    "60000, #4, 23", "60000, #5, 28", "60000, #6, 34"
  })
  void theDwellingCodesLengthsComeOutToTheInch(double yield, String bar, double inches) {
    Length round = diameter(bar).times(1.6);
    double worked =
        imperial(yield, 2500).closely("", diameter(bar), round, Place.UPRIGHT_OR_LOW).result();
    assertThat(worked).isCloseTo(inches, within(0.5 + 1e-9));
  }

  /** The same section, laps as read: this rule never asks for less. */
  @ParameterizedTest
  @CsvSource({
    "40000, #4, 20", "40000, #5, 25", "40000, #6, 30",
    "60000, #4, 30", "60000, #5, 38", "60000, #6, 45"
  })
  void lapsAreNoShorterThanTheDwellingCodes(double yield, String bar, double inches) {
    assertThat(lap(imperial(yield, 2500), bar)).isGreaterThanOrEqualTo(inches);
  }

  /** ACI 318M-19, from memory: forty bars at 420 and 25 MPa, and the lower rows of its table. */
  @ParameterizedTest
  @CsvSource({
    "16 mm, APART, 640",
    "16 mm, CLOSE, 960",
    "20 mm, APART, 988.24",
    "25 mm, CLOSE, 1909.09",
    "8 mm, APART, 320",
  })
  void millimetresHaveTheirOwnRows(String bar, Room room, double millimetres) {
    assertThat(development(metric(420, 25), bar, room, Place.UPRIGHT_OR_LOW))
        .isCloseTo(millimetres, within(0.005));
  }

  /** The two editions round their constants: they differ by no more than three in a hundred. */
  @ParameterizedTest
  @CsvSource({"#4, APART", "#6, APART", "#7, APART", "#8, APART", "#5, CLOSE", "#8, CLOSE"})
  void inchesAndMillimetresAgree(String bar, Room room) {
    BarAnchorage inches = imperial(60_000, 4000);
    BarAnchorage millimetres =
        new BarAnchorage(UnitSystem.METRIC, inches.concrete(), inches.yield(), Coating.NONE);
    double one = development(inches, bar, room, Place.UPRIGHT_OR_LOW) * 25.4;
    double other = development(millimetres, bar, room, Place.UPRIGHT_OR_LOW);
    assertThat(other / one).isCloseTo(1, within(0.03));
    double hook = inches.hook("", diameter(bar), diameter(bar), Length.ZERO).result() * 25.4;
    double hookAgain = millimetres.hook("", diameter(bar), diameter(bar), Length.ZERO).result();
    assertThat(hookAgain / hook).isCloseTo(1, within(0.03));
  }

  // Factors, ACI 318-19, Table 25.4.2.5

  @ParameterizedTest
  @CsvSource({
    "40000, 1",
    "60000, 1",
    "60916, 1",
    "75000, 1.15",
    "80000, 1.15",
    "80060, 1.15",
    "100000, 1.3"
  })
  void strongSteelReachesFarther(double yield, double factor) {
    double expected = factor * yield / (25 * Math.sqrt(4000)) * 0.75;
    assertThat(plain(imperial(yield, 4000), "#6")).isCloseTo(expected, within(1e-9));
  }

  @Test
  void topBarsAndEpoxyReachFartherButNotBothInFull() {
    BarAnchorage of = imperial(60_000, 4000);
    double bare = plain(of, "#6");
    assertThat(development(of, "#6", Room.APART, Place.TOP)).isCloseTo(1.3 * bare, within(1e-9));
    BarAnchorage epoxy = coated(of, Coating.EPOXY);
    assertThat(plain(epoxy, "#6")).isCloseTo(1.5 * bare, within(1e-9));
    assertThat(development(epoxy, "#6", Room.APART, Place.TOP)).isCloseTo(1.7 * bare, within(1e-9));
    assertThat(plain(coated(of, Coating.ZINC), "#6")).isCloseTo(bare, within(1e-9));
  }

  @Test
  void veryStrongConcreteCountsUpToItsLimit() {
    assertThat(plain(imperial(60_000, 12_000), "#8"))
        .isCloseTo(60_000 / (20.0 * 100), within(1e-9));
    assertThat(plain(metric(420, 80), "25 mm")).isCloseTo(420 / (1.7 * 8.3) * 25, within(1e-9));
  }

  @Test
  void nothingIsShorterThanTheLeast() {
    assertThat(plain(imperial(40_000, 4000), "#3")).isEqualTo(12);
    assertThat(lap(imperial(40_000, 12_000), "#3")).isEqualTo(12);
    assertThat(plain(metric(280, 40), "8 mm")).isEqualTo(300);
  }

  /**
   * ACI 318-19, 25.4.3, from memory, by hand: #5, 60 000 and 4000 psi: 0.625^1.5 = 0.4941; 0.867;
   * 60000 · 0.867 / (55 · 63.246) · 0.4941 = 7.39 in; near hooks 1.6, little cover 1.25.
   */
  @ParameterizedTest
  @CsvSource({
    "#5, 4, 4, 7.39",
    "#5, 3, 4, 11.82",
    "#5, 3, 3, 14.78",
    "#3, 4, 4, 6",
    "#8, 7, 7, 14.95"
  })
  void hooksReachWhatTheRuleGives(String bar, double apart, double beside, double inches) {
    double worked =
        imperial(60_000, 4000)
            .hook("", diameter(bar), Length.ofInches(apart), Length.ofInches(beside))
            .result();
    assertThat(worked).isCloseTo(inches, within(0.01));
  }

  /** By hand: 16 mm, 420 and 25 MPa: 0.839; 420 · 0.839 / (23 · 5) · 64 = 196.1 mm. */
  @Test
  void hooksInMillimetres() {
    Length far = Length.ofMillimetres(200);
    assertThat(metric(420, 25).hook("", diameter("16 mm"), far, far).result())
        .isCloseTo(196.1, within(0.05));
    assertThat(metric(420, 60).hook("", diameter("8 mm"), far, far).result()).isEqualTo(150);
    assertThat(metric(420, 60).hook("", diameter("25 mm"), far, far).result())
        .isCloseTo(420 / (23 * StrictMath.sqrt(60)) * 125, within(1e-9));
  }

  @Test
  void epoxyHooksReachFarther() {
    BarAnchorage of = imperial(60_000, 4000);
    Length far = Length.ofInches(8);
    assertThat(coated(of, Coating.EPOXY).hook("", diameter("#8"), far, far).result())
        .isCloseTo(1.2 * of.hook("", diameter("#8"), far, far).result(), within(1e-9));
  }

  // Properties

  @Property(tries = 200, seed = Chance.SEED)
  void strongerConcreteNeverAsksForMore(
      @ForAll @DoubleRange(min = 2500, max = 11_000) double concrete,
      @ForAll @DoubleRange(min = 40_000, max = 99_000) double yield,
      @ForAll @IntRange(min = 3, max = 8) int number) {
    BarAnchorage weak = imperial(yield, concrete);
    BarAnchorage strong = imperial(yield, concrete + 500);
    BarAnchorage strongSteel = imperial(yield + 1000, concrete);
    String bar = "#" + number;
    assertThat(plain(strong, bar)).isLessThanOrEqualTo(plain(weak, bar));
    assertThat(plain(strongSteel, bar)).isGreaterThanOrEqualTo(plain(weak, bar));
    assertThat(lap(weak, bar)).isGreaterThanOrEqualTo(plain(weak, bar));
    assertThat(development(weak, bar, Room.CLOSE, Place.UPRIGHT_OR_LOW))
        .isGreaterThanOrEqualTo(plain(weak, bar));
    Length far = Length.ofInches(12);
    assertThat(strong.hook("", diameter(bar), far, far).result())
        .isLessThanOrEqualTo(weak.hook("", diameter(bar), far, far).result() * 1.04);
  }
}
