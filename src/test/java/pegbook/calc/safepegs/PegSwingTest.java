package pegbook.calc.safepegs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.geometry.Segment;
import pegbook.job.Feature;
import pegbook.job.Outline;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * From which two marks a peg is set, and which third tape checks it, against trying all by the
 * plain rule: √(σ₁² + σ₂²) / sin γ, a thousand times that under 30°. The tape reads to 1.5 mm,
 * grows by 0.26042 mm a metre and is set to 1 mm, 0.28868 mm.
 */
class PegSwingTest {
  private PegSite site;

  /** A hexagon of 4 m sides; a shed west of it hides some marks from places behind it. */
  @BeforeEach
  void hexagonAndShed() {
    LayoutJob layout = LayoutJob.of(new Outline.Regular(6, new Length(4)));
    layout.feature(
        "shed",
        Feature.Kind.OBJECT,
        new Feature.Shape.Block(
            new Polygon(
                List.of(
                    new Point(-6, -1), new Point(-6, 1.5), new Point(-5, 1.5), new Point(-5, -1)))),
        Optional.empty());
    PegScene scene = PegScene.of(layout, Optional.empty());
    site = PegSite.of(scene.job(), scene.placement(), scene.holes(), scene.heaps());
  }

  private static double variance(double metres) {
    double growing = 0.00079375 / 3.048 * metres;
    return 0.0015 * 0.0015 + growing * growing + 0.001 * 0.001 / 12;
  }

  private double spread(Point peg, int one, int other) {
    Point a = site.marks().get(one);
    Point b = site.marks().get(other);
    double angle =
        Math.atan2(a.north() - peg.north(), a.east() - peg.east())
            - Math.atan2(b.north() - peg.north(), b.east() - peg.east());
    double sine = Math.abs(Math.sin(angle));
    double both =
        Math.sqrt(variance(a.distanceTo(peg).metres()) + variance(b.distanceTo(peg).metres()));
    return both / sine * (sine < Math.sin(Math.toRadians(30)) - 1e-6 ? 1000 : 1);
  }

  private boolean sees(Point peg, int mark) {
    double clear =
        PegScene.line(peg, site.marks().get(mark))
            .distance(PegScene.shape(site.sight().features().get(0)));
    return clear >= site.rules().passing().metres();
  }

  /** Round the hexagon, where at least three marks are seen. */
  private List<Point> places() {
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double angle = Math.toRadians(15 * i + 3);
      Point place = new Point((5.5 + i % 5) * Math.cos(angle), (5.5 + i % 5) * Math.sin(angle));
      if (IntStream.range(0, 6).filter(mark -> sees(place, mark)).count() >= 3) {
        places.add(place);
      }
    }
    assertThat(places).hasSizeGreaterThan(18);
    return places;
  }

  @Test
  void theTwoMarksThatCrossBest() {
    int hidden = 0;
    for (Point wanted : places()) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < 6; i++) {
        hidden += sees(wanted, i) ? 0 : 1;
        for (int j = i + 1; j < 6; j++) {
          if (sees(wanted, i) && sees(wanted, j)) {
            least = Math.min(least, spread(wanted, i, j));
          }
        }
      }
      PegSwing swing = PegSwing.of(site, wanted);
      assertThat(sees(wanted, swing.first()) && sees(wanted, swing.second())).isTrue();
      assertThat(spread(wanted, swing.first(), swing.second())).isCloseTo(least, within(1e-9));
      // It stands where whole millimetres cross, on the side that was wanted.
      for (int mark : new int[] {swing.first(), swing.second()}) {
        double set = Math.rint(1000 * site.marks().get(mark).distanceTo(wanted).metres()) / 1000;
        assertThat(site.marks().get(mark).distanceTo(swing.at()).metres())
            .isCloseTo(set, within(1e-9));
      }
      assertThat(swing.at().distanceTo(wanted).millimetres()).isLessThan(3);
    }
    assertThat(hidden).isPositive();
  }

  private Optional<Double> least(PegSwing swing, IntPredicate wanted) {
    Optional<Double> least = Optional.empty();
    for (int mark = 0; mark < 6; mark++) {
      if (mark != swing.first()
          && mark != swing.second()
          && sees(swing.at(), mark)
          && wanted.test(mark)) {
        double here =
            Math.min(
                spread(swing.at(), swing.first(), mark), spread(swing.at(), swing.second(), mark));
        least = Optional.of(least.map(known -> Math.min(known, here)).orElse(here));
      }
    }
    return least;
  }

  /**
   * The third tape crosses one of the two best, from a mark beside their line where there is one.
   */
  @Test
  void theTapeThatChecksBest() {
    for (Point wanted : places()) {
      PegSwing swing = PegSwing.of(site, wanted);
      Segment line = new Segment(site.marks().get(swing.first()), site.marks().get(swing.second()));
      IntPredicate beside = mark -> Math.abs(line.offsetMetres(site.marks().get(mark))) > 0.3;
      Optional<Double> least = least(swing, beside).or(() -> least(swing, mark -> true));
      Optional<Integer> check = swing.check(site);
      assertThat(check.isPresent()).isEqualTo(least.isPresent());
      check.ifPresent(
          mark ->
              assertThat(
                      Math.min(
                          spread(swing.at(), swing.first(), mark),
                          spread(swing.at(), swing.second(), mark)))
                  .isCloseTo(least.orElseThrow(), within(1e-9)));
    }
  }

  /**
   * Where all other marks lie on the line of the two, one of them checks; where none is left, none.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.5})
  void aCheckFromTheLineIsBetterThanNone(double offset) {
    LayoutJob layout =
        LayoutJob.of(
            new Outline.Free(
                List.of(new Point(-4, -4), new Point(-4, 4), new Point(4, 4), new Point(4, -4)),
                Optional.of(List.of(new Point(-3, 0), new Point(3, 0), new Point(0, offset)))));
    layout.azimuth = Optional.empty();
    layout.inset = Length.ZERO;
    PegScene scene = PegScene.of(layout, Optional.empty());
    PegSite row = PegSite.of(scene.job(), scene.placement(), scene.holes(), scene.heaps());
    PegSwing swing = new PegSwing(new Point(0, 5), 0, 1);
    assertThat(swing.check(row)).contains(2);
    assertThat(PegSwing.check(row, new Point(0, 5), List.of(0, 1, 2), mark -> true)).isEmpty();
    assertThat(row.holeRadiusMetres(2)).isCloseTo(0.225, within(1e-12));
  }
}
