package pegbook.calc.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.bearing.Bearing.Check;
import pegbook.calc.bearing.Bearing.Footing;
import pegbook.calc.bearing.Bearing.Needed;
import pegbook.calc.bearing.Bearing.Verdict;
import pegbook.calc.footingloads.FootingLoads;
import pegbook.calc.footingloads.FootingLoadsCalculator;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class BearingCalculatorTest {
  private static final String GROSS =
      "\"soil\": \"gravel\", \"allowablePressure\": { \"value\": \"%s psf\", \"kind\": \"gross\","
          + " \"from\": \"x\" }";
  private static final String NET = GROSS.replace("gross", "net");

  private static Bearing bearing(Consumer<FootingJob> change) {
    FootingJob trial = new FootingJob();
    trial.ground = GROSS.formatted("3000");
    change.accept(trial);
    Job job = trial.job();
    List<Hole> holes = FootingJob.holes(job);
    FootingLoads loads =
        FootingLoadsCalculator.calculate(job, FootingJob.placement(job), holes, Optional.empty());
    return BearingCalculator.calculate(job, holes, loads.loads());
  }

  private static Footing footing(Bearing bearing, String mark) {
    return bearing.footings().stream()
        .filter(one -> one.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static Check check(Bearing bearing, String mark) {
    return footing(bearing, mark).check().orElseThrow();
  }

  private static List<String> ids(Bearing bearing) {
    return bearing.findings().stream().map(Finding::id).toList();
  }

  private static Finding only(Bearing bearing, String id) {
    assertThat(ids(bearing)).contains(id);
    return bearing.findings().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * By hand: 2,400 lbf on a hole of 18 in, 36 in deep and 6 in over the ground: 1.7671 ft², own
   * weight 150 · 1.7671 · 3.5 = 927.8 lbf, pressure 1,883.1 psf; area needed 2,400 / (3,000 − 525)
   * = 0.96970 ft², 13.33 in, set up 14; by gross pressure 12.1 in, but the table begins at 14.
   */
  @Test
  void aPlainHoleByHand() {
    Bearing bearing = bearing(trial -> {});
    Footing footing = footing(bearing, "S1");
    assertThat(footing.area().squareFeet()).isCloseTo(1.76715, within(5e-6));
    assertThat(footing.own().poundsForce()).isCloseTo(927.75, within(5e-3));
    assertThat(footing.pressure().psf()).isCloseTo(1883.12, within(5e-3));
    Needed needed = check(bearing, "S1").needed().orElseThrow();
    assertThat(needed.area().squareFeet()).isCloseTo(0.969697, within(5e-7));
    assertThat(needed.diameter().inches()).isCloseTo(14, within(1e-6));
    assertThat(needed.byGross().orElseThrow().inches()).isCloseTo(14, within(1e-6));
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(check(bearing, "S1").mayCarry().poundsForce()).isCloseTo(4373.69, within(5e-3));
    assertThat(ids(bearing)).containsExactly("beams-not-known");
  }

  /** Above the ground a tube of 10 in does not widen: its weight is carried like a load. */
  @Test
  void aTubeFromTheGroundStandsOnTheHole() {
    Bearing bearing =
        bearing(
            trial ->
                trial.supports =
                    """
                    { "hole": "18 in", "depth": "36 in", "top": "12 in",
                      "tube": { "inside": "10 in", "from": "ground" } }
                    """);
    double above = 150 * Math.PI / 4 * 100 / 144;
    Footing footing = footing(bearing, "S1");
    assertThat(footing.standing().inches()).isCloseTo(18, within(1e-9));
    assertThat(footing.own().poundsForce())
        .isCloseTo(150 * 3 * footing.area().squareFeet() + above, within(1e-6));
    assertThat(check(bearing, "S1").needed().orElseThrow().area().squareFeet())
        .isCloseTo((2400 + above) / (3000 - 450), within(1e-9));
  }

  /** A tube from the bottom is all that stands there. */
  @Test
  void aTubeFromTheBottomIsAllThatStands() {
    Bearing bearing =
        bearing(
            trial ->
                trial.supports =
                    """
                    { "hole": "24 in", "depth": "36 in", "top": "6 in",
                      "tube": { "inside": "12 in", "from": "bottom" } }
                    """);
    assertThat(footing(bearing, "S1").standing().inches()).isCloseTo(12, within(1e-9));
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.EXCEEDS);
  }

  @Test
  void netPressureLeavesTheOwnWeightOut() {
    Bearing bearing = bearing(trial -> trial.ground = NET.formatted("1500"));
    Footing footing = footing(bearing, "S1");
    assertThat(footing.pressure().psf())
        .isCloseTo(2400 / footing.area().squareFeet(), within(1e-6));
    assertThat(check(bearing, "S1").needed().orElseThrow().area().squareFeet())
        .isCloseTo(1.6, within(1e-9));
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.WITHIN);
  }

  /** 1,500 psf gross: 2,400 / (1,500 − 525) = 2.4615 ft², 21.24 in round, 18.83 in square. */
  @Test
  void pressedTooHardStopsWithASizeThatHolds() {
    Bearing bearing = bearing(trial -> trial.ground = GROSS.formatted("1500"));
    Finding finding = only(bearing, "bearing-exceeded");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    assertThat(finding.subjects()).containsExactly("S1", "S2", "S3", "S4");
    assertThat(bearing.remedies()).hasSize(1);
    assertThat(bearing.remedies().get(0).diameter().inches()).isCloseTo(22, within(1e-6));
    assertThat(bearing.remedies().get(0).side().inches()).isCloseTo(19, within(1e-6));
    assertThat(bearing.remedies().get(0).thickness().inches()).isCloseTo(6, within(1e-6));
    Bearing mended =
        bearing(
            trial -> {
              trial.ground = GROSS.formatted("1500");
              trial.supports = trial.supports.replace("18 in", "22 in");
            });
    assertThat(ids(mended)).doesNotContain("bearing-exceeded", "bearing-narrow");
  }

  /** Between the exact need of 13.33 in and the next whole inch: within, but narrow. */
  @Test
  void betweenTheNeedAndTheNextWholeInchIsSaid() {
    Bearing bearing =
        bearing(trial -> trial.supports = trial.supports.replace("18 in", "13 1/2 in"));
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.NARROW);
    assertThat(only(bearing, "bearing-narrow").kind()).isEqualTo(Kind.NOTE);
    assertThat(ids(bearing)).doesNotContain("bearing-exceeded");
  }

  /** 11 ft of concrete presses with 1,650 psf: more than 1,500, however wide. */
  @Test
  void ownWeightAloneMayBeTooMuch() {
    Bearing bearing =
        bearing(
            trial -> {
              trial.ground = GROSS.formatted("1500");
              trial.supports = trial.supports.replace("36 in", "126 in");
            });
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.NO_WIDTH);
    assertThat(check(bearing, "S1").needed()).isEmpty();
    assertThat(only(bearing, "bearing-own-weight").kind()).isEqualTo(Kind.STOP);
    assertThat(ids(bearing)).doesNotContain("bearing-exceeded");
  }

  @Test
  void withoutAGivenPressureTheSoilsClassIsTakenAndAsked() {
    Bearing bearing = bearing(trial -> trial.ground = "\"soil\": \"silty sand\"");
    assertThat(bearing.allowable().orElseThrow().value()).isEqualTo(Pressure.ofPsf(2000));
    assertThat(bearing.allowable().orElseThrow().gross()).isTrue();
    assertThat(only(bearing, "bearing-assumed").kind()).isEqualTo(Kind.ASK);
  }

  @ParameterizedTest
  @ValueSource(strings = {"peat", "fill"})
  void soilsOutsideTheTableStop(String soil) {
    Bearing bearing = bearing(trial -> trial.ground = "\"soil\": \"%s\"".formatted(soil));
    assertThat(bearing.allowable()).isEmpty();
    assertThat(only(bearing, "bearing-soil-without-value").kind()).isEqualTo(Kind.STOP);
    assertThat(footing(bearing, "S1").check()).isEmpty();
    assertThat(footing(bearing, "S1").pressure().psf()).isPositive();
  }

  @Test
  void aGivenPressureOnAnOutsideSoilIsAsked() {
    Bearing bearing =
        bearing(trial -> trial.ground = GROSS.formatted("3000").replace("gravel", "peat"));
    assertThat(ids(bearing)).contains("bearing-soil-outside-table");
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.WITHIN);
  }

  @ParameterizedTest
  @CsvSource({"1500, false", "1600, true"})
  void aPressureAboveTheClassIsAsked(String psf, boolean asked) {
    assertThat(
            ids(bearing(trial -> trial.ground = GROSS.formatted(psf).replace("gravel", "clay")))
                .contains("bearing-above-table"))
        .isEqualTo(asked);
  }

  /** A middle support under an unbroken beam: w · l · 5/4 against w · l, exact statics. */
  @ParameterizedTest
  @CsvSource({"18, beams-not-known", "14, beams-may-overload"})
  void unbrokenBeamsAreAskedForByHowMuch(int inches, String id) {
    Bearing bearing =
        bearing(trial -> trial.supports = trial.supports.replace("18 in", inches + " in"));
    assertThat(only(bearing, id).arguments().get("one").toString()).contains("0.25");
    assertThat(only(bearing, id).arguments().get("both").toString()).contains("0.5625");
  }

  /** By hand: (4,373.7 − 480) / 48 = 81.1; (4,373.7 − 480 − 0.75 · 1,920) / (0.75 · 48) = 68.2. */
  @Test
  void unknownSnowIsAnsweredByTheRoomForIt() {
    Bearing bearing = bearing(trial -> {});
    assertThat(bearing.snowRoom().orElseThrow().snow().psf()).isCloseTo(68.158, within(5e-4));
    assertThat(bearing.snowRoom().orElseThrow().marks()).hasSize(4);
    Bearing known =
        bearing(trial -> trial.floor = "{ \"groundSnow\": \"20 psf\", \"use\": \"private deck\" }");
    assertThat(known.snowRoom()).isEmpty();
  }

  /** At just that much snow the pressure is what the ground may carry. */
  @Test
  void atTheRoomForSnowTheGroundIsFullyUsed() {
    double room = bearing(trial -> {}).snowRoom().orElseThrow().snow().psf();
    Bearing full =
        bearing(
            trial ->
                trial.floor =
                    "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"groundSnow\": \"%.6f psf\" }"
                        .formatted(room));
    assertThat(footing(full, "S1").pressure().psf()).isCloseTo(3000, within(1e-3));
  }

  @Test
  void piersCarryTheirInstrument() {
    Bearing bearing =
        bearing(
            trial ->
                trial.piers =
                    """
                    [ { "id": "P1", "at": "0 ft, 0 ft", "hole": "20 in", "depth": "36 in",
                        "top": "36 in", "instrument": "85 lb" },
                      { "id": "P2", "at": "0 ft, 40 ft", "hole": "20 in", "depth": "36 in",
                        "top": "36 in" } ]
                    """);
    assertThat(footing(bearing, "P1").carried().poundsForce()).isCloseTo(85, within(1e-9));
    assertThat(footing(bearing, "P1").pressure().psf())
        .isCloseTo(900 + 85 / footing(bearing, "P1").area().squareFeet(), within(1e-6));
    assertThat(check(bearing, "P1").needed().orElseThrow().byGross()).isEmpty();
    assertThat(check(bearing, "P2").needed()).isEmpty();
    assertThat(check(bearing, "P2").verdict()).isEqualTo(Verdict.WITHIN);
  }

  /**
   * A pier of 20 in beside a support of 18 in, 36 in deep. Both 36 in: they share the ground down
   * to two widths of the support, 18 in out from each edge, and meet where less than 36 in is clear
   * (55 in between centres). A pier 60 in deep: at 72 in, where the support's zone ends, its own is
   * 6 in out and the support's 18 in (43 in between centres). A pier 90 in deep has only its own
   * concrete there (37 in), and its plan would still overlap the zone's at its foot. A pier of 12
   * in depth ends its zone at 52 in: 20 in out, the support's 8 in (47 in).
   */
  @ParameterizedTest
  @CsvSource({
    "36, 54, true",
    "36, 56, false",
    "60, 42, true",
    "60, 44, false",
    "90, 36, true",
    "90, 38, false",
    "12, 46, true",
    "12, 48, false"
  })
  void zonesMeetAtTheirOwnDepths(int depth, int inches, boolean met) {
    Bearing bearing =
        bearing(
            trial -> {
              trial.azimuth = "305.5377 deg";
              trial.piers =
                  """
                  [ { "id": "P1", "at": "%s in, 60 in", "hole": "20 in", "depth": "%d in", "top": "6 in" } ]
                  """
                      .formatted(-84 + inches, depth);
            });
    assertThat(ids(bearing).contains("bearing-zones-meet")).isEqualTo(met);
  }

  /**
   * Under the middle of an even load q on a circle of radius R, at depth z in elastic ground, the
   * pressure is q (1 − (1 + R²/z²)^−1.5) (Boussinesq; any textbook, from memory): more than a
   * quarter a width down, less than a tenth two widths down, where the zones end.
   */
  @Test
  void twoWidthsDownATenthIsLeft() {
    assertThat(left(1)).isCloseTo(0.284, within(5e-4));
    assertThat(left(2)).isCloseTo(0.087, within(5e-4)).isLessThan(0.1);
  }

  private static double left(double widths) {
    return 1 - Math.pow(1 + 0.25 / (widths * widths), -1.5);
  }

  /**
   * Where the ground carries little, wider footings of a close row meet; a pier far down may not.
   */
  @ParameterizedTest
  @CsvSource({"20, 36, bearing-no-room", "60, 36, ''", "20, 90, bearing-no-room"})
  void aWiderFootingNeedsRoom(int inches, int depth, String id) {
    Bearing bearing =
        bearing(
            trial -> {
              trial.ground = GROSS.formatted("1000");
              trial.azimuth = "305.5377 deg";
              trial.piers =
                  """
                  [ { "id": "P1", "at": "%s in, 60 in", "hole": "12 in", "depth": "%d in", "top": "6 in" } ]
                  """
                      .formatted(-84 + inches, depth);
            });
    assertThat(bearing.remedies()).isNotEmpty();
    assertThat(ids(bearing).stream().filter(one -> one.startsWith("bearing-no-room")).toList())
        .isEqualTo(id.isEmpty() ? List.of() : List.of(id));
  }

  /** A pier that ends above the support's bell: only a hole wide all the way up breaks into it. */
  @Test
  void aBellPassesUnderAShallowNeighbour() {
    Bearing bearing =
        bearing(
            trial -> {
              trial.ground = GROSS.formatted("1000");
              trial.supports = "{ \"hole\": \"18 in\", \"depth\": \"60 in\", \"top\": \"6 in\" }";
              trial.azimuth = "305.5377 deg";
              trial.piers =
                  """
                  [ { "id": "P1", "at": "-64 in, 60 in", "hole": "12 in", "depth": "14 in", "top": "6 in" } ]
                  """;
            });
    assertThat(ids(bearing)).contains("bearing-no-room-above").doesNotContain("bearing-no-room");
  }

  /** Twice every load needs twice the area, own weight and all, where the hole stays as it is. */
  @Property(tries = 30, seed = Chance.SEED)
  void twiceTheLoadNeedsTwiceTheArea(
      @ForAll @IntRange(min = 5, max = 40) int dead,
      @ForAll @IntRange(min = 0, max = 80) int live) {
    Needed once =
        check(bearing(trial -> trial.floor = floor(dead, live)), "S1").needed().orElseThrow();
    Needed twice =
        check(bearing(trial -> trial.floor = floor(2 * dead, 2 * live)), "S1")
            .needed()
            .orElseThrow();
    assertThat(twice.area().squareMetres())
        .isCloseTo(2 * once.area().squareMetres(), within(1e-9 * once.area().squareMetres()));
    assertThat(twice.diameter()).isGreaterThanOrEqualTo(once.diameter());
  }

  private static String floor(int dead, int live) {
    return "{ \"live\": \"%d psf\", \"dead\": \"%d psf\", \"groundSnow\": \"0 psf\" }"
        .formatted(live, dead);
  }

  /** The pressure and the needed size agree on whether a footing holds. */
  @Property(tries = 60, seed = Chance.SEED)
  void theVerdictAgreesWithTheSizeNeeded(
      @ForAll @IntRange(min = 10, max = 36) int inches,
      @ForAll @IntRange(min = 1200, max = 6000) int psf) {
    Bearing bearing =
        bearing(
            trial -> {
              trial.ground = GROSS.formatted(psf);
              trial.supports = trial.supports.replace("18 in", inches + " in");
            });
    Check check = check(bearing, "S1");
    Length exact =
        Length.ofInches(
            Math.sqrt(4 * check.needed().orElseThrow().area().squareFeet() * 144 / Math.PI));
    assertThat(check.verdict() == Verdict.EXCEEDS).isEqualTo(exact.inches() > inches + 1e-4);
    assertThat(check.mayCarry().isLessThan(footing(bearing, "S1").carried()))
        .isEqualTo(check.verdict() == Verdict.EXCEEDS);
  }

  @Test
  void metricPacketsSetSizesToTenMillimetres() {
    Bearing bearing =
        bearing(
            trial -> {
              trial.units = "metric";
              trial.outline = FootingJob.rectangle("4 m", "3 m", 2, 2);
              trial.inset = "300 mm";
              trial.supports = "{ \"hole\": \"400 mm\", \"depth\": \"1 m\", \"top\": \"150 mm\" }";
              trial.ground =
                  "\"soil\": \"clay\", \"allowablePressure\": "
                      + "{ \"value\": \"75 kPa\", \"kind\": \"gross\", \"from\": \"x\" }";
              trial.floor =
                  "{ \"live\": \"2 kPa\", \"dead\": \"0.5 kPa\", \"groundSnow\": \"0 kPa\" }";
            });
    // 7.5 / (75 − 23.54 · 1.15) = 0.15648 m²: 446.4 mm, set up to 450.
    Needed needed = check(bearing, "S1").needed().orElseThrow();
    assertThat(needed.area().squareMetres()).isCloseTo(0.15648, within(5e-6));
    assertThat(needed.diameter().millimetres()).isCloseTo(450, within(1e-6));
    assertThat(check(bearing, "S1").verdict()).isEqualTo(Verdict.EXCEEDS);
  }
}
