package pegbook.calc.siteplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbook.calc.siteplan.SitePlan.Fixed;
import pegbook.calc.siteplan.SitePlan.Tie;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Benchmark;
import pegbook.job.Feature;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;
import pegbook.testing.LayoutJob;

/**
 * Which two fixed things place the baseline, worked by hand: its marks are at the origin and 4 m
 * north of it.
 */
class TiesTest {
  private static final PlacedMark FIRST =
      new PlacedMark("S1", MarkKind.SUPPORT, Point.ORIGIN, Optional.empty());
  private static final PlacedMark SECOND =
      new PlacedMark("S2", MarkKind.SUPPORT, new Point(0, 4), Optional.empty());

  private static Ties ties(LayoutJob layout) {
    return new Ties(layout.job(), SitePlanFormulas.in(UnitSystem.METRIC), FIRST, SECOND);
  }

  private static List<Fixed> chosen(LayoutJob layout) {
    return ties(layout).choose().orElseThrow().ties().stream().map(Tie::fixed).distinct().toList();
  }

  private static Fixed thing(String name) {
    return new Fixed.Thing(name);
  }

  /**
   * Ash at (−3, 0) and beech at (3, 4): 3, 5, 5 and 3 m, crossing at 53.1° at both marks. An elm a
   * little farther west would do as well with 5.3 m; a fir at (4, 2) crosses the beech at 26.6°.
   */
  private static LayoutJob trees() {
    return new LayoutJob()
        .spot("elm", -3.5, 0)
        .spot("fir", 4, 2)
        .spot("ash", -3, 0)
        .spot("beech", 3, 4);
  }

  @Test
  void theNearestOfTheStrongPairsIsTaken() {
    Ties ties = ties(trees());
    Ties.Chosen chosen = ties.choose().orElseThrow();
    assertThat(chosen.weakest().degrees()).isCloseTo(53.13, within(0.005));
    assertThat(chosen.withinReach()).isTrue();
    assertThat(chosen.ties()).extracting(Tie::number).containsExactly(1, 2, 3, 4);
    assertThat(chosen.ties()).extracting(Tie::mark).containsExactly("S1", "S2", "S1", "S2");
    assertThat(chosen.ties())
        .extracting(tie -> tie.tape().metres())
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(3.0, 5.0, 5.0, 3.0);
    assertThat(chosen.ties().get(0).fixed()).isEqualTo(thing("ash"));
    assertThat(chosen.ties().get(2).fixed()).isEqualTo(thing("beech"));
    assertThat(chosen.ties().get(0).towards()).isEqualTo(Compass.EAST);
    assertThat(ties.workings())
        .extracting(Working::subject)
        .containsExactly("T1", "T2", "T3", "T4");
  }

  /** Of two that reach alike, the pair that crosses nearer to a right angle. */
  @Test
  void ofEquallyFarPairsTheStrongestIsTaken() {
    // Oak, ash and yew are all 5 m from S1 and nearer to S2: longest ties alike. Directions from
    // S1: oak 36.9° west of north, ash 36.9° east, yew 16.3° east. Oak and ash cross at 73.7°.
    LayoutJob layout = new LayoutJob().spot("oak", -3, 4).spot("yew", 1.4, 4.8).spot("ash", 3, 4);
    Fixed other = chosen(layout).get(1);
    assertThat(chosen(layout).get(0)).isEqualTo(thing("oak"));
    // At S2 oak and ash lie in one line with it, oak and yew cross at 29.7°: neither is strong.
    assertThat(other).isIn(thing("yew"), thing("ash"));
  }

  /** A line in the ground is nothing to measure from, however near it ends. */
  @Test
  void aBuriedLineIsNoStation() {
    LayoutJob layout = trees();
    layout.feature(
        "gas",
        Feature.Kind.BURIED_LINE,
        new Feature.Shape.Line(new Segment(new Point(-2, 0), new Point(2, 4))),
        Optional.empty());
    assertThat(chosen(layout)).containsExactly(thing("ash"), thing("beech"));
  }

  /** A hedge has two ends, named by where they lie from its middle. */
  @Test
  void aHedgeHasTwoEnds() {
    LayoutJob layout = new LayoutJob();
    layout.feature(
        "hedge",
        Feature.Kind.OBJECT,
        new Feature.Shape.Line(new Segment(new Point(-3, 0), new Point(-3, 4))),
        Optional.empty());
    assertThat(chosen(layout))
        .containsExactly(
            new Fixed.Corner("hedge", Compass.SOUTH), new Fixed.Corner("hedge", Compass.NORTH));
  }

  /** Pins of the lot have to be found first: taken where nothing else is strong. */
  @Test
  void lotCornersComeAfterThings() {
    LayoutJob layout = new LayoutJob();
    layout.boundary =
        Optional.of(
            new Polygon(
                List.of(new Point(-3, 0), new Point(-3, 30), new Point(40, 30), new Point(40, 0))));
    assertThat(chosen(layout)).allMatch(fixed -> fixed instanceof Fixed.LotCorner);
    layout.spot("ash", -4, 0).spot("beech", 4, 4);
    assertThat(chosen(layout)).containsExactly(thing("ash"), thing("beech"));
  }

  @Test
  void theBenchmarkIsAStation() {
    LayoutJob layout = new LayoutJob().spot("ash", -3, 0);
    layout.benchmark = Optional.of(new Benchmark(new Point(3, 4), "rock"));
    assertThat(chosen(layout)).containsExactly(thing("ash"), new Fixed.OfBenchmark("rock"));
  }

  /** Nothing within 0.3 m of either mark, nor two things within 0.3 m of one another. */
  @Test
  void thingsThatAreTooNearAreLeftOut() {
    assertThat(ties(new LayoutJob().spot("ash", -3, 0).spot("post", 0, 0.29)).choose()).isEmpty();
    assertThat(ties(new LayoutJob().spot("ash", -3, 0).spot("post", 0, 3.71)).choose()).isEmpty();
    assertThat(ties(new LayoutJob().spot("ash", -3, 0).spot("post", 0.31, 0)).choose()).isPresent();
    assertThat(ties(new LayoutJob().spot("ash", -3, 0).spot("elm", -3.29, 0)).choose()).isEmpty();
    assertThat(ties(new LayoutJob().spot("ash", -3, 0)).choose()).isEmpty();
  }

  /** A tape of 4.9 m reaches neither of the long ties: said, and a pair within reach preferred. */
  @Test
  void theTapesReach() {
    LayoutJob layout = trees();
    layout.tape = new Length(4.9);
    assertThat(ties(layout).choose().orElseThrow().withinReach()).isFalse();
    layout.spot("rose", -2.5, 1).spot("lilac", 2.5, 3);
    assertThat(chosen(layout)).containsExactly(thing("rose"), thing("lilac"));
    assertThat(ties(layout).choose().orElseThrow().withinReach()).isTrue();
  }
}
