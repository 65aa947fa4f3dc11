package pegbook.calc.siteplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.siteplan.SitePlan.Clearance;
import pegbook.calc.siteplan.SitePlan.Keeper;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.figures.Hole;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Gap;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.job.Widenings;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.Volume;
import pegbook.testing.Chance;
import pegbook.testing.LayoutJob;

class SitePlanCalculatorTest {
  private static final Length HOLE = new Length(0.4);

  /** A square of 4 m with its corners to the north-east and so on, supports at its corners. */
  private static LayoutJob square() {
    LayoutJob job = LayoutJob.of(new Outline.Rectangle(new Length(4), new Length(4), 2, 2));
    job.azimuth = Optional.of(Angle.ofDegrees(315));
    job.inset = Length.ZERO;
    job.hole = HOLE;
    return job;
  }

  private static List<Hole> holes(Placement placement) {
    return placement.marks().stream()
        .map(
            mark ->
                new Hole(
                    mark.id(),
                    mark.kind(),
                    mark.at(),
                    HOLE,
                    new Length(1),
                    Length.ZERO,
                    Length.ZERO,
                    Hole.DepthRule.FROST,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Widenings.NONE))
        .toList();
  }

  private static SitePlan plan(LayoutJob layout, SpoilHeap... heaps) {
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    return SitePlanCalculator.calculate(job, placement, holes(placement), List.of(heaps));
  }

  private static List<String> ids(SitePlan plan) {
    return plan.findings().stream().map(Finding::id).toList();
  }

  private static Finding finding(SitePlan plan, String id) {
    return plan.findings().stream().filter(some -> some.id().equals(id)).findFirst().orElseThrow();
  }

  private static Feature.Shape line(double east, double north, double toEast, double toNorth) {
    return new Feature.Shape.Line(new Segment(new Point(east, north), new Point(toEast, toNorth)));
  }

  private static Polygon lot(double west, double south, double east, double north) {
    return new Polygon(
        List.of(
            new Point(west, south),
            new Point(east, south),
            new Point(east, north),
            new Point(west, north)));
  }

  /** Two trees that make good ties, and lot lines far enough. */
  private static LayoutJob quiet() {
    LayoutJob job = square().spot("oak", -9, 1).spot("ash", 1, 8);
    job.boundary = Optional.of(lot(-20, -15, 20, 25));
    job.setback = Optional.of(new Length(5));
    return job;
  }

  @Test
  void nothingIsFoundWhereEverythingKeepsClear() {
    SitePlan plan = plan(quiet());
    assertThat(ids(plan)).isEmpty();
    assertThat(plan.clearances()).hasSize(7);
    Clearance south = plan.clearances().get(0);
    assertThat(south.keeper()).isEqualTo(Keeper.FLOOR);
    assertThat(south.distance().metres()).isCloseTo(13, within(1e-9));
    assertThat(south.towards()).isEqualTo(Compass.SOUTH);
    // The oak is 7.07 m from the north-west support; the hole's radius is 0.2 m.
    Clearance oak = plan.clearances().get(5);
    assertThat(oak.mark()).isEqualTo("S1");
    assertThat(oak.distance().metres()).isCloseTo(Math.sqrt(50) - 0.2, within(1e-9));
    assertThat(oak.towards()).isEqualTo(Compass.WEST);
    assertThat(oak.required()).isEmpty();
  }

  @Test
  void everyListedClearanceAndTieHasItsWorking() {
    SitePlan plan = plan(quiet());
    for (int i = 0; i < plan.clearances().size(); i++) {
      Working working = plan.workings().get(i);
      assertThat(working.subject()).isEqualTo("C" + (i + 1));
      assertThat(working.asLength().metres())
          .isCloseTo(plan.clearances().get(i).distance().metres(), within(1e-9));
    }
    assertThat(plan.workings()).hasSize(plan.clearances().size() + plan.ties().size());
  }

  @Test
  void aHoleInABuriedLinesZoneStops() {
    // The line runs 0.9 m east of the eastern supports; their edges are 0.7 m from it.
    LayoutJob job =
        quiet()
            .feature(
                "gas pipe",
                Feature.Kind.BURIED_LINE,
                line(2.9, -20, 2.9, 20),
                Optional.of(new Length(0.75)));
    Finding finding = finding(plan(job), "site-plan-buried-line");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    assertThat(finding.subjects()).containsExactly("S2", "S3");
    assertThat(finding.decides()).isEqualTo(Finding.Decider.UTILITY_SERVICE);
    LayoutJob enough =
        quiet()
            .feature(
                "gas pipe",
                Feature.Kind.BURIED_LINE,
                line(2.9, -20, 2.9, 20),
                Optional.of(new Length(0.7)));
    assertThat(ids(plan(enough))).as("exactly as much as asked is kept").isEmpty();
  }

  @Test
  void aBuriedLineWithoutADistanceIsAsked() {
    LayoutJob beside =
        quiet().feature("cable", Feature.Kind.BURIED_LINE, line(9, -20, 9, 20), Optional.empty());
    assertThat(ids(plan(beside))).containsExactly("site-plan-buried-unknown");
    LayoutJob under =
        quiet()
            .feature("cable", Feature.Kind.BURIED_LINE, line(2.1, -20, 2.1, 20), Optional.empty());
    assertThat(finding(plan(under), "site-plan-buried-under").kind()).isEqualTo(Kind.STOP);
  }

  @Test
  void wiresOverTheWorkStop() {
    LayoutJob over =
        quiet().feature("wire", Feature.Kind.OVERHEAD_WIRE, line(-9, 0, 9, 1), Optional.empty());
    Finding finding = finding(plan(over), "site-plan-wire-over");
    assertThat(finding.kind()).isEqualTo(Kind.STOP);
    LayoutJob near =
        quiet()
            .feature(
                "wire",
                Feature.Kind.OVERHEAD_WIRE,
                line(-9, 5, 9, 5),
                Optional.of(new Length(3.1)));
    assertThat(finding(plan(near), "site-plan-wire-near").kind()).isEqualTo(Kind.STOP);
    LayoutJob far =
        quiet().feature("wire", Feature.Kind.OVERHEAD_WIRE, line(-9, 9, 9, 9), Optional.empty());
    assertThat(finding(plan(far), "site-plan-wire-unknown").kind()).isEqualTo(Kind.ASK);
    LayoutJob within =
        quiet().feature("wire", Feature.Kind.OVERHEAD_WIRE, line(-1, 0, 1, 0), Optional.empty());
    assertThat(ids(plan(within))).contains("site-plan-wire-over");
  }

  @Test
  void objectsKeepTheirDistanceFromHolesAndHeaps() {
    LayoutJob job =
        quiet()
            .feature(
                "well",
                Feature.Kind.OBJECT,
                new Feature.Shape.Spot(new Point(2, 4)),
                Optional.of(new Length(2)));
    SpoilHeap heap =
        new SpoilHeap(
            List.of("S1"), new Point(0, 4), new Length(0.6), new Length(0.4), new Volume(0.2));
    SitePlan plan = plan(job, heap);
    assertThat(finding(plan, "site-plan-keep-clear").subjects()).containsExactly("S2");
    assertThat(finding(plan, "site-plan-heap-keep-clear").subjects()).containsExactly("S1");
    LayoutJob inside =
        quiet()
            .feature(
                "shed",
                Feature.Kind.OBJECT,
                new Feature.Shape.Block(lot(1, 1, 6, 6)),
                Optional.empty());
    Finding finding = finding(plan(inside), "site-plan-hole-on-object");
    assertThat(finding.subjects()).containsExactly("S2");
  }

  @Test
  void lotLinesAndSetbackAreHeld() {
    LayoutJob close = quiet();
    close.boundary = Optional.of(lot(-6, -15, 20, 25));
    Finding setback = finding(plan(close), "site-plan-setback");
    assertThat(setback.kind()).isEqualTo(Kind.ASK);
    // The hole's edge reaches 0.2 m further west than the floor's edge.
    assertThat(setback.arguments().get("distance"))
        .isInstanceOfSatisfying(
            Argument.Measured.class,
            measured -> assertThat(measured.quantity().si()).isCloseTo(3.8, within(1e-9)));
    LayoutJob over = quiet();
    over.boundary = Optional.of(lot(-1.5, -15, 20, 25));
    assertThat(finding(plan(over), "site-plan-over-boundary").kind()).isEqualTo(Kind.STOP);
    LayoutJob unknown = quiet();
    unknown.setback = Optional.empty();
    assertThat(ids(plan(unknown))).containsExactly("site-plan-no-setback");
    LayoutJob none = quiet();
    none.boundary = Optional.empty();
    assertThat(ids(plan(none))).containsExactly("site-plan-no-boundary");
  }

  @Test
  void aBenchmarkInTheWayIsFound() {
    LayoutJob job = quiet();
    job.benchmark = Optional.of(new Benchmark(new Point(2.1, 2.1), "nail"));
    assertThat(ids(plan(job))).containsExactly("site-plan-benchmark");
    job.benchmark = Optional.of(new Benchmark(new Point(6, 2.1), "nail"));
    assertThat(ids(plan(job))).isEmpty();
  }

  @Test
  void tiesRunFromTwoFixedThingsToTwoMarksFarApart() {
    List<Tie> ties = plan(quiet()).ties();
    assertThat(ties).extracting(Tie::mark).containsExactly("S1", "S3", "S1", "S3");
    assertThat(ties.get(0).fixed()).isEqualTo(new SitePlan.Fixed.Thing("oak"));
    assertThat(ties.get(0).tape().millimetres()).isCloseTo(7071, within(1e-6));
    assertThat(ties.get(0).towards()).isEqualTo(Compass.EAST);
    assertThat(ties.get(2).fixed()).isEqualTo(new SitePlan.Fixed.Thing("ash"));
  }

  @Test
  void withoutThingsTheLotsCornersServeAndWithoutTheseNothing() {
    LayoutJob lotOnly = square();
    lotOnly.boundary = Optional.of(lot(-12, -10, 12, 14));
    lotOnly.setback = Optional.of(new Length(5));
    assertThat(plan(lotOnly).ties())
        .allSatisfy(tie -> assertThat(tie.fixed()).isInstanceOf(SitePlan.Fixed.LotCorner.class));
    assertThat(ids(plan(square()))).contains("site-plan-no-ties");
    LayoutJob oneSide = square().spot("oak", -9, 0).spot("ash", -9, 1);
    assertThat(ids(plan(oneSide))).contains("site-plan-weak-ties");
    LayoutJob sameRock = square().spot("boulder", -9, 1);
    sameRock.benchmark = Optional.of(new Benchmark(new Point(-9, 1), "bolt in the boulder"));
    assertThat(ids(plan(sameRock))).contains("site-plan-no-ties");
    LayoutJob far = square().spot("oak", -90, 1).spot("ash", 1, 80);
    assertThat(ids(plan(far))).contains("site-plan-ties-reach");
  }

  /** The readings see any shift or turn of the whole figure by more than they can hide. */
  @Property(tries = 200, seed = Chance.SEED)
  void tiesSeeAShiftOrATurn(
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double east,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double north,
      @ForAll @DoubleRange(min = -8, max = 8) double degrees) {
    double moved = Math.hypot(east, north) + Math.abs(Math.toRadians(degrees)) * 2.8;
    double seen = 0;
    for (Tie tie : plan(quiet()).ties()) {
      Point at = tie.to().turned(Angle.ofDegrees(degrees)).plus(east, north);
      seen = Math.max(seen, Math.abs(at.distanceTo(tie.from()).minus(tie.tape()).metres()));
    }
    if (moved > 0.05) {
      assertThat(seen).isGreaterThan(moved / 12);
    }
  }

  @Test
  void sizesOfEveryOutline() {
    Length six = new Length(6);
    Length four = new Length(4);
    assertThat(sizes(new Outline.Rectangle(six, four, 3, 2))).containsExactly(6000L, 4000L);
    assertThat(sizes(new Outline.ChamferedRectangle(six, four, new Length(1))))
        .containsExactly(6000L, 4000L, 4000L, 1414L, 2000L);
    assertThat(sizes(new Outline.Regular(6, four))).containsExactly(2000L, 4000L, 3464L);
    assertThat(sizes(new Outline.Regular(3, four))).containsExactly(3464L, 3000L);
    assertThat(sizes(new Outline.Circle(six, 9))).containsExactly(6000L);
    List<Point> corner =
        List.of(new Point(0, 0), new Point(0, 6), new Point(5, 6), new Point(5, 0));
    assertThat(sizes(new Outline.Free(corner, Optional.empty())))
        .containsExactly(6000L, 5000L, 6000L, 5000L);
    List<Point> many = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      many.add(Point.ORIGIN.moved(Angle.ofDegrees(22.5 * i), six));
    }
    assertThat(sizes(new Outline.Free(many, Optional.empty()))).containsExactly(12000L, 12000L);
  }

  private static List<Long> sizes(Outline outline) {
    LayoutJob job = LayoutJob.of(outline);
    job.azimuth = outline instanceof Outline.Free ? Optional.empty() : job.azimuth;
    return plan(job).sizes().stream().map(size -> Math.round(size.length().millimetres())).toList();
  }

  @Property(tries = 300, seed = Chance.SEED)
  void gapsAgreeWithTheLibrary(
      @ForAll @DoubleRange(min = -9, max = 9) double east,
      @ForAll @DoubleRange(min = -9, max = 9) double north,
      @ForAll @DoubleRange(min = -9, max = 9) double toEast,
      @ForAll @DoubleRange(min = -9, max = 9) double toNorth) {
    if (Math.hypot(toEast - east, toNorth - north) < 0.01) {
      return;
    }
    Segment line = new Segment(new Point(east, north), new Point(toEast, toNorth));
    Polygon square = lot(-2, -2, 2, 2);
    GeometryFactory factory = new GeometryFactory();
    Geometry edge =
        factory.createLineString(
            new Coordinate[] {
              new Coordinate(-2, -2),
              new Coordinate(2, -2),
              new Coordinate(2, 2),
              new Coordinate(-2, 2),
              new Coordinate(-2, -2)
            });
    Geometry other =
        factory.createLineString(
            new Coordinate[] {new Coordinate(east, north), new Coordinate(toEast, toNorth)});
    assertThat(Gap.between(square.sides(), List.of(line)).length().metres())
        .isCloseTo(edge.distance(other), within(1e-9));
  }

  @Test
  void tiesCrossAtBothMarks() {
    List<Tie> ties = plan(quiet()).ties();
    for (int i = 0; i < 2; i++) {
      Angle crossing = Swing.angleAt(ties.get(i).to(), ties.get(i).from(), ties.get(i + 2).from());
      assertThat(crossing.degrees()).isBetween(30.0, 150.0);
    }
  }
}
