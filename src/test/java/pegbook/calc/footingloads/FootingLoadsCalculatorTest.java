package pegbook.calc.footingloads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.figures.Argument;
import pegbook.figures.CombinedLoad;
import pegbook.figures.CombinedLoad.Combination;
import pegbook.figures.Finding;
import pegbook.figures.SupportLoad;
import pegbook.job.Job;
import pegbook.measure.Area;
import pegbook.measure.Force;
import pegbook.measure.Pressure;
import pegbook.testing.Chance;
import pegbook.testing.FootingJob;

class FootingLoadsCalculatorTest {
  private static FootingLoads loads(Consumer<FootingJob> change) {
    FootingJob trial = new FootingJob();
    change.accept(trial);
    Job job = trial.job();
    return FootingLoadsCalculator.calculate(
        job, FootingJob.placement(job), FootingJob.holes(job), Optional.empty());
  }

  /** By a frame: the support that the beams bring most to carries most, and no one asks why. */
  @Test
  void beamsBringWhatTheySay() {
    Job job = new FootingJob().job();
    java.util.Map<String, Area> beams =
        java.util.Map.of("S1", Area.ofSquareFeet(60), "S2", Area.ofSquareFeet(40));
    FootingLoads loads =
        FootingLoadsCalculator.calculate(
            job, FootingJob.placement(job), FootingJob.holes(job), Optional.of(beams));
    SupportLoad first = loads.supportLoads().get(0);
    assertThat(first).isInstanceOf(SupportLoad.ByBeam.class);
    assertThat(first.area().squareFeet()).isEqualTo(60, within(1e-9));
    assertThat(first.dead().newtons() / 4.4482216152605).isEqualTo(600, within(1e-9));
    assertThat(loads.shares()).as("the floor nearest to it is told as well").hasSize(4);
    assertThat(loads.supportLoads().get(2).area()).as("no beam").isEqualTo(Area.ZERO);
  }

  private static double squareFeet(SupportLoad load) {
    return ((SupportLoad.ByArea) load).area().squareFeet();
  }

  private static double sum(FootingLoads loads) {
    return loads.shares().stream().mapToDouble(share -> share.cell().area().squareMetres()).sum();
  }

  private static List<String> ids(FootingLoads loads) {
    return loads.findings().stream().map(Finding::id).toList();
  }

  /** 16 by 12 ft on four posts: 48 ft² each, 480 lbf dead, 1,920 lbf live. */
  @Test
  void fourPostsShareARectangle() {
    FootingLoads loads = loads(trial -> {});
    assertThat(loads.loads())
        .hasSize(4)
        .allSatisfy(
            load -> {
              assertThat(squareFeet(load.parts())).isCloseTo(48, within(1e-9));
              assertThat(load.parts().dead().poundsForce()).isCloseTo(480, within(1e-6));
              assertThat(load.parts().live().poundsForce()).isCloseTo(1920, within(1e-6));
              assertThat(load.parts().snow()).isEmpty();
              assertThat(load.governs()).isEqualTo(Combination.DEAD_LIVE);
              assertThat(load.total().poundsForce()).isCloseTo(2400, within(1e-6));
            });
  }

  /**
   * Halfway lines of a grid of 3 by 3 posts, 1 ft in from a 16 by 12 ft edge: at 4.5 and 11.5 ft
   * along, at 3.5 and 8.5 ft across.
   */
  @Test
  void aGridIsSharedByItsHalfwayLines() {
    FootingLoads loads =
        loads(trial -> trial.outline = FootingJob.rectangle("16 ft", "12 ft", 3, 3));
    assertThat(loads.supportLoads())
        .extracting(load -> Math.round(squareFeet(load) * 1e6) / 1e6)
        .containsExactly(15.75, 24.5, 15.75, 22.5, 15.75, 24.5, 15.75, 22.5, 35.0);
    assertThat(loads.workings().stream().map(working -> working.subject()).distinct())
        .contains("S1, S3, S5, S7", "S2, S6", "S4, S8", "S9");
  }

  /** A pier of 16 in with a gap of 1 in all round takes away a circle of 18 in. */
  @Test
  void piersAreOpeningsWithTheirGap() {
    FootingLoads loads =
        loads(
            trial ->
                trial.piers =
                    """
                    [ { "id": "P1", "at": "0 ft, 0 ft", "hole": "20 in", "top": "36 in", "gap": "1 in",
                        "tube": { "inside": "16 in", "from": "ground" } },
                      { "id": "P2", "at": "40 ft, 0 ft", "hole": "20 in", "top": "36 in", "gap": "1 in" } ]
                    """);
    double opening = Math.PI / 4 * 1.5 * 1.5;
    assertThat(loads.openings().squareFeet()).isCloseTo(opening, within(1e-9));
    assertThat(Area.ofSquareFeet(1).times(sum(loads) / 0.09290304).squareFeet())
        .isCloseTo(192 - opening, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({
    // Combinations of ASCE 7-16 2.4.1 put in by hand: dead, live, snow (psf) on 48 ft².
    "10, 40, 0, DEAD_LIVE, 2400",
    "10, 40, 10, DEAD_LIVE, 2400",
    "10, 40, 40, DEAD_LIVE_SNOW, 3360",
    "10, 40, 100, DEAD_LIVE_SNOW, 5520",
    "10, 10, 70, DEAD_SNOW, 3840",
    "10, 0, 0, DEAD, 480"
  })
  void theWorstCombinationGoverns(
      double dead, double live, double snow, Combination governs, double poundsForce) {
    FootingLoads loads =
        loads(
            trial ->
                trial.floor =
                    "{ \"live\": \"%s psf\", \"dead\": \"%s psf\", \"groundSnow\": \"%s psf\" }"
                        .formatted(live, dead, snow));
    CombinedLoad load = loads.loads().get(0);
    assertThat(load.governs()).isEqualTo(governs);
    assertThat(load.total().poundsForce()).isCloseTo(poundsForce, within(1e-6));
  }

  @Test
  void whatIsLeftOutIsAssumedAndAsked() {
    FootingLoads loads = loads(trial -> trial.floor = "{ \"use\": \"private deck\" }");
    assertThat(loads.pressures().live().value()).isEqualTo(Pressure.ofPsf(40));
    assertThat(loads.pressures().dead().value()).isEqualTo(Pressure.ofPsf(10));
    assertThat(ids(loads)).contains("live-load-assumed", "dead-load-assumed", "snow-not-given");
    assertThat(loads.findings())
        .filteredOn(one -> one.id().equals("snow-not-given"))
        .allSatisfy(one -> assertThat(one.kind()).isEqualTo(Finding.Kind.ASK));
  }

  @Test
  void givenLoadsAreNotAsked() {
    FootingLoads loads =
        loads(
            trial ->
                trial.floor =
                    "{ \"live\": \"40 psf\", \"dead\": \"10 psf\", \"groundSnow\": \"40 psf\" }");
    assertThat(ids(loads)).containsExactly("snow-on-ground", "design-basis-open");
  }

  @ParameterizedTest
  @ValueSource(strings = {"public", "assembly", "school"})
  void whereManyGatherTheLoadOfUseIsLarger(String use) {
    FootingLoads loads = loads(trial -> trial.floor = "{ \"use\": \"%s\" }".formatted(use));
    assertThat(loads.pressures().live().value()).isEqualTo(Pressure.ofPsf(100));
  }

  @Test
  void aHutIsAskedForItsRoofAndWalls() {
    assertThat(ids(loads(trial -> trial.floor = "{ \"use\": \"hut\" }")))
        .contains("hut-above-floor");
  }

  /** The table's last column is 70 psf (recalled): what lies on it is still within. */
  @ParameterizedTest
  @CsvSource({
    "40, 70, false, false",
    "40, 71, true, false",
    "70, 40, false, false",
    "100, 94, true, true"
  })
  void loadsBeyondTheCodesTablesGoToAnEngineer(
      int live, int snow, boolean snowAsked, boolean liveAsked) {
    FootingLoads loads = loads(trial -> trial.floor = floor(10, live, snow));
    assertThat(ids(loads).contains("snow-beyond-tables")).isEqualTo(snowAsked);
    assertThat(ids(loads).contains("live-beyond-tables")).isEqualTo(liveAsked);
    assertThat(loads.findings())
        .filteredOn(one -> one.id().endsWith("-beyond-tables"))
        .allSatisfy(one -> assertThat(one.decides()).isEqualTo(Finding.Decider.ENGINEER));
  }

  @ParameterizedTest
  @CsvSource({"20, true", "40, false"})
  void aBuildingNearByMayDropItsSnow(int feet, boolean asked) {
    FootingLoads loads =
        loads(
            trial -> {
              trial.floor = "{ \"groundSnow\": \"40 psf\" }";
              trial.features =
                  """
                  [ { "name": "barn", "corners":
                      ["%1$d ft, 0 ft", "%1$d ft, 20 ft", "60 ft, 20 ft", "60 ft, 0 ft"] } ]
                  """
                      .formatted(feet);
            });
    assertThat(ids(loads).contains("snow-from-roof")).isEqualTo(asked);
    assertThat(ids(loads).contains("snow-on-ground")).isEqualTo(!asked);
  }

  @Test
  void theBasisSaysOfEveryLineHowItIsKnown() {
    List<BasisLine> basis = loads(trial -> {}).basis();
    assertThat(basis)
        .extracting(BasisLine::item)
        .containsExactly(
            "code",
            "use",
            "occupancy",
            "risk",
            "dead",
            "live",
            "snow",
            "wind",
            "wind-exposure",
            "seismic",
            "exposure",
            "soil",
            "soil-weight",
            "water",
            "frost-depth",
            "lateral");
    assertThat(basis)
        .allSatisfy(
            line ->
                assertThat(line.value().isEmpty())
                    .isEqualTo(line.known() == BasisLine.Known.NOT_GIVEN));
  }

  /** Each line that the job answers names whose word it is, and what is left counts as open. */
  @Test
  void theBasisSaysWhatSomebodyAnswered() {
    FootingLoads loads =
        loads(
            trial -> {
              trial.ground =
                  """
                  "soil": "clay", "water": {"depth": "9 ft", "from": "the well"},
                  "unitWeight": {"value": "118 pcf", "from": "a report"}
                  """;
              trial.design =
                  """
                  {"code": {"edition": "of 2021", "from": "A"},
                   "occupancy": {"group": "beside a dwelling", "category": "II", "from": "B"},
                   "wind": {"speed": "115 mph", "exposure": "C", "from": "C"},
                   "seismic": {"category": "D1", "from": "D"},
                   "salt": {"found": "none", "from": "E"},
                   "lateral": {"path": "braces", "from": "F"}}
                  """;
            });
    assertThat(loads.basis())
        .filteredOn(line -> line.from().isPresent())
        .extracting(line -> line.item() + " " + line.from().orElseThrow())
        .containsExactly(
            "code A",
            "occupancy B",
            "risk B",
            "wind C",
            "wind-exposure C",
            "seismic D",
            "exposure E",
            "soil-weight a report",
            "water the well",
            "lateral F");
    assertThat(ids(loads)).contains("seismic-high");
    assertThat(open(loads)).contains(Argument.of(2));
    assertThat(open(loads(trial -> {}))).contains(Argument.of(11));
  }

  private static Optional<Argument> open(FootingLoads loads) {
    return loads.findings().stream()
        .filter(finding -> finding.id().equals("design-basis-open"))
        .map(finding -> finding.arguments().get("count"))
        .findFirst();
  }

  /** Turning the figure changes no share; the sum is the floor less its openings. */
  @Property(tries = 40, seed = Chance.SEED)
  void sharesDoNotTurnWithTheFigure(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 0, max = 359) double degrees) {
    FootingLoads loads =
        loads(
            trial -> {
              trial.outline =
                  "{ \"regular\": { \"sides\": %d, \"acrossCorners\": \"30 ft\" } }"
                      .formatted(sides);
              trial.azimuth = "%.4f deg".formatted(degrees);
            });
    double expected = loads.outline().squareMetres() / sides;
    assertThat(loads.shares())
        .allSatisfy(
            share ->
                assertThat(share.cell().area().squareMetres())
                    .isCloseTo(expected, within(1e-6 * expected)));
    assertThat(sum(loads))
        .isCloseTo(loads.outline().minus(loads.openings()).squareMetres(), within(1e-6));
  }

  /** Twice the load of every kind is twice the load on every support, by the same combination. */
  @Property(tries = 40, seed = Chance.SEED)
  void twiceTheLoadsGiveTwiceTheTotal(
      @ForAll @IntRange(min = 1, max = 50) int dead,
      @ForAll @IntRange(min = 0, max = 100) int live,
      @ForAll @IntRange(min = 0, max = 100) int snow) {
    List<CombinedLoad> once = loads(trial -> trial.floor = floor(dead, live, snow)).loads();
    List<CombinedLoad> twice =
        loads(trial -> trial.floor = floor(2 * dead, 2 * live, 2 * snow)).loads();
    for (int i = 0; i < once.size(); i++) {
      Force expected = once.get(i).total().times(2);
      assertThat(twice.get(i).total().newtons())
          .isCloseTo(expected.newtons(), within(1e-9 * expected.newtons()));
      assertThat(twice.get(i).governs()).isEqualTo(once.get(i).governs());
    }
  }

  private static String floor(int dead, int live, int snow) {
    return "{ \"live\": \"%d psf\", \"dead\": \"%d psf\", \"groundSnow\": \"%d psf\" }"
        .formatted(live, dead, snow);
  }

  @Test
  void metricPacketsWorkInKilonewtons() {
    FootingLoads loads =
        loads(
            trial -> {
              trial.units = "metric";
              trial.outline = FootingJob.rectangle("4 m", "3 m", 2, 2);
              trial.floor = "{ \"groundSnow\": \"3 kPa\" }";
            });
    // 3 m² each; 0.5 dead, 2 live, 3 snow: 0.5 + 0.75 · (2 + 3) = 4.25 kPa.
    assertThat(loads.loads().get(0).total().kilonewtons()).isCloseTo(12.75, within(1e-9));
    assertThat(loads.loads().get(0).parts().snow().orElseThrow().kilonewtons())
        .isCloseTo(9, within(1e-9));
  }
}
