package pegbook.calc.truenorth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.truenorth.TrueNorth.EqualShadows;
import pegbook.calc.truenorth.TrueNorth.Height;
import pegbook.calc.truenorth.TrueNorth.SunDay;
import pegbook.calc.truenorth.TrueNorth.Turn;
import pegbook.figures.Finding;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;

class TrueNorthCalculatorTest {
  private static TrueNorth north(String place, String crew) {
    return north(place, crew, "8 deg");
  }

  private static TrueNorth north(String place, String crew, String azimuth) {
    String text =
        """
        {"title": "x", "ground": {"soil": "sand"}, "place": {%s}, "crew": {%s}, "layout": {"outline":
        {"regular": {"sides": 6, "acrossFlats": "12 ft"}}, "centreToFirstMark": "%s"}}
        """
            .formatted(place, crew, azimuth);
    if (JobFileReader.read("x.json", text.getBytes(StandardCharsets.UTF_8))
        instanceof JobFile.Read read) {
      Job job = read.job();
      return TrueNorthCalculator.calculate(job, PlacementCalculator.calculate(job));
    }
    throw new IllegalArgumentException(text);
  }

  private static String place(double latitude, double longitude, String zone) {
    return "\"latitude\": \"%s deg\", \"longitude\": \"%s deg\", \"timeZone\": \"%s\""
        .formatted(latitude, longitude, zone);
  }

  private static String start(String date) {
    return "\"start\": \"" + date + "\"";
  }

  private static List<String> found(TrueNorth north) {
    return north.findings().stream().map(Finding::id).toList();
  }

  private static final String ALDER = place(44.9, -91.4, "America/Chicago");

  @Test
  void withoutAPlaceThereIsNothing() {
    TrueNorth north = north("", start("2027-05-08"));

    assertThat(north.days()).isEmpty();
    assertThat(north.findings()).isEmpty();
    assertThat(north.workings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"latitude\": \"44.9 deg\"|longitude, timeZone",
        "\"latitude\": \"44.9 deg\", \"longitude\": \"-91.4 deg\"|timeZone",
        "\"timeZone\": \"America/Chicago\"|latitude, longitude"
      })
  void aPartOfAPlaceIsNamedAsSuch(String place, String missing) {
    TrueNorth north = north(place, start("2027-05-08"));

    assertThat(found(north)).containsExactly("true-north-incomplete");
    assertThat(north.findings().get(0).arguments())
        .containsEntry("missing", pegbook.figures.Argument.words(missing));
    assertThat(north.days()).isEmpty();
  }

  @Test
  void withoutADayThereIsNoNoon() {
    TrueNorth north = north(ALDER, "");

    assertThat(found(north)).containsExactly("true-north-no-date");
    assertThat(north.noon()).isEmpty();
  }

  /** Summer time begins on 2027-03-14 there: an hour and the equation of time between two days. */
  @Test
  void summerTimeMovesNoonByAnHour() {
    List<SunDay> days = north(ALDER, start("2027-03-13")).days();

    assertThat(days.get(0).date()).isEqualTo(LocalDate.of(2027, 3, 13));
    assertThat(days.get(1).date()).isEqualTo(LocalDate.of(2027, 3, 14));
    assertThat(days.get(0).offset()).isEqualTo(ZoneOffset.ofHours(-6));
    assertThat(days.get(1).offset()).isEqualTo(ZoneOffset.ofHours(-5));
    assertThat(Duration.between(days.get(0).noon(), days.get(1).noon()))
        .isBetween(Duration.ofSeconds(3600 - 25), Duration.ofSeconds(3600));
  }

  /** A clock 14 h ahead of universal time on the other side of the date line from Greenwich. */
  @Test
  void noonBesideTheDateLineIsThatOfTheDay() {
    SunDay day = north(place(1.9, -157.4, "Pacific/Kiritimati"), start("2027-01-09")).days().get(0);

    assertThat(day.date()).isEqualTo(LocalDate.of(2027, 1, 9));
    assertThat(day.noon()).isBetween(LocalTime.of(12, 30), LocalTime.of(12, 45));
    assertThat(day.altitude().degrees()).isEqualTo(90 - 1.9 - 22.2, within(0.3));
  }

  @Test
  void southOfTheTropicsTheShadowPointsSouth() {
    TrueNorth north = north(place(-36.840556, 174.74, "Pacific/Auckland"), start("2027-03-13"));

    assertThat(north.noon().orElseThrow().toNorth()).isFalse();
    EqualShadows equal = north.equal().orElseThrow();
    // In the morning the sun is in the east: the shadow lies south-west, then south-east.
    assertThat(equal.firstShadow().degrees()).isBetween(180.0, 270.0);
    assertThat(equal.secondShadow().degrees()).isBetween(90.0, 180.0);
    assertThat(north(ALDER, start("2027-05-08")).noon().orElseThrow().toNorth()).isTrue();
  }

  /** At 10° north the sun passes 10° from overhead twice; between it casts its shadow south. */
  @Test
  void nearTheZenithTheNoonShadowIsRefused() {
    TrueNorth north = north(place(10, -84, "America/Costa_Rica"), start("2027-04-17"));

    assertThat(north.days()).allMatch(day -> day.height() == Height.TOO_HIGH);
    assertThat(north.days()).allMatch(day -> day.shadow().isEmpty());
    assertThat(north.noon()).isEmpty();
    assertThat(north.equal()).isPresent();
    assertThat(found(north)).containsExactly("true-north-too-high");
    // 10° and a little from overhead, the sun in the north: the shadow points south.
    TrueNorth june = north(place(10, -84, "America/Costa_Rica"), start("2027-06-19"));
    assertThat(june.noon().orElseThrow().toNorth()).isFalse();
  }

  @Test
  void overheadExactlyNothingIsDividedByNothing() {
    Sun noon =
        new SunClock(new Sun.Site(0, 0), ZoneOffset.UTC).noon(LocalDate.of(2027, 4, 17)).sun();
    TrueNorth north = north(place(noon.declinationDegrees(), 0, "Etc/UTC"), start("2027-04-17"));

    assertThat(north.days().get(0).altitude().degrees()).isEqualTo(90, within(1e-6));
    assertThat(north.days().get(0).height()).isEqualTo(Height.TOO_HIGH);
    assertThat(north.workings()).allSatisfy(each -> assertThat(each.result()).isFinite());
  }

  @Test
  void inThePolarNightThereIsNoWay() {
    TrueNorth north = north(place(78.22, 15.65, "Arctic/Longyearbyen"), start("2027-12-18"));

    assertThat(north.days()).allMatch(day -> day.height() == Height.BELOW);
    assertThat(north.noon()).isEmpty();
    assertThat(north.equal()).isEmpty();
    assertThat(found(north)).containsExactly("true-north-too-low", "true-north-no-method");
  }

  /** At the poles themselves there is no south to turn from; nothing may break. */
  @ParameterizedTest
  @CsvSource({"90,2027-06-19", "-90,2027-06-19", "90,2027-12-18", "0,2027-03-20"})
  void theEndsOfTheEarth(double latitude, String date) {
    TrueNorth north = north(place(latitude, 0, "Etc/UTC"), start(date));

    assertThat(north.days()).hasSize(6);
    assertThat(north.equal().isPresent()).isEqualTo(latitude == 0);
    assertThat(north.workings()).allSatisfy(each -> assertThat(each.result()).isFinite());
  }

  @Test
  void aWrongSignOfTheLongitudeIsFound() {
    assertThat(found(north(place(44.9, 91.4, "America/Chicago"), start("2027-05-08"))))
        .containsExactly("true-north-clock");
    // The far west of a wide zone keeps a late noon: no finding.
    assertThat(found(north(place(39.5, 76, "Asia/Shanghai"), start("2027-05-08")))).isEmpty();
  }

  /** The turn of the shadow in a minute, against the sun's own places. */
  @Property(tries = 200, seed = Chance.SEED)
  void theShadowTurnsAsFastAsTold(
      @ForAll @DoubleRange(min = -65, max = 65) double latitude,
      @ForAll @IntRange(min = 0, max = 3650) int day) {
    SunClock clock = new SunClock(new Sun.Site(latitude, 10), ZoneOffset.UTC);
    SunClock.Noon noon = clock.noon(LocalDate.of(2025, 1, 1).plusDays(day));
    double zenith = Math.abs(latitude - noon.sun().declinationDegrees());
    if (zenith < Shadows.LEAST_ZENITH || zenith > 80) {
      return;
    }
    double before = Sun.at(noon.at().minusSeconds(10)).over(clock.site()).azimuthDegrees();
    double after = Sun.at(noon.at().plusSeconds(10)).over(clock.site()).azimuthDegrees();
    double turned = Math.abs(SunFormulas.turn(after - before + 180) - 180) * 3;
    double told =
        TrueNorthFormulas.rate()
            .function()
            .applyAsDouble(new double[] {noon.sun().declinationDegrees(), zenith});

    assertThat(turned).isEqualTo(told, within(0.002 * told));
  }

  /** The drift of equal shadows, against the moment at which the sun really is as high again. */
  @Property(tries = 200, seed = Chance.SEED)
  void equalShadowsDriftAsTold(
      @ForAll @DoubleRange(min = 30, max = 60) double size,
      @ForAll boolean south,
      @ForAll @IntRange(min = 0, max = 3650) int day,
      @ForAll @IntRange(min = 4, max = 8) int halfHours) {
    Sun.Site site = new Sun.Site(south ? -size : size, -91.4);
    SunClock clock = new SunClock(site, ZoneId.of("America/Chicago"));
    Instant noon = clock.noon(LocalDate.of(2025, 1, 1).plusDays(day)).at();
    Instant before = noon.minusSeconds(halfHours * 1800L);
    Sun.Stand first = Sun.at(before).over(site);
    if (first.altitudeDegrees() < 10 || first.altitudeDegrees() > 80) {
      return;
    }
    Sun.Stand second = Sun.at(asHigh(first, noon, halfHours, site)).over(site);
    double meridian = south ? 0 : 180;
    double middle =
        (SunFormulas.turn(first.azimuthDegrees() - meridian + 180)
                - 180
                + SunFormulas.turn(second.azimuthDegrees() - meridian + 180)
                - 180)
            / 2;
    double told =
        TrueNorthFormulas.drift()
            .function()
            .applyAsDouble(
                new double[] {
                  Sun.at(before).declinationDegrees(),
                  Sun.at(noon.plusSeconds(halfHours * 1800L)).declinationDegrees(),
                  site.latitudeDegrees(),
                  halfHours * 7.5
                });

    assertThat(Math.abs(middle)).isEqualTo(Math.abs(told), within(0.004));
  }

  /** The moment after noon at which the sun is as high as before, by halving. */
  private static Instant asHigh(Sun.Stand first, Instant noon, int halfHours, Sun.Site site) {
    Instant low = noon.plusSeconds(halfHours * 1800L - 900);
    Instant high = noon.plusSeconds(halfHours * 1800L + 900);
    for (int i = 0; i < 40; i++) {
      Instant middle = low.plusMillis(Duration.between(low, high).toMillis() / 2);
      boolean higher = Sun.at(middle).over(site).altitudeDegrees() > first.altitudeDegrees();
      low = higher ? middle : low;
      high = higher ? high : middle;
    }
    return low;
  }

  /** The two tapes, swung together on the side named, give the direction of the first mark. */
  @Property(tries = 300, seed = Chance.SEED)
  void theTwoTapesGiveTheDirection(@ForAll @DoubleRange(min = 0, max = 359.99) double azimuth) {
    Turn turn = north("", "", Double.toString(azimuth) + " deg").turn();
    double sign = turn.peg() == Compass.NORTH ? 1 : -1;
    Point peg = new Point(0, sign * turn.along().metres());
    if (turn.onLine() || turn.chord().metres() < 0.005) {
      return;
    }
    Point found = swung(peg, turn.along(), turn.chord(), turn.side() == Compass.EAST);

    double off = found.azimuthTo(Point.ORIGIN).plus(Angle.ofDegrees(180)).normalized().degrees();
    double half = Length.ofInches(1 / 32.0).metres();
    // Half a division across at 45° to 90° turns it by no more than this.
    double most = Math.toDegrees(half / (turn.along().metres() * Math.cos(Math.PI / 4)));
    assertThat(SunFormulas.turn(off - azimuth + 180) - 180).isEqualTo(0, within(most));
    // The check from the other peg meets the same place.
    Point other = new Point(0, -peg.north());
    assertThat(other.distanceTo(found).metres()).isEqualTo(turn.check().metres(), within(3 * half));
  }

  /** Where a circle round the origin meets one round a peg on the north line. */
  private static Point swung(Point peg, Length fromFoot, Length fromPeg, boolean east) {
    double a = fromFoot.metres();
    double north =
        (a * a - fromPeg.metres() * fromPeg.metres() + peg.north() * peg.north())
            / (2 * peg.north());
    double across = Math.sqrt(Math.max(0, a * a - north * north));
    return new Point(east ? across : -across, north);
  }

  /** Along magnetic north itself, whose parts the model gives, a compass shows nothing. */
  @ParameterizedTest
  @CsvFileSource(resources = "/pegbook/truenorth/magnetic-2025.csv", numLinesToSkip = 1)
  void aCompassShowsZeroAlongTheField(double declination, double xNorth, double yEast) {
    double azimuth = Point.ORIGIN.azimuthTo(new Point(yEast, xNorth)).degrees();
    double shown =
        TrueNorthFormulas.compass().function().applyAsDouble(new double[] {azimuth, declination});

    assertThat(SunFormulas.turn(shown + 180) - 180).isEqualTo(0, within(0.005));
  }

  /** West of true north: the compass shows more than the true azimuth. */
  @Test
  void aWesterlyDeclinationIsAdded() {
    String declination =
        "\"declination\": {\"value\": \"-1.2 deg\", \"from\": \"survey\", \"date\": \"2027-03-01\"}";
    TrueNorth north = north(ALDER + ", " + declination, start("2027-05-08"));

    assertThat(north.compass().orElseThrow().north().degrees()).isEqualTo(1.2, within(1e-9));
    assertThat(north.compass().orElseThrow().first().degrees()).isEqualTo(9.2, within(1e-9));
    assertThat(found(north)).isEmpty();
    assertThat(
            found(
                north(
                    ALDER + ", " + declination.replace("2027-03", "2021-03"), start("2027-05-08"))))
        .containsExactly("true-north-old-declination");
  }

  /** Errors are computed in both systems from sizes that are nearly alike. */
  @Test
  void errorsAreAlikeInBothSystems() {
    List<Double> errors = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      SunClock clock = new SunClock(new Sun.Site(44.9, -91.4), ZoneId.of("America/Chicago"));
      Shadows shadows = new Shadows(units, clock, Length.ofFeet(7));
      errors.add(shadows.noon(LocalDate.of(2027, 5, 8), new ArrayList<>()).error().degrees());
    }

    assertThat(errors.get(1)).isEqualTo(errors.get(0), within(0.01));
    assertThat(errors.get(0)).isBetween(0.2, 0.5);
  }
}
