package pegbook.calc.provingmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarkedCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.provingmarks.ProvingMarks.Check;
import pegbook.calc.provingmarks.ProvingMarks.Hidden;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.tapetable.TapeTableCalculator;
import pegbook.figures.Finding;
import pegbook.figures.PlacedMark;
import pegbook.figures.Placement;
import pegbook.figures.Swings;
import pegbook.figures.Working;
import pegbook.geometry.Point;
import pegbook.geometry.network.Chances;
import pegbook.job.Field;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.testing.Chance;
import pegbook.testing.LayoutJob;

class ProvingMarksCalculatorTest {
  /** Two trees beside the figure, not alike to it. */
  private static final List<Point> TREES = List.of(new Point(-7, 3.1), new Point(6.3, -5.2));

  private static ProvingMarks proving(LayoutJob layout, List<Point> stations) {
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    return ProvingMarksCalculator.calculate(job, placement, swings(job, placement), stations);
  }

  private static Swings swings(Job job, Placement placement) {
    return TapeTableCalculator.calculate(job, placement).swings();
  }

  private static LayoutJob regular(int sides) {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(sides, new Length(4)));
    layout.tolerance = Length.ofMillimetres(13);
    return layout;
  }

  private static Map<String, Point> places(Placement placement) {
    Map<String, Point> places = new HashMap<>();
    placement.marks().forEach(mark -> places.put(mark.id(), mark.at()));
    return places;
  }

  private static boolean passes(List<Check> checks, Map<String, Point> places) {
    return checks.stream()
        .allMatch(
            check -> {
              Point first = places.get(check.pair().first());
              Point second = places.get(check.pair().second());
              double metres =
                  Math.hypot(first.east() - second.east(), first.north() - second.north());
              return metres >= check.least().metres() - 1e-9
                  && metres <= check.most().metres() + 1e-9;
            });
  }

  private static Map<String, Point> moved(
      Map<String, Point> places, String mark, double degrees, double metres) {
    Map<String, Point> moved = new HashMap<>(places);
    moved.computeIfPresent(
        mark, (name, at) -> at.moved(Angle.ofDegrees(degrees), new Length(metres)));
    return moved;
  }

  /** The claim, by trial: whichever mark, whichever way, from the stated radius to far away. */
  @Property(tries = 12, seed = Chance.SEED)
  @net.jqwik.api.Tag("long")
  void noMistakeOfAMarkBeyondTheStatedRadiusPasses(
      @ForAll @IntRange(min = 4, max = 12) int sides,
      @ForAll @DoubleRange(min = -1.2, max = 1.2) double east) {
    LayoutJob layout = regular(sides).pier("P1", east, 0.35);
    ProvingMarks proving = proving(layout, List.of());
    Map<String, Point> places = places(PlacementCalculator.calculate(layout.job()));

    assertThat(passes(proving.checks(), places)).isTrue();
    for (Hidden hidden : proving.hidden()) {
      double radius = hidden.radius().orElseThrow().metres();
      for (double factor : new double[] {1.0001, 1.01, 1.1, 1.5, 2, 5, 30, 100, 250, 400}) {
        for (int degrees = 0; degrees < 360; degrees++) {
          assertThat(
                  passes(
                      proving.checks(),
                      moved(places, hidden.mark(), degrees + 0.5, factor * radius)))
              .as("%s by %s m towards %s", hidden.mark(), factor * radius, degrees)
              .isFalse();
        }
      }
      assertThat(hidden.within()).isEqualTo(radius <= layout.tolerance.metres() + 1e-9);
    }
  }

  /** The stated radius is reached: just inside it some mistake does pass. */
  @Test
  void aMistakeJustWithinTheStatedRadiusPasses() {
    LayoutJob layout = regular(6);
    ProvingMarks proving = proving(layout, List.of());
    Map<String, Point> places = places(PlacementCalculator.calculate(layout.job()));
    for (Hidden hidden : proving.hidden()) {
      double metres = 0.99 * hidden.radius().orElseThrow().metres();
      boolean some = false;
      for (int step = 0; step < 7200 && !some; step++) {
        some = passes(proving.checks(), moved(places, hidden.mark(), step / 20.0, metres));
      }
      assertThat(some).as(hidden.mark()).isTrue();
    }
  }

  /** Every set of one distance fewer lets some mistake pass that the smallest set shows. */
  @Test
  @Tag("long")
  void noSmallerSetDoes() {
    LayoutJob layout = regular(4).pier("P1", 0.4, 0.9);
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    Limits limits = new Limits(job, placement, swings(job, placement));
    CheckLines lines = new CheckLines(placement, limits, layout.tape);
    ProvingMarks proving = proving(layout, List.of());
    assertThat(proving.size().smallest()).isTrue();
    Demands demands = new Demands(lines, layout.tolerance.metres());
    int all = lines.all().size();
    int sets = 0;
    for (int bits = 0; bits < 1 << all; bits++) {
      if (Integer.bitCount(bits) == proving.checks().size() - 1) {
        sets++;
        assertThat(letsSomethingPass(lines, demands, bits)).as("set %s", bits).isTrue();
      }
    }
    assertThat(all).isEqualTo(10);
    assertThat(sets).isGreaterThan(9);
  }

  /** By trial on a fan of rays, without the corners that the calculator looks at. */
  private static boolean letsSomethingPass(CheckLines lines, Demands demands, int bits) {
    for (int mark = 0; mark < lines.marks(); mark++) {
      double bound = demands.bound(mark) + 1e-5;
      for (int degrees = 0; degrees < 720; degrees++) {
        for (double metres = bound; metres < 12; metres = metres * 1.01 + 0.0005) {
          Point at = lines.at(mark).moved(Angle.ofDegrees(degrees / 2.0), new Length(metres));
          if (passes(lines, bits, Map.of(mark, at))) {
            return true;
          }
        }
      }
    }
    for (int i = 0; i < lines.marks(); i++) {
      for (int j = i + 1; j < lines.marks(); j++) {
        if (passes(lines, bits, Map.of(i, lines.at(j), j, lines.at(i)))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean passes(CheckLines lines, int bits, Map<Integer, Point> wrong) {
    for (CheckLine line : lines.all()) {
      if ((bits & 1 << line.number()) != 0) {
        Point from = wrong.getOrDefault(line.from(), lines.at(line.from()));
        Point to = wrong.getOrDefault(line.to(), lines.at(line.to()));
        double metres = Math.hypot(from.east() - to.east(), from.north() - to.north());
        if (metres < line.limit().leastMetres() || metres > line.limit().mostMetres()) {
          return false;
        }
      }
    }
    return true;
  }

  /** The set for many marks is no smaller than the smallest, and meets the same demands. */
  @Property(tries = 20, seed = Chance.SEED)
  void takingAndLeavingOutMeetsTheSameDemands(
      @ForAll @IntRange(min = 4, max = 8) int sides,
      @ForAll @DoubleRange(min = -1.2, max = 1.2) double east) {
    LayoutJob layout = regular(sides).pier("P1", east, 0.35);
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    Swings swings = swings(job, placement);
    Limits limits = new Limits(job, placement, swings);
    CheckLines lines = new CheckLines(placement, limits, layout.tape);
    Mistakes mistakes =
        new Mistakes(
            lines,
            new pegbook.geometry.Segment(
                placement.mark(swings.first()).at(), placement.mark(swings.second()).at()),
            layout.tolerance.metres(),
            0.0005);
    Demands demands = new Demands(lines, layout.tolerance.metres());
    demands.add(mistakes.swaps());
    MirrorParts parts = new MirrorParts(lines, mistakes);
    BitSet greedy = new GreedySet(demands, parts).built();
    SmallestSet.Found found = SmallestSet.of(demands, new GreedySet(demands, parts));

    assertThat(found.chosen().cardinality()).isLessThanOrEqualTo(greedy.cardinality());
    for (BitSet set : List.of(greedy, found.chosen())) {
      assertThat(demands.firstUnmet(set)).isNegative();
      for (int mark = 0; mark < lines.marks(); mark++) {
        assertThat(demands.isMet(mark, lines.bits(set, mark))).isTrue();
      }
    }
  }

  /** Shifting and turning the figure with its trees changes no distance, no limit and no tie. */
  @Property(tries = 25, seed = Chance.SEED)
  void turningTheFigureChangesNothing(
      @ForAll @IntRange(min = 3, max = 11) int sides,
      @ForAll @DoubleRange(min = 0, max = 359) double degrees) {
    Angle turn = Angle.ofDegrees(degrees);
    LayoutJob plain = regular(sides).pier("P1", 0.4, 0.9);
    LayoutJob turned = regular(sides);
    turned.azimuth = plain.azimuth.map(azimuth -> azimuth.plus(turn));
    Point pier = new Point(0.4, 0.9).turned(turn);
    turned.pier("P1", pier.east(), pier.north());
    ProvingMarks before = proving(plain, TREES);
    ProvingMarks after = proving(turned, TREES.stream().map(tree -> tree.turned(turn)).toList());

    assertThat(after.checks()).hasSameSizeAs(before.checks());
    for (int i = 0; i < before.checks().size(); i++) {
      Check one = before.checks().get(i);
      Check other = after.checks().get(i);
      assertThat(other.pair()).isEqualTo(one.pair());
      assertThat(other.expected().metres()).isCloseTo(one.expected().metres(), within(1e-9));
      assertThat(other.limit().metres()).isCloseTo(one.limit().metres(), within(1e-9));
    }
    assertThat(after.tried()).isEqualTo(before.tried());
    assertThat(after.ties().stream().map(tie -> tie.station() + tie.mark()))
        .containsExactlyElementsOf(
            before.ties().stream().map(tie -> tie.station() + tie.mark()).toList());
    for (int i = 0; i < before.hidden().size(); i++) {
      assertThat(after.hidden().get(i).radius().orElseThrow().metres())
          .isCloseTo(before.hidden().get(i).radius().orElseThrow().metres(), within(1e-7));
    }
  }

  /** Trap of every figure of three: distances cannot tell it from its mirror image. */
  @Test
  void threeMarksAreNotProvedWithoutTies() {
    ProvingMarks alone = proving(regular(3), List.of());

    assertThat(alone.checks()).hasSize(3);
    assertThat(alone.hidden()).noneMatch(Hidden::within);
    // The place on the other side of the line of the other two.
    Placement placement = PlacementCalculator.calculate(regular(3).job());
    double side = placement.marks().get(0).at().distanceTo(placement.marks().get(1).at()).metres();
    assertThat(alone.worst().radius().orElseThrow().metres())
        .isBetween(side * Math.sqrt(3), side * Math.sqrt(3) + 0.03);
    assertThat(alone.unseen().stream().filter(unseen -> unseen.kind() == Kind.SWAPPED)).hasSize(3);
    assertThat(alone.findings().stream().map(Finding::id))
        .containsExactly("proving-marks-coarse", "proving-marks-swap-hidden");

    ProvingMarks tied = proving(regular(3), TREES);
    assertThat(tied.unseen()).isEmpty();
    assertThat(tied.worst().radius().orElseThrow().millimetres()).isLessThan(60);
  }

  /** Two opposite corners of a square exchanged: its mirror image, which only ties show. */
  @Test
  void oppositeCornersOfASquareNeedTies() {
    ProvingMarks alone = proving(regular(4), List.of());

    assertThat(alone.checks()).hasSize(6);
    assertThat(
            alone.unseen().stream()
                .filter(unseen -> unseen.kind() == Kind.SWAPPED)
                .map(ProvingMarks.Unseen::marks))
        .containsExactly(List.of("S1", "S3"), List.of("S2", "S4"));
    assertThat(proving(regular(4), TREES).unseen()).isEmpty();
  }

  /** Ties to the baseline alone do not show a figure mirrored across it; one more does. */
  @Test
  void aTieBesideTheBaselineShowsAMirroredFigure() {
    ProvingMarks proving = proving(regular(6), TREES);
    Placement placement = PlacementCalculator.calculate(regular(6).job());
    Swings swings = swings(regular(6).job(), placement);

    assertThat(proving.ties())
        .filteredOn(tie -> tie.mirrored().isPresent())
        .isNotEmpty()
        .noneMatch(tie -> tie.mark().equals(swings.first()) || tie.mark().equals(swings.second()));
    assertThat(proving.unseen()).isEmpty();
    assertThat(proving(regular(6), List.of()).unseen().stream().map(ProvingMarks.Unseen::kind))
        .containsExactly(Kind.MIRRORED_WHOLE, Kind.TURNED_WHOLE, Kind.TURNED_AND_MIRRORED);
  }

  /**
   * A hexagon with sides and long diagonals: three lines 60° apart leave a hexagon round a mark.
   */
  @Test
  void threeLinesEvenlyApartLeaveAHexagon() {
    double limit = 0.006;
    List<HiddenPlaces.Ring> rings = new ArrayList<>();
    for (int degrees : new int[] {0, 60, 120}) {
      Point centre = Point.ORIGIN.moved(Angle.ofDegrees(degrees), new Length(400));
      rings.add(new HiddenPlaces.Ring(centre, 400 - limit, 400 + limit));
    }
    HiddenPlaces places = HiddenPlaces.of(Point.ORIGIN, rings, 1e-9);

    assertThat(places.radius(0b111)).isCloseTo(limit / Math.cos(Math.PI / 6), within(1e-7));
    // Two of them cross at 60°: the far corner of the rhombus is off by the limit over the sine of
    // 30°; but their rings meet again on the other side.
    assertThat(places.radius(0b011)).isGreaterThan(600);
    assertThat(places.radius(0)).isInfinite();
  }

  /** The same limits by another road: the network adjustment behind the marks as painted. */
  @Test
  void limitsAgreeWithTheAdjustedNetwork() {
    LayoutJob layout = regular(6).pier("P1", 0.4, 0.9);
    layout.tolerance = Length.ofMillimetres(40);
    ProvingMarks proving = proving(layout, List.of());
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    Swings swings = swings(job, placement);
    layout.field =
        new Field(
            proving.checks().stream()
                .map(
                    check ->
                        new Field.Taped(
                            check.pair().first(), check.pair().second(), check.expected()))
                .toList(),
            List.of());
    AsMarked marked =
        AsMarkedCalculator.calculate(layout.job(), placement, swings.first(), swings.second());
    List<Working> limits =
        proving.workings().stream()
            .filter(working -> working.formula().id().equals("proving-marks.limit"))
            .toList();

    assertThat(swings.ownPairs()).isEmpty();
    assertThat(limits).hasSameSizeAs(marked.rows());
    for (int i = 0; i < limits.size(); i++) {
      double other = marked.rows().get(i).limit().metres();
      assertThat(limits.get(i).asLength().metres()).isCloseTo(other, within(0.002 * other));
      Check check = proving.checks().get(i);
      assertThat(check.held()).isFalse();
      assertThat(check.limit().metres()).isBetween(other * 0.998, other + 0.0011);
      assertThat(check.alarm()).isLessThanOrEqualTo(0.0101);
    }
  }

  /**
   * The shares that the factors hold: 2.576 deviations for 99 %, 1.960 for 95 %, as tables of the
   * normal distribution print them (from memory).
   */
  @Test
  void factorsAreThoseOfTheTables() {
    assertThat(Chances.normalBeyond(2.576)).isCloseTo(0.01, within(5e-5));
    assertThat(Chances.normalBeyond(1.960)).isCloseTo(0.05, within(5e-5));
  }

  /**
   * A wide figure with a plain tape: the tolerance holds limits, but never so that good marks fail
   * often.
   */
  @Test
  void theToleranceHoldsLimitsOnlyAsFarAsGoodMarksBearIt() {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(6, new Length(9)));
    layout.tolerance = Length.ofMillimetres(9);
    ProvingMarks proving = proving(layout, List.of());

    assertThat(proving.checks()).anyMatch(Check::held);
    assertThat(proving.checks()).allMatch(check -> check.alarm() < 0.05);
    assertThat(proving.falseAlarms()).isLessThan(0.5);
    assertThat(proving.checks())
        .filteredOn(Check::held)
        .allMatch(check -> check.limit().metres() >= 0.009 - 1e-9);
    assertThat(proving.findings().stream().map(Finding::id)).contains("proving-marks-coarse");
  }

  /** Over ten seconds would be a hang; the smallest set is proved all the same. */
  @Test
  @Tag("long")
  void manyMarksTakeNotLong() {
    LayoutJob layout = regular(24);
    layout.outline = new Outline.Regular(24, new Length(20));
    long start = System.nanoTime();
    ProvingMarks proving = proving(layout, TREES);

    assertThat((System.nanoTime() - start) / 1e9).isLessThan(10);
    assertThat(proving.size().smallest()).isTrue();
    assertThat(proving.checks()).hasSize(proving.size().least());
    for (PlacedMark mark : PlacementCalculator.calculate(layout.job()).marks()) {
      assertThat(
              proving.checks().stream()
                  .filter(
                      check ->
                          check.pair().first().equals(mark.id())
                              || check.pair().second().equals(mark.id())))
          .hasSizeGreaterThanOrEqualTo(3);
    }
  }
}
