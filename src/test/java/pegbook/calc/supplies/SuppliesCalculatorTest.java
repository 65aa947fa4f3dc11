package pegbook.calc.supplies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferParameters;
import pegbook.figures.Argument;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.geometry.Hull;
import pegbook.geometry.Point;
import pegbook.job.Anchors;
import pegbook.job.Pier;
import pegbook.job.Sleeve;
import pegbook.job.Tube;
import pegbook.measure.Angle;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.Chance;
import pegbook.testing.FillJob;

class SuppliesCalculatorTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Supplies of(FillJob job, List<List<String>> open) {
    return SuppliesCalculator.calculate(job.job(), job.holes, open);
  }

  /** All holes stand open on one day. */
  private static Supplies of(FillJob job) {
    return of(job, List.of(job.holes.stream().map(Hole::mark).toList()));
  }

  private static double order(Supplies supplies, String id) {
    return supplies.needs().stream()
        .filter(need -> need.id().equals(id))
        .mapToDouble(Need::order)
        .sum();
  }

  private static Need need(Supplies supplies, String id) {
    return supplies.needs().stream().filter(need -> need.id().equals(id)).findFirst().orElseThrow();
  }

  private static FillJob six() {
    FillJob job = new FillJob();
    for (int i = 1; i <= 6; i++) {
      job.with(job.tube(job.hole("S" + i, 18, 48, 4, 6), 14, Tube.From.GROUND));
    }
    return job;
  }

  /** By hand: 2 · 6 · (π · 1.5 + 2) ft are 80.5 ft; a can draws 150. Forty marks take four. */
  @ParameterizedTest
  @CsvSource({"6, 1", "22, 2", "40, 4"})
  void cansOfPaint(int marks, int cans) {
    FillJob job = new FillJob();
    for (int i = 1; i <= marks; i++) {
      job.with(job.hole("S" + i, 18, 48, 4, 0));
    }
    assertThat(order(of(job), "marking-paint")).isEqualTo(cans);
  }

  /** A sheet of 48 by 96 in: three squares of 30 in, two of 42, one of 50 in two crossed layers. */
  @ParameterizedTest
  @CsvSource({"18, 1, 1", "18, 3, 1", "18, 4, 2", "30, 2, 1", "30, 3, 2", "38, 1, 4", "90, 1, 12"})
  void coversAreCutFromSheets(double hole, int covers, int sheets) {
    FillJob job = new FillJob();
    for (int i = 1; i <= covers; i++) {
      job.with(job.hole("S" + i, hole, 48, 4, 0));
    }
    Supplies supplies = of(job);
    assertThat(order(supplies, "hole-covers") + order(supplies, "hole-covers-wide"))
        .isEqualTo(sheets);
    assertThat(order(supplies, "ground-stakes")).isEqualTo(4.0 * covers);
  }

  @Test
  void coversServeTheFullestDay() {
    FillJob job = six();
    Supplies lots = of(job, List.of(List.of("S1", "S2"), List.of("S3"), List.of("S4", "S5", "S6")));
    assertThat(need(lots, "hole-covers").arguments()).containsEntry("covers", Argument.of(3));
    assertThat(order(of(job, List.of()), "hole-covers")).isZero();
    assertThat(order(of(job, List.of()), "barrier-fence")).isZero();
  }

  /** One hole of 18 in: a ring of 3.75 ft radius, 23.56 ft, three posts. */
  @Test
  void aRingRoundOneHole() {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, 0));
    Supplies supplies = of(job);
    assertThat(need(supplies, "barrier-fence").amount())
        .isEqualTo(2 * Math.PI * 3.75, offset(1e-9));
    assertThat(order(supplies, "barrier-fence")).isEqualTo(24);
    assertThat(order(supplies, "fence-posts")).isEqualTo(3);
  }

  /** Against the geometry library: the edge of the tight string widened all round. */
  @Property(tries = 100, seed = Chance.SEED)
  void theFenceIsTheHullWidened(
      @ForAll @IntRange(min = 1, max = 12) int holes,
      @ForAll @DoubleRange(min = 0.5, max = 4) double apart,
      @ForAll @IntRange(min = 0, max = 1000) int seed) {
    Random random = new Random(seed);
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      places.add(
          new Point(apart * holes * random.nextDouble(), apart * holes * random.nextDouble()));
    }
    double radius = 0.25 + 1;
    double widened =
        FACTORY
            .createMultiPointFromCoords(
                places.stream()
                    .map(place -> new Coordinate(place.east(), place.north()))
                    .toArray(Coordinate[]::new))
            .convexHull()
            .buffer(radius, 500, BufferParameters.CAP_ROUND)
            .getLength();
    double rings = holes * 2 * Math.PI * radius;
    Working fence =
        Working.of(
            new SuppliesFormulas(UnitSystem.METRIC).fence(),
            "",
            Hull.round(places),
            new Count(holes),
            Length.ofMillimetres(500));
    assertThat(fence.result()).isEqualTo(Math.min(widened, rings), offset(1e-4 * rings));
  }

  /** A string there and back over two holes; one that goes nowhere over one. */
  @Test
  void theStringRoundFewPlaces() {
    Point one = new Point(0, 0);
    Point other = new Point(3, 4);
    assertThat(Hull.round(List.of(one)).metres()).isZero();
    assertThat(Hull.round(List.of(one, other)).metres()).isEqualTo(10, offset(1e-12));
    assertThat(Hull.round(List.of(one, other, new Point(1.5, 2))).metres())
        .isEqualTo(10, offset(1e-12));
    assertThat(Hull.round(List.of(one, new Point(3, 0), other, new Point(0, 4))).metres())
        .isEqualTo(14, offset(1e-12));
  }

  /**
   * Twelve pieces of 42 in, two from 8 ft; a brace of 36 in stands √2 · 24 + 12 = 45.9 in, set up.
   */
  @Test
  void tubesHangAndTallOnesAreBraced() {
    FillJob job = six();
    job.with(job.tube(job.hole("P1", 22, 58, 0, 36), 16, Tube.From.GROUND));
    Supplies supplies = of(job);
    assertThat(order(supplies, "form-hangers")).isEqualTo(6 + 1);
    assertThat(order(supplies, "form-braces")).isEqualTo(1);
    assertThat(order(supplies, "form-boards")).isZero();
    assertThat(order(supplies, "form-screws")).isEqualTo(4.0 * (12 + 2 + 2));
    assertThat(order(supplies, "ground-stakes")).isEqualTo(4.0 * 7 + 2);
    Working brace =
        supplies.workings().stream()
            .filter(working -> working.formula().id().equals("supplies.brace"))
            .findFirst()
            .orElseThrow();
    assertThat(brace.result()).isEqualTo(46);
  }

  @Test
  void aTubeFromTheBottomStandsInItsSoil() {
    FillJob job = new FillJob();
    job.with(job.tube(job.hole("S1", 18, 48, 4, 6), 14, Tube.From.BOTTOM));
    Supplies supplies = of(job);
    assertThat(supplies.needs()).extracting(Need::id).noneMatch(id -> id.startsWith("form-"));
  }

  /** Boards of 5 1/2 in: one row up to that, two above; each 21 in long, four from 8 ft. */
  @ParameterizedTest
  @CsvSource({"5, 4, 1", "5.5, 4, 1", "6, 8, 2", "12, 12, 3"})
  void concreteWithoutATubeStandsInABox(double top, int pieces, int boards) {
    FillJob job = new FillJob();
    job.with(job.hole("S1", 18, 48, 4, top));
    Supplies supplies = of(job);
    assertThat(need(supplies, "form-boards").arguments())
        .containsEntry("pieces", Argument.of(pieces))
        .containsEntry("length", Argument.of(Length.ofInches(21)));
    assertThat(order(supplies, "form-boards")).isEqualTo(boards);
  }

  /** One top of 14 in: 3 ft 2 in square, 10.03 ft2; six of them 60.2. */
  @Test
  void everyTopIsCovered() {
    assertThat(need(of(six()), "curing-sheet").amount())
        .isEqualTo(6 * (14 / 12.0 + 2) * (14 / 12.0 + 2), offset(1e-9));
    assertThat(order(of(six()), "curing-sheet")).isEqualTo(61);
  }

  /** In the north January is cold, in the south it is not; an unknown place asks for nothing. */
  @ParameterizedTest
  @CsvSource({"45, 2027-01-10, 6", "-43, 2027-01-10, 0", "45, 2027-06-10, 0", ", 2027-01-10, 0"})
  void blanketsOnlyInTheCold(Double latitude, LocalDate start, int blankets) {
    FillJob job = six();
    job.dig.latitude = Optional.ofNullable(latitude).map(Angle::ofDegrees);
    job.start = Optional.of(start);
    assertThat(order(of(job), "curing-blankets")).isEqualTo(blankets);
  }

  @Test
  void boltsAndSleevesOfPiers() {
    FillJob job = new FillJob();
    Anchors anchors =
        new Anchors(
            3,
            Length.ofInches(0.5),
            Length.ofInches(5.5),
            Length.ofInches(3),
            Length.ofInches(8),
            Angle.ZERO);
    Sleeve sleeve =
        new Sleeve(Length.ofInches(2), Length.ZERO, Angle.ofDegrees(120), Length.ofInches(18));
    job.dig.piers.addAll(
        List.of(pier("P1", anchors, Optional.of(sleeve)), pier("P2", anchors, Optional.empty())));
    job.with(job.tube(job.hole("P1", 22, 58, 0, 36), 16, Tube.From.GROUND));
    job.with(job.tube(job.hole("P2", 22, 58, 0, 36), 16, Tube.From.GROUND));
    Supplies supplies = of(job);
    assertThat(order(supplies, "anchor-bolts")).isEqualTo(6);
    assertThat(order(supplies, "bolt-caps")).isEqualTo(6);
    assertThat(order(supplies, "template-board")).isEqualTo(2);
    assertThat(need(supplies, "anchor-bolts").arguments())
        .containsEntry("length", Argument.of(Length.ofInches(11)));
    assertThat(order(supplies, "cable-sleeve")).isEqualTo(1);
    Argument length = need(supplies, "cable-sleeve").arguments().get("length");
    assertThat(((Length) ((Argument.Measured) length).quantity()).inches())
        .as("36 up, 18 down, 11 out of a hole of 22, 6 over at both ends")
        .isEqualTo(77, offset(1e-9));
  }

  private static Pier pier(String id, Anchors anchors, Optional<Sleeve> sleeve) {
    return FillJob.fitted(id, Optional.of(anchors), sleeve);
  }

  /** Orders are whole, never less than what is needed, never a whole piece more. */
  @Property(tries = 60, seed = Chance.SEED)
  void ordersAreSetUp(
      @ForAll @IntRange(min = 1, max = 40) int holes,
      @ForAll @DoubleRange(min = 10, max = 60) double hole,
      @ForAll @DoubleRange(min = 0, max = 40) double top) {
    Stream.of(true, false)
        .map(imperial -> imperial ? new FillJob() : new FillJob().metric())
        .forEach(
            job -> {
              double scale = job.dig.units == UnitSystem.METRIC ? 25 : 1;
              for (int i = 1; i <= holes; i++) {
                job.with(job.hole("S" + i, hole * scale, 48 * scale, 0, top * scale));
              }
              assertThat(of(job).needs())
                  .allSatisfy(
                      need -> {
                        assertThat(need.order()).isEqualTo(Math.rint(need.order()));
                        assertThat(need.order() - need.amount()).isBetween(-1e-5, 1.0);
                      });
            });
  }
}
