package pegbook.calc.safepegs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.figures.Placement;
import pegbook.figures.SpoilHeap;
import pegbook.figures.TapeAccuracy;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.job.Outline;
import pegbook.job.Widenings;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;
import pegbook.testing.LayoutJob;

/** What blocks a tape, where a peg may stand, and which strings cross, in metres by hand. */
class PegsByHandTest {
  private static PegRules rules(UnitSystem units) {
    LayoutJob layout = new LayoutJob();
    layout.units = units;
    return PegRules.of(layout.job());
  }

  private static final PegRules RULES = rules(UnitSystem.METRIC);

  /** Common practice in round figures of each system. */
  @Test
  void distancesAreRoundInBothSystems() {
    PegRules feet = rules(UnitSystem.IMPERIAL);
    assertThat(feet.hole().inches()).isCloseTo(24, within(1e-9));
    assertThat(feet.path().inches()).isCloseTo(30, within(1e-9));
    assertThat(feet.step().inches()).isCloseTo(6, within(1e-9));
    assertThat(feet.beyond().feet()).isCloseTo(20, within(1e-9));
    PegRules metres = rules(UnitSystem.METRIC);
    assertThat(metres.hole().millimetres()).isCloseTo(600, within(1e-9));
    assertThat(metres.path().millimetres()).isCloseTo(750, within(1e-9));
    assertThat(metres.step().millimetres()).isCloseTo(100, within(1e-9));
    assertThat(metres.beyond().metres()).isCloseTo(6, within(1e-9));
  }

  /** A stretch from (1, 1) to (4, 5), 5 m long, half a metre to both sides. */
  @Test
  void aStripReachesSoFarFromItsStretch() {
    Strip strip = Strip.along(new Segment(new Point(1, 1), new Point(4, 5)), 0.5);
    // The middle is (2.5, 3); (0.8, −0.6) is square to it.
    assertThat(strip.covers(new Point(2.5 + 0.8 * 0.49, 3 - 0.6 * 0.49))).isTrue();
    assertThat(strip.covers(new Point(2.5 + 0.8 * 0.51, 3 - 0.6 * 0.51))).isFalse();
    assertThat(strip.covers(new Point(2.5 - 0.8 * 0.49, 3 + 0.6 * 0.49))).isTrue();
    // Past its ends it is round.
    assertThat(strip.covers(new Point(4 + 0.6 * 0.49, 5 + 0.8 * 0.49))).isTrue();
    assertThat(strip.covers(new Point(4 + 0.6 * 0.51, 5 + 0.8 * 0.51))).isFalse();
    assertThat(strip.covers(new Point(1 - 0.6 * 0.51, 1 - 0.8 * 0.51))).isFalse();
    assertThat(strip.isNearer(new Point(2.5 + 0.8, 3 - 0.6), 1.01)).isTrue();
    assertThat(strip.isNearer(new Point(2.5 + 0.8, 3 - 0.6), 0.99)).isFalse();
    Strip round = Strip.round(new Point(-2, 3), 1);
    assertThat(round.covers(new Point(-2.99, 3))).isTrue();
    assertThat(round.covers(new Point(-2, 4.01))).isFalse();
  }

  /** The same through squares of a metre, across several of them and below zero. */
  @Test
  void takenGroundIsFoundInEverySquare() {
    TakenGround ground = new TakenGround();
    assertThat(ground.covers(Point.ORIGIN)).isFalse();
    ground.take(Strip.along(new Segment(new Point(3.5, -2.5), new Point(-3.5, 2.5)), 0.3));
    for (double part = 0; part <= 1; part += 0.05) {
      double east = 3.5 - 7 * part;
      double north = -2.5 + 5 * part;
      assertThat(ground.covers(new Point(east, north))).as("at " + part).isTrue();
      // 0.35 m beside it: (5, 7) / 8.602 is square to it.
      assertThat(ground.covers(new Point(east + 0.2034, north + 0.2848))).isFalse();
    }
    ground.take(Strip.round(new Point(10.05, 10.05), 0.2));
    assertThat(ground.covers(new Point(9.9, 9.95))).isTrue();
    assertThat(ground.covers(new Point(9.9, 10.2))).isFalse();
  }

  private static SpoilHeap heap(double east, double north, double height) {
    return new SpoilHeap(
        List.of("S1"), new Point(east, north), new Length(1), new Length(height), new Volume(0.2));
  }

  private static boolean isBlocked(
      List<Feature> features, List<SpoilHeap> heaps, double north, double height) {
    return new Sight(features, heaps, RULES)
        .blocked(new Point(0, north), new Point(10, north), new Length(height))
        .isPresent();
  }

  /**
   * A cone of 1 m radius, 0.5 m high: at 0.3 m over the ground it reaches 0.4 m from its middle, at
   * 0.5 m nowhere.
   */
  @Test
  void aHeapBlocksWhatIsLowerThanIt() {
    List<SpoilHeap> heaps = List.of(heap(5, 0, 0.5));
    assertThat(isBlocked(List.of(), heaps, 0.39, 0.3)).isTrue();
    assertThat(isBlocked(List.of(), heaps, 0.41, 0.3)).isFalse();
    assertThat(isBlocked(List.of(), heaps, 0, 0.5)).isFalse();
    assertThat(isBlocked(List.of(), heaps, 0, 0.49)).isTrue();
    Obstacle obstacle =
        new Sight(List.of(), heaps, RULES)
            .blocked(new Point(0, 0), new Point(10, 0), new Length(0.3))
            .orElseThrow();
    assertThat(obstacle.heap()).isTrue();
    assertThat(obstacle.names()).containsExactly("S1");
  }

  private static Feature feature(String name, Feature.Kind kind, Feature.Shape shape) {
    return new Feature(name, kind, shape, Optional.empty());
  }

  /** A tape passes 150 mm beside a tree, a hedge or a wall; over a line in the ground anyhow. */
  @Test
  void thingsBlockWhatPassesTooNear() {
    Feature tree = feature("tree", Feature.Kind.OBJECT, new Feature.Shape.Spot(new Point(5, 0)));
    Feature.Shape.Line across =
        new Feature.Shape.Line(new Segment(new Point(5, -3), new Point(5, 0)));
    Feature hedge = feature("hedge", Feature.Kind.OBJECT, across);
    Feature gas = feature("gas", Feature.Kind.BURIED_LINE, across);
    Feature shed =
        feature(
            "shed",
            Feature.Kind.OBJECT,
            new Feature.Shape.Block(
                new Polygon(
                    List.of(
                        new Point(4, 0), new Point(6, 0), new Point(6, -3), new Point(4, -3)))));
    for (Feature feature : List.of(tree, hedge, shed)) {
      assertThat(isBlocked(List.of(feature), List.of(), 0.14, 1)).as(feature.name()).isTrue();
      assertThat(isBlocked(List.of(feature), List.of(), 0.16, 1)).as(feature.name()).isFalse();
    }
    assertThat(isBlocked(List.of(gas), List.of(), -1, 1)).isFalse();
    // From within the shed.
    assertThat(
            new Sight(List.of(shed), List.of(), RULES)
                .blockedByFeature(new Point(5, -1.5), new Point(5.1, -1.5))
                .orElseThrow()
                .names())
        .containsExactly("shed");
  }

  private static Hole hole(String mark, double east, double north) {
    return new Hole(
        mark,
        MarkKind.SUPPORT,
        new Point(east, north),
        new Length(0.4),
        new Length(1),
        Length.ZERO,
        Length.ZERO,
        Hole.DepthRule.JOB,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Widenings.NONE);
  }

  /** A cart goes from each hole to the heaps that take its soil, and to no others. */
  @Test
  void cartsGoFromAHoleToItsOwnHeaps() {
    List<CartPath> paths =
        CartPath.of(
            List.of(hole("S1", 0, 0), hole("S2", 5, 0)),
            List.of(heap(3, 0, 0.5), heap(0, 0, 0.5)),
            new Length(0.75));
    assertThat(paths).hasSize(1);
    assertThat(paths.get(0).hole()).isEqualTo("S1");
    assertThat(paths.get(0).along().length().metres()).isCloseTo(3, within(1e-12));
    assertThat(paths.get(0).width().metres()).isEqualTo(0.75);
  }

  private static final List<Point> CROSS =
      List.of(new Point(0, 0), new Point(2, 0), new Point(4, 0), new Point(2, 3), new Point(2, -2));

  /** Five marks of a cross: two rows of three, four lines over two. */
  @Test
  void linesOverMarks() {
    List<MarkLine> lines = MarkLine.shared(CROSS, new Length(0.001));
    assertThat(lines)
        .extracting(line -> line.marks().stream().sorted().toList())
        .containsExactly(
            List.of(0, 1, 2),
            List.of(0, 3),
            List.of(0, 4),
            List.of(1, 3, 4),
            List.of(2, 3),
            List.of(2, 4));
    MarkLine row = lines.get(0);
    assertThat(row.marks()).containsExactly(0, 1, 2);
    assertThat(row.isShared()).isTrue();
    assertThat(row.end(false)).isZero();
    assertThat(row.end(true)).isEqualTo(2);
    assertThat(row.alongMetres(new Point(3, 1))).isCloseTo(3, within(1e-12));
    assertThat(row.past(true, CROSS, 1.5).east()).isCloseTo(5.5, within(1e-12));
    assertThat(row.past(false, CROSS, 1.5).east()).isCloseTo(-1.5, within(1e-12));
    assertThat(row.sineTo(lines.get(3))).isCloseTo(1, within(1e-12));
    // From (0, 0) to (2, 3): 3 / √13 to the row.
    assertThat(row.sineTo(lines.get(1))).isCloseTo(0.83205, within(1e-5));
    assertThat(row.sineTo(row)).isZero();
  }

  /** Through one mark alone twelve directions, 15° apart, the first along the figure's axis. */
  @Test
  void linesOverAMarkAlone() {
    Segment north = new Segment(Point.ORIGIN, new Point(0, 5));
    List<MarkLine> lines = MarkLine.alone(3, new Point(2, 3), north);
    assertThat(lines).hasSize(12).noneMatch(MarkLine::isShared);
    for (int i = 1; i < 12; i++) {
      assertThat(lines.get(i).sineTo(lines.get(0)))
          .isCloseTo(Math.sin(Math.PI * i / 12), within(1e-9));
    }
    assertThat(lines.get(0).axis().to().north()).isCloseTo(4, within(1e-9));
    assertThat(lines.get(0).axis().to().east()).isCloseTo(2, within(1e-9));
    assertThat(lines.get(6).axis().to().north()).isCloseTo(3, within(1e-9));
  }

  /**
   * A first string over a mark is worth 1, a second half and half its sine from 30° on, a third
   * nothing once two cross well.
   */
  @Test
  void whatAStringGives() {
    List<MarkLine> lines = MarkLine.shared(CROSS, new Length(0.001));
    StringCover cover = new StringCover(5);
    LineGains gains = new LineGains(cover, lines, LineGains.over(lines, 5));
    assertThat(gains.of(0)).isEqualTo(3);
    assertThat(cover.uncrossed()).isEqualTo(5);
    gains.take(new Strung(lines.get(0), 1, 1));
    assertThat(gains.of(0)).as("again the same").isZero();
    // Over mark 1 at a right angle, and first over marks 3 and 4.
    assertThat(gains.of(3)).isCloseTo(3, within(1e-9));
    // (0, 0) to (2, 3): half and half of 0.832, and first over mark 3.
    assertThat(gains.of(1)).isCloseTo(1 + 0.5 + 0.5 * 0.83205, within(1e-5));
    assertThat(cover.best(0)).isEmpty();
    gains.take(new Strung(lines.get(3), 1, 1));
    assertThat(cover.isCrossed(1)).isTrue();
    assertThat(cover.isCrossed(0)).isFalse();
    assertThat(cover.uncrossed()).isEqualTo(4);
    assertThat(cover.best(1)).containsExactly(new StringCover.Pair(0, 1, 1));
    gains.take(new Strung(lines.get(1), 1, 1));
    // Marks 0 and 3 are crossed too: 56.3° and 33.7°.
    assertThat(cover.uncrossed()).isEqualTo(2);
    assertThat(gains.of(1)).isZero();
    assertThat(cover.overRows().strings()).hasSize(2);
    assertThat(cover.pruned().strings()).hasSize(3);
    StringCover alone = new StringCover(5);
    alone.take(new Strung(lines.get(0), 1, 1));
    assertThat(alone.pruned().strings()).isEmpty();
    assertThat(new Strung(lines.get(0), 1, 2).pastMetres(true)).isEqualTo(2);
    assertThat(new Strung(lines.get(0), 1, 2).pastMetres(false)).isEqualTo(1);
  }

  /** Looking north the left is west; looking west it is south. */
  @ParameterizedTest
  @CsvSource({"0, 1, true, WEST", "0, 1, false, EAST", "-1, 0, true, SOUTH", "-1, 0, false, NORTH"})
  void sidesOfALine(double east, double north, boolean left, Compass side) {
    assertThat(PegSetting.side(new Segment(Point.ORIGIN, new Point(east, north)), left))
        .isEqualTo(side);
  }

  /**
   * From (3, 0) and (0, 4) the origin is seen under a right angle, from (3, 0) and (6, 0.5) not.
   */
  @Test
  void howWellTwoPlacesFindAMark() {
    TapeAccuracy accuracy = TapeAccuracy.of(new LayoutJob().job().layout().tape());
    Sightings seen =
        new Sightings(
            List.of(new Point(3, 0), new Point(0, 4), new Point(6, 0.5), Point.ORIGIN),
            List.of(Point.ORIGIN),
            new Sight(List.of(), List.of(), RULES),
            new Length(0.3),
            new Length(5),
            accuracy);
    assertThat(seen.sees(0, 0)).isTrue();
    assertThat(seen.sees(2, 0)).as("6.02 m with a tape of 5").isFalse();
    assertThat(seen.sees(3, 0)).as("from itself").isFalse();
    assertThat(seen.seesAll(1)).isTrue();
    assertThat(seen.seesAll(2)).isFalse();
    assertThat(seen.isWeak(0, 1, 0)).isFalse();
    assertThat(seen.isWeak(0, 2, 0)).isTrue();
    double one = accuracy.sigma(new Length(3)).metres();
    double other = accuracy.sigma(new Length(4)).metres();
    assertThat(seen.spread(0, 1, 0)).isCloseTo(Math.hypot(one, other), within(1e-12));
    double far = accuracy.sigma(new Length(Math.hypot(6, 0.5))).metres();
    // A sine of 0.5 / 6.0208, and a thousandfold for being weak.
    assertThat(seen.spread(0, 2, 0))
        .isCloseTo(1000 * Math.hypot(one, far) / (0.5 / Math.hypot(6, 0.5)), within(1e-6));
    assertThat(seen.places()).isEqualTo(4);
    assertThat(seen.marks()).isEqualTo(1);
  }

  private static PegGround ground(LayoutJob layout, List<Hole> holes, List<SpoilHeap> heaps) {
    Placement placement = PlacementCalculator.calculate(layout.job());
    List<CartPath> paths = CartPath.of(holes, heaps, new Length(0.75));
    return new PegGround(layout.job(), placement, holes, heaps, paths, RULES);
  }

  private static LayoutJob square() {
    LayoutJob layout = LayoutJob.of(new Outline.Rectangle(new Length(4), new Length(4), 2, 2));
    layout.azimuth = Optional.of(Angle.ofDegrees(315));
    return layout;
  }

  /**
   * Two divisions of 1 mm are spared everywhere: 602 mm off a floor that ends 2 m from its middle;
   * 600 + 200 + 2 mm from the middle of a hole of 400 mm; 150 + 1000 + 2 mm from that of a heap.
   */
  @Test
  void whereAPegMayStand() {
    PegGround bare = ground(square(), List.of(), List.of());
    assertThat(bare.isFree(new Point(2.61, 0))).isTrue();
    assertThat(bare.isFree(new Point(2.59, 0))).isFalse();
    assertThat(bare.isOffTheFloor(new Point(0, 0))).isFalse();
    assertThat(bare.isFreeUnderTheFloor(new Point(0, 0))).isTrue();
    PegGround dug = ground(square(), List.of(hole("S9", 6, 0)), List.of());
    assertThat(dug.isFree(new Point(6, 0.81))).isTrue();
    assertThat(dug.isFree(new Point(6, 0.79))).isFalse();
    PegGround heaped = ground(square(), List.of(), List.of(heap(6, 6, 0.5)));
    assertThat(heaped.isFree(new Point(6, 7.16))).isTrue();
    assertThat(heaped.isFree(new Point(6, 7.14))).isFalse();
    // A cart's way of 750 mm from hole to heap: 377 mm from its middle.
    PegGround carted = ground(square(), List.of(hole("S1", 9, -5)), List.of(heap(9, 5, 0.5)));
    assertThat(carted.isFree(new Point(9.38, 0))).isTrue();
    assertThat(carted.isFree(new Point(9.37, 0))).isFalse();
  }

  /**
   * On the lot by 152 mm; off a benchmark by 302 mm; off a line in the ground by 602 mm or more.
   */
  @Test
  void whatAPegKeepsClearOf() {
    LayoutJob lot = square();
    lot.boundary =
        Optional.of(
            new Polygon(
                List.of(new Point(-5, -5), new Point(5, -5), new Point(5, 5), new Point(-5, 5))));
    assertThat(ground(lot, List.of(), List.of()).isFree(new Point(4.84, 0))).isTrue();
    assertThat(ground(lot, List.of(), List.of()).isFree(new Point(4.86, 0))).isFalse();
    assertThat(ground(lot, List.of(), List.of()).isFree(new Point(9, 0))).isFalse();
    LayoutJob bench = square();
    bench.benchmark = Optional.of(new Benchmark(new Point(6, 0), "rock"));
    assertThat(ground(bench, List.of(), List.of()).isFree(new Point(6, 0.31))).isTrue();
    assertThat(ground(bench, List.of(), List.of()).isFree(new Point(6, 0.29))).isFalse();
    Feature.Shape.Line line =
        new Feature.Shape.Line(new Segment(new Point(6, -5), new Point(6, 5)));
    LayoutJob gas = square().feature("gas", Feature.Kind.BURIED_LINE, line, Optional.empty());
    assertThat(ground(gas, List.of(), List.of()).isFree(new Point(6.61, 0))).isTrue();
    assertThat(ground(gas, List.of(), List.of()).isFree(new Point(6.59, 0))).isFalse();
    LayoutJob wide =
        square().feature("gas", Feature.Kind.BURIED_LINE, line, Optional.of(new Length(1)));
    assertThat(ground(wide, List.of(), List.of()).isFree(new Point(7.01, 0))).isTrue();
    assertThat(ground(wide, List.of(), List.of()).isFree(new Point(6.99, 0))).isFalse();
    LayoutJob wire = square().feature("wire", Feature.Kind.OVERHEAD_WIRE, line, Optional.empty());
    assertThat(ground(wire, List.of(), List.of()).isFree(new Point(6.01, 0))).isTrue();
    LayoutJob tree = square().spot("tree", 6, 0);
    assertThat(ground(tree, List.of(), List.of()).isFree(new Point(6.31, 0))).isTrue();
    assertThat(ground(tree, List.of(), List.of()).isFree(new Point(6.29, 0))).isFalse();
  }

  /** The square reaches 2 m either way of a northern axis; a hole of 400 mm at (6, 1) farther. */
  @Test
  void howFarTheFigureReaches() {
    Segment north = new Segment(Point.ORIGIN, new Point(0, 1));
    List<Double> box = new ArrayList<>();
    for (double side : ground(square(), List.of(hole("S9", 6, 1)), List.of()).reach(north)) {
      box.add(Math.round(side * 1e6) / 1e6);
    }
    // Along: −2 to 2; to the right of the axis 6.2, to its left 2.
    assertThat(box).containsExactly(-2.0, 2.0, -6.2, 2.0);
  }
}
