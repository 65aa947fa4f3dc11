package pegbook.calc.digschedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static pegbook.calc.digschedule.DigScheduleCalculatorTest.holes;
import static pegbook.calc.digschedule.DigScheduleCalculatorTest.schedule;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Spoil;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.published.Citation;
import pegbook.testing.Chance;
import pegbook.testing.DigJob;

class SpoilHeapsTest {
  private static final Length EDGE = Length.ofFeet(2);

  private static double gapMetres(SpoilHeap heap, Hole hole) {
    return heap.centre().distanceTo(hole.centre()).metres()
        - heap.radius().metres()
        - hole.diameter().metres() / 2;
  }

  private static Polygon square(double half) {
    return new Polygon(
        List.of(
            new Point(-half, half),
            new Point(half, half),
            new Point(half, -half),
            new Point(-half, -half)));
  }

  /**
   * Construction Methods and Management gives the cone's foot as (7.64 V / tan R)^(1/3) across,
   * from memory: with V in ft³ the diameter is in ft.
   */
  @Test
  void theConeIsThatOfTheTextbook() {
    double volume = 7.5;
    double degrees = 32;
    double across = Math.cbrt(7.64 * volume / Math.tan(Math.toRadians(degrees)));
    Working radius =
        new Working(
            DigScheduleFormulas.in(UnitSystem.IMPERIAL).heapRadius(Citation.COMMON_PRACTICE),
            "",
            List.of(volume, degrees, 0.001));
    assertThat(radius.result() * 2 / 12).isEqualTo(across, offset(across * 0.005 / 7.64));
  }

  @Test
  void theConeHoldsAtLeastItsVolume() {
    for (SpoilHeap heap : schedule(new DigJob()).heaps()) {
      double cone =
          Math.PI * heap.radius().metres() * heap.radius().metres() * heap.height().metres() / 3;
      assertThat(cone).isBetween(heap.loose().cubicMetres(), heap.loose().cubicMetres() * 1.2);
    }
  }

  @Property(tries = 60, seed = Chance.SEED)
  void heapsKeepFromHolesFromEachOtherAndOnTheLot(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll @DoubleRange(min = 10, max = 40) double acrossFeet,
      @ForAll @DoubleRange(min = 3, max = 12) double lotMetres) {
    DigJob job = new DigJob().pier("P1", Point.ORIGIN, Optional.of(Length.ofInches(50)));
    job.sides = sides;
    job.acrossCorners = Length.ofFeet(acrossFeet);
    job.boundary = Optional.of(square(lotMetres));
    DigSchedule schedule = schedule(job);
    List<Hole> holes = holes(job);
    List<SpoilHeap> heaps = schedule.heaps();
    for (SpoilHeap heap : heaps) {
      assertThat(holes).allMatch(hole -> gapMetres(heap, hole) >= EDGE.metres() - 1e-6);
      assertThat(job.boundary.orElseThrow().contains(heap.centre())).isTrue();
      assertThat(job.boundary.orElseThrow().distanceToEdge(heap.centre()).metres())
          .isGreaterThanOrEqualTo(heap.radius().metres() - 1e-6);
      assertThat(heaps)
          .allMatch(
              other ->
                  other.equals(heap)
                      || other.centre().distanceTo(heap.centre()).metres()
                          >= other.radius().metres() + heap.radius().metres() - 1e-6);
    }
    int carriedAway =
        schedule.findings().stream()
            .filter(finding -> finding.id().equals("carry-away"))
            .mapToInt(finding -> finding.subjects().size())
            .sum();
    assertThat(heaps.size() + carriedAway).isEqualTo(holes.size());
  }

  @Test
  void heapsKeepTheirDistanceFromFeatures() {
    DigJob job = new DigJob();
    double north = job.placement().mark("S1").at().north() + 2.2;
    Segment pipe = new Segment(new Point(-9, north), new Point(9, north));
    job.features.add(
        new Feature(
            "pipe",
            Feature.Kind.BURIED_LINE,
            new Feature.Shape.Line(pipe),
            Optional.of(new Length(0.6))));
    for (SpoilHeap heap : schedule(job).heaps()) {
      assertThat(pipe.distanceTo(heap.centre()).metres())
          .isGreaterThanOrEqualTo(heap.radius().metres() + 0.6 - 1e-6);
    }
  }

  @Test
  void aHeapIsFoundAgainByDistanceAndDirection() {
    DigJob job = new DigJob();
    for (HeapSpot spot : schedule(job).heapSpots()) {
      Point mark = job.placement().mark(spot.from()).at();
      Point again = mark.moved(spot.direction(), spot.distance());
      assertThat(again.distanceTo(spot.heap().centre()).metres()).isLessThan(1e-9);
      assertThat(spot.distance().inches())
          .isEqualTo(Math.rint(spot.distance().inches()), offset(1e-6));
    }
  }

  @Test
  void whereNothingFitsTheSoilIsCarriedAway() {
    DigJob job = new DigJob();
    job.acrossCorners = Length.ofFeet(8);
    job.boundary = Optional.of(square(2.0));
    DigSchedule schedule = schedule(job);
    assertThat(schedule.heaps()).isEmpty();
    assertThat(schedule.findings()).extracting(Finding::id).containsExactly("carry-away");
  }

  @Test
  void withATipEveryHoleHasATarpAndTheTipHoldsAll() {
    DigJob job = new DigJob();
    job.spoil = new Spoil(Volume.ofCubicFeet(4), Optional.empty(), Optional.of(new Point(12, 0)));
    DigSchedule schedule = schedule(job);
    assertThat(schedule.findings()).isEmpty();
    assertThat(schedule.heapSpots()).hasSize(7);
    HeapSpot tip = schedule.heapSpots().get(6);
    assertThat(tip.kind()).isEqualTo(HeapSpot.Kind.TIP);
    assertThat(tip.heap().holes()).hasSize(6);
    assertThat(tip.heap().loose().cubicFeet())
        .isEqualTo(schedule.totals().loose().cubicFeet(), offset(1e-9));
    assertThat(schedule.heaps().get(0).loose().cubicFeet()).isEqualTo(4, offset(1e-9));
  }

  @Test
  void aTipOnTheMarksIsFound() {
    DigJob job = new DigJob();
    Point onTop = job.placement().mark("S2").at();
    job.spoil = new Spoil(Volume.ofCubicFeet(4), Optional.empty(), Optional.of(onTop));
    Finding finding = schedule(job).findings().get(0);
    assertThat(finding.id()).isEqualTo("tip-in-the-way");
    assertThat(finding.subjects()).contains("S2");
  }
}
