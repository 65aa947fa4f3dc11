package pegbook.calc.provingmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pegbook.testing.LayoutJob.supports;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.provingmarks.ProvingMarks.Kind;
import pegbook.calc.provingmarks.TieChoice.TieLine;
import pegbook.figures.Placement;
import pegbook.figures.Swings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.testing.LayoutJob;

/**
 * Limits of distances and ties, and which ties are taken, on four marks in metres: S1 at the
 * origin, S2 8 m north of it, S3 at (6, 4), S4 at (−6, 2).
 *
 * <p>The tape reads to 1.5 mm, grows by 0.26042 mm a metre and is set to 1 mm, 0.28868 mm: over 8 m
 * √(1.5² + 2.08333² + 0.28868²) is 2.5833 mm, over 10 m 3.0191 mm. Chances are from tables of the
 * normal distribution: 99 in 100 stay within 2.576 deviations, 95 within 1.960.
 */
class LimitsByHandTest {
  private static final double S_8 = 2.5833;
  private static final double S_10 = 3.0191;

  private static LayoutJob four() {
    return supports(0, 0, 0, 8, 6, 4, -6, 2);
  }

  /** Marks, limits and distances of a job, taped from S1 and S2 but for own pairs. */
  private static final class Scene {
    private final Limits limits;
    private final CheckLines lines;

    Scene(LayoutJob layout, Swings.OwnPair... own) {
      Job job = layout.job();
      Placement placement = PlacementCalculator.calculate(job);
      limits = new Limits(job, placement, new Swings("S1", "S2", List.of(own)));
      lines = new CheckLines(placement, limits, layout.tape);
    }

    Limits.Limit between(int one, int other) {
      return limits.between(lines.mark(one), lines.mark(other));
    }

    TieChoice ties(double reach, Point... stations) {
      return new TieChoice(lines, limits, List.of(stations), reach);
    }

    Mistakes mistakes() {
      return new Mistakes(lines, new Segment(lines.at(0), lines.at(1)), 0.01, 0.0005);
    }
  }

  /**
   * S2 was set with the same tape from S1: 2.576 · √2 · 2.5833 is 9.41 mm, 10 mm on the tape. A
   * good reading is beyond that at 10 / 3.6533, 2.737 deviations: 0.6 in a hundred.
   */
  @Test
  void theLimitOfTheBaseline() {
    Limits.Limit limit = new Scene(four()).between(0, 1);
    assertThat(limit.planned().metres()).isCloseTo(8, within(1e-12));
    assertThat(limit.expected().metres()).isCloseTo(8, within(1e-12));
    assertThat(limit.value().millimetres()).isCloseTo(10, within(1e-9));
    assertThat(limit.held()).isFalse();
    assertThat(limit.alarm()).isCloseTo(0.0062, within(0.0001));
    assertThat(limit.workings()).hasSize(1);
    assertThat(1000 * limit.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(2) * S_8, within(0.002));
    assertThat(limit.leastMetres()).isCloseTo(7.99, within(1e-12));
  }

  /**
   * A tolerance of 9 mm holds the limit down to itself; one of 5 mm only to 1.960 · 3.6533, 7.16
   * mm, which good marks bear, 8 mm on the tape, as one of 8.4 mm does. Beyond 9 mm lie 1.4 in a
   * hundred, beyond 8 mm 2.9.
   */
  @ParameterizedTest
  @CsvSource({"9, 9, 0.0138", "8.4, 8, 0.0285", "7.5, 8, 0.0285", "5, 8, 0.0285"})
  void theToleranceHoldsALimitDown(double tolerance, double held, double alarm) {
    LayoutJob job = four();
    job.tolerance = Length.ofMillimetres(tolerance);
    Limits.Limit limit = new Scene(job).between(0, 1);
    assertThat(limit.value().millimetres()).isCloseTo(held, within(1e-9));
    assertThat(limit.held()).isTrue();
    assertThat(limit.alarm()).isCloseTo(alarm, within(0.0001));
    assertThat(limit.workings()).hasSize(3);
    assertThat(limit.workings().get(2).si()).isCloseTo(limit.alarm(), within(1e-9));
  }

  /**
   * Of 26 marks a good distance may be beyond its limit 0.5 / 39 of the time: 2.489 deviations,
   * 9.09 mm, which comes to the 10 mm that the limit is anyhow.
   */
  @Test
  void ofManyMarksFewMayFail() {
    double[] places = new double[52];
    places[3] = 8;
    for (int i = 2; i < 26; i++) {
      places[2 * i] = 3 + i % 5;
      places[2 * i + 1] = 2 * i - 20;
    }
    LayoutJob job = supports(places);
    job.tolerance = Length.ofMillimetres(5);
    Limits.Limit limit = new Scene(job).between(0, 1);
    assertThat(limit.value().millimetres()).isCloseTo(10, within(1e-9));
    assertThat(limit.held()).isFalse();
    assertThat(limit.workings()).hasSize(1);
    job.division = Length.ofMillimetres(0.1);
    // 0.5 / 39 either way together: 2.489 of √2 · √(1.5² + 2.08333² + 0.02887²), 3.6306 mm.
    assertThat(new Scene(job).between(0, 1).value().millimetres()).isCloseTo(9.1, within(1e-9));
    assertThat(new Scene(job).between(0, 1).held()).isTrue();
  }

  /**
   * From a fixed thing 10 m beside S1, which was set without error: 2.576 · √3 · 3.0191 is 13.47
   * mm, 14 mm on the tape, and good ties are beyond it at 2.677 deviations. S2's own error lies
   * square to the tape from its side, all along the tape from behind: 8 + 10 m.
   */
  @Test
  void theLimitOfATie() {
    Scene scene = new Scene(four());
    Limits.Limit first = scene.limits.tie(new Point(10, 0), scene.lines.mark(0), "T1–S1");
    assertThat(first.planned().metres()).isCloseTo(10, within(1e-12));
    assertThat(first.value().millimetres()).isCloseTo(14, within(1e-9));
    assertThat(first.alarm()).isCloseTo(0.0074, within(0.0001));
    assertThat(first.workings()).hasSize(1);
    assertThat(first.workings().get(0).subject()).isEqualTo("T1–S1");
    assertThat(1000 * first.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(3) * S_10, within(0.002));
    Limits.Limit beside = scene.limits.tie(new Point(10, 8), scene.lines.mark(1), "T2–S2");
    assertThat(1000 * beside.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(3) * S_10, within(0.002));
    Limits.Limit behind = scene.limits.tie(new Point(0, 18), scene.lines.mark(1), "T3–S2");
    assertThat(1000 * behind.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(3 * S_10 * S_10 + S_8 * S_8), within(0.002));
    assertThat(scene.limits.nearestMetres()).isCloseTo(0.02, within(1e-12));
  }

  /** A tie's limit is never below the tolerance. */
  @Test
  void noTieIsHeldBelowTheTolerance() {
    LayoutJob job = four();
    job.tolerance = Length.ofMillimetres(25);
    Scene scene = new Scene(job);
    Limits.Limit limit = scene.limits.tie(new Point(10, 0), scene.lines.mark(0), "T1–S1");
    assertThat(limit.value().millimetres()).isCloseTo(25, within(1e-9));
  }

  /**
   * S3, 20 mm beside the line from S1 to S2, is crossed too flat to tell its place: it is taken to
   * be set within the tolerance, 10 mm over 2.448 deviations, 4.085 mm, by other means.
   */
  @Test
  void aMarkTooWeakToTellIsTakenWithinTheTolerance() {
    Scene scene = new Scene(supports(0, 0, 0, 8, 0.02, 4, -6, 2));
    Limits.Limit limit = scene.limits.tie(new Point(10.02, 4), scene.lines.mark(2), "T1–S3");
    assertThat(1000 * limit.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(3 * S_10 * S_10 + 4.0854 * 4.0854), within(0.005));
    // On the string itself it is told: one tape of 4 m along it, √(1.5² + 1.04167² + 0.28868²).
    Scene string = new Scene(supports(0, 0, 0, 8, 0, 4, -6, 2));
    Limits.Limit along = string.limits.tie(new Point(0, 14), string.lines.mark(2), "T1–S3");
    assertThat(1000 * along.workings().get(0).asLength().metres())
        .isCloseTo(2.5758 * Math.sqrt(3 * S_10 * S_10 + 1.8489 * 1.8489), within(0.005));
  }

  private static List<String> names(List<TieLine> ties) {
    return ties.stream().map(tie -> "T" + (tie.station() + 1) + " S" + (tie.mark() + 1)).toList();
  }

  /** Ties to both marks of the baseline, by fixed thing; one out of reach or too near is none. */
  @Test
  void tiesToTheBaseline() {
    Scene scene = new Scene(four());
    TieChoice ties = scene.ties(9, new Point(0.019, 0), new Point(8, 0.5), new Point(0, 9.001));
    ties.toBaseline(0, 1);
    assertThat(names(ties.chosen())).containsExactly("T1 S2", "T2 S1", "T3 S2");
    TieChoice nearer = scene.ties(9.001, new Point(0.021, 0), new Point(0, 9.001));
    nearer.toBaseline(1, 0);
    assertThat(names(nearer.chosen())).containsExactly("T1 S1", "T1 S2", "T2 S1", "T2 S2");
    assertThat(nearer.chosen().get(1).nanometres()).isEqualTo(8_000_027_562L);
  }

  /**
   * The figure mirrored across its baseline puts S3 at (−6, 4): 16 m from a tree at (10, 4), not 4.
   * A tree on the baseline's line reads the same.
   */
  @Test
  void aTieShowsTheFigureMirrored() {
    Scene scene = new Scene(four());
    Mistake mirrored = scene.mistakes().whole().get(0);
    assertThat(mirrored.kind()).isEqualTo(Kind.MIRRORED_WHOLE);
    TieChoice onLine = scene.ties(100, new Point(0, 20));
    onLine.toShow(List.of(mirrored));
    assertThat(onLine.chosen()).isEmpty();
    assertThat(onLine.isShown(mirrored)).isFalse();
    TieChoice beside = scene.ties(100, new Point(10, 4));
    assertThat(beside.isShown(mirrored)).isFalse();
    beside.toShow(List.of(mirrored));
    assertThat(names(beside.chosen())).containsExactly("T1 S3");
    assertThat(beside.isShown(mirrored)).isTrue();
    TieLine tie = beside.chosen().get(0);
    assertThat(tie.limit().planned().metres()).isCloseTo(4, within(1e-9));
    assertThat(beside.reads(tie, mirrored)).isCloseTo(16, within(1e-9));
    assertThat(beside.shows(tie, mirrored)).isTrue();
    // Once it is shown no more is taken.
    beside.toShow(List.of(mirrored));
    assertThat(beside.chosen()).hasSize(1);
  }

  /**
   * Of three mistakes the tie that shows most comes first: to S3 all three, though S1 is as near.
   * From (3, 2), midway between S1 and S3, both lie √13 m off.
   */
  @Test
  void whatShowsMostIsTakenFirst() {
    Scene scene = new Scene(four());
    Point tree = new Point(2.9, 1.95);
    TieChoice ties = scene.ties(100, tree);
    List<Mistake> whole = scene.mistakes().whole();
    assertThat(whole).hasSize(3);
    ties.toShow(whole);
    assertThat(names(ties.chosen())).hasSize(1);
    assertThat(whole).allMatch(ties::isShown);
    for (Mistake mistake : whole) {
      assertThat(ties.shows(ties.chosen().get(0), mistake)).isTrue();
    }
    // Two marks exchanged are shown by ties to those two alone: the nearer is taken.
    TieChoice swapped = scene.ties(100, tree);
    swapped.toShow(List.of(scene.mistakes().swaps().get(4)));
    assertThat(names(swapped.chosen())).containsExactly("T1 S2");
  }

  /**
   * S3 taped from S1 and S2 alone may lie at its mirror image, 12 m off. A tie from (10, 4) ends
   * that; one from (0, 20), on the line, leaves it, and is not taken.
   */
  @Test
  void aTieIsTakenWhereItLeavesMuchLess() {
    Scene scene = new Scene(four());
    List<HiddenPlaces.Ring> rings =
        List.of(
            scene.lines.ring(scene.lines.all().get(1), 2),
            scene.lines.ring(scene.lines.all().get(3), 2));
    TieChoice ties = scene.ties(100, new Point(0, 20), new Point(10, 4));
    ties.toMark(2, rings, 0.01);
    assertThat(names(ties.chosen())).containsExactly("T2 S3");
    assertThat(ties.with(rings, 2)).hasSize(3);
    assertThat(ties.with(rings, 2).get(2).centre()).isEqualTo(new Point(10, 4));
    assertThat(ties.with(rings, 2).get(2).inner()).isCloseTo(3.99, within(0.003));
    assertThat(ties.with(rings, 2).get(2).outer()).isCloseTo(4.01, within(0.003));
    assertThat(ties.with(rings, 3)).hasSize(2);
    TieChoice satisfied = scene.ties(100, new Point(10, 4));
    satisfied.toMark(2, rings, 13);
    assertThat(satisfied.chosen()).isEmpty();
  }
}
