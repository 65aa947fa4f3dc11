package pegbook.calc.digschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static pegbook.calc.digschedule.DigScheduleCalculatorTest.schedule;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.figures.DigWork;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.ToolStep.Use;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.job.Digging;
import pegbook.job.Feature;
import pegbook.job.Side;
import pegbook.job.Spoil;
import pegbook.job.Tool;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.testing.DigJob;
import pegbook.testing.FillJob;

/**
 * Heaps of six holes of 18 in by 46 in of sandy clay: 8.806 ft³ loose in a cone of 32°, 29 in
 * radius; from the hole's middle 9 in of hole, 24 in of edge and the radius are 62 in.
 */
class HeapsByHandTest {
  private static HeapSpot spot(DigSchedule schedule, String mark) {
    return schedule.heapSpots().stream()
        .filter(spot -> spot.from().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> found(DigSchedule schedule) {
    return schedule.findings().stream().map(Finding::id).toList();
  }

  /** The cube root of 3 · 8.806 ft³ / (π · tan 32°) is 28.59 in, set up to 29; 62 in outwards. */
  @Test
  void everyHeapLiesStraightOutwards() {
    DigSchedule schedule = schedule(new DigJob());
    for (int i = 1; i <= 6; i++) {
      HeapSpot spot = spot(schedule, "S" + i);
      assertThat(spot.kind()).isEqualTo(HeapSpot.Kind.BESIDE);
      assertThat(spot.heap().radius().inches()).isEqualTo(29, offset(1e-9));
      assertThat(spot.heap().height().inches()).isEqualTo(18.12, offset(0.005));
      assertThat(spot.distance().inches()).isEqualTo(62, offset(1e-9));
      assertThat(spot.direction().degrees()).isEqualTo(60.0 * (i - 1), offset(1e-9));
      assertThat(spot.heap().holes()).containsExactly("S" + i);
    }
    assertThat(schedule.heapSpots()).extracting(HeapSpot::from).startsWith("S1", "S2");
  }

  /** 0.24937 m³: 726 mm, set up to 730; 228.6 + 609.6 + 730 mm, set up to 1570 mm. */
  @Test
  void metricHeapsAreWholeCentimetres() {
    DigJob job = new DigJob();
    job.units = UnitSystem.METRIC;
    HeapSpot spot = spot(schedule(job), "S4");
    assertThat(spot.heap().radius().millimetres()).isEqualTo(730, offset(1e-6));
    assertThat(spot.distance().millimetres()).isEqualTo(1570, offset(1e-6));
    assertThat(spot.direction().degrees()).isEqualTo(180, offset(1e-9));
  }

  /**
   * A tree straight north of S1, where its heap would lie: the next place on the same ring that is
   * 29 in clear of it. The chord of 15° at 62 in is 16.2 in, of 30° 32.1 in: 30° to the left.
   */
  @Test
  void beforeATreeItTurnsToTheLeftFirst() {
    DigJob job = new DigJob();
    Point north = job.placement().mark("S1").at().plus(0, Length.ofInches(62).metres());
    job.features.add(
        new Feature("tree", Feature.Kind.OBJECT, new Feature.Shape.Spot(north), Optional.empty()));
    HeapSpot spot = spot(schedule(job), "S1");
    assertThat(spot.distance().inches()).isEqualTo(62, offset(1e-9));
    assertThat(spot.direction().degrees()).isEqualTo(330, offset(1e-9));
    // One more on its left leaves the right.
    Point left = job.placement().mark("S1").at().moved(spot.direction(), spot.distance());
    job.features.add(
        new Feature("bush", Feature.Kind.OBJECT, new Feature.Shape.Spot(left), Optional.empty()));
    assertThat(spot(schedule(job), "S1").direction().degrees()).isEqualTo(30, offset(1e-9));
  }

  /** Outer holes choose first; the pier's heap goes between theirs, clear of the floor. */
  @Test
  void theInnerHolesHeapGoesBetweenTheOthers() {
    DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(58)));
    DigSchedule schedule = schedule(job);
    // In the order of digging, the deepest first.
    assertThat(schedule.heapSpots().get(0).from()).isEqualTo("P1");
    HeapSpot pier = spot(schedule, "P1");
    assertThat(pier.direction().degrees()).isEqualTo(330, offset(1e-9));
    // 12.759 ft³ · 1.3: 35.3 in, 36.
    assertThat(pier.heap().radius().inches()).isEqualTo(36, offset(1e-9));
    assertThat(spot(schedule, "S1").direction().degrees()).isZero();
    assertThat(pier.distance().inches()).isGreaterThan(107);
    assertThat(schedule.workings())
        .filteredOn(each -> each.formula().id().equals("dig-schedule.heap-radius"))
        .extracting(Working::subject)
        .containsExactly("S1–S6", "P1");
    assertThat(schedule.workings())
        .filteredOn(each -> each.formula().id().equals("dig-schedule.heap-height"))
        .hasSize(2);
  }

  private static DigJob tip(double east) {
    DigJob job = new DigJob();
    job.spoil = new Spoil(Volume.ofCubicFeet(3), Optional.empty(), Optional.of(new Point(east, 0)));
    return job;
  }

  /**
   * All of 52.84 ft³: 52 in radius. Nearest to a tip in the east are S2 and S3; hauls run to it.
   */
  @Test
  void theTipTakesAllAndEveryHaulEndsThere() {
    DigSchedule schedule = schedule(tip(12));
    HeapSpot tip = schedule.heapSpots().get(6);
    assertThat(tip.heap().radius().inches()).isEqualTo(52, offset(1.01));
    assertThat(tip.from()).isIn("S2", "S3");
    assertThat(tip.distance().metres())
        .isEqualTo(Math.hypot(12 - 64.746 * 0.0254, 37.381 * 0.0254), offset(1e-4));
    for (DigWork work : schedule.digging()) {
      assertThat(work.haul().metres())
          .isEqualTo(work.hole().centre().distanceTo(new Point(12, 0)).metres(), offset(1e-9));
    }
    // Beside each hole a cart of 3 ft³ on a tarp: 20 in.
    assertThat(spot(schedule, "S1").kind()).isEqualTo(HeapSpot.Kind.TARP);
    assertThat(spot(schedule, "S1").heap().loose().cubicFeet()).isEqualTo(3, offset(1e-9));
  }

  @Test
  void withoutATipTheHaulIsToTheHeapBeside() {
    for (DigWork work : schedule(new DigJob()).digging()) {
      assertThat(work.haul().inches()).isEqualTo(62, offset(1e-6));
    }
  }

  private static Polygon square(double half) {
    return new Polygon(
        List.of(
            new Point(-half, half),
            new Point(half, half),
            new Point(half, -half),
            new Point(-half, -half)));
  }

  /** The tip's foot reaches 1.32 m: at 12 m it is on a lot of 13.4 m, off one of 13.2 m. */
  @Test
  void aTipOffTheLot() {
    DigJob job = tip(12);
    job.boundary = Optional.of(square(13.4));
    assertThat(found(schedule(job))).isEmpty();
    job.boundary = Optional.of(square(13.2));
    assertThat(found(schedule(job))).containsExactly("tip-off-the-lot");
    job.boundary = Optional.of(square(10));
    assertThat(found(schedule(job))).containsExactly("tip-off-the-lot");
  }

  /** A shed of 6 m by 6 m around its middle is in its way. */
  @Test
  void aTipInAShedIsInTheWay() {
    DigJob job = tip(12);
    job.features.add(
        new Feature(
            "shed",
            Feature.Kind.OBJECT,
            new Feature.Shape.Block(
                new Polygon(
                    List.of(
                        new Point(9, 3), new Point(15, 3), new Point(15, -3), new Point(9, -3)))),
            Optional.empty()));
    Finding finding = schedule(job).findings().get(0);
    assertThat(finding.id()).isEqualTo("tip-in-the-way");
    assertThat(finding.subjects()).containsExactly("shed");
  }

  /** A tarp has no room on a lot that ends at the holes. */
  @Test
  void noRoomForTheCart() {
    DigJob job = tip(12);
    job.boundary = Optional.of(square(2.0));
    job.acrossCorners = Length.ofFeet(8);
    assertThat(found(schedule(job))).containsExactly("tip-off-the-lot", "no-room-for-cart");
  }

  /** The job's own swell is nobody's table; that of the soil is cited. */
  @Test
  void whereTheSwellComesFrom() {
    DigJob job = new DigJob();
    assertThat(schedule(job).soil().swellSource()).isNotEqualTo(Citation.COMMON_PRACTICE);
    assertThat(schedule(job).soil().swellFromJob()).isFalse();
    job.spoil =
        new Spoil(Volume.ofCubicFeet(3), Optional.of(Ratio.ofPercent(40)), Optional.empty());
    assertThat(schedule(job).soil().swellSource()).isEqualTo(Citation.COMMON_PRACTICE);
    assertThat(schedule(job).soil().swellFromJob()).isTrue();
  }

  private static DigSchedule tubed(double inside, Optional<Side> side) {
    FillJob of = new FillJob();
    of.side = side;
    Hole hole = of.tube(of.hole("S1", 18, 40, 4, 6), inside, Tube.From.BOTTOM);
    return DigScheduleCalculator.calculate(of.job(), of.dig.placement(), List.of(hole));
  }

  /**
   * Round a tube of 12 in in a hole of 18 in, 40 in deep: π/4 · (18² − 12²) · 40 / 1728 is 3.272
   * ft³ in the ground, 4.254 loose with 30 %. Gravel round it takes none back.
   */
  @Test
  void soilRoundATubeIsKept() {
    DigSchedule schedule = tubed(12, Optional.empty());
    assertThat(schedule.row("S1").kept().cubicFeet()).isEqualTo(4.254, offset(0.0005));
    assertThat(schedule.totals().left().cubicFeet())
        .isEqualTo(schedule.totals().loose().cubicFeet() - 4.254, offset(0.0005));
    assertThat(schedule.workings())
        .extracting(each -> each.formula().id())
        .contains("dig-schedule.kept-volume");
    assertThat(tubed(12, Optional.of(Side.GRANULAR_BACKFILL)).row("S1").kept().cubicFeet())
        .isZero();
    assertThat(tubed(18, Optional.empty()).row("S1").kept().cubicFeet()).isZero();
  }

  private static Tool auger(Tool.Kind kind, double inches, double reach) {
    return new Tool(kind, "auger", Optional.of(Length.ofInches(inches)), Length.ofInches(reach));
  }

  /**
   * In a hole of 18 in a bit may be 3 mm wider (18.11 in) and cuts it in full from 25 mm under it
   * (17.02 in) on; habits.
   */
  @ParameterizedTest
  @CsvSource({"18.1, BORE", "18.2, NONE", "17.1, BORE", "16.9, PILOT"})
  void whatABitDoesToAHole(double inches, String use) {
    DigJob job = new DigJob();
    job.tools.clear();
    job.tools.add(auger(Tool.Kind.POWER_AUGER, inches, 60));
    List<Use> uses = schedule(job).row("S1").tools().stream().map(step -> step.use()).toList();
    assertThat(uses).isEqualTo(use.equals("NONE") ? List.of() : List.of(Use.valueOf(use)));
  }

  /**
   * Opened by hand 6 in or 150 mm before any auger that comes first; a spade of two for wide holes.
   */
  @Test
  void anAugerIsStartedByHand() {
    DigJob job = new DigJob();
    job.tools.add(auger(Tool.Kind.POWER_AUGER, 18, 60));
    job.units = UnitSystem.METRIC;
    assertThat(schedule(job).row("S1").tools().get(0).use()).isEqualTo(Use.START);
    assertThat(schedule(job).row("S1").tools().get(0).to().millimetres())
        .isEqualTo(150, offset(1e-9));
    // Of two power augers the one that reaches farther.
    job.tools.add(auger(Tool.Kind.POWER_AUGER, 12, 30));
    assertThat(schedule(job).row("S1").tools()).hasSize(2);
    assertThat(schedule(job).row("S1").tools().get(1).to().inches()).isEqualTo(46, offset(1e-9));
  }

  /** A bar comes after everything and is no reach of its own; the longest of two is taken. */
  @Test
  void aBarReachesNothing() {
    DigJob job = new DigJob();
    job.digging = Digging.STONY;
    job.tools.removeIf(tool -> tool.kind() == Tool.Kind.HAND_AUGER);
    job.tools.add(
        new Tool(Tool.Kind.DIGGING_BAR, "long bar", Optional.empty(), Length.ofInches(72)));
    DigSchedule schedule = schedule(job);
    assertThat(schedule.row("S1").tools()).extracting(step -> step.use()).endsWith(Use.BAR);
    int last = schedule.row("S1").tools().size() - 1;
    assertThat(schedule.row("S1").tools().get(last).tool().name()).isEqualTo("long bar");
    assertThat(schedule.row("S1").tools().get(last).to().inches()).isEqualTo(46, offset(1e-9));
    assertThat(found(schedule)).containsExactly("tool-reach");
  }

  /** Two holes of two depths: the finding names the one that is short, and its depth. */
  @Test
  void onlyTheHoleThatIsTooDeepIsNamed() {
    DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(80)));
    Finding reach = schedule(job).findings().get(0);
    assertThat(reach.id()).isEqualTo("tool-reach");
    assertThat(reach.subjects()).containsExactly("P1");
    assertThat(schedule(job).row("P1").order()).isEqualTo(1);
  }
}
