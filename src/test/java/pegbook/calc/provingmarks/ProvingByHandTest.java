package pegbook.calc.provingmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pegbook.testing.LayoutJob.supports;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.figures.Placement;
import pegbook.figures.Swings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * Distances, mistakes and what they show on four marks, in metres: S1 at the origin, S2 8 m north
 * of it, S3 at (6, 4), S4 at (−6, 2).
 */
class ProvingByHandTest {
  private static final Swings SWINGS = new Swings("S1", "S2", List.of());
  private static final double ON_LINE = 0.0005;

  private static CheckLines lines(LayoutJob layout, double reach) {
    Job job = layout.job();
    Placement placement = PlacementCalculator.calculate(job);
    return new CheckLines(placement, new Limits(job, placement, SWINGS), new Length(reach));
  }

  private CheckLines four;

  @BeforeEach
  void fourMarks() {
    four = lines(supports(0, 0, 0, 8, 6, 4, -6, 2), 100);
  }

  private static Mistakes mistakes(CheckLines lines) {
    return new Mistakes(lines, new Segment(lines.at(0), lines.at(1)), 0.01, ON_LINE);
  }

  private static BitSet set(int... numbers) {
    BitSet set = new BitSet();
    for (int number : numbers) {
      set.set(number);
    }
    return set;
  }

  private static List<String> ends(CheckLines lines) {
    return lines.all().stream().map(line -> line.from() + "-" + line.to()).toList();
  }

  /** 8, 7.21, 6.32, 7.21, 8.49 and 12.17 m, each once, in the order of its marks. */
  @Test
  void everyDistanceWithinReach() {
    assertThat(ends(four)).containsExactly("0-1", "0-2", "0-3", "1-2", "1-3", "2-3");
    assertThat(ends(lines(supports(0, 0, 0, 8, 6, 4, -6, 2), 8)))
        .containsExactly("0-1", "0-2", "0-3", "1-2");
    assertThat(ends(lines(supports(0, 0, 0, 8, 6, 4, -6, 2), 7))).containsExactly("0-3");
    CheckLine line = four.all().get(3);
    assertThat(line.number()).isEqualTo(3);
    assertThat(line.other(1)).isEqualTo(2);
    assertThat(line.other(2)).isEqualTo(1);
    // The second of S2's three and of S3's three.
    assertThat(line.bit(1)).isEqualTo(0b010);
    assertThat(line.bit(2)).isEqualTo(0b010);
    assertThat(four.all().get(5).bit(3)).isEqualTo(0b100);
    assertThat(line.nanometres()).isEqualTo(7_211_102_551L);
    assertThat(four.bits(set(3, 5), 2)).isEqualTo(0b110);
    assertThat(four.bits(set(0, 1, 2), 2)).isEqualTo(0b001);
    assertThat(four.rings(2)).hasSize(3);
    assertThat(four.ring(line, 2).centre()).isEqualTo(four.at(1));
    assertThat(four.ring(line, 1).centre()).isEqualTo(four.at(2));
  }

  /** Up to 26 marks all 325 distances; of 27 twenty are wished for at a mark, thirty at most. */
  @Test
  void ofManyMarksSomeDistances() {
    CheckLines all = lines(LayoutJob.of(new Outline.Circle(new Length(20), 26)), 100);
    assertThat(all.areAll()).isTrue();
    assertThat(all.all()).hasSize(26 * 25 / 2);
    CheckLines some = lines(LayoutJob.of(new Outline.Circle(new Length(20), 27)), 100);
    assertThat(some.areAll()).isFalse();
    assertThat(some.all().size()).isBetween(27 * 20 / 2, 27 * 25 / 2);
    for (int mark = 0; mark < 27; mark++) {
      assertThat(some.linesAt(mark).size()).isBetween(20, 30);
      // The two neighbours are the nearest of all.
      int here = mark;
      assertThat(some.linesAt(mark))
          .extracting(line -> line.other(here))
          .contains((mark + 1) % 27, (mark + 26) % 27);
    }
  }

  /** S3 and S4 exchanged: 7.21 m from S1 becomes 6.32; the way between them stays. */
  @Test
  void anExchangeIsSeenFromOutside() {
    List<Mistake> swaps = mistakes(four).swaps();
    assertThat(swaps).hasSize(6).allMatch(swap -> swap.kind() == Kind.SWAPPED);
    Mistake last = swaps.get(5);
    assertThat(last.about()).containsExactly("S3", "S4");
    assertThat(last.at(2, four)).isEqualTo(four.at(3));
    assertThat(last.at(0, four)).isEqualTo(four.at(0));
    assertThat(four.all().stream().filter(line -> last.isShownBy(line, four)))
        .extracting(CheckLine::number)
        .containsExactly(1, 2, 3, 4);
    assertThat(last.movesMoreThan(12, four)).isTrue();
    assertThat(last.movesMoreThan(12.2, four)).isFalse();
  }

  private void assertAt(Mistake mistake, int mark, double east, double north) {
    Point at = mistake.at(mark, four);
    assertThat(at.east()).isCloseTo(east, within(1e-9));
    assertThat(at.north()).isCloseTo(north, within(1e-9));
  }

  /** Mirrored across the line: east becomes west. End for end: north becomes 8 − north. */
  @Test
  void theFigureAsAWhole() {
    List<Mistake> whole = mistakes(four).whole();
    assertThat(whole)
        .extracting(Mistake::kind)
        .containsExactly(Kind.MIRRORED_WHOLE, Kind.TURNED_WHOLE, Kind.TURNED_AND_MIRRORED);
    assertAt(whole.get(0), 2, -6, 4);
    assertAt(whole.get(0), 3, 6, 2);
    assertAt(whole.get(1), 0, 0, 8);
    assertAt(whole.get(1), 2, -6, 4);
    assertAt(whole.get(1), 3, 6, 6);
    assertAt(whole.get(2), 2, 6, 4);
    assertAt(whole.get(2), 3, -6, 6);
    // No distance tells any of them.
    for (Mistake mistake : whole) {
      assertThat(four.all()).noneMatch(line -> mistake.isShownBy(line, four));
    }
  }

  /** Only the 12.17 m from S3 to S4 tell that one of them lies on the wrong side: 2 m instead. */
  @Test
  void whatJoinsBothSides() {
    Mistakes mistakes = mistakes(four);
    assertThat(mistakes.beside()).containsExactly(2, 3);
    List<Mistake> parts = mistakes.mirroredParts();
    assertThat(parts).hasSize(1);
    assertThat(parts.get(0).about()).containsExactly("S3");
    assertThat(four.all().stream().filter(line -> parts.get(0).isShownBy(line, four)))
        .extracting(CheckLine::number)
        .containsExactly(5);
    MirrorParts mirror = new MirrorParts(four, mistakes);
    assertThat(mirror.joining()).extracting(CheckLine::number).containsExactly(5);
    assertThat(mirror.isJoining(four.all().get(5))).isTrue();
    assertThat(mirror.isJoining(four.all().get(4))).isFalse();
    assertThat(mirror.least()).isEqualTo(1);
    assertThat(mirror.count(set(0, 1, 2, 3, 4))).isEqualTo(2);
    assertThat(mirror.isJoined(set(0, 1, 2, 3, 4))).isFalse();
    assertThat(mirror.isJoined(set(5))).isTrue();
    assertThat(mirror.parts(set())).containsExactly(List.of(2), List.of(3));
    assertThat(mirror.parts(set(5))).containsExactly(List.of(2, 3));
  }

  private Map<Integer, Point> slipped(Swings swings, String from, String to, double more) {
    return SlippedTapes.places(four, swings, ON_LINE, new SlippedTapes.Tape(from, to), more)
        .orElseThrow();
  }

  /** S1–S3 a metre too long: 8.211 and 7.211 m cross 4.964 m along, 6.541 m beside. */
  @Test
  void aTapeTooLongMovesItsMark() {
    Map<Integer, Point> places = slipped(SWINGS, "S1", "S3", 1);
    assertThat(places).containsOnlyKeys(2);
    assertThat(places.get(2).east()).isCloseTo(6.541, within(0.0005));
    assertThat(places.get(2).north()).isCloseTo(4.964, within(0.0005));
    // S4, on the other side, stays there: 7.325 and 8.485 m.
    assertThat(slipped(SWINGS, "S1", "S4", 1).get(3).east()).isNegative();
  }

  /** A baseline of 9 m: S2 goes north, and S3 from 7.211 m on both sides to 4.5 and 5.635 m. */
  @Test
  void aWrongBaselineMovesAll() {
    Map<Integer, Point> places = slipped(SWINGS, "S1", "S2", 1);
    assertThat(places).containsOnlyKeys(1, 2, 3);
    assertThat(places.get(1).north()).isCloseTo(9, within(1e-9));
    assertThat(places.get(2).north()).isCloseTo(4.5, within(0.0005));
    assertThat(places.get(2).east()).isCloseTo(5.635, within(0.0005));
  }

  /** A mark that is taped from another one goes wrong with it. */
  @Test
  void aMarkFollowsTheOneItIsTapedFrom() {
    Swings own = new Swings("S1", "S2", List.of(new Swings.OwnPair("S4", "S1", "S3")));
    assertThat(slipped(own, "S1", "S3", 1)).containsOnlyKeys(2, 3);
    assertThat(SlippedTapes.tapes(four, own, ON_LINE))
        .extracting(tape -> tape.from() + tape.to())
        .containsExactly("S1S2", "S1S3", "S2S3", "S1S4", "S3S4");
    assertThat(SlippedTapes.tapes(four, SWINGS, ON_LINE))
        .extracting(tape -> tape.from() + tape.to())
        .containsExactly("S1S2", "S1S3", "S2S3", "S1S4", "S2S4");
  }

  /** 0.21 and 7.21 m do not reach over 8 m; nobody overlooks that, so it is no mistake. */
  @Test
  void tapesThatDoNotMeetAreNoMistake() {
    assertThat(SlippedTapes.places(four, SWINGS, ON_LINE, new SlippedTapes.Tape("S1", "S3"), -7))
        .isEmpty();
    assertThat(SlippedTapes.places(four, SWINGS, ON_LINE, new SlippedTapes.Tape("S1", "S2"), -8))
        .isEmpty();
    List<Mistake> slips = mistakes(four).slips(SWINGS, List.of(1.0, -1.0, -7.0));
    // Five tapes a metre wrong either way; 7 m only where two tapes still meet.
    assertThat(slips.stream().filter(slip -> slip.kind() == Kind.SLIPPED)).hasSizeBetween(10, 15);
    assertThat(slips.get(0).about()).containsExactly("S1", "S2");
  }

  /** On the string line one tape gives a mark: 3 m and 100 mm, or as far behind S1. */
  @Test
  void aMarkOnTheLineHasOneTape() {
    CheckLines lines = lines(supports(0, 0, 0, 8, 6, 4, 0, 3, 0, -2), 100);
    assertThat(SlippedTapes.tapes(lines, SWINGS, ON_LINE))
        .extracting(tape -> tape.from() + tape.to())
        .containsExactly("S1S2", "S1S3", "S2S3", "S1S4", "S1S5");
    Map<Integer, Point> between =
        SlippedTapes.places(lines, SWINGS, ON_LINE, new SlippedTapes.Tape("S1", "S4"), 0.1)
            .orElseThrow();
    assertThat(between.get(3).north()).isCloseTo(3.1, within(1e-9));
    Map<Integer, Point> behind =
        SlippedTapes.places(lines, SWINGS, ON_LINE, new SlippedTapes.Tape("S1", "S5"), 0.1)
            .orElseThrow();
    assertThat(behind.get(4).north()).isCloseTo(-2.1, within(1e-9));
  }

  private static HiddenPlaces places() {
    List<HiddenPlaces.Ring> rings = new ArrayList<>();
    for (Point centre : List.of(new Point(100, 0), new Point(0, 100), new Point(-100, 0))) {
      rings.add(new HiddenPlaces.Ring(centre, 99.99, 100.01));
    }
    return HiddenPlaces.of(Point.ORIGIN, rings, 1e-9);
  }

  /**
   * Taped 100 m from east, north and west, each to 10 mm. All three leave a corner of 14 mm. East
   * and north alone leave the mirror image 141 m off; east and west what lies square to them, √(2 ·
   * 100 · 0.01) m. So past one metre each of the three is needed.
   */
  @Test
  void whatThreeTapesLeaveHidden() {
    HiddenPlaces places = places();
    assertThat(places.radius(0b111)).isCloseTo(0.01414, within(2e-5));
    assertThat(places.radius(0b011)).isCloseTo(141.42, within(0.05));
    assertThat(places.radius(0b101)).isCloseTo(1.414, within(0.001));
    assertThat(places.radius(0b001)).isCloseTo(200.01, within(0.02));
    assertThat(places.radius(0)).isInfinite();
    assertThat(places.farthest(0)).isEmpty();
    assertThat(places.farthest(0b011).orElseThrow().metres()).isEqualTo(places.radius(0b011));
    assertThat(places.farthest(0b011).orElseThrow().shownBy()).isEqualTo(0b100);
    assertThat(places.rows(1)).containsExactly(0b001, 0b010, 0b100);
    // Past two metres east and west need not be helped by north.
    assertThat(places.rows(2)).containsExactly(0b001, 0b100);
    assertThat(places.rows(250)).isEmpty();
  }

  @Test
  void moreRingsThanBitsAreRefused() {
    List<HiddenPlaces.Ring> rings = new ArrayList<>();
    for (int i = 0; i <= HiddenPlaces.MOST_RINGS; i++) {
      rings.add(new HiddenPlaces.Ring(new Point(10 + i, 0), 9 + i, 11 + i));
    }
    assertThatThrownBy(() -> HiddenPlaces.of(Point.ORIGIN, rings, 1e-9))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Of three at 5, 3 and 4 the middle one meets both demands; without it the others cost 9. */
  @Test
  void theCheapestThatMeetsADemand() {
    long[] prices = {5, 3, 4};
    CheapestAtMark cheapest = new CheapestAtMark(new long[] {0b011, 0b110});
    assertThat(cheapest.find(prices, 0, 0)).isEqualTo(3);
    assertThat(cheapest.bits()).isEqualTo(0b010);
    assertThat(cheapest.find(prices, 0, 0b010)).isEqualTo(9);
    assertThat(cheapest.bits()).isEqualTo(0b101);
    assertThat(cheapest.find(prices, 0b001, 0)).isEqualTo(8);
    assertThat(cheapest.bits()).isEqualTo(0b011);
    assertThat(cheapest.find(prices, 0, 0b011)).isEqualTo(CheapestAtMark.NEVER);
    assertThat(cheapest.steps()).isPositive();
    assertThat(new CheapestAtMark(new long[0]).find(prices, 0, 0)).isZero();
  }

  /** 8 m read to 10 mm either way, and a tie of 1 mm beyond. */
  @Test
  void aLimitShowsWhatIsBeyondIt() {
    Limits.Limit limit =
        new Limits.Limit(new Length(8), new Length(8), new Length(0.01), false, 0.01, List.of());
    assertThat(limit.leastMetres()).isCloseTo(7.99, within(1e-12));
    assertThat(limit.mostMetres()).isCloseTo(8.01, within(1e-12));
    assertThat(limit.shows(8.0109, 0.001)).isFalse();
    assertThat(limit.shows(8.0111, 0.001)).isTrue();
    assertThat(limit.shows(7.9891, 0.001)).isFalse();
    assertThat(limit.shows(7.9889, 0.001)).isTrue();
  }

  /** S3's and S4's three tapes each, all needed against mirror images: nothing is met without. */
  @Test
  void whatASetHasToShow() {
    Demands demands = new Demands(four, 0.01);
    demands.add(mistakes(four).swaps());
    demands.add(mistakes(four).whole());
    assertThat(demands.seen()).hasSize(6);
    assertThat(demands.unseen()).hasSize(3);
    assertThat(demands.shownBy().get(5)).isEqualTo(set(1, 2, 3, 4));
    assertThat(demands.firstUnmet(set(0, 1, 2, 3, 4, 5))).isNegative();
    assertThat(demands.firstUnmet(set(0, 5))).isNotNegative();
    assertThat(demands.isMet(2, 0b111)).isTrue();
    assertThat(demands.isMet(2, 0b001)).isFalse();
    for (int mark = 0; mark < 4; mark++) {
      assertThat(demands.bound(mark)).isGreaterThanOrEqualTo(0.01);
      assertThat(demands.radius(mark, 0b111)).isLessThanOrEqualTo(demands.bound(mark) + 1e-6);
    }
    assertThat(demands.isGross(mistakes(four).swaps().get(0))).isTrue();
  }
}
